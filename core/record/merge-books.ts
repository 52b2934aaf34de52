import type { RecordEntry } from './entry.js';

/** What is to be added; or the number of the first entry in which the two books differ. */
export type BookMerge =
  | { readonly ok: true; readonly added: readonly RecordEntry[] }
  | { readonly ok: false; readonly number: number };

/**
 * What a verified import adds to a verified book: the entries past their common beginning.
 * Two books that went different ways are not merged; the number is the first that differs.
 */
export function mergeBooks(own: readonly RecordEntry[], other: readonly RecordEntry[]): BookMerge {
  const common = Math.min(own.length, other.length);
  // Hashes are chained: where two agree, everything before agrees.
  if (common === 0 || own[common - 1]?.hash === other[common - 1]?.hash) return { ok: true, added: other.slice(common) };
  let number = 1;
  while (own[number - 1]?.hash === other[number - 1]?.hash) number += 1;
  return { ok: false, number };
}
