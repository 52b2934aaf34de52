import { normalise } from './normalise.js';
import { refused, within } from './reading.js';
import type { Reading } from './reading.js';

/** Digits with at most one decimal mark, point or comma; never a mark between thousands. */
const DECIMAL = /^\d{1,15}(?:[.,]\d{0,15})?$|^[.,]\d{1,15}$/;

/** The number of a text of digits with one decimal mark, or null. */
export function decimalOf(text: string): number | null {
  return DECIMAL.test(text) ? Number(text.replace(',', '.')) : null;
}

/**
 * Reads a decimal number with point or comma and an optional sign, and holds it to
 * [least, most].
 */
export function parseNumber(text: string, least = -Infinity, most = Infinity): Reading<number> {
  const plain = normalise(text);
  if (plain === '') return refused('empty');
  if ((plain.match(/[.,]/g) ?? []).length > 1) return refused('two-decimal-marks');
  const [, sign, digits] = /^([+-]?) ?(.*)$/.exec(plain) ?? [];
  const value = decimalOf(digits ?? '');
  if (value === null) return refused('not-understood');
  return within(sign === '-' ? -value : value, least, most);
}
