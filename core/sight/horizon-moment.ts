import type { BodyName } from '../sky/body.js';
import { dip } from '../sky/dip.js';
import type { HorizonMoment } from '../sky/horizon-altitude.js';
import { centreHeight } from './centre-height.js';

/** Mean semidiameter and horizontal parallax, degrees (Sun 959.63″ and 8.79″ at unit distance; Moon 15.54′ and 57.04′ at its mean distance). */
const MEAN = {
  Sun: { semidiameter: 0.2666, horizontalParallax: 0.0024 },
  Moon: { semidiameter: 0.259, horizontalParallax: 0.9507 },
  other: { semidiameter: 0, horizontalParallax: 0 },
};

/**
 * How a body stands above the visible horizon at a moment for a height of eye in metres:
 * its limbs and centre in diameters, positive above; mean figures, for drawing and for the
 * rule by which the moment is judged.
 */
export function horizonMoment(body: BodyName, moment: HorizonMoment, heightOfEye: number): { centre: number; lowerLimb: number; upperLimb: number } {
  const mean = body === 'Sun' ? MEAN.Sun : body === 'Moon' ? MEAN.Moon : MEAN.other;
  const centre = centreHeight(moment, { dip: dip(heightOfEye), ...mean });
  return { centre, lowerLimb: centre - 0.5, upperLimb: centre + 0.5 };
}
