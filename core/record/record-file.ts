import { bookName, entryHash, firstHash } from './chain.js';
import type { EntryFields, RecordEntry } from './entry.js';
import { entryFields } from './entry-fields.js';
import type { FieldValue } from './field-text.js';
import { isWrittenInstant, takeValue } from './field-text.js';

/** What a file says of itself before its entries. */
export interface FileHeader {
  readonly book: string;
  readonly count: number;
  /** Hash of the last entry; of the book's name where there is none. */
  readonly last: string;
}

/** Why a file is no record; `number` is the first entry that is not as it was exported: of an incomplete one, the first that is missing or torn. */
export type FileRefusal =
  | { readonly ok: false; readonly reason: 'empty' | 'not-a-record' | 'unknown-schema' | 'not-as-exported'; readonly number: null }
  | { readonly ok: false; readonly reason: 'altered' | 'out-of-place' | 'incomplete'; readonly number: number };

export type RecordFile = { readonly ok: true; readonly book: string; readonly entries: readonly RecordEntry[] } | FileRefusal;

export const refuseFile = (reason: Extract<FileRefusal, { number: null }>['reason']): FileRefusal => ({ ok: false, reason, number: null });

/** How one kind of file writes an entry and finds one. */
export interface EntryCodec {
  /** The entry as it stands in the file. */
  write(entry: RecordEntry): string;
  /** The values of the entry that begins at an offset, unchecked; null where there is none to be read. */
  read(text: string, offset: number): Readonly<Record<string, unknown>> | null;
  /** What stands between two entries. */
  readonly between: string;
}

const isHash = (value: unknown): value is string => typeof value === 'string' && /^[0-9a-f]{64}$/.test(value);

/** Values of unknown origin as an entry; null unless every field is there, in its form, and nothing else. */
function entryOf(values: Readonly<Record<string, unknown>>): RecordEntry | null {
  const { number, written, previous, hash } = values;
  if (!Number.isSafeInteger(number) || !isWrittenInstant(written) || !isHash(previous) || !isHash(hash)) return null;
  const fields: Record<string, FieldValue> = {};
  for (const [name, form] of entryFields) {
    const outcome = takeValue(form, values[name]);
    if (!outcome.ok) return null;
    fields[name] = outcome.value;
  }
  return {
    number: number as number,
    written,
    previous,
    ...(fields as unknown as EntryFields),
    hash,
  };
}

/**
 * Reads every entry from an offset on, or refuses the whole file: an entry is taken only when
 * writing it again gives the very text it was read from, so that no altered byte slips by.
 */
export function readEntries(text: string, offset: number, header: FileHeader, codec: EntryCodec, end: string): RecordFile {
  const entries: RecordEntry[] = [];
  let previous = firstHash(header.book);
  let at = offset;
  for (let number = 1; number <= header.count; number++) {
    const ahead = text.slice(at, at + end.length + 2).trim();
    if (ahead === '' || ahead === end.trim()) return { ok: false, reason: 'incomplete', number };
    const values = codec.read(text, at);
    const entry = values === null ? null : entryOf(values);
    // A line that breaks off is torn, and what is behind it missing. Where a text of a CSV cell breaks its line this cannot be told.
    if (entry === null) return { ok: false, reason: text.includes('\n', at) ? 'altered' : 'incomplete', number };
    const written = codec.write(entry);
    if (!text.startsWith(written, at)) return { ok: false, reason: 'altered', number };
    at += written.length;
    const after = number < header.count ? codec.between : end;
    if (text.startsWith(after, at)) at += after.length;
    else if (!after.startsWith(text.slice(at)) && !text.startsWith(end, at)) return { ok: false, reason: 'altered', number };
    // Torn off just here: what follows is missing, the entry itself is whole. A last line end may have been lost on the way.
    else if (number < header.count || end.trim() !== '') return { ok: false, reason: 'incomplete', number: number + 1 };
    if (entry.number !== number || entry.previous !== previous) return { ok: false, reason: 'out-of-place', number };
    if (entryHash(entry) !== entry.hash) return { ok: false, reason: 'altered', number };
    entries.push(entry);
    previous = entry.hash;
  }
  if (header.count === 0 && text.startsWith(end, at)) at += end.length;
  else if (header.count === 0 && end.trim() !== '') return { ok: false, reason: 'incomplete', number: 1 };
  if (text.slice(at).trim() !== '') return { ok: false, reason: 'out-of-place', number: header.count + 1 };
  if (previous !== header.last) return { ok: false, reason: 'incomplete', number: header.count + 1 };
  return { ok: true, book: header.book, entries };
}

/** The header of a book's own file. */
export function headerOf(book: string, entries: readonly RecordEntry[]): FileHeader {
  return { book: bookName(book), count: entries.length, last: entries[entries.length - 1]?.hash ?? firstHash(book) };
}
