import { bookName, recordSchema } from './chain.js';
import type { RecordEntry } from './entry.js';
import { entryFields } from './entry-fields.js';
import type { FieldForm } from './entry-fields.js';
import type { FieldValue } from './field-text.js';
import { fieldText } from './field-text.js';
import { guarded, unguarded } from './guard-text.js';
import { headerOf, readEntries, refuseFile } from './record-file.js';
import type { EntryCodec, FileHeader, RecordFile } from './record-file.js';

/** RFC 4180: lines end in CR LF, the last one too; a cell that holds a mark is quoted, quotes inside doubled. */
const LINE_END = '\r\n';
const MARK = '\ufeff';

const cell = (text: string): string => (/[",\r\n;]|^\s|\s$/.test(text) ? `"${text.replace(/"/g, '""')}"` : text);

/** A hash is a text: one of figures and a single e would be read as a number. */
const HASH = 'sha256:';

/** Only the texts of users need the guard; the forms of all others begin with a letter or are plain numbers and days. */
function fieldCell(form: FieldForm, value: FieldValue): string {
  return cell(form.is === 'text' ? guarded(String(value)) : fieldText(form, value));
}

function writeEntry(entry: RecordEntry): string {
  return [
    String(entry.number),
    entry.written,
    ...entryFields.map(([name, form]) => fieldCell(form, entry[name] as FieldValue)),
    HASH + entry.previous,
    HASH + entry.hash,
  ].join(',');
}

/** The cells of the line that begins at an offset; null where its quotes do not match. */
export function csvLine(text: string, offset: number): string[] | null {
  const cells: string[] = [];
  let at = offset;
  for (;;) {
    let value = '';
    if (text[at] === '"') {
      for (at += 1; ; at += 2) {
        const quote = text.indexOf('"', at);
        if (quote === -1) return null;
        value += text.slice(at, quote);
        at = quote;
        if (text[at + 1] !== '"') break;
        value += '"';
      }
      at += 1;
    } else {
      const plain = /[^,\r\n]*/y;
      plain.lastIndex = at;
      value = plain.exec(text)?.[0] ?? '';
      at += value.length;
    }
    cells.push(value);
    if (text[at] === ',') at += 1;
    else return at >= text.length || text[at] === '\r' || text[at] === '\n' ? cells : null;
  }
}

/** The value a cell stands for, as far as it can be told; what is wrong shows when it is written again. */
function valueOf(form: FieldForm, text: string): unknown {
  if (form.is === 'text') return unguarded(text);
  if (text === '') return null;
  return form.is === 'number' || form.is === 'whole' ? Number(text) : text;
}

const codec: EntryCodec = {
  write: writeEntry,
  read(text, offset) {
    const cells = csvLine(text, offset);
    if (cells?.length !== entryFields.length + 4) return null;
    const values: Record<string, unknown> = { number: Number(cells[0]), written: cells[1] };
    entryFields.forEach(([name, form], place) => (values[name] = valueOf(form, cells[place + 2] as string)));
    const [previous = '', hash = ''] = cells.slice(-2).map((text) => text.slice(HASH.length));
    return { ...values, previous, hash };
  },
  between: LINE_END,
};

/** The head of the first column says what the file is and how much belongs to it. */
function writeHeader({ book, count, last }: FileHeader): string {
  const first = `number (${recordSchema}, ${count} entries, last ${HASH}${last}, book ${guarded(book)})`;
  return [cell(first), 'written', ...entryFields.map(([name]) => name), 'previous', 'hash'].join(',');
}

/**
 * A book as CSV: UTF-8 with its mark, commas, decimal points, one line an entry; the order
 * of the columns is `number`, `written`, then `entryFields`, then `previous` and `hash`.
 * No cell begins as a formula. Throws `RangeError` for a name that is no book's.
 */
export function recordToCsv(book: string, entries: readonly RecordEntry[]): string {
  return [MARK + writeHeader(headerOf(book, entries)), ...entries.map(writeEntry), ''].join(LINE_END);
}

const TITLE = /^number \((lubberline-record\/[^,]*), (\d{1,9}) entries, last sha256:([0-9a-f]{64}), book ([\s\S]*)\)$/;

/** Reads what `recordToCsv` wrote, whole and unaltered, or refuses it whole. Never throws. */
export function recordFromCsv(text: string): RecordFile {
  const plain = text.startsWith(MARK) ? text.slice(1) : text;
  if (plain.trim() === '') return refuseFile('empty');
  const title = TITLE.exec(csvLine(plain, 0)?.[0] ?? '');
  if (!title) return refuseFile(plain.slice(0, 200).includes('lubberline-record/') ? 'not-as-exported' : 'not-a-record');
  const [, schema, count, last, book] = title as unknown as [string, string, string, string, string];
  if (schema !== recordSchema) return refuseFile('unknown-schema');
  let header: FileHeader;
  try {
    header = { book: bookName(unguarded(book)), count: Number(count), last };
  } catch {
    return refuseFile('not-as-exported');
  }
  const head = writeHeader(header) + LINE_END;
  return plain.startsWith(head) ? readEntries(plain, head.length, header, codec, LINE_END) : refuseFile('not-as-exported');
}
