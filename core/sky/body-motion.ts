import { wrap180 } from '../angle/wrap.js';
import { checkBody } from './body.js';
import type { BodyName } from './body.js';
import { checkSkyInstant } from './check-sky-instant.js';
import type { BodyMotion } from './horizon-rates.js';
import { skyAt } from './sky-at.js';

const MINUTE = 60_000;

/**
 * How fast a body's hour angle and declination change at an instant, degrees per minute:
 * half the change from the minute before to the minute after. Throws `RangeError` naming
 * `body`, or `instant` outside 1900-01-01 to 2100-01-01.
 */
export function bodyMotion(body: BodyName, instant: Date): Required<BodyMotion> {
  const named = checkBody(body);
  checkSkyInstant('instant', instant);
  const before = skyAt(new Date(instant.getTime() - MINUTE)).position(named);
  const after = skyAt(new Date(instant.getTime() + MINUTE)).position(named);
  return { hourAngleRate: wrap180(after.gha - before.gha) / 2, declinationRate: (after.declination - before.declination) / 2 };
}
