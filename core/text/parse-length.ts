import { normalise } from './normalise.js';
import { parseNumber } from './parse-number.js';
import { refused, within } from './reading.js';
import type { Reading } from './reading.js';

/** International foot, metres (exact by definition, 1959). */
const METRES_PER_FOOT = 0.3048;

/** Metres in one of each unit; a number without a unit is metres. */
const units: readonly (readonly [RegExp, number])[] = [
  [/(?:FT|FEET|FOOT|')$/, METRES_PER_FOOT],
  [/(?:M|METRES?|METERS?)$/, 1],
];

/**
 * Reads a length in metres, `12.5` or `12,5 m`, or in feet, `41 ft` or `41'`, and holds
 * it to [least, most] metres.
 */
export function parseLength(text: string, least: number, most: number): Reading<number> {
  const plain = normalise(text);
  if (plain === '') return refused('empty');
  const [mark, metres] = units.find(([unit]) => unit.test(plain)) ?? [/$/, 1];
  const digits = plain.replace(mark, '');
  if (digits === '') return refused('not-understood');
  const size = parseNumber(digits);
  return size.ok ? within(size.value * metres, least, most) : size;
}
