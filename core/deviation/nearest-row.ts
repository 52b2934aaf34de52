import { checkFinite } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';
import type { DeviationRow } from './deviation-card.js';
import { sortedRows } from './deviation-table.js';

/**
 * The row whose heading is nearest to a compass heading (degrees): what a seaman reads off a
 * card without interpolating. Midway between two rows the one clockwise counts.
 *
 * Source: NAVEDTRA 14067 Seaman, text of table 5-2. Throws `RangeError` as `deviationTable`.
 */
export function nearestRow(rows: readonly DeviationRow[], compassHeading: number): DeviationRow {
  checkFinite('compassHeading', compassHeading);
  const away = (row: DeviationRow): number => wrap180(row.heading - compassHeading);
  return sortedRows(rows).reduce((best, row) => {
    const closer = Math.abs(away(row)) - Math.abs(away(best));
    return closer < 0 || (closer === 0 && away(row) > 0) ? row : best;
  });
}
