import { warning } from '../../core/working/caution.js';
import type { Caution } from '../../core/working/caution.js';
import type { PlaceField } from './place-field.js';

/** Where the horizontal field is too weak for a compass; said in the words all widgets share. */
export function zoneCaution({ zone }: PlaceField): Caution[] {
  return zone === 'normal' ? [] : [warning(`${zone}-zone`)];
}
