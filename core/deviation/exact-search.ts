import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { agreement, weightedSolution, type Agreement } from './agreement.js';
import type { WeighedReading } from './observations.js';

/**
 * A first estimate from the equation for sin δ, linear in the coefficients; one too strong
 * for the readings is weakened until every heading has a deviation.
 */
function start(readings: readonly WeighedReading[]): Agreement | null {
  const sines = readings.map(({ deviation }) => sinDegrees(deviation));
  const rows = readings.map(({ waves: [, sin, cos, sin2, cos2], deviation }, i) => {
    const [sine, cosine] = [sines[i] as number, cosDegrees(deviation)];
    return [cosine, sin, cos, sin2 * cosine + cos2 * sine, cos2 * cosine - sin2 * sine];
  });
  let { estimate } = weightedSolution(readings, rows, sines);
  for (let i = 0; i < 20; i++) {
    const state = agreement('exact', readings, estimate);
    if (state !== null) return state;
    estimate = estimate.map((value) => value * 0.8);
  }
  return null;
}

/** The step of Gauss and Newton, halved until the squares do not grow; null where none helps. */
function improve(readings: readonly WeighedReading[], state: Agreement): Agreement | null {
  const { estimate: change } = weightedSolution(readings, state.changes, state.residuals);
  for (let part = 1; part > 1e-6; part /= 2) {
    const moved = state.estimate.map((value, i) => value + part * (change[i] as number));
    const next = agreement('exact', readings, moved);
    if (next !== null && next.squares <= state.squares * (1 + 1e-12) + 1e-18) return next;
  }
  return null;
}

const STEPS = 40;
/** A step that moves no coefficient by this much, or takes this part off the squares, was the last. */
const STILL = 1e-10;
const NO_GAIN = 1e-12;

/**
 * The exact coefficients with the least squares, by Gauss and Newton's method on the deviations
 * themselves, from an estimate near them where there is one. Null where none come near the readings.
 */
export function searchExact(readings: readonly WeighedReading[], near?: readonly number[]): Agreement | null {
  let state = (near === undefined ? null : agreement('exact', readings, near)) ?? start(readings);
  if (state === null) return null;
  for (let step = 0; step < STEPS; step++) {
    const before: Agreement = state;
    const next = improve(readings, before);
    if (next === null) break;
    state = next;
    if (before.squares - next.squares < NO_GAIN * before.squares) break;
    if (next.estimate.every((value, i) => Math.abs(value - (before.estimate[i] as number)) < STILL)) break;
  }
  return state;
}
