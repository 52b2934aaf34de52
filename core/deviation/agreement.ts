import { leastSquares } from './least-squares.js';
import { room, type Design, type Solution } from './linear-problem.js';
import type { WeighedReading } from './observations.js';
import { predictedFrom, roomForChanges, type Changes, type FitModel } from './predict-deviation.js';

/** How an estimate of the coefficients agrees with readings. */
export interface Agreement {
  /** A to E. */
  readonly estimate: readonly number[];
  /** Observed less fitted, degrees, one for each reading. */
  readonly residuals: readonly number[];
  readonly changes: Changes;
  /** Sum of weight × residual², degrees². */
  readonly squares: number;
}

/** Null where the estimate gives one of the readings no deviation. `changes`: room for them that is there already. */
export function agreement(model: FitModel, readings: readonly WeighedReading[], estimate: readonly number[], changes = roomForChanges(readings.length)): Agreement | null {
  const count = readings.length;
  const residuals = room(count);
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

/** Least squares with the readings' weights. */
export function weightedSolution(readings: readonly WeighedReading[], design: Design): Solution {
  // As a rule every reading weighs as much as the next, and nothing has to be copied.
  if (readings.every(({ weight }) => weight === 1)) return leastSquares(design);
  const { width } = design;
  const factors = room(design.factors.length);
  const values = room(design.values.length);
  readings.forEach(({ weight }, place) => {
    const root = Math.sqrt(weight);
    values[place] = root * (design.values[place] as number);
    for (let at = width * place; at < width * (place + 1); at++) factors[at] = root * (design.factors[at] as number);
  });
  return leastSquares({ factors, width, values });
}
