import { checkRange } from '../angle/check-number.js';

/** `civil`: the horizon and the brightest bodies are seen together; `nautical`: both still; then the horizon is lost. */
export type Daylight = 'day' | 'civil twilight' | 'nautical twilight' | 'astronomical twilight' | 'night';

/** Altitude of the Sun's centre with her upper limb on a horizon without dip: 34′ of refraction, 16′ of semidiameter. */
const SUNSET = -50 / 60;

/**
 * The light at a true altitude of the Sun's centre in degrees [-90, 90]; a boundary counts as
 * the lighter side. Throws `RangeError` naming `sunAltitude`.
 * Source: Nautical Almanac, 6° and 12°; 18° from memory.
 */
export function daylight(sunAltitude: number): Daylight {
  checkRange('sunAltitude', sunAltitude, -90, 90);
  if (sunAltitude >= SUNSET) return 'day';
  if (sunAltitude >= -6) return 'civil twilight';
  if (sunAltitude >= -12) return 'nautical twilight';
  return sunAltitude >= -18 ? 'astronomical twilight' : 'night';
}
