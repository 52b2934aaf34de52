import { formatBearing, formatError } from '../../core/angle/format-angle.js';
import { parseBearing } from '../../core/angle/parse-bearing.js';
import { parseError } from '../../core/angle/parse-position.js';
import { sortedRows } from '../../core/deviation/deviation-table.js';
import type { DeviationRow } from '../../core/deviation/deviation-card.js';
import type { Reading } from '../../core/text/reading.js';
import { inEnglish } from './field.js';
import { lineCells } from './table-cells.js';

/** What is wrong with one line of a table of deviations; lines are counted from 1. */
export interface LineProblem {
  readonly line: number;
  readonly text: string;
  /** A refusal of the heading or deviation, or `two-columns` or `given-twice`. */
  readonly reason: string;
}

export type TableReading =
  | { readonly ok: true; readonly rows: readonly DeviationRow[] }
  | { readonly ok: false; readonly rows: readonly DeviationRow[]; readonly problems: readonly LineProblem[] };

interface Line {
  readonly line: number;
  readonly text: string;
  readonly cells: readonly string[];
}

/** Words, or figures behind two of them: `Heading Deviation`, `Deviation card 2026`; a point of the compass, also as a word, begins a row. */
function isTitle({ text, cells }: Line): boolean {
  const head = cells[0] ?? '';
  const isRow = cells.length < 3 && (parseBearing(head).ok || /^(north|south|east|west)/i.test(head));
  return !isRow && (!/\d/.test(text) || (/^\p{L}{3,} \p{L}{2,}/u.test(text) && !/\d\W*[EW]$/i.test(text)));
}

/** The lines of a table, without a rule drawn between them, and those that stand over it. */
function linesOf(text: string, words = ''): { readonly titles: readonly Line[]; readonly lines: readonly Line[] } {
  const all = text
    .split(/\r\n|\r|\n/)
    .map((line, index) => ({ line: index + 1, text: line.trim(), cells: lineCells(inEnglish(line, words)) }))
    .filter(({ text: line }) => /[\p{L}\d]/u.test(line));
  const first = Math.max(0, all.findIndex((line) => !isTitle(line)));
  return { titles: all.slice(0, first), lines: all.slice(first) };
}

/** The deviation of a line from a column, its letter perhaps in a column of its own. */
function deviationIn({ cells }: Line, column: number): string {
  const letter = cells[column + 1] ?? '';
  return /^[EW]$/i.test(letter) ? `${cells[column] ?? ''}${letter}` : (cells[column] ?? '');
}

/**
 * Bare figures are easterly only in a column that marks its westerly ones with a minus:
 * elsewhere nobody can know which way they go.
 */
function deviationReader(texts: readonly string[]): (text: string) => Reading<number> {
  const signed = texts.some((text) => /[-\u2010-\u2015\u2212]\s*\d/.test(text) && parseError(text).ok) && !texts.some((text) => /[EW]/i.test(text));
  return (text) => {
    const reading = parseError(text);
    return !reading.ok && reading.refusal === 'letter-missing' && signed ? parseError(`+${text.trim()}`) : reading;
  };
}

function readColumn(lines: readonly Line[], column: number): TableReading {
  const read = deviationReader(lines.map((line) => deviationIn(line, column)));
  const rows: DeviationRow[] = [];
  const problems: LineProblem[] = [];
  for (const line of lines) {
    const refuse = (reason: string): unknown => problems.push({ line: line.line, text: line.text, reason });
    const heading = parseBearing(line.cells[0] ?? '');
    const deviation = read(deviationIn(line, column));
    if (line.cells.length < 2) refuse('two-columns');
    else if (!heading.ok) refuse(heading.refusal);
    else if (!deviation.ok) refuse(deviation.refusal);
    else {
      try {
        sortedRows([...rows, { heading: heading.value, deviation: deviation.value }]);
        rows.push({ heading: heading.value, deviation: deviation.value });
      } catch {
        refuse('given-twice');
      }
    }
  }
  return problems.length === 0 && rows.length > 0 ? { ok: true, rows } : { ok: false, rows, problems };
}

/**
 * Reads a table of deviations as it is typed or pasted: a heading by compass and a deviation
 * a line, parted by tab, semicolon, comma or space; points or commas for decimals; lines in
 * any order, 360 and 0 alike. A further column between, such as the magnetic heading, is
 * passed over when only the last one reads as deviations. `words` are those of the page's language.
 */
export function readTable(text: string, words = ''): TableReading {
  const { lines } = linesOf(text, words);
  const first = readColumn(lines, 1);
  if (first.ok) return first;
  const columns = Math.max(0, ...lines.map(({ cells }) => cells.length));
  for (let column = 2; column < columns; column += 1) {
    const other = readColumn(lines, column);
    if (other.ok) return other;
  }
  return first;
}

/** What stands over a table and is not read, in one text. */
export const titleOf = (text: string): string => linesOf(text).titles.map((line) => line.text).join(' ');

/** Rows as the user would type them, a line each. */
export function tableText(rows: readonly DeviationRow[]): string {
  return rows.map(({ heading, deviation }) => `${formatBearing(heading, heading % 1 ? 1 : 0)}\t${formatError(deviation)}`.replaceAll('°', '')).join('\n');
}
