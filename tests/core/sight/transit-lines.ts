import type { Position } from '../../../core/sight/geodesic-line.js';

/** Degrees, minutes and seconds as decimal degrees; the sign of the degrees counts for all. */
export function dms(degrees: number, minutes = 0, seconds = 0): number {
  const size = Math.abs(degrees) + minutes / 60 + seconds / 3600;
  return degrees < 0 ? -size : size;
}

export const at = (latitude: number, longitude: number): Position => ({ latitude, longitude });

/**
 * The test line of Geoscience Australia (GDA Technical Manual; from memory): Flinders Peak to
 * Buninyong, GRS 80, whose flattening is that of WGS 84 to ten figures.
 */
export const flindersPeak = at(dms(-37, 57, 3.7203), dms(144, 25, 29.5244));
export const buninyong = at(dms(-37, 39, 10.1561), dms(143, 55, 35.3839));
export const flindersToBuninyong = { forward: dms(306, 52, 5.37), back: dms(127, 10, 25.07), metres: 54_972.271 };
