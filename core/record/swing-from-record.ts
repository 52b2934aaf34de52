import type { DeviationObservation } from '../deviation/observations.js';
import type { ObservedDeviation } from './observed-deviations.js';

/** The readings of a swing made of the book's own observations: plain data for `fitDeviation`, with the entries they come from. */
export function swingFromRecord(observed: readonly ObservedDeviation[]): readonly (DeviationObservation & { readonly number: number })[] {
  return observed.map(({ number, heading, deviation, sigma }) =>
    // A doubt of nothing would outweigh every other reading.
    sigma === null || sigma === 0 ? { number, heading, deviation } : { number, heading, deviation, sigma },
  );
}
