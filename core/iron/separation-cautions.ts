import { degreesOfArc } from '../angle/trigonometry.js';
import { note, warning, type Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { IronObservation } from './iron-observation.js';
import type { SemicircularIron } from './semicircular-line.js';
import { valuesGiven } from './unchanging-iron.js';

/** Vertical forces nearer than this part of the strongest field separate badly: noise is multiplied. */
const NEAR = 0.2;
/** λ, measured twice, that differs by more than this is not of one ship in one state. */
const SAME_LAMBDA = 0.01;
/** So with A, D and E, degrees: more than a careful swing is wrong by. */
const SAME_COEFFICIENT = 1;

/** The range of some numbers; 0 where there are none. */
function rangeOf(values: readonly number[]): number {
  return values.length === 0 ? 0 : Math.max(...values) - Math.min(...values);
}

/**
 * Why a separation fails or is doubtful: `separate.one-place`, `separate.places-alike`
 * (nothing separated), `separate.places-near`, `separate.lambda-differs`,
 * `separate.ship-changed` (A, D or E did, which no change of place does).
 */
export function separationCautions(
  observations: readonly IronObservation[],
  overLambda: SemicircularIron,
): Caution[] {
  const cautions: Caution[] = [];
  const apart = rangeOf(observations.map(({ field }) => field.z));
  const strongest = Math.max(0, ...observations.map(({ field }) => Math.hypot(field.h, field.z)));
  const swings = (name: 'B' | 'C'): number => observations.filter(({ exact }) => exact[name] !== null).length;
  if (Math.min(swings('B'), swings('C')) < 2) cautions.push(warning('separate.one-place'));
  else if (overLambda.c === null || overLambda.f === null) cautions.push(warning('separate.places-alike'));
  else if (apart < NEAR * strongest) {
    cautions.push(note('separate.places-near', { apart: quantity(apart, 'nanotesla') }));
  }

  const lambdas = rangeOf(valuesGiven(observations, 'lambda'));
  if (lambdas > SAME_LAMBDA) cautions.push(warning('separate.lambda-differs', { by: quantity(lambdas, 'number') }));
  for (const name of ['A', 'D', 'E'] as const) {
    const by = degreesOfArc(rangeOf(valuesGiven(observations, name)));
    if (by > SAME_COEFFICIENT) {
      cautions.push(warning('separate.ship-changed', { coefficient: name, by: quantity(by, 'angle') }));
    }
  }
  return cautions;
}
