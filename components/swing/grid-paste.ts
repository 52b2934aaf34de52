import { inEnglish } from '../shared/field.js';
import { lineCells, unquoted } from '../shared/table-cells.js';
import { captionLines } from './caption-lines.js';
import { withoutMagnetic, withoutNumbers } from './derived-column.js';
import { hasReadings, withRow } from './grid-row.js';
import type { GridRow, TypedColumn } from './grid-row.js';

/** A letter or word for it, as `words` has them, that a spreadsheet keeps in a column of its own belongs to the figures before it. */
function joinLetters(cells: readonly string[], words: string): readonly string[] {
  const joined: string[] = [];
  for (const cell of cells) {
    const before = joined[joined.length - 1];
    if (/^[EW]$/i.test(inEnglish(cell.trim(), words)) && before !== undefined && /\d\s*°?$/.test(before)) joined[joined.length - 1] = `${before.trim()}${inEnglish(cell.trim(), words)}`;
    else joined.push(cell);
  }
  return joined;
}

/** The lines of a clipboard as cells: by tabs where there is one, else as a table typed by hand. */
export function pastedCells(text: string, words: string): readonly (readonly string[])[] {
  const lines = text.replace(/(?:\r\n|\r|\n)+$/, '').split(/\r\n|\r|\n/);
  return lines.map((line) => joinLetters(line.includes('\t') ? line.split('\t').map(unquoted) : lineCells(line), words));
}

/** Whether a pasted text is more than the text of one cell. */
export function isTable(text: string, words: string): boolean {
  const cells = pastedCells(text, words);
  return cells.length > 1 || (cells[0]?.length ?? 0) > 1;
}

interface PastePlace {
  readonly row: number;
  readonly column: TypedColumn;
  /** Columns of the grid that are shown. */
  readonly columns: readonly TypedColumn[];
  /** What is read is a deviation: a magnetic heading beside it says nothing more. */
  readonly deviations?: boolean;
  /** Those of the page's language. */
  readonly words: string;
}

/** The column a table begins in: one too wide to stand where the cursor is moves to the left. */
function startOf({ column, columns }: PastePlace, width: number): number {
  return Math.max(0, Math.min(columns.indexOf(column), columns.length - width));
}

/** A table as cells: the lines that are laid over the grid, and in one text those over them that name its columns. */
function pastedTable(rows: readonly GridRow[], text: string, place: PastePlace): { readonly lines: readonly (readonly string[])[]; readonly caption: string } {
  const { columns, deviations, words } = place;
  const pasted = pastedCells(text, words);
  const cells = withoutNumbers(pasted, columns.length + 1);
  const table = deviations && columns.length === 2 ? withoutMagnetic(cells) : cells;
  const headed = columns[startOf(place, Math.max(...table.map(({ length }) => length)))] === 'heading';
  // Beside headings that stand here already words may stand for a reading that could not be taken: then there is a row for each line.
  const names = headed || table.length > rows.length - place.row ? captionLines(table, words) : 0;
  return { lines: table.slice(names), caption: pasted.slice(0, names).map((cells) => cells.join(' ').trim()).join(' ') };
}

/** The rows after a paste, and what of it is left out: the names of its columns. */
interface Pasted {
  readonly rows: readonly GridRow[];
  readonly caption: string;
}

/**
 * The rows with a pasted table laid over them from a cell on; lines beyond the last row are new
 * rows, and cells beyond the last column stay in it, where they can be seen and mended. A table
 * with headings of its own takes the place of rows in which nothing has been read yet. The
 * names of its columns, and a column that only counts its lines, are left out.
 */
export function pasteInto(rows: readonly GridRow[], text: string, place: PastePlace): Pasted {
  const { lines, caption } = pastedTable(rows, text, place);
  const width = Math.max(...lines.map(({ length }) => length));
  const start = startOf(place, width);
  let result = rows;
  lines.forEach((cells, index) => {
    const change: Partial<Record<TypedColumn, string>> = {};
    cells.forEach((cell, offset) => {
      const column = place.columns[Math.min(start + offset, place.columns.length - 1)] ?? 'reading';
      const held = change[column];
      change[column] = held === undefined ? cell.trim() : `${held} ${cell.trim()}`;
    });
    result = withRow(result, place.row + index, change);
  });
  if (width < 2 || place.columns[start] !== 'heading') return { rows: result, caption };
  // Prepared headings below a pasted table, or under an empty line of it, would stand there unread for ever.
  const written = (index: number): boolean => lines[index - place.row]?.some((cell) => cell.trim() !== '') === true;
  return { rows: result.filter((row, index) => index < place.row || written(index) || hasReadings([row])), caption };
}
