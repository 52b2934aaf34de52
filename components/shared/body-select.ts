import type { TemplateResult } from 'lit';
import { bodyNames, kindOf } from '../../core/sky/body.js';
import { bodyName } from './body-name.js';
import { selectView } from './choice-view.js';
import type { LubberElement } from './lubber-element.js';

/** The list of bodies: Sun, Moon and planets, then the stars by name. */
export function bodySelect(host: LubberElement, chosen: string): TemplateResult {
  const option = (name: string): { value: string; label: string } => ({ value: name, label: bodyName(host, name) });
  // In plain order of letters: to make ready the order of a language takes longer than all else here.
  const stars = bodyNames.filter((name) => kindOf(name) === 'star').sort();
  return selectView(host, 'body', host.t('sight.body'), chosen, [
    { label: host.t('sight.bodies.solar'), options: bodyNames.filter((name) => kindOf(name) !== 'star').map(option) },
    { label: host.t('sight.bodies.stars'), options: stars.map(option) },
  ]);
}
