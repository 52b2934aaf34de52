import { normalise } from './normalise.js';
import { parseNumber } from './parse-number.js';
import type { Reading } from './reading.js';

/** International foot, metres (exact by definition, 1959). */
const METRES_PER_FOOT = 0.3048;

/**
 * Reads a length in metres, `12.5` or `12,5 m`, or in feet, `41 ft` or `41'`, and holds
 * it to [least, most] metres.
 */
export function parseLength(text: string, least: number, most: number): Reading<number> {
  const plain = normalise(text);
  const feet = /^(.*?) ?(?:FT|FEET|')$/.exec(plain)?.[1];
  if (feet !== undefined) {
    const reading = parseNumber(feet, least / METRES_PER_FOOT, most / METRES_PER_FOOT);
    return reading.ok ? { ok: true, value: reading.value * METRES_PER_FOOT } : reading;
  }
  return parseNumber(plain.replace(/ ?M$/, ''), least, most);
}
