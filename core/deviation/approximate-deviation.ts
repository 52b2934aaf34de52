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

/**
 * Sine and cosine of a heading and of twice the heading: what the coefficients B to E are
 * multiplied by on a compass heading; with a magnetic heading and exact coefficients the same
 * four make the numerator of tan δ. By their names: a list taken apart leaves more behind it
 * than its sum, and that a thousand times for each key typed in a swing.
 */
export interface Harmonics {
  readonly sin: number;
  readonly cos: number;
  readonly sin2: number;
  readonly cos2: number;
}

/** The harmonics of a heading, degrees. */
export function harmonics(heading: number): Harmonics {
  const place = 2 * heading;
  if (!Number.isInteger(place) || place < 0 || place > 720) return wavesOf(heading);
  return (onHalfDegrees[place] ??= wavesOf(heading));
}

/** Charts, cards and readings ask for the same whole and half degrees, hundreds of times for each key typed. */
const onHalfDegrees: (Harmonics | undefined)[] = [];

function wavesOf(heading: number): Harmonics {
  return { sin: sinDegrees(heading), cos: cosDegrees(heading), sin2: sinDegrees(2 * heading), cos2: cosDegrees(2 * heading) };
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
  const { sin, cos, sin2, cos2 } = harmonics(compassHeading);
  const { A, B, C, D, E } = coefficients;
  return A + B * sin + C * cos + D * sin2 + E * cos2;
}

/** Change of that deviation for one degree of compass heading, a pure number. */
export function approximateSlope(coefficients: ApproximateCoefficients, compassHeading: number): number {
  const { sin, cos, sin2, cos2 } = harmonics(compassHeading);
  const { B, C, D, E } = coefficients;
  return arcOfDegrees(B * cos - C * sin + 2 * (D * cos2 - E * sin2));
}
