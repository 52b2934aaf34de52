import { asinDegrees, atan2Degrees, cosDegrees, degreesOfArc, sinDegrees } from '../angle/trigonometry.js';
import { harmonics } from './approximate-deviation.js';
import { leastSquares, type Solution } from './least-squares.js';
import type { Reading } from './observations.js';

export type FitModel = 'approximate' | 'exact';

/** A model laid through readings: degrees for the approximate one, pure numbers for the exact. */
export interface ModelFit {
  readonly model: FitModel;
  /** A to E; those not determined are the smallest that go with the readings. */
  readonly estimate: readonly number[];
  readonly solution: Solution;
  /** Observed less fitted, degrees, one for each reading. */
  readonly residuals: readonly number[];
  /** Sum of weight × residual², degrees². */
  readonly squares: number;
}

/** The deviation a model gives on a compass heading, degrees, and its change for each coefficient. */
export interface Prediction {
  readonly deviation: number;
  readonly change: readonly number[];
}

/**
 * δ of the exact coefficients by compass heading, and by differentiating the same equation
 * (see `exactDeviationsByCompass`) its change for each of them; null where it has no root.
 */
function predictExact(estimate: readonly number[], heading: number): Prediction | null {
  const [A, B, C, D, E] = estimate as [number, number, number, number, number];
  const [, sin, cos, sin2, cos2] = harmonics(heading);
  const p = 1 - D * cos2 + E * sin2;
  const q = A + D * sin2 + E * cos2;
  const sine = (B * sin + C * cos) / Math.hypot(p, q);
  if (!(Math.abs(sine) < 1)) return null;
  const deviation = atan2Degrees(q, p) + asinDegrees(sine);
  const pull = p * cosDegrees(deviation) + q * sinDegrees(deviation);
  const factors = [cosDegrees(deviation), sin, cos, sinDegrees(2 * heading + deviation), cosDegrees(2 * heading + deviation)];
  return { deviation, change: factors.map((factor) => degreesOfArc(factor / pull)) };
}

/** What a model gives; null where it gives nothing. */
export function predict(model: FitModel, estimate: readonly number[], heading: number): Prediction | null {
  if (model === 'exact') return predictExact(estimate, heading);
  const change = harmonics(heading);
  return { deviation: change.reduce((total, factor, i) => total + factor * (estimate[i] as number), 0), change };
}

interface State {
  readonly estimate: readonly number[];
  readonly residuals: readonly number[];
  readonly changes: readonly (readonly number[])[];
  readonly squares: number;
}

/** How an estimate agrees with the readings; null where it gives one of them no deviation. */
function judge(model: FitModel, readings: readonly Reading[], estimate: readonly number[]): State | null {
  const residuals: number[] = [];
  const changes: (readonly number[])[] = [];
  let squares = 0;
  for (const { heading, deviation, weight } of readings) {
    const prediction = predict(model, estimate, heading);
    if (prediction === null) return null;
    const residual = deviation - prediction.deviation;
    residuals.push(residual);
    changes.push(prediction.change);
    squares += weight * residual * residual;
  }
  return { estimate, residuals, changes, squares };
}

function solveWeighted(
  readings: readonly Reading[],
  rows: readonly (readonly number[])[],
  values: readonly number[],
): Solution {
  const roots = readings.map(({ weight }) => Math.sqrt(weight));
  return leastSquares({
    rows: rows.map((row, i) => row.map((factor) => factor * (roots[i] as number))),
    values: values.map((value, i) => value * (roots[i] as number)),
  });
}

/** The five-term series: one step of linear least squares. */
function fitApproximate(readings: readonly Reading[]): ModelFit | null {
  const rows = readings.map(({ heading }) => harmonics(heading));
  const solution = solveWeighted(readings, rows, readings.map(({ deviation }) => deviation));
  const state = judge('approximate', readings, solution.estimate);
  return state === null ? null : { model: 'approximate', solution, ...state };
}

/**
 * A first estimate from the equation for sin δ, linear in the coefficients; one too strong
 * for the readings is weakened until every heading has a deviation.
 */
function exactStart(readings: readonly Reading[]): State | null {
  const rows = readings.map(({ heading, deviation }) => {
    const [, sin, cos] = harmonics(heading);
    const twice = 2 * heading + deviation;
    return [cosDegrees(deviation), sin, cos, sinDegrees(twice), cosDegrees(twice)];
  });
  const sines = readings.map(({ deviation }) => sinDegrees(deviation));
  let { estimate } = solveWeighted(readings, rows, sines);
  for (let i = 0; i < 20; i++) {
    const state = judge('exact', readings, estimate);
    if (state !== null) return state;
    estimate = estimate.map((value) => value * 0.8);
  }
  return null;
}

/** The step of Gauss and Newton, halved until the squares do not grow; null where none helps. */
function improve(readings: readonly Reading[], state: State): State | null {
  const { estimate: change } = solveWeighted(readings, state.changes, state.residuals);
  for (let part = 1; part > 1e-6; part /= 2) {
    const moved = state.estimate.map((value, i) => value + part * (change[i] as number));
    const next = judge('exact', readings, moved);
    if (next !== null && next.squares <= state.squares * (1 + 1e-12) + 1e-18) return next;
  }
  return null;
}

const STEPS = 40;

/**
 * The exact coefficients, by Gauss and Newton's method on the deviations themselves, so that
 * the residuals are those of the readings. Null where no coefficients come near the readings.
 */
function fitExact(readings: readonly Reading[], near?: ModelFit): ModelFit | null {
  let state = (near === undefined ? null : judge('exact', readings, near.estimate)) ?? exactStart(readings);
  if (state === null) return null;
  for (let step = 0; step < STEPS; step++) {
    const before = state.estimate;
    const next = improve(readings, state);
    if (next === null) break;
    state = next;
    if (next.estimate.every((value, i) => Math.abs(value - (before[i] as number)) < 1e-10)) break;
  }
  return { model: 'exact', solution: solveWeighted(readings, state.changes, state.residuals), ...state };
}

/**
 * Lays a model through readings, of which there is at least one; a fit of the same model to
 * nearly the same readings saves the search its first steps.
 */
export function fitModel(model: FitModel, readings: readonly Reading[], near?: ModelFit): ModelFit | null {
  return model === 'exact' ? fitExact(readings, near) : fitApproximate(readings);
}
