import type { ApproximateCoefficients } from './approximate-deviation.js';
import type { ExactCoefficients } from './exact-deviation.js';

/** One line of a table: compass heading, degrees, and the deviation on it, degrees, east positive. */
export interface DeviationRow {
  readonly heading: number;
  readonly deviation: number;
}

/**
 * A deviation card as plain data, fit to be stored and to travel in an event: a table by
 * compass heading, approximate coefficients in degrees, or exact ones as pure numbers.
 * What it says is read with `deviationCurve`; data from outside comes in by `readDeviationCard`.
 */
export type DeviationCard =
  | { readonly kind: 'table'; readonly rows: readonly DeviationRow[] }
  | { readonly kind: 'approximate'; readonly coefficients: ApproximateCoefficients }
  | { readonly kind: 'exact'; readonly coefficients: ExactCoefficients };
