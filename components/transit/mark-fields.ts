import { refused, understood } from '../../core/text/reading.js';
import type { Field } from '../shared/field.js';
import { bearingField, latitudeField, longitudeField } from '../shared/trade-fields.js';
import type { MarkPart } from './mark-texts.js';

/** The angles of one line ashore. */
export const markFields: Readonly<Record<MarkPart, Field<number>>> = {
  bearing: bearingField('C'),
  charted: bearingField('T'),
  frontLatitude: latitudeField,
  frontLongitude: longitudeField,
  rearLatitude: latitudeField,
  rearLongitude: longitudeField,
};

/** What the marks are called: any words. */
export const markNameField: Field<string> = {
  parse: (text) => (text.trim() === '' ? refused('empty') : understood(text.trim())),
  write: (value) => value,
  show: () => '',
  optional: true,
  accepted: 'accepted.markName',
};

/** The property of a part of a line: `bearing-2` belongs to the third. */
const PART_OF_LINE = /^(\w+)-(\d+)$/;

export function partName(part: string, index: number): string {
  return `${part}-${index}`;
}

/** The part and the line, counted from 0, that a name stands for; null for any other name. */
export function partNamed(name: string): { readonly part: string; readonly index: number } | null {
  const [, part, index] = PART_OF_LINE.exec(name) ?? [];
  return part === undefined || index === undefined ? null : { part, index: Number(index) };
}
