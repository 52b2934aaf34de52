import { normalise } from './normalise.js';
import { refused, within } from './reading.js';
import type { Reading } from './reading.js';

/**
 * Digits with at most one decimal mark, point or comma; never a mark between thousands.
 * As many decimals as a computer prints of a number are read, and no more figures before
 * the mark than it can hold.
 */
const DECIMAL = /^\d{1,15}(?:[.,]\d{0,30})?$|^[.,]\d{1,30}$/;

/** The number of a text of digits with one decimal mark, or null. */
export function decimalOf(text: string): number | null {
  return DECIMAL.test(text) ? Number(text.replace(',', '.')) : null;
}

/** Whether a text has more decimal marks than a number can have. */
export function hasTwoDecimalMarks(text: string): boolean {
  return (text.match(/[.,]/g) ?? []).length > 1;
}

/**
 * Reads a decimal number with point or comma and an optional sign, and holds it to
 * [least, most].
 */
export function parseNumber(text: string, least = -Infinity, most = Infinity): Reading<number> {
  const plain = normalise(text);
  if (plain === '') return refused('empty');
  const unsigned = plain.replace(/^[+-] ?/, '');
  if (/^[\d.,]+$/.test(unsigned) && hasTwoDecimalMarks(unsigned)) return refused('two-decimal-marks');
  const size = decimalOf(unsigned);
  if (size === null) return refused('not-understood');
  return within(plain.startsWith('-') ? -size : size, least, most);
}
