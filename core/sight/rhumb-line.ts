import { ECCENTRICITY_SQUARED, EQUATORIAL_RADIUS } from '../angle/ellipsoid.js';
import { arcOfDegrees, atan2Degrees, cosDegrees, degreesOfArc, sinDegrees, tanDegrees } from '../angle/trigonometry.js';
import { angleFromTo, wrap360 } from '../angle/wrap.js';
import { SAME_PLACE, checkPosition } from './geodesic-line.js';
import type { DirectedLine, Position } from './geodesic-line.js';
import { meridianArc } from './meridian-arc.js';
import { meanOver } from './quadrature.js';

const e = Math.sqrt(ECCENTRICITY_SQUARED);

/**
 * Isometric latitude as a pure number, north positive, endless at the poles: Snyder, Map
 * Projections: a Working Manual (USGS Professional Paper 1395, 1987), eq. 7-7, in its
 * hyperbolic form. Times 10800/π it is the table of meridional parts.
 */
function isometricLatitude(latitude: number): number {
  return Math.asinh(tanDegrees(latitude)) - e * Math.atanh(e * sinDegrees(latitude));
}

const inner = (latitude: number): number => 1 - ECCENTRICITY_SQUARED * sinDegrees(latitude) ** 2;

/** Metres of a radian of latitude (Snyder, eq. 4-18). */
const metresOfLatitude = (latitude: number): number => (EQUATORIAL_RADIUS * (1 - ECCENTRICITY_SQUARED)) / inner(latitude) ** 1.5;

/** The same radian on the Mercator chart (Snyder, eq. 4-20). */
const isometricOfLatitude = (latitude: number): number => (1 - ECCENTRICITY_SQUARED) / inner(latitude) / cosDegrees(latitude);

interface Rise {
  /** Difference of isometric latitude, pure number. */
  readonly isometric: number;
  /** Metres of meridian for one of isometric latitude: the parallel's radius where both latitudes are one. */
  readonly perIsometric: number;
}

/** Latitudes this near, as a part of their distance from the pole, are taken by quadrature: a difference would lose its figures. */
const NEAR = 0.05;

function riseBetween(from: number, to: number): Rise {
  const colatitude = 90 - Math.max(Math.abs(from), Math.abs(to));
  if (Math.abs(to - from) > NEAR * colatitude) {
    const isometric = isometricLatitude(to) - isometricLatitude(from);
    return { isometric, perIsometric: (meridianArc(to) - meridianArc(from)) / isometric };
  }
  const isometric = meanOver(from, to - from, isometricOfLatitude);
  return { isometric: isometric * arcOfDegrees(to - from), perIsometric: meanOver(from, to - from, metresOfLatitude) / isometric };
}

/** Difference of meridional parts on WGS 84, minutes of longitude, north positive; neither latitude a pole. */
export function meridionalParts(from: number, to: number): number {
  return degreesOfArc(riseBetween(from, to).isometric) * 60;
}

/**
 * The rhumb line on WGS 84, the straight line of a Mercator chart, the shorter way round:
 * tan C = Δλ/Δψ, its length that of the meridian over cos C. To a pole and from one every
 * rhumb line leads, and half a turn of longitude may be gone either way: no direction then.
 * Throws `RangeError` naming the part of `from` or `to` that is out of range. Source: Snyder, as above.
 */
export function rhumbLine(from: Position, to: Position): DirectedLine {
  checkPosition('from', from);
  checkPosition('to', to);
  const turn = angleFromTo(from.longitude, to.longitude);
  const ends = [from.latitude, to.latitude];
  if (ends.some((latitude) => Math.abs(latitude) === 90)) {
    const distance = Math.abs(meridianArc(to.latitude) - meridianArc(from.latitude));
    return { determined: false, reason: distance < SAME_PLACE ? 'same-place' : 'pole', distance };
  }
  const { isometric, perIsometric } = riseBetween(from.latitude, to.latitude);
  const distance = Math.hypot(isometric, arcOfDegrees(turn)) * perIsometric;
  if (distance < SAME_PLACE) return { determined: false, reason: 'same-place', distance };
  if (turn === 180) return { determined: false, reason: 'two-ways', distance };
  return { determined: true, bearing: wrap360(atan2Degrees(arcOfDegrees(turn), isometric)), distance };
}
