import { position as apparentPosition } from 'astronomia/apparent';
import { Equatorial } from 'astronomia/coord';
import { apparent as siderealSeconds } from 'astronomia/sidereal';
import { starCatalogue } from '../../../core/sky/star-catalogue.js';
import type { StarName } from '../../../core/sky/star-catalogue.js';

/** TT−UTC since 2017, seconds. */
const TT_MINUS_UTC = 69.184;
const DEGREES = 180 / Math.PI;
/** Proper motions of the catalogue are in thousandths of a second of arc a year. */
const MOTION = 1 / 3_600_000 / DEGREES;

/**
 * Apparent GHA and declination of a star, degrees, by another library from the same
 * catalogue: precession, nutation and aberration as in Meeus, Astronomical Algorithms, ch. 21
 * to 23, first order in nutation and aberration, without parallax.
 */
export function secondStar(star: StarName, instant: Date): { gha: number; declination: number } {
  const [rightAscension, declination, motionRa, motionDec] = starCatalogue[star];
  // The catalogue keeps hundred-thousandths of a degree.
  const [ra, dec] = [rightAscension / 1e5, declination / 1e5];
  const jd = instant.getTime() / 86_400_000 + 2_440_587.5;
  const epoch = 2000 + (jd + TT_MINUS_UTC / 86400 - 2_451_545) / 365.25;
  const alongRa = (motionRa * MOTION) / Math.cos(dec / DEGREES);
  const found = apparentPosition(new Equatorial(ra / DEGREES, dec / DEGREES), 2000, epoch, alongRa, motionDec * MOTION);
  return { gha: (((siderealSeconds(jd) / 240 - found.ra * DEGREES) % 360) + 360) % 360, declination: found.dec * DEGREES };
}
