import type { ModelFit } from './model-fit.js';
import type { WeighedReading } from './observations.js';
import { roomForChanges } from './predict-deviation.js';

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
  const answer = solution.cofactors.map((line) => line.reduce((total, cofactor, i) => total + cofactor * ((changes[i] as readonly number[])[place] as number), 0));
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
  const residuals: number[] = [];
  const leverages: number[] = [];
  const changes = roomForChanges(readings.length - 1);
  let squares = 0;
  for (let k = 0; k < readings.length; k++) {
    if (k === place) continue;
    const own = (readings[k] as WeighedReading).weight;
    let shared = 0;
    for (let i = 0; i < answer.length; i++) {
      const change = (fit.changes[i] as readonly number[])[k] as number;
      shared += change * (answer[i] as number);
      (changes[i] as number[])[residuals.length] = change;
    }
    const residual = (fit.residuals[k] as number) + pull * shared;
    residuals.push(residual);
    leverages.push((solution.leverages[k] as number) + (own * weight * shared * shared) / free);
    squares += own * residual * residual;
  }
  const estimate = released(fit.estimate, step);
  return {
    model: fit.model,
    estimate,
    residuals,
    changes,
    squares,
    solution: {
      estimate,
      fixed: solution.fixed,
      rank: solution.rank,
      cofactors: solution.cofactors.map((line, i) => line.map((cofactor, j) => cofactor + ((weight / free) * (answer[i] as number)) * (answer[j] as number))),
      leverages,
    },
  };
}
