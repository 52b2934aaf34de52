import { leastSquares } from './least-squares.js';
import type { Solution } from './linear-problem.js';
import type { WeighedReading } from './observations.js';
import { predictedFrom, roomForChanges, type Changes, type FitModel } from './predict-deviation.js';

/** How an estimate of the coefficients agrees with readings. */
export interface Agreement {
  /** A to E. */
  readonly estimate: readonly number[];
  /** Observed less fitted, degrees, one for each reading. */
  readonly residuals: readonly number[];
  /** For each coefficient the change of every fitted deviation. */
  readonly changes: Changes;
  /** Sum of weight × residual², degrees². */
  readonly squares: number;
}

/** Null where the estimate gives one of the readings no deviation. `changes`: room for them that is there already. */
export function agreement(model: FitModel, readings: readonly WeighedReading[], estimate: readonly number[], changes = roomForChanges(readings.length)): Agreement | null {
  const count = readings.length;
  const residuals = new Array<number>(count);
  let squares = 0;
  for (let place = 0; place < count; place++) {
    const { waves, deviation, weight } = readings[place] as WeighedReading;
    const predicted = predictedFrom(model, estimate, waves, changes, place);
    if (predicted === null) return null;
    const residual = deviation - predicted;
    residuals[place] = residual;
    squares += weight * residual * residual;
  }
  return { estimate, residuals, changes, squares };
}

/** Least squares with the readings' weights: for each unknown a column of factors, and the values, one of each for every reading. */
export function weightedSolution(readings: readonly WeighedReading[], columns: readonly (readonly number[])[], values: readonly number[]): Solution {
  // As a rule every reading weighs as much as the next, and nothing has to be copied.
  if (readings.every(({ weight }) => weight === 1)) return leastSquares({ columns, values });
  const roots = readings.map(({ weight }) => Math.sqrt(weight));
  const weighed = (list: readonly number[]): number[] => list.map((value, i) => value * (roots[i] as number));
  return leastSquares({ columns: columns.map(weighed), values: weighed(values) });
}
