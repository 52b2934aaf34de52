import { amplitude } from '../sky/amplitude.js';
import type { HorizonSide } from './amplitude-result.js';

/** The bearing of a body of this declination at an altitude on one side of the meridian, degrees; null where it does not reach it, or beyond the poles. */
export function bearingOnHorizon(side: HorizonSide, latitude: number, declination: number, altitude: number): number | null {
  if (Math.abs(latitude) > 90 || Math.abs(declination) > 90) return null;
  return amplitude({ latitude, declination, altitude })?.[side] ?? null;
}
