import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { agreement, weightedSolution, type Agreement } from './agreement.js';
import { room, type Solution } from './linear-problem.js';
import type { WeighedReading } from './observations.js';
import { COEFFICIENTS, roomForChanges } from './predict-deviation.js';

/**
 * A first estimate from the equation for sin δ, linear in the coefficients; one too strong
 * for the readings is weakened until every heading has a deviation.
 */
function start(readings: readonly WeighedReading[]): Agreement | null {
  const values = room(readings.length);
  const factors = roomForChanges(readings.length);
  readings.forEach(({ waves: { sin, cos, sin2, cos2 }, deviation }, place) => {
    const sine = sinDegrees(deviation);
    const cosine = cosDegrees(deviation);
    const first = COEFFICIENTS * place;
    values[place] = sine;
    factors[first] = cosine;
    factors[first + 1] = sin;
    factors[first + 2] = cos;
    factors[first + 3] = sin2 * cosine + cos2 * sine;
    factors[first + 4] = cos2 * cosine - sin2 * sine;
  });
  let { estimate } = weightedSolution(readings, { factors, width: COEFFICIENTS, values });
  for (let i = 0; i < 20; i++) {
    const state = agreement('exact', readings, estimate);
    if (state !== null) return state;
    estimate = estimate.map((value) => value * 0.8);
  }
  return null;
}

/** The step of Gauss and Newton, halved until the squares do not grow; null where none helps. */
function improve(readings: readonly WeighedReading[], state: Agreement, change: readonly number[]): Agreement | null {
  for (let part = 1; part > 1e-6; part /= 2) {
    const moved = state.estimate.map((value, i) => value + part * (change[i] as number));
    const next = agreement('exact', readings, moved);
    if (next !== null && next.squares <= state.squares * (1 + 1e-12) + 1e-18) return next;
  }
  return null;
}

/** What a step takes off the squares as far as the curve is straight: those of the way it moves each fitted deviation. */
function gainOf(readings: readonly WeighedReading[], { changes }: Agreement, change: readonly number[]): number {
  let gain = 0;
  for (let k = 0; k < readings.length; k++) {
    let moved = 0;
    for (let i = 0; i < change.length; i++) moved += (changes[COEFFICIENTS * k + i] as number) * (change[i] as number);
    gain += (readings[k] as WeighedReading).weight * moved * moved;
  }
  return gain;
}

const STEPS = 40;
/** A step that moves no coefficient by this much, or would take this part off the squares, is not worth taking. */
const STILL = 1e-10;
const NO_GAIN = 1e-12;

/** An estimate the search begins from, and how small a part of the squares may be left in it; as little as above if left out. */
export interface Near {
  readonly estimate: readonly number[];
  readonly gain?: number;
}

/** Where a search ended, and the linear solution there, whose step was not worth taking. */
export interface Searched extends Agreement {
  readonly solution: Solution;
}

/**
 * The exact coefficients with the least squares, by Gauss and Newton's method on the deviations
 * themselves, from an estimate near them where there is one. Null where none come near the readings.
 */
export function searchExact(readings: readonly WeighedReading[], near?: Near): Searched | null {
  const enough = near?.gain ?? NO_GAIN;
  let state = (near === undefined ? null : agreement('exact', readings, near.estimate)) ?? start(readings);
  if (state === null) return null;
  for (let step = 0; ; step++) {
    const solution = weightedSolution(readings, { factors: state.changes, width: COEFFICIENTS, values: state.residuals });
    const change = solution.estimate;
    const settled: boolean = step === STEPS || gainOf(readings, state, change) <= enough * state.squares || change.every((value) => Math.abs(value) < STILL);
    const next: Agreement | null = settled ? null : improve(readings, state, change);
    if (next === null) return { ...state, solution };
    state = next;
  }
}
