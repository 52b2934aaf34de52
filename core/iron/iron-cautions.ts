import { checkFinite } from '../angle/check-number.js';
import { note, warning, type Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { EarthField } from './earth-field.js';
import type { IronParameters } from './iron-parameters.js';
import { needle } from './needle.js';

/** Beyond this a ship is in distress and a compass on its gimbals; no table was ever made for it. */
const LARGEST_HEEL = 30;

/**
 * What the user should know before believing a curve of this ship:
 * `iron.heel-large`, `iron.lambda-not-positive`, and `iron.needle-…` with the behaviour of
 * the needle where it does other than direct. Arguments and errors as `ironDeviation`.
 */
export function ironCautions(parameters: IronParameters, field: EarthField, heel = 0): Caution[] {
  checkFinite('heel', heel);
  const { behaviour, lambda, lostOn, weakest } = needle(parameters, field, heel);
  const cautions: Caution[] = [];
  if (Math.abs(heel) > LARGEST_HEEL) cautions.push(note('iron.heel-large', { heel: quantity(heel, 'angle') }));
  if (lambda <= 0) cautions.push(warning('iron.lambda-not-positive', { lambda: quantity(lambda, 'number') }));
  if (behaviour !== 'directs') {
    cautions.push(
      warning(`iron.needle-${behaviour}`, {
        heading: quantity(lostOn[0] ?? weakest.magneticHeading, 'bearing'),
        force: quantity(weakest.directiveForce, 'nanotesla'),
      }),
    );
  }
  return cautions;
}
