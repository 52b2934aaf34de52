import { studentLimit } from '../deviation/student.js';

/** A steady change of a value with time. */
export interface Drift {
  /** Degrees per minute. */
  readonly perMinute: number;
  /** One standard deviation, degrees per minute. */
  readonly standardError: number;
  /** Whether it is more than chance and more than a trifle. */
  readonly significant: boolean;
}

/** Fewer readings show no drift but their scatter. */
const FEWEST = 4;
/** How sure, and how much over the whole series, degrees: common practice, no source. */
const CONFIDENCE = 0.99;
const TRIFLE = 0.5;

/**
 * The straight line through values against time in minutes, by least squares; null with fewer
 * than four, or all at one time. Student's test tells it from chance.
 */
export function driftOf(minutes: readonly number[], values: readonly number[]): Drift | null {
  const count = minutes.length;
  if (count < FEWEST) return null;
  const mean = (list: readonly number[]): number => list.reduce((all, value) => all + value, 0) / count;
  const [middle, level] = [mean(minutes), mean(values)];
  const spread = minutes.reduce((all, minute) => all + (minute - middle) ** 2, 0);
  if (spread === 0) return null;
  const perMinute = minutes.reduce((all, minute, index) => all + (minute - middle) * ((values[index] ?? level) - level), 0) / spread;
  const left = minutes.reduce((all, minute, index) => all + ((values[index] ?? level) - level - perMinute * (minute - middle)) ** 2, 0);
  const standardError = Math.sqrt(left / (count - 2) / spread);
  const span = Math.max(...minutes) - Math.min(...minutes);
  const significant = Math.abs(perMinute) > studentLimit(CONFIDENCE, count - 2) * standardError && Math.abs(perMinute) * span >= TRIFLE;
  return { perMinute, standardError, significant };
}
