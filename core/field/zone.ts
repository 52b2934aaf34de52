import { checkRange } from '../angle/check-number.js';

/**
 * How far a magnetic compass can be used: `blackout` (horizontal field below 2000 nT:
 * not at all), `caution` (below 6000 nT: with care), `normal`.
 */
export type CompassZone = 'normal' | 'caution' | 'blackout';

/**
 * The zone of a horizontal field in nT, 0 or more. Throws `RangeError` naming `h`.
 * Source: WMM2020 technical report, section 1.7.
 */
export function compassZone(h: number): CompassZone {
  checkRange('h', h, 0, Number.MAX_VALUE);
  if (h < 2000) return 'blackout';
  return h < 6000 ? 'caution' : 'normal';
}
