import { room } from './linear-problem.js';
import type { ModelFit } from './model-fit.js';
import type { WeighedReading } from './observations.js';
import { COEFFICIENTS, roomForChanges } from './predict-deviation.js';

/** What a reading's removal does to a fit. */
interface Release {
  /** The weighted residual given up, over the part of the reading the curve did not follow. */
  readonly pull: number;
  /** The reading's own changes, through the cofactors: how the estimate answers to it. */
  readonly answer: readonly number[];
  /** The part of the reading the curve did not follow. */
  readonly free: number;
}

function release({ changes, residuals, solution }: ModelFit, place: number, weight: number): Release {
  const free = 1 - (solution.leverages[place] as number);
  const { cofactors } = solution;
  const answer = room(COEFFICIENTS);
  for (let i = 0; i < COEFFICIENTS; i++) {
    let total = 0;
    for (let j = 0; j < COEFFICIENTS; j++) total += (cofactors[COEFFICIENTS * i + j] as number) * (changes[COEFFICIENTS * place + j] as number);
    answer[i] = total;
  }
  return { pull: (weight * (residuals[place] as number)) / free, answer, free };
}

const released = (estimate: readonly number[], { pull, answer }: Release): readonly number[] => estimate.map((value, i) => value - pull * (answer[i] as number));

/**
 * The estimate without one of the readings, as far as the curve is straight: exactly so for the
 * five-term series, and for the exact coefficients so near that one step more settles it.
 * Source: the textbook formula for leaving one out (from memory).
 */
export function estimateWithout(fit: ModelFit, place: number, weight: number): readonly number[] {
  return released(fit.estimate, release(fit, place, weight));
}

/**
 * The five-term series laid through all readings but one, from the fit to all of them: no
 * equation is solved anew. The reading must not fix the curve alone (leverage below 1).
 * Source: the update of an inverse by one row (Sherman and Morrison, from memory).
 */
export function seriesWithout(fit: ModelFit, readings: readonly WeighedReading[], place: number): ModelFit {
  const { weight } = readings[place] as WeighedReading;
  const step = release(fit, place, weight);
  const { pull, answer, free } = step;
  const { solution } = fit;
  const left = readings.length - 1;
  const residuals = room(left);
  const leverages = room(left);
  const changes = roomForChanges(left);
  let squares = 0;
  for (let to = 0; to < left; to++) {
    const from = to < place ? to : to + 1;
    const own = (readings[from] as WeighedReading).weight;
    let shared = 0;
    for (let i = 0; i < COEFFICIENTS; i++) {
      const change = fit.changes[COEFFICIENTS * from + i] as number;
      shared += change * (answer[i] as number);
      changes[COEFFICIENTS * to + i] = change;
    }
    const residual = (fit.residuals[from] as number) + pull * shared;
    residuals[to] = residual;
    leverages[to] = (solution.leverages[from] as number) + (own * weight * shared * shared) / free;
    squares += own * residual * residual;
  }
  const cofactors = room(COEFFICIENTS * COEFFICIENTS);
  for (let i = 0; i < COEFFICIENTS; i++) {
    for (let j = 0; j < COEFFICIENTS; j++) {
      const at = COEFFICIENTS * i + j;
      cofactors[at] = (solution.cofactors[at] as number) + ((weight / free) * (answer[i] as number)) * (answer[j] as number);
    }
  }
  const estimate = released(fit.estimate, step);
  const { fixed, rank } = solution;
  return { model: fit.model, estimate, residuals, changes, squares, solution: { estimate, fixed, rank, cofactors, leverages } };
}
