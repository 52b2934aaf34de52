import { checkRange } from '../angle/check-number.js';

/** Highest eye the sums take, metres: above it the visible horizon is no chart-room matter. Common practice, no source. */
const HIGHEST = 1000;

/** Throws `RangeError` naming `heightOfEye` unless it is from 0 to 1000 metres. */
export function checkHeightOfEye(heightOfEye: number): void {
  checkRange('heightOfEye', heightOfEye, 0, HIGHEST);
}

/**
 * Dip of the visible horizon, degrees, never negative, for a height of eye in metres,
 * 0 to 1000. Throws `RangeError` naming `heightOfEye`.
 * Source: Nautical Almanac, 0.0293° √h.
 */
export function dip(heightOfEye: number): number {
  checkHeightOfEye(heightOfEye);
  return 0.0293 * Math.sqrt(heightOfEye);
}

/** The same in minutes of arc, as the trade writes it. */
export function dipMinutes(heightOfEye: number): number {
  return dip(heightOfEye) * 60;
}
