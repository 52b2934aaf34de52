import { agreement, weightedSolution, type Agreement } from './agreement.js';
import { searchExact, type Near } from './exact-search.js';
import { room, type Solution } from './linear-problem.js';
import type { WeighedReading } from './observations.js';
import { COEFFICIENTS, type FitModel } from './predict-deviation.js';

/** A model laid through readings: degrees for the approximate one, pure numbers for the exact. */
export interface ModelFit extends Agreement {
  readonly model: FitModel;
  /** Of the step that would come next; where a coefficient is not determined, `estimate` is the smallest that goes with the readings. */
  readonly solution: Solution;
}

/** The five-term series: one step of linear least squares, and no step changes what it changes by. */
function fitApproximate(readings: readonly WeighedReading[]): ModelFit | null {
  const flat = agreement('approximate', readings, room(COEFFICIENTS).fill(0));
  const solution = flat && weightedSolution(readings, { factors: flat.changes, width: COEFFICIENTS, values: flat.residuals });
  const state = solution && agreement('approximate', readings, solution.estimate, flat.changes);
  return state && { model: 'approximate', solution, ...state };
}

/**
 * The exact coefficients, fitted to the deviations themselves, so that the residuals are those
 * of the readings. Null where no coefficients come near the readings.
 */
function fitExact(readings: readonly WeighedReading[], near?: Near): ModelFit | null {
  const found = searchExact(readings, near);
  return found === null ? null : { model: 'exact', ...found };
}

/**
 * Lays a model through readings, of which there is at least one; an estimate from nearly the
 * same readings saves the search its first steps.
 */
export function fitModel(model: FitModel, readings: readonly WeighedReading[], near?: Near): ModelFit | null {
  return model === 'exact' ? fitExact(readings, near) : fitApproximate(readings);
}
