import { wrap360 } from '../angle/wrap.js';

/** A smooth closed curve: its value and its change for one degree, at any degrees. */
export interface PeriodicCurve {
  value(degrees: number): number;
  slope(degrees: number): number;
  /** The slope is nowhere below this, where that is known without looking. */
  readonly leastSlope?: number;
}

interface Knot {
  readonly at: number;
  readonly value: number;
}

/**
 * Second derivatives at the knots, by elimination (Gauss and Jordan): the system is
 * three-banded with two corners and never larger than a deviation table is long.
 */
function bends(knots: readonly Knot[], widths: readonly number[]): number[] {
  const n = knots.length;
  const rows = knots.map((knot, i) => {
    const before = (i + n - 1) % n;
    const after = (i + 1) % n;
    const left = widths[before] as number;
    const right = widths[i] as number;
    const row = new Array<number>(n + 1).fill(0);
    // With two knots `before` and `after` are the same one, so the terms are added.
    row[before] = (row[before] as number) + left;
    row[i] = (row[i] as number) + 2 * (left + right);
    row[after] = (row[after] as number) + right;
    const rise = ((knots[after] as Knot).value - knot.value) / right;
    const riseBefore = (knot.value - (knots[before] as Knot).value) / left;
    row[n] = 6 * (rise - riseBefore);
    return row;
  });
  rows.forEach((from, pivot) => {
    // The diagonal outweighs its row, so no exchange of rows is needed.
    for (const row of rows) {
      const factor = (row[pivot] as number) / (from[pivot] as number);
      if (row === from || factor === 0) continue;
      for (let j = pivot; j <= n; j++) row[j] = (row[j] as number) - factor * (from[j] as number);
    }
  });
  return rows.map((row, i) => (row[n] as number) / (row[i] as number));
}

/**
 * The periodic cubic spline through knots given in ascending order in [0, 360), no two the
 * same: passes through each, with slope and bend continuous all round. One knot: a constant.
 *
 * Source: the textbook equations of the cubic spline, closed over 360° (from memory).
 */
export function periodicSpline(knots: readonly Knot[]): PeriodicCurve {
  const n = knots.length;
  const first = knots[0] as Knot;
  if (n === 1) return { value: () => first.value, slope: () => 0 };
  const widths = knots.map((knot, i) => (i + 1 < n ? (knots[i + 1] as Knot).at : first.at + 360) - knot.at);
  const bend = bends(knots, widths);

  const piece = (degrees: number) => {
    const at = wrap360(degrees);
    let low = 0;
    let high = n;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((knots[middle] as Knot).at <= at) low = middle + 1;
      else high = middle;
    }
    const i = (low + n - 1) % n;
    const after = (i + 1) % n;
    const start = (knots[i] as Knot).at;
    return {
      width: widths[i] as number,
      // Before the first knot the piece began on the lap before.
      done: at >= start ? at - start : at + 360 - start,
      from: (knots[i] as Knot).value,
      to: (knots[after] as Knot).value,
      bendFrom: bend[i] as number,
      bendTo: bend[after] as number,
    };
  };

  return {
    value(degrees) {
      const { width, done, from, to, bendFrom, bendTo } = piece(degrees);
      if (done === 0) return from;
      const b = done / width;
      const a = 1 - b;
      return a * from + b * to + (((a ** 3 - a) * bendFrom + (b ** 3 - b) * bendTo) * width ** 2) / 6;
    },
    slope(degrees) {
      const { width, done, from, to, bendFrom, bendTo } = piece(degrees);
      const b = done / width;
      const a = 1 - b;
      return (to - from) / width + (((3 * b * b - 1) * bendTo - (3 * a * a - 1) * bendFrom) * width) / 6;
    },
  };
}
