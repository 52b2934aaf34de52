import { checkRange } from '../angle/check-number.js';
import { dipMinutes } from './dip.js';
import { HORIZON_REFRACTION } from './refraction.js';

/**
 * What is seen at rising or setting. `celestial`: true geocentric altitude of the centre 0;
 * the others: the centre or a limb on the visible horizon.
 */
export type HorizonMoment = 'celestial' | 'centre' | 'upper-limb' | 'lower-limb';

export interface HorizonConditions {
  /** Metres, 0 to 1000; counts for the visible horizon only. */
  readonly heightOfEye: number;
  /** Degrees, 0 to 2. */
  readonly horizontalParallax: number;
  /** Degrees, 0 to 1. */
  readonly semidiameter: number;
}

/** The altitude of the centre, degrees, and what it is made of in minutes of arc, none negative. */
export interface HorizonAltitude {
  readonly altitude: number;
  readonly dip: number;
  readonly refraction: number;
  readonly semidiameter: number;
  readonly parallax: number;
}

const MINUTES = 60;

/** How the semidiameter counts: the centre is below its upper limb and above its lower. */
const side: Record<HorizonMoment, -1 | 0 | 1> = { celestial: 0, centre: 0, 'upper-limb': -1, 'lower-limb': 1 };

/** Throws `RangeError` naming `moment` unless it is one of the four. */
export function checkMoment(moment: HorizonMoment): void {
  if (!Object.hasOwn(side, moment)) throw new RangeError(`moment: ${String(moment)} is not a moment at the horizon`);
}

/**
 * True geocentric altitude of a body's centre at a moment of rising or setting:
 * parallax − dip − 34′ ± semidiameter; 0 on the celestial horizon, where all parts are 0.
 * Throws `RangeError` naming a bad argument.
 * Source: Nautical Almanac, the corrections of altitude; 34′ by convention.
 */
export function horizonAltitude(moment: HorizonMoment, { heightOfEye, horizontalParallax, semidiameter }: HorizonConditions): HorizonAltitude {
  checkMoment(moment);
  const dip = dipMinutes(heightOfEye);
  checkRange('horizontalParallax', horizontalParallax, 0, 2);
  checkRange('semidiameter', semidiameter, 0, 1);
  if (moment === 'celestial') return { altitude: 0, dip: 0, refraction: 0, semidiameter: 0, parallax: 0 };
  const parts = {
    dip,
    refraction: HORIZON_REFRACTION * MINUTES,
    semidiameter: Math.abs(side[moment]) * semidiameter * MINUTES,
    parallax: horizontalParallax * MINUTES,
  };
  const minutes = parts.parallax - parts.dip - parts.refraction + side[moment] * parts.semidiameter;
  return { altitude: minutes / MINUTES, ...parts };
}
