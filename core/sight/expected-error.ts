import { wrap180 } from '../angle/wrap.js';
import type { SplitError } from './split-error.js';

/** What an error should be near, and how far from it is odd; degrees. */
export interface ExpectedError {
  readonly error: number;
  readonly odd: number;
}

/** A gyro is looked at from here. Common practice, no source. */
const ODD_GYRO = 3;
/** With a card at hand a deviation this far from it is odd; common practice, no source. */
const ODD_BESIDE_CARD = 3;
/** Without one: deviations beyond are rare on a corrected compass (Panama Canal: 7°). */
const ODD_DEVIATION = 7;

/**
 * The error a sight should come near: nothing for a gyro, variation and the card's deviation
 * for a magnetic compass. Null where the variation is not known.
 */
export function expectedError({ compass, variation, cardDeviation }: Omit<SplitError, 'error'>): ExpectedError | null {
  if (compass === 'gyro') return { error: 0, odd: ODD_GYRO };
  if (variation.source === 'none') return null;
  return cardDeviation === null
    ? { error: variation.value, odd: ODD_DEVIATION }
    : { error: wrap180(variation.value + cardDeviation), odd: ODD_BESIDE_CARD };
}
