import { checkFinite } from '../angle/check-number.js';
import { asinDegrees, atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { checkCoefficients, harmonics } from './approximate-deviation.js';

/**
 * The five exact coefficients, pure numbers: forces on the needle in units of λH.
 * λ, the mean force towards magnetic north over H, does not enter the deviation.
 */
export interface ExactCoefficients {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly D: number;
  readonly E: number;
  readonly lambda?: number;
}

/** Forces this small beside those that cancel in them are rounding. */
const ROUNDING = 1e-13;

/** Throws `RangeError` naming the coefficient that is missing or not a finite number. */
export function checkExact(argument: string, exact: ExactCoefficients): void {
  checkCoefficients(argument, exact);
  if (exact.lambda !== undefined) checkFinite(`${argument}.lambda`, exact.lambda);
}

/** Forces on the needle towards magnetic east and north, in units of λH, on a magnetic heading. */
export function forces({ A, B, C, D, E }: ExactCoefficients, magneticHeading: number): { east: number; north: number } {
  const { sin, cos, sin2, cos2 } = harmonics(magneticHeading);
  return {
    east: A + B * sin + C * cos + D * sin2 + E * cos2,
    north: 1 + B * cos - C * sin + D * cos2 - E * sin2,
  };
}

function inPlay({ A, B, C, D, E }: ExactCoefficients): number {
  return 1 + Math.abs(A) + Math.abs(B) + Math.abs(C) + Math.abs(D) + Math.abs(E);
}

/**
 * Deviation in degrees (-180, 180], east positive, on a magnetic heading (any finite degrees):
 * tan δ = (𝔄 + 𝔅 sin ζ + ℭ cos ζ + 𝔇 sin 2ζ + 𝔈 cos 2ζ) / (1 + 𝔅 cos ζ − ℭ sin ζ + 𝔇 cos 2ζ − 𝔈 sin 2ζ),
 * for deviations of any size; null where the forces cancel and nothing directs the needle.
 *
 * Source: from memory, confirmed by Poisson's equations.
 * Throws `RangeError` naming a coefficient or heading that is not a finite number.
 */
export function exactDeviation(exact: ExactCoefficients, magneticHeading: number): number | null {
  checkExact('exact', exact);
  checkFinite('magneticHeading', magneticHeading);
  const { east, north } = forces(exact, magneticHeading);
  return Math.hypot(east, north) <= ROUNDING * inPlay(exact) ? null : wrap180(atan2Degrees(east, north));
}

/**
 * Every deviation, degrees (-180, 180], that goes with a compass heading: one as a rule, two or
 * none where the coefficients are so large that the card stalls or runs back as the ship turns.
 *
 * Derived: the force across compass north vanishes, so
 * sin δ = 𝔄 cos δ + 𝔅 sin ζ′ + ℭ cos ζ′ + 𝔇 sin (2ζ′ + δ) + 𝔈 cos (2ζ′ + δ), which is
 * p sin δ − q cos δ = s; of its two roots those count on which the needle points north.
 */
export function exactDeviationsByCompass(exact: ExactCoefficients, compassHeading: number): readonly number[] {
  checkExact('exact', exact);
  checkFinite('compassHeading', compassHeading);
  const { A, B, C, D, E } = exact;
  const { sin, cos, sin2, cos2 } = harmonics(compassHeading);
  const p = 1 - D * cos2 + E * sin2;
  const q = A + D * sin2 + E * cos2;
  const s = B * sin + C * cos;
  const reach = Math.hypot(p, q);
  if (reach <= ROUNDING * inPlay(exact) || Math.abs(s) > reach) return [];
  const middle = atan2Degrees(q, p);
  const turn = asinDegrees(s / reach);
  const roots = Math.abs(turn) === 90 ? [middle + turn] : [middle + turn, middle + 180 - turn];
  return roots.map(wrap180).filter((deviation) => {
    const { east, north } = forces(exact, compassHeading + deviation);
    return north * cosDegrees(deviation) + east * sinDegrees(deviation) > ROUNDING * inPlay(exact);
  });
}

/**
 * Deviation in degrees, east positive, on a compass heading (any finite degrees); null where
 * that heading is shown on no magnetic heading or on two. Errors as `exactDeviation`.
 */
export function exactDeviationByCompass(exact: ExactCoefficients, compassHeading: number): number | null {
  const [deviation, second] = exactDeviationsByCompass(exact, compassHeading);
  return deviation === undefined || second !== undefined ? null : deviation;
}

/**
 * The magnetic headings, degrees [0, 360), on which the compass shows a given heading (any finite
 * degrees): one as a rule, none or two where the iron is very strong. Errors as `exactDeviation`.
 */
export function exactMagneticHeadings(exact: ExactCoefficients, compassHeading: number): readonly number[] {
  return exactDeviationsByCompass(exact, compassHeading).map((deviation) => wrap360(compassHeading + deviation));
}
