import type { RecordEntry } from './entry.js';
import { entryFields } from './entry-fields.js';
import { entryHash, firstHash } from './chain.js';
import type { FieldValue } from './field-text.js';
import { isWrittenInstant, takeValue } from './field-text.js';

/** Where a chain breaks: the number an entry should have, and how it differs. */
export interface ChainBreak {
  readonly number: number;
  /** `altered`: its content is not what was sealed; `out-of-place`: it does not follow the entry before. */
  readonly reason: 'altered' | 'out-of-place';
}

export type ChainCheck =
  | { readonly ok: true; readonly count: number; readonly last: string }
  | ({ readonly ok: false } & ChainBreak);

/** Whether every field is there and in its form; data out of a database may be anything. */
function inForm(entry: RecordEntry): boolean {
  if (!isWrittenInstant(entry.written)) return false;
  return entryFields.every(([name, form]) => {
    const value = (entry as Partial<RecordEntry>)[name];
    const outcome = takeValue(form, value);
    return outcome.ok && Object.is(outcome.value, value as FieldValue);
  });
}

/**
 * Follows the chain and says where it breaks first. A part of a book is followed by giving
 * what stands before it: the number and hash of the entry before.
 * A chain shows an edit; it cannot show that all of it was written anew: keep the last hash elsewhere too.
 * Throws `RangeError` for a name that is no book's.
 */
export function verifyChain(
  book: string,
  entries: readonly RecordEntry[],
  before: { readonly number: number; readonly hash: string } = { number: 0, hash: firstHash(book) },
): ChainCheck {
  let { number, hash } = before;
  for (const entry of entries) {
    number += 1;
    if (entry.number !== number || entry.previous !== hash) return { ok: false, number, reason: 'out-of-place' };
    if (!inForm(entry) || entryHash(entry) !== entry.hash) return { ok: false, number, reason: 'altered' };
    hash = entry.hash;
  }
  return { ok: true, count: number, last: hash };
}
