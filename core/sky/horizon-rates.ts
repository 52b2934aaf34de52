import { checkFinite } from '../angle/check-number.js';
import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { MEAN_SUN_RATE } from './hour-angle-rates.js';
import { checkTriangle, horizonVector } from './triangle.js';
import type { Triangle } from './triangle.js';

const NEAR_ZENITH = 1e-10;

/** How a body moves in the sky, degrees per minute of time. */
export interface BodyMotion {
  /** Of the hour angle, westward; 0.25, the mean Sun's, unless given. */
  readonly hourAngleRate?: number;
  /** Northward; 0 unless given. */
  readonly declinationRate?: number;
}

export interface HorizonRates {
  /** Of the altitude, degrees per minute, rising positive; null in the zenith and nadir. */
  readonly altitude: number | null;
  /** Of the bearing, degrees per minute, clockwise positive; null there and at the poles. */
  readonly azimuth: number | null;
}

/**
 * How fast altitude and bearing of a body change. Throws `RangeError` naming a bad argument.
 * Source: the triangle's equations differentiated, our own working; with the declination
 * at rest dZ/dt = (sin L − cos L tan h cos Z) × the rate of the hour angle.
 */
export function horizonRates(triangle: Triangle, { hourAngleRate = MEAN_SUN_RATE, declinationRate = 0 }: BodyMotion = {}): HorizonRates {
  checkTriangle(triangle);
  checkFinite('hourAngleRate', hourAngleRate);
  checkFinite('declinationRate', declinationRate);
  const { latitude, declination, localHourAngle } = triangle;
  const { north, east } = horizonVector(triangle);
  const across = Math.hypot(north, east);
  if (across < NEAR_ZENITH) return { altitude: null, azimuth: null };
  const [sinL, cosL] = [sinDegrees(latitude), cosDegrees(latitude)];
  const [sinD, cosD] = [sinDegrees(declination), cosDegrees(declination)];
  const [sinH, cosH] = [sinDegrees(localHourAngle), cosDegrees(localHourAngle)];
  const eastward = -cosD * cosH * hourAngleRate + sinD * sinH * declinationRate;
  const northward = cosD * sinH * sinL * hourAngleRate + (cosD * cosL + sinD * cosH * sinL) * declinationRate;
  const upward = -cosL * cosD * sinH * hourAngleRate + (sinL * cosD - cosL * sinD * cosH) * declinationRate;
  return {
    altitude: upward / across,
    azimuth: Math.abs(latitude) === 90 ? null : (eastward * north - east * northward) / across ** 2,
  };
}
