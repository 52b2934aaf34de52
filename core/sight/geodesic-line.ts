import { checkFinite, checkRange } from '../angle/check-number.js';
import { EQUATORIAL_RADIUS } from '../angle/ellipsoid.js';
import { atan2Degrees, cosDegrees, degreesOfArc, sinDegrees } from '../angle/trigonometry.js';
import { angleFromTo, wrap180, wrap360 } from '../angle/wrap.js';
import { metresPerArc, onGeodesic, POLAR_RATIO, reducedLatitude, stretch } from './geodesic-arc.js';
import { geodesicBetween } from './geodesic-inverse.js';

/** A place on WGS 84: degrees, latitude in [-90, 90], longitude in [-360, 360], north and east positive. */
export interface Position {
  readonly latitude: number;
  readonly longitude: number;
}

/** Why a line between two places has no one direction where it starts. */
export type NoDirection = 'same-place' | 'pole' | 'two-ways';

/** A line between two places: its direction where it starts, [0, 360), and its length in metres. */
export type DirectedLine =
  | { readonly determined: true; readonly bearing: number; readonly distance: number }
  | { readonly determined: false; readonly reason: NoDirection; readonly distance: number };

/** The millimetre: two places nearer than this are one. */
export const SAME_PLACE = 0.001;

/** Bearings of one line at its two ends differ by more than this where there are two shortest lines. */
const TWO_LINES = 1e-6;

/** Throws `RangeError` naming the part of a position that is no latitude or longitude. */
export function checkPosition(name: string, { latitude, longitude }: Position): void {
  checkRange(`${name}.latitude`, latitude, -90, 90);
  checkRange(`${name}.longitude`, longitude, -360, 360);
}

/**
 * The shortest line on WGS 84. From a pole every direction is the same, and between places
 * opposite each other on the globe there are two shortest lines or more: no direction then.
 * Throws `RangeError` naming the part of `from` or `to` that is out of range.
 * Source: Karney, Journal of Geodesy 87 (2013), and Vincenty, Survey Review 23 (1975), see beside.
 */
export function geodesicLine(from: Position, to: Position): DirectedLine {
  checkPosition('from', from);
  checkPosition('to', to);
  const turn = angleFromTo(from.longitude, to.longitude);
  const { bearing, bearingAtEnd, metres: distance } = geodesicBetween(from.latitude, to.latitude, Math.abs(turn));
  if (distance < SAME_PLACE) return { determined: false, reason: 'same-place', distance };
  if (Math.abs(from.latitude) === 90) return { determined: false, reason: 'pole', distance };
  // On opposite latitudes the same two bearings, exchanged, are another line just as short.
  if (from.latitude === -to.latitude && (turn === 180 || Math.abs(wrap180(bearing - bearingAtEnd)) > TWO_LINES)) {
    return { determined: false, reason: 'two-ways', distance };
  }
  return { determined: true, bearing: wrap360(turn < 0 ? -bearing : bearing), distance };
}

/** Newton's steps to the arc of a length; the metres of a degree change by a few thousandths only. */
const STEPS = 5;

/**
 * Where a geodesic leads: the place after so many metres, at most half round the globe, and
 * the direction it has there, degrees [0, 360).
 */
export function alongGeodesic(from: Position, bearing: number, distance: number): Position & { readonly bearing: number } {
  checkPosition('from', from);
  checkFinite('bearing', bearing);
  checkFinite('distance', distance);
  const { sine, cosine } = reducedLatitude(from.latitude);
  const [azimuthSine, azimuthCosine] = [sinDegrees(bearing), cosDegrees(bearing)];
  const equatorSine = cosine * azimuthSine;
  const equatorCosine = Math.hypot(azimuthCosine, azimuthSine * sine);
  const start = onGeodesic(sine, cosine, azimuthSine, azimuthCosine);
  let width = degreesOfArc(distance / EQUATORIAL_RADIUS);
  for (let step = 0; step < STEPS; step += 1) {
    width += degreesOfArc((distance - stretch(equatorSine, start.arc, width).metres) / metresPerArc(equatorSine, start.arc + width));
  }
  const end = start.arc + width;
  const sineAtEnd = equatorCosine * sinDegrees(end);
  const northAtEnd = equatorCosine * cosDegrees(end);
  return {
    latitude: atan2Degrees(sineAtEnd, POLAR_RATIO * Math.hypot(equatorSine, northAtEnd)),
    longitude: wrap180(from.longitude + atan2Degrees(equatorSine * sinDegrees(end), cosDegrees(end)) - start.longitude - stretch(equatorSine, start.arc, width).lag),
    bearing: wrap360(atan2Degrees(equatorSine, northAtEnd)),
  };
}
