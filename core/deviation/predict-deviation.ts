import { atan2Degrees, degreesOfArc } from '../angle/trigonometry.js';
import { harmonics, type Harmonics } from './approximate-deviation.js';
import { room } from './linear-problem.js';

export type FitModel = 'approximate' | 'exact';

/** How many coefficients there are: A to E. */
export const COEFFICIENTS = 5;

/** For each reading how much its deviation changes with each coefficient, degrees: five figures, and the next five. */
export type Changes = number[];

/** Room for so many readings, to be filled place by place. */
export const roomForChanges = (readings: number): Changes => room(COEFFICIENTS * readings);

type Five = readonly [A: number, B: number, C: number, D: number, E: number];

function approximate(estimate: Five, { sin, cos, sin2, cos2 }: Harmonics, changes: Changes | null, place: number): number {
  if (changes !== null) {
    const first = COEFFICIENTS * place;
    changes[first] = 1;
    changes[first + 1] = sin;
    changes[first + 2] = cos;
    changes[first + 3] = sin2;
    changes[first + 4] = cos2;
  }
  return estimate[0] + estimate[1] * sin + estimate[2] * cos + estimate[3] * sin2 + estimate[4] * cos2;
}

/**
 * δ of the exact coefficients by compass heading, and by differentiating the same equation
 * (see `exactDeviationByCompass`) its change for each of them; null where it has no root.
 * Sine and cosine of δ follow from those of the heading by the theorems of addition, so that a
 * fit, which asks for this a thousand times, is paid with one arc tangent for each reading.
 */
function exact(estimate: Five, { sin, cos, sin2, cos2 }: Harmonics, changes: Changes | null, place: number): number | null {
  const p = 1 - estimate[3] * cos2 + estimate[4] * sin2;
  const q = estimate[0] + estimate[3] * sin2 + estimate[4] * cos2;
  const reach = Math.sqrt(p * p + q * q);
  const sine = (estimate[1] * sin + estimate[2] * cos) / reach;
  if (!(Math.abs(sine) < 1)) return null;
  const cosine = Math.sqrt((1 - sine) * (1 + sine));
  // δ is the angle of (p, q) and the angle whose sine is `sine`, one on the other.
  const sinDeviation = (q * cosine + p * sine) / reach;
  const cosDeviation = (p * cosine - q * sine) / reach;
  if (changes !== null) {
    const first = COEFFICIENTS * place;
    const pull = degreesOfArc(1 / (reach * cosine));
    changes[first] = cosDeviation * pull;
    changes[first + 1] = sin * pull;
    changes[first + 2] = cos * pull;
    changes[first + 3] = (sin2 * cosDeviation + cos2 * sinDeviation) * pull;
    changes[first + 4] = (cos2 * cosDeviation - sin2 * sinDeviation) * pull;
  }
  return atan2Degrees(sinDeviation, cosDeviation);
}

/**
 * The deviation a model gives where the waves of the heading are these, degrees; null where it
 * gives nothing. What it changes by with each coefficient is written down in `changes`, if given, at that place.
 */
export function predictedFrom(model: FitModel, estimate: readonly number[], waves: Harmonics, changes: Changes | null = null, place = 0): number | null {
  return (model === 'exact' ? exact : approximate)(estimate as unknown as Five, waves, changes, place);
}

/** The deviation a model gives on a compass heading, degrees; null where it gives nothing. */
export function predictedDeviation(model: FitModel, estimate: readonly number[], heading: number): number | null {
  return predictedFrom(model, estimate, harmonics(heading));
}
