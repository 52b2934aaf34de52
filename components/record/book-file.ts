import type { LubberElement } from '../shared/lubber-element.js';
import type { Told } from './outcome-text.js';
import type { RecordBook } from './record-book.js';
import { fileName, saveFile } from './save-file.js';

export type BookFormat = 'json' | 'csv';

/** Hands the book to the browser as a file, and marks how far it has been handed. */
export async function exportBook(host: LubberElement, book: RecordBook, format: BookFormat): Promise<Told> {
  const text = await book.exportText(format);
  const { count } = book;
  const file = fileName(book.name, count, format);
  saveFile(file, text, format === 'json' ? 'application/json' : 'text/csv');
  await book.markExported(count);
  return { text: host.t('record.exported', { count, file }), wrong: false };
}

/** The text of a file; null where the browser cannot read it. */
export async function textOfFile(file: File): Promise<string | null> {
  try {
    return new TextDecoder().decode(await file.arrayBuffer());
  } catch {
    return null;
  }
}
