import { asinDegrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { checkRange } from '../angle/check-number.js';
import { coefficientNames, type ApproximateCoefficients } from './approximate-deviation.js';
import { checkExact, type ExactCoefficients } from './exact-deviation.js';

/** The formulas hold for deviations up to 40°; coefficients beyond a right angle have no sense in them. */
const MOST = 90;

/** Versine, 1 − cos. */
function vers(degrees: number): number {
  return 1 - cosDegrees(degrees);
}

/**
 * Exact coefficients (pure numbers) from approximate ones by compass heading (degrees), good to
 * the third decimal for deviations up to 40°. `fitDeviation` on the deviations themselves is
 * better where they are at hand.
 *
 * Source: Elementary Manual for the Deviations of the Compass in Iron Ships (1870, 1875).
 * Throws `RangeError` naming a coefficient that is not a number from −90 to 90.
 */
export function exactFromApproximate(coefficients: ApproximateCoefficients): ExactCoefficients {
  for (const name of coefficientNames) checkRange(`coefficients.${name}`, coefficients[name], -MOST, MOST);
  const { A, B, C, D, E } = coefficients;
  const sin = sinDegrees;
  return {
    A: sin(A),
    B: sin(B) * (1 + sin(D) / 2 + vers(B) / 12 - vers(C) / 4) + (sin(C) * sin(E)) / 2,
    C: sin(C) * (1 - sin(D) / 2 - vers(B) / 4 + vers(C) / 12) + (sin(B) * sin(E)) / 2,
    D: sin(D) * (1 + vers(D) / 3),
    E: sin(E) - sin(A) * sin(D),
  };
}

/**
 * The approximate coefficients, degrees, that give these exact ones by `exactFromApproximate`;
 * null where none inside ±90° do. Found by correcting each until its formula agrees.
 * Throws `RangeError` naming a coefficient that is not a finite number.
 */
export function approximateFromExact(exact: ExactCoefficients): ApproximateCoefficients | null {
  checkExact('exact', exact);
  let sines: ApproximateCoefficients = { A: exact.A, B: exact.B, C: exact.C, D: exact.D, E: exact.E };
  for (let i = 0; i < 200; i++) {
    if (coefficientNames.some((name) => Math.abs(sines[name]) > 1)) return null;
    const { A, B, C, D, E } = sines;
    const degrees = { A: asinDegrees(A), B: asinDegrees(B), C: asinDegrees(C), D: asinDegrees(D), E: asinDegrees(E) };
    const reached = exactFromApproximate(degrees);
    const misses = coefficientNames.map((name) => exact[name] - reached[name]);
    if (misses.every((miss) => Math.abs(miss) < 1e-14)) return degrees;
    const [a, b, c, d, e] = misses as [number, number, number, number, number];
    sines = { A: A + a, B: B + b, C: C + c, D: D + d, E: E + e };
  }
  return null;
}
