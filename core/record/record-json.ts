import { bookName, recordSchema } from './chain.js';
import type { RecordEntry } from './entry.js';
import { entryFields } from './entry-fields.js';
import type { FieldValue } from './field-text.js';
import { fieldText } from './field-text.js';
import { headerOf, readEntries, refuseFile } from './record-file.js';
import type { EntryCodec, FileHeader, RecordFile } from './record-file.js';

const END = '\n]}';

function writeEntry(entry: RecordEntry): string {
  const text = (name: string, value: string | number): string => `${JSON.stringify(name)}:${JSON.stringify(value)}`;
  const fields = entryFields.map(([name, form]) => {
    const value = entry[name] as FieldValue;
    // Numbers keep their fixed decimals.
    return form.is === 'number' && value !== null ? `"${name}":${fieldText(form, value)}` : `"${name}":${JSON.stringify(value)}`;
  });
  const seal = [text('number', entry.number), text('written', entry.written), text('previous', entry.previous)];
  return `{${[...seal, ...fields, text('hash', entry.hash)].join(',')}}`;
}

/** The parsed object, or null. */
function objectOf(text: string): Readonly<Record<string, unknown>> | null {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Readonly<Record<string, unknown>>) : null;
  } catch {
    return null;
  }
}

const codec: EntryCodec = {
  write: writeEntry,
  read(text, offset) {
    const lineEnd = text.indexOf('\n', offset);
    const line = text.slice(offset, lineEnd === -1 ? undefined : lineEnd);
    return objectOf(line.endsWith(',') ? line.slice(0, -1) : line);
  },
  between: ',\n',
};

function writeHeader({ book, count, last }: FileHeader): string {
  return `{"schema":"${recordSchema}","book":${JSON.stringify(book)},"count":${count},"last":"${last}","entries":[`;
}

/**
 * A book as JSON, one line an entry. `schema` names the form; a reader of another version
 * must refuse it. Throws `RangeError` for a name that is no book's.
 */
export function recordToJson(book: string, entries: readonly RecordEntry[]): string {
  const header = writeHeader(headerOf(book, entries));
  return `${header}${entries.length > 0 ? '\n' : ''}${entries.map(writeEntry).join(',\n')}${END}\n`;
}

function readHeader(line: string): FileHeader | 'not-a-record' | 'unknown-schema' | 'not-as-exported' {
  const values = objectOf(`${line}]}`);
  if (!values) return line.includes('"lubberline-record/') ? 'not-as-exported' : 'not-a-record';
  const { schema, book, count, last } = values;
  if (typeof schema !== 'string' || !schema.startsWith('lubberline-record/')) return 'not-a-record';
  if (schema !== recordSchema) return 'unknown-schema';
  if (!Number.isSafeInteger(count) || (count as number) < 0) return 'not-as-exported';
  try {
    // What is no text is written otherwise than it stands in the line.
    const header = { book: bookName(String(book)), count: count as number, last: String(last) };
    return writeHeader(header) === line ? header : 'not-as-exported';
  } catch {
    return 'not-as-exported';
  }
}

/** Whether a text is the beginning of a header as it is written here, and no more: before the list of entries there is one brace. */
const isTornHeader = (text: string): boolean => text.startsWith(`{"schema":"${recordSchema}"`) && text.lastIndexOf('{') === 0 && !objectOf(text);

/** A file that was laid out anew still tells what it is. */
function foreign(text: string): RecordFile {
  const schema = objectOf(text)?.['schema'];
  if (typeof schema !== 'string' || !schema.startsWith('lubberline-record/')) return refuseFile('not-a-record');
  return refuseFile(schema === recordSchema ? 'not-as-exported' : 'unknown-schema');
}

/** Reads what `recordToJson` wrote, whole and unaltered, or refuses it whole. Never throws. */
export function recordFromJson(text: string): RecordFile {
  const plain = text.replace(/^\ufeff/, '');
  if (plain.trim() === '') return refuseFile('empty');
  const lineEnd = plain.indexOf('\n');
  if (lineEnd === -1) return isTornHeader(plain) ? { ok: false, reason: 'incomplete', number: 1 } : foreign(plain);
  const header = readHeader(plain.slice(0, lineEnd));
  if (typeof header === 'string') return header === 'not-a-record' ? foreign(plain) : refuseFile(header);
  // The line end after the header is the first of `END` in an empty book.
  return readEntries(plain, header.count === 0 ? lineEnd : lineEnd + 1, header, codec, END);
}
