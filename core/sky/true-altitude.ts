import { checkRange } from '../angle/check-number.js';
import { cosDegrees } from '../angle/trigonometry.js';
import { dip } from './dip.js';
import { refraction } from './refraction.js';
import type { Air } from './refraction.js';

export interface ObservedAltitude extends Air {
  /** By the sextant over the visible horizon, index error applied, degrees [-1, 90]. */
  readonly observedAltitude: number;
  readonly limb: 'centre' | 'upper' | 'lower';
  /** Metres, 0 to 1000. */
  readonly heightOfEye: number;
  /** Degrees, 0 to 2; 0 for a star. */
  readonly horizontalParallax: number;
  /** Degrees, 0 to 1; 0 for a star. */
  readonly semidiameter: number;
}

export interface TrueAltitude {
  /** Above the visible horizon without dip, degrees. */
  readonly apparentAltitude: number;
  /** Degrees, never negative. */
  readonly refraction: number;
  /** Parallax in altitude, degrees. */
  readonly parallax: number;
  /** True geocentric altitude of the centre, degrees. */
  readonly trueAltitude: number;
}

/**
 * True geocentric altitude of a body's centre from an observed one: dip, refraction,
 * semidiameter, parallax, in the order of the trade. Throws `RangeError` naming a bad argument.
 * Source: Nautical Almanac, explanation of the altitude corrections.
 */
export function trueAltitude({ observedAltitude, limb, heightOfEye, horizontalParallax, semidiameter, ...air }: ObservedAltitude): TrueAltitude {
  checkRange('observedAltitude', observedAltitude, -1, 90);
  checkRange('horizontalParallax', horizontalParallax, 0, 2);
  checkRange('semidiameter', semidiameter, 0, 1);
  if (limb !== 'centre' && limb !== 'upper' && limb !== 'lower') throw new RangeError(`limb: ${String(limb)} is not a limb`);
  const apparentAltitude = observedAltitude - dip(heightOfEye);
  const bent = refraction(apparentAltitude, air);
  const limbToCentre = limb === 'centre' ? 0 : limb === 'lower' ? semidiameter : -semidiameter;
  const airless = apparentAltitude - bent + limbToCentre;
  const parallax = horizontalParallax * cosDegrees(airless);
  // A lower limb in the zenith would put the centre past it.
  return { apparentAltitude, refraction: bent, parallax, trueAltitude: Math.min(90, airless + parallax) };
}
