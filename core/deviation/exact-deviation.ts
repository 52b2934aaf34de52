import { checkFinite } from '../angle/check-number.js';
import { atan2Degrees } from '../angle/trigonometry.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { checkCoefficients, harmonics, type Harmonics } from './approximate-deviation.js';

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
 * One of the two deviations, degrees (-180, 180], that may go with a compass heading, whose
 * harmonics are given; null where it does not.
 *
 * Derived: the force across compass north vanishes, so
 * sin δ = 𝔄 cos δ + 𝔅 sin ζ′ + ℭ cos ζ′ + 𝔇 sin (2ζ′ + δ) + 𝔈 cos (2ζ′ + δ), which is
 * p sin δ − q cos δ = s; of its two roots those count on which the needle points north, that is
 * where cos δ + 𝔄 sin δ + 𝔅 cos ζ′ − ℭ sin ζ′ + 𝔇 cos (2ζ′ + δ) − 𝔈 sin (2ζ′ + δ) is above 0.
 */
function rootOf(exact: ExactCoefficients, { sin, cos, sin2, cos2 }: Harmonics, side: 1 | -1): number | null {
  const { A, B, C, D, E } = exact;
  const p = 1 - D * cos2 + E * sin2;
  const q = A + D * sin2 + E * cos2;
  const reach = Math.sqrt(p * p + q * q);
  const sine = (B * sin + C * cos) / reach;
  const least = ROUNDING * inPlay(exact);
  // Where that is no sine of anything, this and all that follows is no number.
  const cosine = side * Math.sqrt((1 - sine) * (1 + sine));
  // Where the two are one it is the first.
  if (reach <= least || (cosine === 0 && side < 0)) return null;
  // By the theorems of addition: δ is the angle of (p, q) and one of the two whose sine this is, one on the other.
  const sinDeviation = (q * cosine + p * sine) / reach;
  const cosDeviation = (p * cosine - q * sine) / reach;
  const ahead = cosDeviation * (1 + D * cos2 - E * sin2) + sinDeviation * (A - D * sin2 - E * cos2) + B * cos - C * sin;
  return ahead > least ? wrap180(atan2Degrees(sinDeviation, cosDeviation)) : null;
}

/**
 * The one deviation that goes with a compass heading; null where none does, or two, as the card
 * stalls or runs back when the ship turns. Of coefficients that have been checked: a card is
 * asked for every degree. Throws `RangeError` naming a heading that is not finite.
 */
export function onlyDeviation(exact: ExactCoefficients, compassHeading: number): number | null {
  checkFinite('compassHeading', compassHeading);
  const waves = harmonics(compassHeading);
  const one = rootOf(exact, waves, 1);
  const other = rootOf(exact, waves, -1);
  return other === null ? one : one === null ? other : null;
}

/**
 * Deviation in degrees, east positive, on a compass heading (any finite degrees); null where
 * that heading is shown on no magnetic heading or on two. Errors as `exactDeviation`.
 */
export function exactDeviationByCompass(exact: ExactCoefficients, compassHeading: number): number | null {
  checkExact('exact', exact);
  return onlyDeviation(exact, compassHeading);
}

/**
 * The magnetic headings, degrees [0, 360), on which the compass shows a given heading (any finite
 * degrees): one as a rule, none or two where the iron is very strong. Errors as `exactDeviation`.
 */
export function exactMagneticHeadings(exact: ExactCoefficients, compassHeading: number): readonly number[] {
  checkExact('exact', exact);
  checkFinite('compassHeading', compassHeading);
  const waves = harmonics(compassHeading);
  return ([1, -1] as const).flatMap((side) => {
    const deviation = rootOf(exact, waves, side);
    return deviation === null ? [] : wrap360(compassHeading + deviation);
  });
}
