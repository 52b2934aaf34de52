import { checkFinite } from '../angle/check-number.js';
import { atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { checkField, type EarthField } from './earth-field.js';
import { finiteOrNull } from './finite-or-null.js';
import { heeledParameters } from './heeled-parameters.js';
import type { IronParameters } from './iron-parameters.js';
import { earthInShipAxes, forceAtCompass, forcesInPlay, ROUNDING } from './poisson.js';

export interface IronDeviation {
  /** Magnetic less compass heading, degrees (-180, 180], east positive; null where `lost`. */
  readonly deviation: number | null;
  /** Degrees [0, 360); null where no force directs the needle. */
  readonly compassHeading: number | null;
  /** Horizontal force on the needle, in the unit of the field, 0 or more. */
  readonly directiveForce: number;
  /** Its part towards magnetic north over H, a pure number, whose mean over all headings is λ; null where H is 0. */
  readonly northForce: number | null;
  /** Why there is no deviation: the forces cancel, or there is no magnetic north to deviate from. */
  readonly lost: 'no-directive-force' | 'no-horizontal-field' | null;
}

/** The same for parameters already checked and heeled: what a whole curve calls for each heading. */
export function deviationOfIron(iron: IronParameters, field: EarthField, magneticHeading: number): IronDeviation {
  const { h } = field;
  const { x, y } = forceAtCompass(iron, earthInShipAxes(field, magneticHeading));
  const directiveForce = Math.hypot(x, y);
  const northForce = finiteOrNull((x * cosDegrees(magneticHeading) - y * sinDegrees(magneticHeading)) / h);
  if (directiveForce <= ROUNDING * forcesInPlay(iron, field)) {
    return { deviation: null, compassHeading: null, directiveForce: 0, northForce, lost: 'no-directive-force' };
  }
  const compassHeading = wrap360(atan2Degrees(-y, x));
  if (h === 0) {
    return { deviation: null, compassHeading, directiveForce, northForce, lost: 'no-horizontal-field' };
  }
  const deviation = wrap180(magneticHeading - compassHeading);
  return { deviation, compassHeading, directiveForce, northForce, lost: null };
}

/**
 * What a ship's iron does to her compass on a magnetic heading (any finite degrees):
 * compass heading = atan2(-Y′, X′) of Poisson's equations, deviation = magnetic − compass.
 *
 * `heel` in degrees, starboard side down positive; the compass stays level. Where the
 * force on the needle vanishes, or the place has no horizontal field, `lost` says so.
 * Throws `RangeError` naming an argument that is missing, not finite, or a negative `field.h`;
 * finite rods of any size give a result (beyond ±1e100 they are held there).
 */
export function ironDeviation(
  parameters: IronParameters,
  field: EarthField,
  magneticHeading: number,
  heel = 0,
): IronDeviation {
  checkField('field', field);
  checkFinite('magneticHeading', magneticHeading);
  return deviationOfIron(heeledParameters(parameters, heel), field, magneticHeading);
}
