import { checkFinite } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';

export interface CompassError {
  /** True less compass bearing, degrees (-180, 180], east positive. */
  readonly error: number;
  /** Error less variation, degrees (-180, 180], east positive; only where a variation is given. */
  readonly deviation?: number;
}

/**
 * Error of a magnetic compass from one true and one compass bearing of the same thing, and
 * its deviation where the variation (degrees, east positive) is known: CE = T − C, δ = CE − V.
 * The deviation is that of the ship's head at the time, whatever the bearing.
 * Throws `RangeError` naming an argument that is not a finite number.
 */
export function compassError(sight: {
  readonly trueBearing: number;
  readonly compassBearing: number;
  readonly variation?: number | undefined;
}): CompassError {
  const { trueBearing, compassBearing, variation } = sight;
  checkFinite('trueBearing', trueBearing);
  checkFinite('compassBearing', compassBearing);
  const error = wrap180(trueBearing - compassBearing);
  if (variation === undefined) return { error };
  checkFinite('variation', variation);
  return { error, deviation: wrap180(error - variation) };
}

/**
 * Error of a gyro, true less gyro bearing, degrees (-180, 180]: east where the gyro reads low,
 * west where it reads high. Throws `RangeError` naming an argument that is not a finite number.
 */
export function gyroError(sight: { readonly trueBearing: number; readonly gyroBearing: number }): number {
  checkFinite('trueBearing', sight.trueBearing);
  checkFinite('gyroBearing', sight.gyroBearing);
  return wrap180(sight.trueBearing - sight.gyroBearing);
}
