import type { CivilDate } from '../../core/time/parse-date.js';
import type { Field, FieldState } from '../shared/field.js';
import type { LubberElement } from '../shared/lubber-element.js';

/** What those that read the bench ask of it. */
export interface Bench extends LubberElement {
  /** What stands in a field, or was chosen. */
  text(name: string): string;
  number(name: string): FieldState<number>;
  /** The number in a field; undefined where there is none. */
  value(name: string): number | undefined;
  day(): FieldState<CivilDate>;
  readonly dateField: Field<CivilDate>;
}
