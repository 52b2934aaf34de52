import { parseBearing } from '../../core/angle/parse-bearing.js';
import { parseError } from '../../core/angle/parse-position.js';
import { wrap180 } from '../../core/angle/wrap.js';

type Cells = readonly string[];

/** Headings printed to whole degrees and deviations to halves, degrees. */
const ROUNDED = 0.76;

const bearingIn = (cell: string | undefined): number | null => {
  const reading = parseBearing(cell ?? '');
  return reading.ok ? reading.value : null;
};

function deviationIn(cell: string | undefined): number | null {
  const text = (cell ?? '').trim();
  const reading = parseError(text);
  const bare = reading.ok || reading.refusal !== 'letter-missing' ? reading : parseError(`+${text}`);
  return bare.ok ? bare.value : null;
}

/** Whether a column is on every line heading and deviation together. */
function isMagnetic(lines: readonly Cells[], column: number, deviations: number): boolean {
  return lines.every((cells) => {
    const [heading, magnetic, deviation] = [bearingIn(cells[0]), bearingIn(cells[column]), deviationIn(cells[deviations])];
    return heading !== null && magnetic !== null && deviation !== null && Math.abs(wrap180(heading + deviation - magnetic)) < ROUNDED;
  });
}

/** A table as wide as given without its first column, where that only counts the lines; any other as it is. */
export function withoutNumbers(table: readonly Cells[], width: number): readonly Cells[] {
  const written = table.filter((cells) => cells.some((cell) => /\d/.test(cell)));
  const counted = written.length > 1 && written.every((cells, index) => cells.length === width && (cells[0] ?? '').trim().replace(/[.)]$/, '') === String(index + 1));
  return counted ? table.map((cells) => cells.slice(cells.length === width ? 1 : 0)) : table;
}

/**
 * A table of heading, magnetic heading and deviation, in either order of the last two, without
 * the magnetic heading: that is heading and deviation over again, so nothing is lost with it.
 * Any other table as it is.
 */
export function withoutMagnetic(table: readonly Cells[]): readonly Cells[] {
  const written = table.filter((cells) => cells.some((cell) => /\d/.test(cell)));
  if (written.length < 2 || table.some((cells) => cells.length > 3) || written.some((cells) => cells.length !== 3)) return table;
  const magnetic = [1, 2].filter((column) => isMagnetic(written, column, 3 - column));
  const [column] = magnetic;
  return magnetic.length === 1 ? table.map((cells) => cells.filter((_, place) => place !== column)) : table;
}
