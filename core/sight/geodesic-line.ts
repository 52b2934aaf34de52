import geographicLib from 'geographiclib-geodesic';
import { checkFinite, checkRange } from '../angle/check-number.js';
import { wrap180, wrap360 } from '../angle/wrap.js';

/** A place on WGS 84: degrees, north and east positive. */
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

const ellipsoid = geographicLib.Geodesic.WGS84;

/**
 * The shortest line on WGS 84, by Karney's method (Journal of Geodesy 87, 2013). From a
 * pole every direction is the same, and between places opposite each other on the globe
 * there are two shortest lines or more: no direction then.
 */
export function geodesicLine(from: Position, to: Position): DirectedLine {
  checkPosition('from', from);
  checkPosition('to', to);
  const found = ellipsoid.Inverse(from.latitude, from.longitude, to.latitude, to.longitude);
  const { s12: distance = 0, azi1: bearing = 0, azi2: bearingAtEnd = 0 } = found;
  if (distance < SAME_PLACE) return { determined: false, reason: 'same-place', distance };
  if (Math.abs(from.latitude) === 90) return { determined: false, reason: 'pole', distance };
  // On opposite latitudes the same two bearings, exchanged, are another line just as short.
  if (from.latitude === -to.latitude && Math.abs(wrap180(bearing - bearingAtEnd)) > TWO_LINES) {
    return { determined: false, reason: 'two-ways', distance };
  }
  return { determined: true, bearing: wrap360(bearing), distance };
}

/**
 * Where a geodesic leads: the place after so many metres, and the direction it has there,
 * degrees [0, 360).
 */
export function alongGeodesic(from: Position, bearing: number, distance: number): Position & { readonly bearing: number } {
  checkPosition('from', from);
  checkFinite('bearing', bearing);
  checkFinite('distance', distance);
  const { lat2 = 0, lon2 = 0, azi2 = 0 } = ellipsoid.Direct(from.latitude, from.longitude, bearing, distance);
  return { latitude: lat2, longitude: wrap180(lon2), bearing: wrap360(azi2) };
}
