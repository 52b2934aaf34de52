import { ECCENTRICITY_SQUARED, EQUATORIAL_RADIUS } from '../angle/ellipsoid.js';
import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';

/** A place on or above the ellipsoid as the sphere of the harmonics sees it. */
export interface GeocentricPlace {
  /** Distance from the centre of the Earth, km. */
  readonly radius: number;
  /** Sine and cosine of the geocentric latitude; the cosine is exactly 0 at a pole. */
  readonly sinLatitude: number;
  readonly cosLatitude: number;
  /** Sine and cosine of the geocentric less the geodetic latitude: the tilt of the verticals. */
  readonly sinTilt: number;
  readonly cosTilt: number;
}

/**
 * Geodetic latitude (degrees) and height above the ellipsoid (km) to geocentric, by
 * algebra alone. Source: WMM2020 technical report, equations 7 and 8.
 */
export function geocentric(latitude: number, heightKm: number): GeocentricPlace {
  const sine = sinDegrees(latitude);
  const cosine = cosDegrees(latitude);
  const curvature = EQUATORIAL_RADIUS / 1000 / Math.sqrt(1 - ECCENTRICITY_SQUARED * sine * sine);
  const outward = (curvature + heightKm) * cosine;
  const northward = (curvature * (1 - ECCENTRICITY_SQUARED) + heightKm) * sine;
  const radius = Math.sqrt(outward * outward + northward * northward);
  const sinLatitude = northward / radius;
  const cosLatitude = outward / radius;
  return {
    radius,
    sinLatitude,
    cosLatitude,
    sinTilt: sinLatitude * cosine - cosLatitude * sine,
    cosTilt: cosLatitude * cosine + sinLatitude * sine,
  };
}
