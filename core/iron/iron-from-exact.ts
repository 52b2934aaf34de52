import { checkFinite } from '../angle/check-number.js';
import { checkField, type EarthField } from './earth-field.js';
import { noIron, type IronParameters } from './iron-parameters.js';

/** Exact coefficients, all known; λ is 1 where it is not given, which changes no deviation. */
export interface KnownCoefficients {
  readonly lambda?: number | null | undefined;
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly D: number;
  readonly E: number;
}

/**
 * Iron that gives these coefficients at a place: Poisson's equations the other way.
 *
 * a, b, d, e follow from λ, 𝔄, 𝔇, 𝔈; one place cannot tell P from c or Q from f, so all of 𝔅
 * and ℭ goes into P and Q, and the vertical rods stay 0: right at this place, upright, only.
 * Throws `RangeError` naming a coefficient or force that is not a finite number.
 */
export function ironFromExact(exact: KnownCoefficients, field: EarthField): IronParameters {
  checkField('field', field);
  const lambda = exact.lambda ?? 1;
  checkFinite('exact.lambda', lambda);
  const { A, B, C, D, E } = exact;
  for (const [name, value] of Object.entries({ A, B, C, D, E })) checkFinite(`exact.${name}`, value);
  return {
    ...noIron,
    a: lambda * (1 + D) - 1,
    b: lambda * (E - A),
    d: lambda * (E + A),
    e: lambda * (1 - D) - 1,
    P: lambda * field.h * B,
    Q: lambda * field.h * C,
  };
}
