import { atan2Degrees, degreesOfArc } from '../angle/trigonometry.js';
import { harmonics, type Harmonics } from './approximate-deviation.js';

export type FitModel = 'approximate' | 'exact';

/** For each coefficient a list of how much the deviation changes with it, degrees, one for every reading. */
export type Changes = readonly [A: number[], B: number[], C: number[], D: number[], E: number[]];

export const noChanges = (): Changes => [[], [], [], [], []];

function approximate(estimate: readonly number[], waves: Harmonics, changes: Changes | null): number {
  changes?.forEach((list, i) => list.push(waves[i] as number));
  const [A, B, C, D, E] = estimate as [number, number, number, number, number];
  return A * waves[0] + B * waves[1] + C * waves[2] + D * waves[3] + E * waves[4];
}

/**
 * δ of the exact coefficients by compass heading, and by differentiating the same equation
 * (see `exactDeviationsByCompass`) its change for each of them; null where it has no root.
 * Sine and cosine of δ follow from those of the heading by the theorems of addition, so that a
 * fit, which asks for this a thousand times, is paid with one arc tangent for each reading.
 */
function exact([A, B, C, D, E]: readonly number[], [, sin, cos, sin2, cos2]: Harmonics, changes: Changes | null): number | null {
  const p = 1 - (D as number) * cos2 + (E as number) * sin2;
  const q = (A as number) + (D as number) * sin2 + (E as number) * cos2;
  const reach = Math.sqrt(p * p + q * q);
  const sine = ((B as number) * sin + (C as number) * cos) / reach;
  if (!(Math.abs(sine) < 1)) return null;
  const cosine = Math.sqrt((1 - sine) * (1 + sine));
  // δ is the angle of (p, q) and the angle whose sine is `sine`, one on the other.
  const sinDeviation = (q * cosine + p * sine) / reach;
  const cosDeviation = (p * cosine - q * sine) / reach;
  if (changes !== null) {
    const pull = degreesOfArc(1 / (reach * cosine));
    changes[0].push(cosDeviation * pull);
    changes[1].push(sin * pull);
    changes[2].push(cos * pull);
    changes[3].push((sin2 * cosDeviation + cos2 * sinDeviation) * pull);
    changes[4].push((cos2 * cosDeviation - sin2 * sinDeviation) * pull);
  }
  return atan2Degrees(sinDeviation, cosDeviation);
}

/**
 * The deviation a model gives where the waves of the heading are these, degrees; null where it
 * gives nothing. What it changes by with each coefficient is written down in `changes`, if given.
 */
export function predictedFrom(model: FitModel, estimate: readonly number[], waves: Harmonics, changes: Changes | null = null): number | null {
  return model === 'exact' ? exact(estimate, waves, changes) : approximate(estimate, waves, changes);
}

/** The deviation a model gives on a compass heading, degrees; null where it gives nothing. */
export function predictedDeviation(model: FitModel, estimate: readonly number[], heading: number): number | null {
  return predictedFrom(model, estimate, harmonics(heading));
}
