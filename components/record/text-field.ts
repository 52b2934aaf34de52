import { refused, understood } from '../../core/text/reading.js';
import type { Field } from '../shared/field.js';

/** A field of free text up to a length; it is kept as typed, without space at its ends. */
export function textField(longest: number): Field<string> {
  return {
    parse: (text) => (text.trim().length <= longest ? understood(text.trim()) : refused('out-of-range')),
    write: (value) => value,
    // What was typed stands in the field already.
    show: () => '',
    accepted: 'accepted.text',
    inputMode: 'text',
  };
}
