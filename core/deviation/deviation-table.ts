import { checkFinite, checkRange } from '../angle/check-number.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import type { DeviationRow } from './deviation-card.js';
import { headingInverse, type HeadingFound } from './heading-inverse.js';
import { periodicSpline, type PeriodicCurve } from './periodic-spline.js';

export interface DeviationTable {
  /** Deviation on a compass heading, degrees, east positive. */
  at(compassHeading: number): number;
  /** Magnetic heading, degrees [0, 360), on a compass heading. */
  toMagnetic(compassHeading: number): number;
  /** Compass heading, degrees [0, 360), for a magnetic one; null where the table is too steep to say. */
  toCompass(magneticHeading: number): number | null;
  /** The same with every heading that answers. */
  findCompass(magneticHeading: number): HeadingFound;
}

/** Headings nearer than this are one heading: the seam at 0 and 360, and rounding. */
const SAME = 1e-6;

/**
 * Rows in order round the compass, headings in [0, 360), the same heading once (0 and 360 are
 * one heading). Throws `RangeError` naming a row without two finite numbers, a deviation beyond
 * ±180°, or a heading given twice with different deviations.
 */
export function sortedRows(rows: readonly DeviationRow[]): readonly DeviationRow[] {
  if (rows.length === 0) throw new RangeError('rows: a table needs at least one row');
  const sorted = rows.map((row, index) => {
    checkFinite(`rows[${index}].heading`, row.heading);
    checkRange(`rows[${index}].deviation`, row.deviation, -180, 180);
    return { heading: wrap360(row.heading), deviation: row.deviation };
  });
  sorted.sort((a, b) => a.heading - b.heading);
  const agree = (row: DeviationRow, near: DeviationRow): boolean => {
    if (Math.abs(wrap180(row.heading - near.heading)) > SAME) return false;
    if (Math.abs(row.deviation - near.deviation) <= SAME) return true;
    throw new RangeError(`rows: heading ${row.heading} is given twice, with ${near.deviation} and ${row.deviation}`);
  };
  const different = sorted.filter((row, i) => {
    const before = sorted[i - 1];
    return before === undefined || !agree(row, before);
  });
  const [first] = different;
  const last = different[different.length - 1];
  // 359.9999999 and 0 are neighbours over the seam.
  if (different.length > 1 && first !== undefined && last !== undefined && agree(last, first)) different.pop();
  return different;
}

/** The curve through the rows: see `periodicSpline`. */
export function tableCurve(rows: readonly DeviationRow[]): PeriodicCurve {
  return periodicSpline(sortedRows(rows).map(({ heading, deviation }) => ({ at: heading, value: deviation })));
}

/**
 * A table of deviations by compass heading, degrees, east positive; rows in any order.
 *
 * Between the rows it follows the periodic cubic spline, which passes through every row:
 * from a table every 15° it gives a smooth curve of 5° back within 0.01°, every 45° within a
 * few tenths. One row is a constant. A wide gap between rows is bridged by guess.
 * Throws `RangeError` as `sortedRows`, and naming a heading that is not a finite number.
 */
export function deviationTable(rows: readonly DeviationRow[]): DeviationTable {
  const curve = tableCurve(rows);
  const inverse = headingInverse(curve);
  const at = (compassHeading: number): number => {
    checkFinite('compassHeading', compassHeading);
    return curve.value(compassHeading);
  };
  const findCompass = (magneticHeading: number): HeadingFound => {
    checkFinite('magneticHeading', magneticHeading);
    return inverse.find(magneticHeading);
  };
  return {
    at,
    toMagnetic: (compassHeading) => wrap360(compassHeading + at(compassHeading)),
    findCompass,
    toCompass(magneticHeading) {
      const found = findCompass(magneticHeading);
      return found.determined ? found.heading : null;
    },
  };
}
