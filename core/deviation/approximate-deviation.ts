import { checkFinite } from '../angle/check-number.js';
import { arcOfDegrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';

/**
 * The five approximate coefficients, degrees, east positive: A constant, B and C semicircular,
 * D and E quadrantal. Each is the largest value its own part of the deviation takes.
 */
export interface ApproximateCoefficients {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly D: number;
  readonly E: number;
}

export type CoefficientName = 'A' | 'B' | 'C' | 'D' | 'E';

export const coefficientNames: readonly CoefficientName[] = ['A', 'B', 'C', 'D', 'E'];

/** Throws `RangeError` naming the coefficient that is missing or not a finite number. */
export function checkCoefficients(argument: string, coefficients: Readonly<Record<CoefficientName, number>>): void {
  for (const name of coefficientNames) checkFinite(`${argument}.${name}`, coefficients[name]);
}

/** Constant, sine and cosine of a heading, sine and cosine of twice the heading. */
export type Harmonics = readonly [one: number, sin: number, cos: number, sin2: number, cos2: number];

/**
 * What each coefficient is multiplied by on a compass heading, in the order A to E; with a
 * magnetic heading and exact coefficients the same five make the numerator of tan δ.
 */
export function harmonics(heading: number): Harmonics {
  const place = 2 * heading;
  if (!Number.isInteger(place) || place < 0 || place > 720) return wavesOf(heading);
  return (onHalfDegrees[place] ??= wavesOf(heading));
}

/** Charts, cards and readings ask for the same whole and half degrees, hundreds of times for each key typed. */
const onHalfDegrees: (Harmonics | undefined)[] = [];

function wavesOf(heading: number): Harmonics {
  return [1, sinDegrees(heading), cosDegrees(heading), sinDegrees(2 * heading), cosDegrees(2 * heading)];
}

/**
 * Deviation in degrees, east positive, on a compass heading (any finite degrees):
 * δ = A + B sin ζ′ + C cos ζ′ + D sin 2ζ′ + E cos 2ζ′.
 *
 * Source: Elementary Manual for the Deviations of the Compass in Iron Ships, which calls it
 * good below about 20°; for tenths of a degree it is not: 0.3° out at worst in ships of 7°,
 * 1.7° in ships of 16° (computed from Poisson's equations). Larger deviations need `exactDeviation`.
 * Throws `RangeError` naming a coefficient or heading that is not a finite number.
 */
export function deviationAt(coefficients: ApproximateCoefficients, compassHeading: number): number {
  checkCoefficients('coefficients', coefficients);
  checkFinite('compassHeading', compassHeading);
  return approximateDeviation(coefficients, compassHeading);
}

/** The same of coefficients and a heading that have been checked: a card is asked for every degree. */
export function approximateDeviation(coefficients: ApproximateCoefficients, compassHeading: number): number {
  const [one, sin, cos, sin2, cos2] = harmonics(compassHeading);
  const { A, B, C, D, E } = coefficients;
  return A * one + B * sin + C * cos + D * sin2 + E * cos2;
}

/** Change of that deviation for one degree of compass heading, a pure number. */
export function approximateSlope(coefficients: ApproximateCoefficients, compassHeading: number): number {
  const [, sin, cos, sin2, cos2] = harmonics(compassHeading);
  const { B, C, D, E } = coefficients;
  return arcOfDegrees(B * cos - C * sin + 2 * (D * cos2 - E * sin2));
}
