import { checkFinite, checkRange } from '../angle/check-number.js';
import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';

/** Place and body, degrees. */
export interface Triangle {
  /** [-90, 90], north positive. */
  readonly latitude: number;
  /** [-90, 90], north positive. */
  readonly declination: number;
  /** Westward; any finite angle, the same a turn further. */
  readonly localHourAngle: number;
}

/** The direction of a body in the horizon's own axes, a vector of length one. */
export interface HorizonVector {
  readonly north: number;
  readonly east: number;
  readonly up: number;
}

export function checkTriangle({ latitude, declination, localHourAngle }: Triangle): void {
  checkRange('latitude', latitude, -90, 90);
  checkRange('declination', declination, -90, 90);
  checkFinite('localHourAngle', localHourAngle);
}

/**
 * The classic equations, with the hour angle counted from the nearer half of the meridian
 * and 1 − cos written as a squared sine: so nothing is lost to cancelling where the body
 * stands near the zenith or the nadir.
 */
export function horizonVector({ latitude, declination, localHourAngle }: Triangle): HorizonVector {
  const [sinL, cosL, cosD] = [sinDegrees(latitude), cosDegrees(latitude), cosDegrees(declination)];
  const east = -cosD * sinDegrees(localHourAngle);
  if (cosDegrees(localHourAngle) >= 0) {
    const shift = 2 * cosD * sinDegrees(localHourAngle / 2) ** 2;
    const offZenith = declination - latitude;
    return { east, north: sinDegrees(offZenith) + shift * sinL, up: cosDegrees(offZenith) - shift * cosL };
  }
  const shift = 2 * cosD * cosDegrees(localHourAngle / 2) ** 2;
  const offNadir = declination + latitude;
  return { east, north: sinDegrees(offNadir) - shift * sinL, up: shift * cosL - cosDegrees(offNadir) };
}
