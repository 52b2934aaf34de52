import { checkFinite } from './check-number.js';
import { atan2Degrees, cosDegrees, sinDegrees } from './trigonometry.js';
import { wrap360 } from './wrap.js';

/** Below this length of the mean vector the directions cancel and have no mean. */
const NO_DIRECTION = 1e-9;

/**
 * Mean direction of angles in degrees, in [0, 360); null where the directions cancel
 * each other, or where there is none. Throws `RangeError` unless all are finite.
 */
export function circularMean(degrees: readonly number[]): number | null {
  let east = 0;
  let north = 0;
  for (const angle of degrees) {
    checkFinite('degrees', angle);
    east += sinDegrees(angle);
    north += cosDegrees(angle);
  }
  if (Math.hypot(east, north) <= NO_DIRECTION * degrees.length) return null;
  return wrap360(atan2Degrees(east, north));
}
