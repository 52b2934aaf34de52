import { predict, fitModel, type FitModel, type ModelFit } from './model-fit.js';
import type { Reading } from './observations.js';
import { searchSuspects } from './suspects.js';

export interface Judgement {
  /** Places of the bad readings under the model that goes better with the rest. */
  readonly suspects: readonly number[];
  /** Set where the exact model fits what is left clearly better than the approximate. */
  readonly exactBetter: { readonly difference: number; readonly heading: number } | null;
}

/**
 * Difference of n ln(sum of squares) beyond which one of two models with equally many
 * coefficients is clearly the better (Akaike's criterion; the limit from memory).
 */
const CLEARLY = 4;
/** The same for the series against the law of the iron, which real ships follow: chance must not pass for it (measured). */
const CLEARLY_NOT_IRON = 9;
/** Curves nearer than this are one for a navigator: degrees; common practice, no source. */
const WORTH_TELLING = 0.1;

/** The largest difference of two fitted curves and where it is, looked for every 5°. */
function largestDifference(one: ModelFit, other: ModelFit): { difference: number; heading: number } {
  let found = { difference: 0, heading: 0 };
  for (let heading = 0; heading < 360; heading += 5) {
    const a = predict(one.model, one.estimate, heading);
    const b = predict(other.model, other.estimate, heading);
    if (a === null || b === null) continue;
    const difference = Math.abs(a.deviation - b.deviation);
    if (difference > found.difference) found = { difference, heading };
  }
  return found;
}

/**
 * Looks for bad readings by both models and believes the exact one, unless the approximate
 * goes clearly better with the readings neither condemns. A large clean deviation curve bends in ways the five-term series
 * cannot follow; judged by that series alone its best readings would look bad.
 */
export function judgeReadings(readings: readonly Reading[]): Judgement {
  const searches: Record<FitModel, ReturnType<typeof searchSuspects>> = {
    approximate: searchSuspects('approximate', readings),
    exact: searchSuspects('exact', readings),
  };
  const { approximate, exact } = searches;
  if (approximate === null || exact === null) {
    return { suspects: (approximate ?? exact)?.suspects ?? [], exactBetter: null };
  }
  const doubted = new Set([...approximate.suspects, ...exact.suspects]);
  const rest = readings.filter(({ index }) => !doubted.has(index));
  const series = fitModel('approximate', rest, approximate.cleaned);
  const law = fitModel('exact', rest, exact.cleaned);
  if (series === null || law === null || rest.length <= series.solution.rank) {
    return { suspects: approximate.suspects, exactBetter: null };
  }
  // A hundredth of a degree is rounding: a fit better than that is not better.
  const rounding = rest.length * 0.01 ** 2;
  const advantage = rest.length * Math.log((series.squares + rounding) / (law.squares + rounding));
  const suspects = advantage < -CLEARLY_NOT_IRON ? approximate.suspects : exact.suspects;
  if (advantage <= CLEARLY) return { suspects, exactBetter: null };
  const apart = largestDifference(series, law);
  return { suspects, exactBetter: apart.difference >= WORTH_TELLING ? apart : null };
}
