import { wrap180 } from '../angle/wrap.js';
import { ODD_BESIDE_CARD, ODD_DEVIATION, ODD_GYRO_ERROR } from './odd-errors.js';
import type { SplitError } from './split-error.js';

/** What an error should be near, and how far from it is odd; degrees. */
export interface ExpectedError {
  readonly error: number;
  readonly odd: number;
}

/**
 * The error a sight should come near: nothing for a gyro, variation and the card's deviation
 * for a magnetic compass. Null where the variation is not known.
 */
export function expectedError({ compass, variation, cardDeviation }: Omit<SplitError, 'error'>): ExpectedError | null {
  if (compass === 'gyro') return { error: 0, odd: ODD_GYRO_ERROR };
  if (variation.source === 'none') return null;
  return cardDeviation === null
    ? { error: variation.value, odd: ODD_DEVIATION }
    : { error: wrap180(variation.value + cardDeviation), odd: ODD_BESIDE_CARD };
}
