import type { FieldState } from './field.js';
import type { LubberElement } from './lubber-element.js';
import type { FieldName } from './missing-view.js';

/** Fields under the names all sights give them, `sight.latitude`, and whether there is no answer without each. */
export function fieldNames<Name extends string>(
  host: LubberElement,
  states: Readonly<Record<NoInfer<Name>, FieldState<unknown>>>,
  needed: Readonly<Record<Name, boolean>>,
): FieldName[] {
  return (Object.keys(needed) as Name[]).map((name) => ({ state: states[name], label: host.t(`sight.${name}`), needed: needed[name] }));
}
