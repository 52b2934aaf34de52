import { angleFromTo, wrap360 } from '../angle/wrap.js';

/** The widest stretch without a reading, clockwise from one heading to the next, degrees. */
export interface HeadingGap {
  readonly from: number;
  readonly to: number;
  readonly width: number;
}

/**
 * The widest gap between headings (degrees, any finite); 360 wide for a single heading, null
 * without any. Throws `RangeError` for a heading that is not finite.
 */
export function widestGap(headings: readonly number[]): HeadingGap | null {
  const sorted = headings.map(wrap360).sort((a, b) => a - b);
  let widest: HeadingGap | null = null;
  sorted.forEach((from, i) => {
    const next = sorted[i + 1];
    const to = next ?? (sorted[0] as number);
    const width = next === undefined ? to + 360 - from : to - from;
    if (widest === null || width > widest.width) widest = { from, to, width };
  });
  return widest;
}

/** Headings no farther apart are one, degrees. */
const SAME = 0.05;

/** Headings that occur more than once, degrees [0, 360): 0 and 360 are one, and so is what lies within 0.05°. */
function repeatedHeadings(headings: readonly number[]): readonly number[] {
  const sorted = headings.map(wrap360).sort((a, b) => a - b);
  const repeated: number[] = [];
  sorted.forEach((heading, i) => {
    if (sorted.length < 2) return;
    const after = sorted[i + 1] ?? (sorted[0] as number) + 360;
    const last = repeated[repeated.length - 1];
    const again = last !== undefined && heading - last <= SAME;
    if (after - heading <= SAME && !again) repeated.push(heading);
  });
  return repeated;
}

/** A heading read more than once, and how far the deviations read on it lie apart, degrees. */
export interface RepeatedHeading {
  /** [0, 360). */
  readonly heading: number;
  readonly apart: number;
}

/** The headings read more than once: what the first reading and the last on a heading differ by nobody sees in a curve laid between them. */
export function repeatedReadings(readings: readonly { readonly heading: number; readonly deviation: number }[]): readonly RepeatedHeading[] {
  return repeatedHeadings(readings.map(({ heading }) => heading)).map((heading) => {
    const there = readings.filter((reading) => Math.abs(angleFromTo(heading, reading.heading)) <= SAME).map(({ deviation }) => deviation);
    return { heading, apart: Math.max(...there) - Math.min(...there) };
  });
}
