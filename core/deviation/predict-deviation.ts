import { atan2Degrees, degreesOfArc } from '../angle/trigonometry.js';
import { harmonics, type Harmonics } from './approximate-deviation.js';

export type FitModel = 'approximate' | 'exact';

/** The deviation a model gives on a compass heading, degrees, and its change for each coefficient. */
export interface Prediction {
  readonly deviation: number;
  readonly change: readonly number[];
}

function approximate([A, B, C, D, E]: readonly number[], [one, sin, cos, sin2, cos2]: Harmonics): number {
  return (A as number) * one + (B as number) * sin + (C as number) * cos + (D as number) * sin2 + (E as number) * cos2;
}

/**
 * δ of the exact coefficients by compass heading, and by differentiating the same equation
 * (see `exactDeviationsByCompass`) its change for each of them; null where it has no root.
 * Sine and cosine of δ follow from those of the heading by the theorems of addition, so that a
 * fit, which asks for this a thousand times, is paid with one arc tangent for each reading.
 */
function predictExact(estimate: readonly number[], waves: Harmonics): Prediction | null {
  // By place: taking lists apart costs a fit, which does this a thousand times before the engine has made fast code, as much as its sums.
  const A = estimate[0] as number, B = estimate[1] as number, C = estimate[2] as number, D = estimate[3] as number, E = estimate[4] as number;
  const sin = waves[1], cos = waves[2], sin2 = waves[3], cos2 = waves[4];
  const p = 1 - D * cos2 + E * sin2;
  const q = A + D * sin2 + E * cos2;
  const reach = Math.sqrt(p * p + q * q);
  const sine = (B * sin + C * cos) / reach;
  if (!(Math.abs(sine) < 1)) return null;
  const cosine = Math.sqrt((1 - sine) * (1 + sine));
  // δ is the angle of (p, q) and the angle whose sine is `sine`, one on the other.
  const sinDeviation = (q * cosine + p * sine) / reach;
  const cosDeviation = (p * cosine - q * sine) / reach;
  const pull = degreesOfArc(1 / (reach * cosine));
  return {
    deviation: atan2Degrees(sinDeviation, cosDeviation),
    change: [
      cosDeviation * pull,
      sin * pull,
      cos * pull,
      (sin2 * cosDeviation + cos2 * sinDeviation) * pull,
      (cos2 * cosDeviation - sin2 * sinDeviation) * pull,
    ],
  };
}

/** What a model gives where the waves of the heading are these; null where it gives nothing. */
export function predictFrom(model: FitModel, estimate: readonly number[], waves: Harmonics): Prediction | null {
  return model === 'exact' ? predictExact(estimate, waves) : { deviation: approximate(estimate, waves), change: waves };
}

/** What a model gives on a compass heading, degrees; null where it gives nothing. */
export function predict(model: FitModel, estimate: readonly number[], heading: number): Prediction | null {
  return predictFrom(model, estimate, harmonics(heading));
}

/** The deviation of that alone, degrees. */
export function predictedDeviation(model: FitModel, estimate: readonly number[], heading: number): number | null {
  const waves = harmonics(heading);
  return model === 'exact' ? (predictExact(estimate, waves)?.deviation ?? null) : approximate(estimate, waves);
}
