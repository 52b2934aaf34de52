import { arcOfDegrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import type { Ephemeris } from './ephemeris.js';
import { starCatalogue } from './star-catalogue.js';
import type { StarName, StarPlace } from './star-catalogue.js';
import { add, scale, subtract } from './vector.js';
import type { Vector } from './vector.js';

const UNITS_PER_DEGREE = 100_000;

/** An arc of so many thousandths of a second, as a pure number. */
function arcOf(milliseconds: number): number {
  return arcOfDegrees(milliseconds / 3_600_000);
}

/**
 * Direction of a star from the Earth before aberration, J2000.0: its place of 2000, carried
 * along a straight line by its proper motion, and shifted against the Earth's place in its
 * orbit. The motion along the line of sight is left out: at most 0.1″ in fifty years.
 * Source: Explanatory Supplement to the Astronomical Almanac, ch. 3 (from memory).
 */
export function starDirection(star: StarName, { years, earth }: Ephemeris): Vector {
  const [rightAscension, declination, motionEast, motionNorth, parallax]: StarPlace = starCatalogue[star];
  const [a, d] = [rightAscension / UNITS_PER_DEGREE, declination / UNITS_PER_DEGREE];
  const [sinA, cosA, sinD, cosD] = [sinDegrees(a), cosDegrees(a), sinDegrees(d), cosDegrees(d)];
  const place: Vector = [cosA * cosD, sinA * cosD, sinD];
  const east: Vector = [-sinA, cosA, 0];
  const north: Vector = [-cosA * sinD, -sinA * sinD, cosD];
  const moved = add(place, add(scale(east, arcOf(motionEast) * years), scale(north, arcOf(motionNorth) * years)));
  return subtract(moved, scale(earth, arcOf(parallax)));
}
