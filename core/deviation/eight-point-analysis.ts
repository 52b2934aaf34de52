import { checkFinite } from '../angle/check-number.js';
import type { ApproximateCoefficients } from './approximate-deviation.js';

/** Deviations, degrees, east positive, on the eight principal compass headings. */
export interface EightDeviations {
  readonly N: number;
  readonly NE: number;
  readonly E: number;
  readonly SE: number;
  readonly S: number;
  readonly SW: number;
  readonly W: number;
  readonly NW: number;
}

/** The eight points by name, 45° apart from north. */
export const eightPointNames: readonly (keyof EightDeviations)[] = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'];

/**
 * The five approximate coefficients, degrees, by the adjuster's arithmetic: A the mean of all;
 * B half of E less W; C half of N less S; D and E from the intercardinals and the cardinals.
 * Least squares uses all eight readings for B and C too, and differs a little.
 *
 * Source: Handbook of Magnetic Compass Adjustment, article 501.
 * Throws `RangeError` naming a deviation that is missing or not a finite number.
 */
export function eightPointAnalysis(deviations: EightDeviations): ApproximateCoefficients {
  for (const point of eightPointNames) checkFinite(`deviations.${point}`, deviations[point]);
  const { N, NE, E, SE, S, SW, W, NW } = deviations;
  return {
    A: (N + NE + E + SE + S + SW + W + NW) / 8,
    B: (E - W) / 2,
    C: (N - S) / 2,
    D: (NE + SW - SE - NW) / 4,
    E: (N + S - E - W) / 4,
  };
}
