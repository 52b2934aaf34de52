import { checkBody } from './body.js';
import type { BodyName } from './body.js';
import { checkSkyInstant } from './check-sky-instant.js';
import { skyAt } from './sky-at.js';
import type { GeographicalPosition } from './sky-at.js';

/**
 * Geographical position of a body: geocentric, apparent, of date, with UT1 = UTC.
 * `gha` [0, 360) westward, `declination` [-90, 90] north positive, equatorial
 * `horizontalParallax` and `semidiameter` (0 for stars), all in degrees.
 * Any spelling `bodyNamed` reads will do. Throws `RangeError` naming `body`, or `instant`
 * outside 1900-01-01 to 2100-01-01.
 * Good to 0.02′ (Sun), 0.05′ (Moon), 0.1′ (planets) and 0.01′ (stars; Rigil Kentaurus, a
 * binary, 0.15′), were UT1 = UTC. It is so within 0.9 s, 0.2′ of hour angle,
 * while leap seconds are added; what it will be later in the century nobody knows.
 * Source: VSOP87, ELP/MPP02, precession of IAU 2006 and nutation of IAU 1980, abridged;
 * stars by the catalogue beside.
 */
export function geographicalPosition(body: BodyName, instant: Date): GeographicalPosition {
  const named = checkBody(body);
  checkSkyInstant('instant', instant);
  return skyAt(instant).position(named);
}

/**
 * Greenwich hour angle of Aries, degrees [0, 360): apparent sidereal time with UT1 = UTC.
 * Throws `RangeError` naming `instant` outside 1900-01-01 to 2100-01-01.
 */
export function ghaAries(instant: Date): number {
  checkSkyInstant('instant', instant);
  return skyAt(instant).ghaAries;
}
