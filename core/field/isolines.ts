import { checkFinite } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';
import { crossCell, nearTo } from './contour-cell.js';
import type { CellPieces, Crossing } from './contour-cell.js';
import { joinPieces } from './join-pieces.js';
import type { Piece } from './join-pieces.js';
import type { MagneticFieldGrid } from './magnetic-field-grid.js';

export type GridElement = 'x' | 'y' | 'z' | 'h' | 'f' | 'variation' | 'declination' | 'inclination';

/** The lines on which an element has one value. */
export interface Isoline {
  readonly level: number;
  /**
   * Each a row of [longitude, latitude], degrees. No line crosses the 180° meridian: it
   * ends at 180 and goes on in another line from -180.
   */
  readonly lines: readonly (readonly (readonly [number, number])[])[];
}

/** The pieces of one level's line and the places of their ends, gathered cell by cell. */
interface Gathered {
  readonly pieces: Piece[];
  readonly points: Map<number, readonly [number, number]>;
}

/** Each side of a cell has a number, the same from both cells; the seam has one from the west and one from the east. */
function numberOf({ side }: Crossing, row: number, column: number, columns: number): number {
  const corner = (row + (side === 2 ? 1 : 0)) * (columns + 1) + column + (side === 1 ? 1 : 0);
  return 2 * corner + (side % 2);
}

function pointOf({ side, part }: Crossing, row: number, column: number, step: number): readonly [number, number] {
  const across = side % 2 === 0 ? part : side === 1 ? 1 : 0;
  const down = side % 2 === 1 ? part : side === 2 ? 1 : 0;
  return [-180 + step * (column + across), 90 - step * (row + down)];
}

function gather(into: Gathered, pieces: CellPieces, row: number, column: number, grid: MagneticFieldGrid): void {
  const columns = grid.longitudes.length;
  for (const [start, end] of pieces) {
    const from = numberOf(start, row, column, columns);
    const to = numberOf(end, row, column, columns);
    into.points.set(from, pointOf(start, row, column, grid.step));
    into.points.set(to, pointOf(end, row, column, grid.step));
    into.pieces.push({ from, to });
  }
}

interface AskedLevel {
  readonly value: number;
  readonly into: Gathered;
}

/** The place of the first level not below a value in a row that rises. */
function firstFrom(rising: readonly AskedLevel[], value: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] as AskedLevel).value < value) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * Lines of equal value from a grid, one for each level in the given order; straight
 * between the sides of the grid's cells. Lines of equal variation run together at the
 * geographic and at the dip poles; the cell of a dip pole stays empty.
 * Throws `RangeError` for a level that is not a finite number, and for what is no element of the grid.
 * Method: marching squares, common practice, no source.
 */
export function isolines(grid: MagneticFieldGrid, element: GridElement, levels: readonly number[]): Isoline[] {
  for (const level of levels) checkFinite('levels', level);
  const values = grid[element] as MagneticFieldGrid[GridElement] | undefined;
  if (!values) throw new RangeError(`element: ${String(element)} is none`);
  const direction = element === 'variation' || element === 'declination';
  const rows = grid.latitudes.length;
  const columns = grid.longitudes.length;
  const gathered = levels.map((level) => ({ level, into: { pieces: [], points: new Map() } as Gathered }));
  // In rising order, so that a cell looks only at the levels it holds; a direction and its next turn both.
  const rising = gathered
    .flatMap(({ level, into }): AskedLevel[] => {
      if (!direction) return [{ value: level, into }];
      const turned = wrap180(level);
      return [-360, 0, 360].map((turn) => ({ value: turned + turn, into }));
    })
    .sort((first, second) => first.value - second.value);

  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const next = column + 1 === columns ? 0 : column + 1;
      const north = row * columns;
      const south = north + columns;
      const a = values[north + column] as number;
      let b = values[north + next] as number;
      let c = values[south + next] as number;
      let d = values[south + column] as number;
      if (direction) {
        b = nearTo(a, b);
        c = nearTo(b, c);
        d = nearTo(c, d);
        // Directions that go once round the cell: a dip pole is in it.
        if (Math.abs(d - a) > 180) continue;
      }
      const least = Math.min(a, b, c, d);
      const most = Math.max(a, b, c, d);
      for (let at = firstFrom(rising, least); at < rising.length; at++) {
        const { value, into } = rising[at] as AskedLevel;
        if (value > most) break;
        gather(into, crossCell(a, b, c, d, value), row, column, grid);
      }
    }
  }
  return gathered.map(({ level, into }) => ({
    level,
    lines: joinPieces(into.pieces).map((line) => line.map((number) => into.points.get(number) ?? [0, 0])),
  }));
}
