import { EQUATORIAL_RADIUS, FLATTENING } from '../angle/ellipsoid.js';
import { arcOfDegrees, atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { meanOver } from './quadrature.js';

/** Polar over equatorial radius. */
export const POLAR_RATIO = 1 - FLATTENING;

/** Square of the second eccentricity. */
const secondEccentricitySquared = POLAR_RATIO ** -2 - 1;

/** Sine and cosine of the reduced latitude, on the auxiliary sphere, of a latitude in degrees. */
export function reducedLatitude(latitude: number): { sine: number; cosine: number } {
  const [sine, cosine] = [POLAR_RATIO * sinDegrees(latitude), cosDegrees(latitude)];
  const size = Math.hypot(sine, cosine);
  return { sine: sine / size, cosine: cosine / size };
}

/** Metres on the ellipsoid for one of arc on a sphere of unit radius, at an arc σ from the node (Karney, eq. 7). */
export function metresPerArc(equatorSine: number, arc: number): number {
  return EQUATORIAL_RADIUS * POLAR_RATIO * Math.sqrt(1 + secondEccentricitySquared * (1 - equatorSine ** 2) * sinDegrees(arc) ** 2);
}

/**
 * A stretch of a geodesic and its arc on the auxiliary sphere: Karney, Algorithms for geodesics,
 * Journal of Geodesy 87 (2013), eq. 7 and 8, the integrals by quadrature. `equatorSine` is the
 * sine of the azimuth at the node, where it crosses the equator northwards; arcs are degrees from there.
 */
export function stretch(equatorSine: number, from: number, width: number): { metres: number; lag: number } {
  const ratio = (arc: number): number => metresPerArc(equatorSine, arc) / EQUATORIAL_RADIUS;
  return {
    metres: EQUATORIAL_RADIUS * arcOfDegrees(width) * meanOver(from, width, ratio),
    // By how much the longitude falls behind that on the sphere, degrees.
    lag: FLATTENING * equatorSine * width * meanOver(from, width, (arc) => (2 - FLATTENING) / (1 + ratio(arc))),
  };
}

/** Where a point lies on its geodesic, from its reduced latitude and the azimuth there: arc from the node and longitude on the sphere, degrees. */
export function onGeodesic(sine: number, cosine: number, azimuthSine: number, azimuthCosine: number): { arc: number; longitude: number } {
  return {
    arc: atan2Degrees(sine, cosine * azimuthCosine),
    longitude: atan2Degrees(azimuthSine * cosine * sine, cosine * azimuthCosine),
  };
}
