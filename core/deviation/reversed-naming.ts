import { warning, type Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { DeviationCard } from './deviation-card.js';
import { deviationCurve } from './deviation-curve.js';
import type { DeviationObservation } from './observations.js';
import { checkedReadings } from './observations.js';

/** Fewer readings than this show no pattern; agreement beyond this is no chance: common practice, no source. */
const FEWEST = 4;
const AGREEMENT = 0.9;
/** A card must say at least this much, in degrees, for its opposite to mean anything. */
const LEAST_SIZE = 1;

/**
 * Tells readings that are the old card with east and west exchanged throughout: caution
 * `reversed-naming` with the agreement (0 to 1) of the readings with the reversed card, or null.
 * One swing alone cannot show it: every curve reversed is a curve.
 * Throws `RangeError` as `fitDeviation` and `deviationCurve`.
 */
export function reversedNaming(observations: readonly DeviationObservation[], oldCard: DeviationCard): Caution | null {
  const curve = deviationCurve(oldCard);
  const { list } = checkedReadings(observations);
  let product = 0;
  let read = 0;
  let said = 0;
  let count = 0;
  for (const { heading, deviation } of list) {
    const old = curve.at(heading);
    if (old === null) continue;
    product += deviation * old;
    read += deviation ** 2;
    said += old ** 2;
    count++;
  }
  if (count < FEWEST || Math.sqrt(said / count) < LEAST_SIZE || read === 0) return null;
  const agreement = 0 - product / Math.sqrt(read * said);
  return agreement < AGREEMENT ? null : warning('reversed-naming', { agreement: quantity(agreement, 'number') });
}
