import { leastSquares } from './least-squares.js';
import type { Solution } from './linear-problem.js';
import type { WeighedReading } from './observations.js';
import { predictFrom, type FitModel } from './predict-deviation.js';

/** How an estimate of the coefficients agrees with readings. */
export interface Agreement {
  /** A to E. */
  readonly estimate: readonly number[];
  /** Observed less fitted, degrees, one for each reading. */
  readonly residuals: readonly number[];
  /** Change of each fitted deviation for each coefficient. */
  readonly changes: readonly (readonly number[])[];
  /** Sum of weight × residual², degrees². */
  readonly squares: number;
}

/** Null where the estimate gives one of the readings no deviation. */
export function agreement(model: FitModel, readings: readonly WeighedReading[], estimate: readonly number[]): Agreement | null {
  const residuals: number[] = [];
  const changes: (readonly number[])[] = [];
  let squares = 0;
  for (const { waves, deviation, weight } of readings) {
    const prediction = predictFrom(model, estimate, waves);
    if (prediction === null) return null;
    const residual = deviation - prediction.deviation;
    residuals.push(residual);
    changes.push(prediction.change);
    squares += weight * residual * residual;
  }
  return { estimate, residuals, changes, squares };
}

/** Least squares with the readings' weights over rows of factors and values, one for each reading. */
export function weightedSolution(readings: readonly WeighedReading[], rows: readonly (readonly number[])[], values: readonly number[]): Solution {
  const roots = readings.map(({ weight }) => Math.sqrt(weight));
  // As a rule every reading weighs as much as the next, and nothing has to be copied.
  if (roots.every((root) => root === 1)) return leastSquares({ rows, values });
  return leastSquares({
    rows: rows.map((row, i) => row.map((factor) => factor * (roots[i] as number))),
    values: values.map((value, i) => value * (roots[i] as number)),
  });
}
