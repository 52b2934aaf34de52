import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { formatInstant } from '../time/instant.js';
import type { EntryFields, RecordEntry } from './entry.js';
import { LONGEST_BOOK_NAME, entryFields } from './entry-fields.js';
import type { FieldValue } from './field-text.js';
import { fieldText, writableText } from './field-text.js';
import { readDraft } from './read-draft.js';

/** Name and version of the form of an entry. */
export const recordSchema = 'lubberline-record/1';

/** SHA-256 of FIPS 180-4, by a library that needs no secure context: a ship's intranet is plain http. */
function hashText(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/** The name of a book as it is written. Throws `RangeError` for one that is empty or too long. */
export function bookName(book: string): string {
  const name = writableText(String(book));
  if (name === '' || name.length > LONGEST_BOOK_NAME) throw new RangeError(`book: ${JSON.stringify(book)} is no name of a book`);
  return name;
}

/** What stands for the entry before the first: two books of different names share no entry. */
export function firstHash(book: string): string {
  return hashText(JSON.stringify([recordSchema, bookName(book)]));
}

/** The fields as texts, in their fixed order. */
function fieldTexts(fields: EntryFields): string[] {
  return entryFields.map(([name, form]) => fieldText(form, fields[name] as FieldValue));
}

type Unsealed = Omit<RecordEntry, 'hash'>;

/** The canonical text of an entry: schema, number, hash of the one before, time of writing, and every field as text. */
export function canonicalText(entry: Unsealed): string {
  return JSON.stringify([recordSchema, String(entry.number), entry.previous, entry.written, ...fieldTexts(entry)]);
}

export function entryHash(entry: Unsealed): string {
  return hashText(canonicalText(entry));
}

/** Whether two entries say the same, whenever they were written. */
export function sameContent(one: EntryFields, other: EntryFields): boolean {
  return entryFields.every(([name]) => one[name] === other[name]);
}

/**
 * The entry that follows `last` (null in an empty book). `fields` come from `readDraft`.
 * Throws `RangeError` for fields that do not, for a correction of an entry that is not
 * there yet, or a `now` that is no instant.
 */
export function nextEntry(book: string, last: RecordEntry | null, fields: EntryFields, now: Date): RecordEntry {
  const reading = readDraft(fields);
  if (!reading.ok) throw new RangeError(`fields.${reading.problems[0]?.field ?? ''}: ${reading.problems[0]?.problem ?? ''}`);
  const number = (last?.number ?? 0) + 1;
  if (fields.corrects !== null && fields.corrects >= number) throw new RangeError(`fields.corrects: there is no entry ${fields.corrects}`);
  const unsealed = { number, written: formatInstant(now), previous: last?.hash ?? firstHash(book), ...reading.fields };
  return { ...unsealed, hash: entryHash(unsealed) };
}
