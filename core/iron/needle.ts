import { checkField, type EarthField } from './earth-field.js';
import { lambdaOf } from './exact-coefficients.js';
import { heeledParameters } from './heeled-parameters.js';
import type { IronParameters } from './iron-parameters.js';
import { forcesInPlay } from './poisson.js';
import { leastForces, type ForceOnHeading } from './weakest-force.js';

/**
 * What the needle does while the ship turns once round:
 *
 * - `directs`: the compass goes round with her; to each compass heading belongs one magnetic heading
 * - `points-south`: it goes round, but λ is not positive: on the whole its south end leads
 * - `turns-backward`: it goes round the other way
 * - `follows-ship`: the ship's own force is the stronger: some compass headings never
 *   appear, others appear twice
 * - `vanishes`: on the headings named no force directs it
 * - `no-force`: no force directs it on any heading
 * - `no-horizontal-field`: there is no magnetic north here
 */
export type NeedleBehaviour =
  | 'directs'
  | 'points-south'
  | 'turns-backward'
  | 'follows-ship'
  | 'vanishes'
  | 'no-force'
  | 'no-horizontal-field';

export interface Needle {
  readonly behaviour: NeedleBehaviour;
  /** Mean force towards magnetic north over H. */
  readonly lambda: number;
  /** Magnetic headings on which the force vanishes, degrees [0, 360); empty but for `vanishes`. */
  readonly lostOn: readonly number[];
  readonly weakest: ForceOnHeading;
}

/** A least force below this part of the forces that meet counts as none. */
const NONE = 1e-9;

/**
 * Whether the needle keeps its direction on every heading.
 *
 * Derived: as she turns, the earth's field with what it induces draws an ellipse in ship's
 * axes about the end of (P + cZ, Q + fZ). Where the compass, the origin, lies inside it the
 * needle goes round once, and steadily, for an ellipse is convex: hence a one-to-one card.
 * On its edge the force vanishes; outside it the needle follows the ship.
 * `heel` in degrees, starboard side down positive. Throws `RangeError` as `ironDeviation`.
 */
export function needle(parameters: IronParameters, field: EarthField, heel = 0): Needle {
  checkField('field', field);
  const iron = heeledParameters(parameters, heel);
  const lambda = lambdaOf(iron);
  const least = leastForces(iron, field);
  const weakest = least[0] ?? { magneticHeading: 0, directiveForce: 0 };
  const none = NONE * forcesInPlay(iron, field);
  const lost = least.filter(({ directiveForce }) => directiveForce <= none);
  const answer = (behaviour: NeedleBehaviour, lostOn: readonly number[] = []): Needle => ({
    behaviour,
    lambda,
    lostOn,
    weakest,
  });

  if (field.h === 0) return answer('no-horizontal-field');
  const turning = (1 + iron.a) * (1 + iron.e) - iron.b * iron.d;
  if (lost.length > 0) {
    const soft = Math.abs(1 + iron.a) + Math.abs(1 + iron.e) + Math.abs(iron.b) + Math.abs(iron.d);
    if (soft * field.h <= none) return answer('no-force');
    return answer('vanishes', lost.map(({ magneticHeading }) => magneticHeading));
  }
  if (!insideEllipse(iron, field, turning)) return answer('follows-ship');
  if (turning < 0) return answer('turns-backward');
  return answer(lambda > 0 ? 'directs' : 'points-south');
}

/**
 * Solving Poisson's equations for the cosine and sine of a heading on which the ship's force
 * would be cancelled: inside the ellipse the two squares come to less than 1.
 */
function insideEllipse(iron: IronParameters, field: EarthField, turning: number): boolean {
  const x = iron.P + iron.c * field.z;
  const y = iron.Q + iron.f * field.z;
  const cos = iron.b * y - (1 + iron.e) * x;
  const sin = (1 + iron.a) * y - iron.d * x;
  return Math.hypot(cos, sin) < Math.abs(turning) * field.h;
}
