import { parseBearing } from '../../core/angle/parse-bearing.js';
import { inEnglish } from '../shared/field.js';

type Cells = readonly string[];

/** Words and not one figure, and none of them a heading such as NE. */
function isCaption(cells: Cells, words: string): boolean {
  return cells.some((cell) => /\p{L}/u.test(cell)) && !cells.some((cell) => /\p{Nd}/u.test(cell) || parseBearing(inEnglish(cell, words)).ok);
}

/** The line drawn under the names of the columns in a table typed by hand. */
const isRule = (cells: Cells): boolean => cells.every((cell) => /^[-:=\s]+$/.test(cell));

/** How many lines at the top of a table name its columns: nothing of a swing is read without a figure. */
export function captionLines(table: readonly Cells[], words: string): number {
  const first = table.findIndex((cells, index) => !isCaption(cells, words) && !(index > 0 && isRule(cells)));
  return Math.max(0, first);
}
