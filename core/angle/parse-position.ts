import { understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';
import { parseSignedAngle } from './parse-signed-angle.js';

/** Reads a latitude: `33-24.0N`, `33°24.0′N`, `S 33 24`, `-33.4`. Degrees [-90, 90], north positive. */
export function parseLatitude(text: string): Reading<number> {
  return parseSignedAngle(text, { positive: 'N', negative: 'S', most: 90, letterNeeded: false });
}

/** Reads a longitude in the same forms. Degrees (-180, 180], east positive; 180° W is 180° E. */
export function parseLongitude(text: string): Reading<number> {
  const reading = parseSignedAngle(text, { positive: 'E', negative: 'W', most: 180, letterNeeded: false });
  return reading.ok && reading.value === -180 ? understood(180) : reading;
}

/** Reads a declination in the same forms as a latitude. Degrees [-90, 90], north positive. */
export function parseDeclination(text: string): Reading<number> {
  return parseLatitude(text);
}

/** Reads a variation, deviation or compass error: `3.2E`, `W 2°30′`, `-3.2`. Degrees (-180, 180], east positive. */
export function parseError(text: string): Reading<number> {
  const reading = parseSignedAngle(text, { positive: 'E', negative: 'W', most: 180, letterNeeded: true });
  return reading.ok && reading.value === -180 ? understood(180) : reading;
}
