import { roundTo } from '../../core/angle/format-angle.js';
import { formatAngle } from './figures.js';

export const plusOf = (degrees: number, decimals: number): string => (roundTo(degrees, decimals) > 0 ? '+' : '');

/** A coefficient as the trade writes it, by its sign and not by east and west: `+1.5°`, `−8.0°`, `0.0°`. */
export function signedText(degrees: number, decimals = 1): string {
  return `${plusOf(degrees, decimals)}${formatAngle(degrees, decimals)}`;
}
