import { checkRange } from '../angle/check-number.js';
import { tanDegrees } from '../angle/trigonometry.js';

/** Refraction at the visible horizon by convention, degrees: 34′, in all work on the horizon (Nautical Almanac). */
export const HORIZON_REFRACTION = 34 / 60;

export interface Air {
  /** Hectopascals, 800 to 1100; 1010 unless given. */
  readonly pressure?: number;
  /** Degrees Celsius, -60 to 60; 10 unless given. */
  readonly temperature?: number;
}

/**
 * Refraction, degrees, never negative, at an apparent altitude of -2° to 90°.
 * Throws `RangeError` naming `apparentAltitude`, `pressure` or `temperature`.
 * Source: Nautical Almanac 1998, direct computation: 0.0167° / tan(H + 7.31 / (H + 4.4)) ×
 * 0.28 P / (T + 273), where 0.28 is 283 / 1010 rounded: unrounded, the standard air changes
 * nothing. Below the horizon it is carried on only so that no step shows.
 */
export function refraction(apparentAltitude: number, { pressure = 1010, temperature = 10 }: Air = {}): number {
  checkRange('apparentAltitude', apparentAltitude, -2, 90);
  checkRange('pressure', pressure, 800, 1100);
  checkRange('temperature', temperature, -60, 60);
  const standard = 0.0167 / tanDegrees(apparentAltitude + 7.31 / (apparentAltitude + 4.4));
  // In the zenith the formula runs a little past nothing.
  return Math.max(0, standard * (pressure / 1010) * (283 / (temperature + 273)));
}
