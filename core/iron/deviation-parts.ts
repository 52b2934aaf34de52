import { degreesOfArc, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { checkFinite } from '../angle/check-number.js';
import { checkField, type EarthField } from './earth-field.js';
import { lambdaOf } from './exact-coefficients.js';
import { heeledParameters } from './heeled-parameters.js';
import type { IronParameters } from './iron-parameters.js';

/** One number for each cause of deviation, degrees, east positive. */
export interface DeviationParts {
  /** Constant: unsymmetrical horizontal soft iron, b and d. */
  readonly A: number;
  /** Semicircular, fore and aft: P, and what the vertical field induces through c. */
  readonly permanentB: number;
  readonly inducedB: number;
  /** Semicircular, athwartships: Q, and what the vertical field induces through f. */
  readonly permanentC: number;
  readonly inducedC: number;
  /** Quadrantal: symmetrical horizontal soft iron, a and e; then unsymmetrical, b and d. */
  readonly D: number;
  readonly E: number;
}

/**
 * The largest value of each of the parts, degrees; null where λ or H is 0 and there are none.
 *
 * Each is the exact coefficient taken as an arc, so that those of one ship compare and add.
 * `heel` in degrees, starboard side down positive: heeling mixes R and k into C.
 * Throws `RangeError` as `ironDeviation`.
 */
export function largestParts(parameters: IronParameters, field: EarthField, heel = 0): DeviationParts | null {
  checkField('field', field);
  const iron = heeledParameters(parameters, heel);
  const { a, b, c, d, e, f, P, Q } = iron;
  const lambda = lambdaOf(iron);
  const force = lambda * field.h;
  const parts: DeviationParts = {
    A: degreesOfArc((d - b) / 2 / lambda),
    permanentB: degreesOfArc(P / force),
    inducedB: degreesOfArc((c * field.z) / force),
    permanentC: degreesOfArc(Q / force),
    inducedC: degreesOfArc((f * field.z) / force),
    D: degreesOfArc((a - e) / 2 / lambda),
    E: degreesOfArc((d + b) / 2 / lambda),
  };
  return Object.values(parts).every(Number.isFinite) ? parts : null;
}

/**
 * The parts on one compass heading, degrees: A; B sin ζ′; C cos ζ′; D sin 2ζ′; E cos 2ζ′.
 *
 * The textbook's five curves. Their sum is the deviation as long as that is small; what is
 * left over belongs to their product and is no single iron's doing (`IronCurvePoint.rest`).
 * Throws `RangeError` naming `compassHeading` unless it is finite.
 */
export function partsOnHeading(largest: DeviationParts, compassHeading: number): DeviationParts {
  checkFinite('compassHeading', compassHeading);
  const sin = sinDegrees(compassHeading);
  const cos = cosDegrees(compassHeading);
  return {
    A: largest.A,
    permanentB: largest.permanentB * sin,
    inducedB: largest.inducedB * sin,
    permanentC: largest.permanentC * cos,
    inducedC: largest.inducedC * cos,
    D: largest.D * sinDegrees(2 * compassHeading),
    E: largest.E * cosDegrees(2 * compassHeading),
  };
}

/** The parts together, degrees: the deviation to first order. */
export function sumOfParts(parts: DeviationParts): number {
  return parts.A + parts.permanentB + parts.inducedB + parts.permanentC + parts.inducedC + parts.D + parts.E;
}
