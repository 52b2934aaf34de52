import { refraction } from '../sky/refraction.js';
import type { HorizonMoment } from '../sky/horizon-altitude.js';

/** Diameter that stands for a point of light: the Sun's, in degrees. */
const SUN_DIAMETER = 32 / 60;

export interface BodyAtHorizon {
  /** Dip of the visible horizon, degrees. */
  readonly dip: number;
  readonly horizontalParallax: number;
  readonly semidiameter: number;
}

/**
 * Apparent altitude of a centre whose true geocentric altitude is 0: the altitude at which
 * refraction lifts it by as much as parallax and itself take away, degrees.
 */
function apparentOnCelestialHorizon(horizontalParallax: number): number {
  let altitude = 0.5;
  // Refraction changes slowly enough for this to settle to a hundredth of a minute in ten rounds.
  for (let round = 0; round < 20; round += 1) altitude = (altitude + refraction(altitude) - horizontalParallax) / 2;
  return altitude;
}

/**
 * Apparent height of a body's centre above the visible horizon at a moment, in its own
 * diameters (a star or planet: in the Sun's), positive above. This is where the rule of two
 * thirds comes from (Pub. 9, ch. 17: on the celestial horizon the Sun's lower limb stands
 * about two thirds of its diameter above the visible one).
 */
export function centreHeight(moment: HorizonMoment, { dip, horizontalParallax, semidiameter }: BodyAtHorizon): number {
  // A planet's disc is a point to the eye.
  const disc = semidiameter > 0.1 ? semidiameter : 0;
  if (moment === 'celestial') return (dip + apparentOnCelestialHorizon(horizontalParallax)) / (disc > 0 ? 2 * disc : SUN_DIAMETER);
  if (moment === 'centre' || disc === 0) return 0;
  return moment === 'upper-limb' ? -0.5 : 0.5;
}
