import { wrap360 } from '../angle/wrap.js';
import type { PeriodicCurve } from './periodic-spline.js';

/**
 * A heading on the other reckoning, degrees [0, 360). Not determined where the curve is so
 * steep that more than one heading answers (all are listed, ascending), or none does.
 */
export type HeadingFound =
  | { readonly determined: true; readonly heading: number }
  | { readonly determined: false; readonly reason: 'ambiguous' | 'none'; readonly headings: readonly number[] };

/** A run of headings, clockwise from one to the other, degrees [0, 360). */
export interface HeadingRange {
  readonly from: number;
  readonly to: number;
}

export interface HeadingInverse {
  find(target: number): HeadingFound;
  /** Targets that have more than one answer. */
  readonly ambiguous: readonly HeadingRange[];
  /** Where the curve falls fastest: unique answers need a slope above −1 everywhere. */
  readonly steepest: { readonly heading: number; readonly slope: number };
}

/** Fine enough that no wave of a deviation curve lies between two samples. */
const SAMPLES = 720;

/** The zero of a function that changes sign between two places, to the last digit. */
function crossing(f: (x: number) => number, from: number, to: number): number {
  let low = from;
  let high = to;
  const rising = f(low) < 0;
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (f(middle) < 0 === rising) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Least value of the slope near a sample lower than its neighbours, by golden section. */
function lowest(f: (x: number) => number, from: number, to: number): number {
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = from;
  let high = to;
  for (let i = 0; i < 40; i++) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (f(left) < f(right)) high = right;
    else low = left;
  }
  return (low + high) / 2;
}

/** The heading between two, on a rising or falling stretch, where heading + deviation is the target. */
function solve(curve: PeriodicCurve, target: number, from: number, to: number): number {
  const miss = (x: number): number => x + curve.value(x) - target;
  let low = from;
  let high = to;
  const rising = miss(low) <= miss(high);
  let x = (low + high) / 2;
  for (let i = 0; i < 100; i++) {
    const y = miss(x);
    if (y === 0) return x;
    if (y < 0 === rising) low = x;
    else high = x;
    // Newton's step while it stays inside the bracket, else half of it.
    const next = x - y / (1 + curve.slope(x));
    const chosen = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(chosen - x) <= 1e-13 * 360) return chosen;
    x = chosen;
  }
  return x;
}

/** A curve with the valleys of its slope, looked for from sample to sample. */
interface Sounded {
  readonly steepest: HeadingInverse['steepest'];
  /** Where the slope is lower than beside it, degrees. */
  readonly valleys: readonly number[];
}

const STEP = 360 / SAMPLES;

function sounded(curve: PeriodicCurve): Sounded {
  const slopes = Array.from({ length: SAMPLES }, (_, i) => curve.slope(i * STEP));
  const valleys: number[] = [];
  slopes.forEach((slope, i) => {
    const before = slopes[(i + SAMPLES - 1) % SAMPLES] as number;
    const after = slopes[(i + 1) % SAMPLES] as number;
    if (slope <= before && slope <= after) valleys.push(lowest(curve.slope, (i - 1) * STEP, (i + 1) * STEP));
  });
  const steep = valleys.reduce((best, at) => (curve.slope(at) < curve.slope(best) ? at : best), valleys[0] ?? 0);
  return { steepest: { heading: wrap360(steep), slope: curve.slope(steep) }, valleys };
}

/** The one answer on a curve that never falls by a degree or more for each degree of heading. */
function findOnly(curve: PeriodicCurve): HeadingInverse['find'] {
  return (target) => {
    const aim = wrap360(target);
    let low = aim - 180;
    while (low + curve.value(low) > aim) low -= 360;
    // One turn further the answer has been passed: heading + curve grows by 360 a turn.
    while (low + 360 + curve.value(low) < aim) low += 360;
    return { determined: true, heading: wrap360(solve(curve, aim, low, low + 360)) };
  };
}

/**
 * Solves heading + curve(heading) = target round the compass: every answer, not only the
 * nearest. With a slope above −1 everywhere there is exactly one.
 */
export function headingInverse(curve: PeriodicCurve): HeadingInverse {
  if (curve.leastSlope !== undefined && curve.leastSlope > -1) {
    // Nothing to look for: how steep it is exactly is asked for seldom.
    return {
      find: findOnly(curve),
      ambiguous: [],
      get steepest() {
        return sounded(curve).steepest;
      },
    };
  }
  const { steepest, valleys } = sounded(curve);
  if (steepest.slope > -1) return { find: findOnly(curve), ambiguous: [], steepest };

  // The places to look for turns: the samples and the valleys between them.
  const rate = (x: number): number => 1 + curve.slope(x);
  const places = [...Array.from({ length: SAMPLES }, (_, i) => i * STEP), ...valleys.map(wrap360)];
  places.sort((a, b) => a - b);
  const turns: number[] = [];
  places.forEach((at, i) => {
    const next = places[i + 1] ?? (places[0] as number) + 360;
    if (rate(at) < 0 !== rate(next) < 0) turns.push(crossing(rate, at, next));
  });
  const stretches = turns.map((from, i) => ({ from, to: turns[i + 1] ?? (turns[0] as number) + 360 }));
  const total = (x: number): number => x + curve.value(x);

  const find = (target: number): HeadingFound => {
    const headings: number[] = [];
    for (const { from, to } of stretches) {
      const least = Math.min(total(from), total(to));
      const most = Math.max(total(from), total(to));
      // The stretch may reach the target on this lap or on another.
      for (let lap = Math.ceil((least - target) / 360); target + 360 * lap <= most; lap++) {
        headings.push(wrap360(solve(curve, target + 360 * lap, from, to)));
      }
    }
    headings.sort((a, b) => a - b);
    const apart = headings.filter((heading, i) => i === 0 || heading - (headings[i - 1] as number) > 1e-9);
    const [heading] = apart;
    if (apart.length === 1 && heading !== undefined) return { determined: true, heading };
    return { determined: false, reason: 'ambiguous', headings: apart };
  };
  const ambiguous = stretches
    .filter(({ from, to }) => total(to) < total(from))
    .map(({ from, to }) => ({ from: wrap360(total(to)), to: wrap360(total(from)) }));
  return { find, ambiguous, steepest };
}
