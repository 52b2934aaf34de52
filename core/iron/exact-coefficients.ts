import { checkField, type EarthField } from './earth-field.js';
import { finiteOrNull } from './finite-or-null.js';
import { heeledParameters } from './heeled-parameters.js';
import type { IronParameters } from './iron-parameters.js';

/** Exact coefficients 𝔄 to 𝔈: pure numbers, to be multiplied by sines and cosines of the magnetic heading. */
export interface IronCoefficients {
  /** Mean force towards magnetic north over H; 1 without iron, about 0.8 to 0.95 in a steel ship. */
  readonly lambda: number;
  /** Null where λ is 0; B and C also where H is 0. */
  readonly A: number | null;
  readonly B: number | null;
  readonly C: number | null;
  readonly D: number | null;
  readonly E: number | null;
}

/** λ of parameters already heeled. */
export function lambdaOf(iron: IronParameters): number {
  return 1 + (iron.a + iron.e) / 2;
}

/**
 * Exact coefficients of a ship at a place; `heel` in degrees, starboard side down positive.
 *
 * λ = 1 + (a + e)/2; λ𝔄 = (d − b)/2; λ𝔇 = (a − e)/2; λ𝔈 = (d + b)/2;
 * λH𝔅 = P + cZ; λHℭ = Q + fZ: the old Admiralty notation, confirmed from Poisson's equations.
 * Where λ is negative the needle points south on the whole and tan δ needs the other quadrant.
 * Throws `RangeError` as `ironDeviation`.
 */
export function exactCoefficients(parameters: IronParameters, field: EarthField, heel = 0): IronCoefficients {
  checkField('field', field);
  const iron = heeledParameters(parameters, heel);
  const lambda = lambdaOf(iron);
  return {
    lambda,
    A: finiteOrNull((iron.d - iron.b) / 2 / lambda),
    B: finiteOrNull((iron.P + iron.c * field.z) / (lambda * field.h)),
    C: finiteOrNull((iron.Q + iron.f * field.z) / (lambda * field.h)),
    D: finiteOrNull((iron.a - iron.e) / 2 / lambda),
    E: finiteOrNull((iron.d + iron.b) / 2 / lambda),
  };
}
