import { checkFinite } from '../angle/check-number.js';
import { harmonics } from './approximate-deviation.js';
import type { DeviationFit } from './fit-deviation.js';
import { predictedFrom, roomForChanges } from './predict-deviation.js';
import { studentLimit } from './student.js';

export interface BandPoint {
  /** Deviation of the fitted curve, degrees, east positive. */
  readonly deviation: number;
  /** Half the width of the band, degrees; null where nothing tells the scatter. */
  readonly halfWidth: number | null;
}

/** Freedom of a normal distribution, near enough, for doubts claimed and not found. */
const MANY = 1000;

/**
 * The fitted curve by compass heading with the band that holds the true curve there with a
 * given probability (0.95 if left out), from the covariance of the coefficients and Student's
 * t. Null where the fit determines too little to draw a curve, or has none on that heading.
 * Throws `RangeError` naming a probability not inside (0, 1); the curve, a heading that is not finite.
 */
export function confidenceBands(fit: DeviationFit, probability = 0.95): (compassHeading: number) => BandPoint | null {
  const limit = studentLimit(probability, fit.basis === 'scatter' ? fit.degreesOfFreedom : MANY);
  const { covariance, estimate } = fit.curve;
  const changes = roomForChanges(1);
  return (compassHeading) => {
    checkFinite('compassHeading', compassHeading);
    if (fit.determined.length < 5) return null;
    const deviation = predictedFrom(fit.model, estimate, harmonics(compassHeading), changes);
    if (deviation === null) return null;
    if (covariance === null) return { deviation, halfWidth: null };
    let variance = 0;
    for (let i = 0; i < covariance.length; i++) {
      const row = covariance[i] as readonly number[];
      for (let j = 0; j < row.length; j++) variance += (row[j] as number) * (changes[i] as number) * (changes[j] as number);
    }
    return { deviation, halfWidth: limit * Math.sqrt(Math.max(0, variance)) };
  };
}

/** The same on one compass heading. Throws `RangeError` naming a heading that is not finite, or a probability not inside (0, 1). */
export function confidenceBand(fit: DeviationFit, compassHeading: number, probability = 0.95): BandPoint | null {
  return confidenceBands(fit, probability)(compassHeading);
}
