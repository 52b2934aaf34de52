import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { delaunayArguments } from './delaunay-arguments.js';
import { nutationTerms } from './nutation-terms.js';

/** The swing of the Earth's axis about its mean place, degrees. */
export interface Nutation {
  readonly inLongitude: number;
  readonly inObliquity: number;
}

/** How fast the great term of the node grows: 0.01742″ and 0.00089″ a century (same source). */
const NODE_GROWTH = { inLongitude: -174.2, inObliquity: 8.9 };

/** 0.0001″ in degrees. */
const UNIT = 1 / 36_000_000;

/** Nutation at a time in Julian centuries of terrestrial time since J2000.0, within 0.03″. */
export function nutationAt(century: number): Nutation {
  const { elongation, sunAnomaly, moonAnomaly, latitudeArgument, node } = delaunayArguments(century);
  let inLongitude = NODE_GROWTH.inLongitude * century * sinDegrees(node);
  let inObliquity = NODE_GROWTH.inObliquity * century * cosDegrees(node);
  for (const [d, m, moon, f, o, longitude, obliquity] of nutationTerms) {
    const argument = d * elongation + m * sunAnomaly + moon * moonAnomaly + f * latitudeArgument + o * node;
    inLongitude += longitude * sinDegrees(argument);
    inObliquity += obliquity * cosDegrees(argument);
  }
  return { inLongitude: inLongitude * UNIT, inObliquity: inObliquity * UNIT };
}
