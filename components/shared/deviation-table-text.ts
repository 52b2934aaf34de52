import { formatBearing, formatError } from '../../core/angle/format-angle.js';
import { parseBearing } from '../../core/angle/parse-bearing.js';
import { parseError } from '../../core/angle/parse-position.js';
import { sortedRows } from '../../core/deviation/deviation-table.js';
import type { DeviationRow } from '../../core/deviation/deviation-card.js';
import type { Reading } from '../../core/text/reading.js';
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

/** Lines that hold figures, or begin with a point of the compass; what stands over the columns is not one. */
function linesOf(text: string): Line[] {
  return text
    .split(/\r\n|\r|\n/)
    .map((line, index) => ({ line: index + 1, text: line.trim(), cells: lineCells(line) }))
    .filter(({ text: line, cells }) => line !== '' && (/\d/.test(line) || (cells.length < 3 && parseBearing(cells[0] ?? '').ok)));
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
 * passed over when only the last one reads as deviations.
 */
export function readTable(text: string): TableReading {
  const lines = linesOf(text);
  const first = readColumn(lines, 1);
  if (first.ok) return first;
  const columns = Math.max(0, ...lines.map(({ cells }) => cells.length));
  for (let column = 2; column < columns; column += 1) {
    const other = readColumn(lines, column);
    if (other.ok) return other;
  }
  return first;
}

/** Rows as the user would type them, a line each. */
export function tableText(rows: readonly DeviationRow[]): string {
  return rows.map(({ heading, deviation }) => `${formatBearing(heading, heading % 1 ? 1 : 0)}\t${formatError(deviation)}`.replaceAll('°', '')).join('\n');
}
