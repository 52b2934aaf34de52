import { checkRange } from '../angle/check-number.js';
import { atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { wrap360 } from '../angle/wrap.js';

export interface AltitudeTriangle {
  /** Degrees [-90, 90], north positive. */
  readonly latitude: number;
  readonly declination: number;
  /** True altitude of the centre, degrees [-90, 90]. */
  readonly altitude: number;
}

/** The two true bearings at which a body stands at one altitude, degrees [0, 360). */
export interface BearingsAtAltitude {
  /** East of the meridian, [0, 180]. */
  readonly rising: number;
  /** West of it, [180, 360), or 0 when on the meridian to the north. */
  readonly setting: number;
}

/** A side of the triangle that is short by rounding alone counts as nothing. */
function halfSide(value: number): number {
  return Math.abs(value) < 1e-15 ? 0 : value;
}

/**
 * True bearings of a body at an altitude, from cos Z = (sin d − sin L sin h) / (cos L cos h)
 * in its half-angle form, which keeps its digits near the meridian. Null when the body
 * never stands at that altitude, and where the bearing is undetermined: at the poles and
 * in the zenith. Throws `RangeError` naming a bad argument.
 * Source: half-angle formula of spherical trigonometry, from memory.
 */
export function azimuthByAltitude({ latitude, declination, altitude }: AltitudeTriangle): BearingsAtAltitude | null {
  checkRange('latitude', latitude, -90, 90);
  checkRange('declination', declination, -90, 90);
  checkRange('altitude', altitude, -90, 90);
  if (Math.abs(latitude) === 90 || Math.abs(altitude) === 90) return null;
  const polarDistance = 90 - declination;
  const [sum, difference] = [latitude + altitude, latitude - altitude];
  const squaredSine = halfSide(sinDegrees((polarDistance + difference) / 2) * sinDegrees((polarDistance - difference) / 2));
  const squaredCosine = halfSide(cosDegrees((polarDistance + sum) / 2) * cosDegrees((polarDistance - sum) / 2));
  if (squaredSine < 0 || squaredCosine < 0) return null;
  const rising = 2 * atan2Degrees(Math.sqrt(squaredSine), Math.sqrt(squaredCosine));
  return { rising, setting: wrap360(-rising) };
}
