import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { delaunayArguments } from './delaunay-arguments.js';

/** The swing of the Earth's axis about its mean place, degrees. */
export interface Nutation {
  readonly inLongitude: number;
  readonly inObliquity: number;
}

/**
 * The terms above 0.005″: multiples of D, M, M′, F and Ω, then longitude and obliquity in
 * 0.0001″. Source: IAU 1980 theory of nutation, as in Meeus, Astronomical Algorithms, table 22.A.
 */
const terms: readonly (readonly [d: number, m: number, moon: number, f: number, node: number, inLongitude: number, inObliquity: number])[] = [
  [0, 0, 0, 0, 1, -171996, 92025],
  [-2, 0, 0, 2, 2, -13187, 5736],
  [0, 0, 0, 2, 2, -2274, 977],
  [0, 0, 0, 0, 2, 2062, -895],
  [0, 1, 0, 0, 0, 1426, 54],
  [0, 0, 1, 0, 0, 712, -7],
  [-2, 1, 0, 2, 2, -517, 224],
  [0, 0, 0, 2, 1, -386, 200],
  [0, 0, 1, 2, 2, -301, 129],
  [-2, -1, 0, 2, 2, 217, -95],
  [-2, 0, 1, 0, 0, -158, 0],
  [-2, 0, 0, 2, 1, 129, -70],
  [0, 0, -1, 2, 2, 123, -53],
  [2, 0, 0, 0, 0, 63, 0],
  [0, 0, 1, 0, 1, 63, -33],
  [2, 0, -1, 2, 2, -59, 26],
  [0, 0, -1, 0, 1, -58, 32],
  [0, 0, 1, 2, 1, -51, 27],
];

/** How fast the great term of the node grows: 0.01742″ and 0.00089″ a century (same source). */
const NODE_GROWTH = { inLongitude: -174.2, inObliquity: 8.9 };

/** 0.0001″ in degrees. */
const UNIT = 1 / 36_000_000;

/** Nutation at a time in Julian centuries of terrestrial time since J2000.0, within 0.03″. */
export function nutationAt(century: number): Nutation {
  const { elongation, sunAnomaly, moonAnomaly, latitudeArgument, node } = delaunayArguments(century);
  let inLongitude = NODE_GROWTH.inLongitude * century * sinDegrees(node);
  let inObliquity = NODE_GROWTH.inObliquity * century * cosDegrees(node);
  for (const [d, m, moon, f, o, longitude, obliquity] of terms) {
    const argument = d * elongation + m * sunAnomaly + moon * moonAnomaly + f * latitudeArgument + o * node;
    inLongitude += longitude * sinDegrees(argument);
    inObliquity += obliquity * cosDegrees(argument);
  }
  return { inLongitude: inLongitude * UNIT, inObliquity: inObliquity * UNIT };
}
