import type { RecordEntry } from '../../core/record/entry.js';
import { mergeBooks } from '../../core/record/merge-books.js';
import { recordFromCsv } from '../../core/record/record-csv.js';
import type { FileRefusal } from '../../core/record/record-file.js';
import { recordFromJson } from '../../core/record/record-json.js';
import type { SaveProblem } from './save-problem.js';

/** What a file adds to a book, and how many entries it holds; or why it cannot be taken. */
type FileReading =
  | { readonly ok: true; readonly added: readonly RecordEntry[]; readonly held: number }
  | FileRefusal
  | { readonly ok: false; readonly reason: 'another-book'; readonly number: null; readonly book: string }
  | { readonly ok: false; readonly reason: 'forked'; readonly number: number };

/** What became of an import. */
export type ImportOutcome =
  | { readonly ok: true; readonly added: number }
  | Extract<FileReading, { ok: false }>
  | { readonly ok: false; readonly reason: 'own-book-broken'; readonly number: number }
  | { readonly ok: false; readonly reason: SaveProblem | 'busy'; readonly number: null };

/** Reads an exported file of either form against the entries a book has. */
export function readBookFile(text: string, book: string, entries: readonly RecordEntry[]): FileReading {
  const file = /^\ufeff?\s*[[{]/.test(text) ? recordFromJson(text) : recordFromCsv(text);
  if (!file.ok) return file;
  if (file.book !== book) return { ok: false, reason: 'another-book', number: null, book: file.book };
  const merge = mergeBooks(entries, file.entries);
  return merge.ok ? { ok: true, added: merge.added, held: file.entries.length } : { ok: false, reason: 'forked', number: merge.number };
}
