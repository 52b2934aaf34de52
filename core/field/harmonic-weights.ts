import { decimalYear } from '../time/decimal-year.js';
import { DEGREE, placeOfG } from './field-coefficients.js';
import type { FieldCoefficients } from './field-coefficients.js';
import { modelAt } from './magnetic-models.js';
import type { MagneticModelName } from './magnetic-models.js';

/**
 * Coefficients made ready for `orderSums`: for each order m from 0 and each degree n
 * from max(m, 1), six numbers in a row,
 *
 *   g, n·g, κ·g⁺, h, n·h, κ·h⁺
 *
 * where g and h carry the factor from Schmidt's to Gauss's normalisation, and κ·g⁺ is
 * the next degree's coefficient times κ(n+1,m), its share in the slope (legendre.ts).
 */
export type HarmonicWeights = Float64Array;

export const TERMS = ((DEGREE + 1) * (DEGREE + 2)) / 2 - 1;

/** Gauss's function of degree n, order m times this is Schmidt's: built up degree by degree. */
function schmidtFactor(n: number, m: number): number {
  let factor = 1;
  for (let degree = 2; degree <= n; degree++) factor *= (2 * degree - 1) / degree;
  for (let order = 1; order <= m; order++) {
    factor *= Math.sqrt(((n - order + 1) * (order === 1 ? 2 : 1)) / (n + order));
  }
  return factor;
}

/** The share of degree n-1 in the slope of degree n. */
function slopeShare(n: number, m: number): number {
  return (n * n - m * m) / (2 * n - 1);
}

function weigh(main: readonly number[], change: readonly number[], years: number): HarmonicWeights {
  const coefficient = (n: number, m: number, isH: boolean): number => {
    if (n > DEGREE || (isH && m === 0)) return 0;
    const place = placeOfG(n, m) + (isH ? 1 : 0);
    return schmidtFactor(n, m) * ((main[place] as number) + years * (change[place] as number));
  };
  const weights = new Float64Array(6 * TERMS);
  let at = 0;
  for (let m = 0; m <= DEGREE; m++) {
    for (let n = Math.max(m, 1); n <= DEGREE; n++) {
      for (const isH of [false, true]) {
        const own = coefficient(n, m, isH);
        weights[at++] = own;
        weights[at++] = n * own;
        weights[at++] = slopeShare(n + 1, m) * coefficient(n + 1, m, isH);
      }
    }
  }
  return weights;
}

/** A model at one instant. */
export interface TimedModel {
  readonly name: MagneticModelName;
  readonly coefficients: FieldCoefficients;
  /** Years since the epoch. */
  readonly years: number;
  /** For the field, nT, and for its change in a year. */
  readonly main: HarmonicWeights;
  readonly change: HarmonicWeights;
}

// Callers ask for many places at one date, so the last few dates are kept. What is
// kept depends on nothing but its key; the models never change.
const KEPT = 4;
const kept: { time: number; asked: MagneticModelName | undefined; timed: TimedModel }[] = [];
const changes = new Map<FieldCoefficients, HarmonicWeights>();

/** The model at an instant; throws `RangeError` as `modelAt` does. */
export function timedModel(instant: Date, asked?: MagneticModelName): TimedModel {
  const time = instant instanceof Date ? instant.getTime() : NaN;
  for (const entry of kept) if (entry.time === time && entry.asked === asked) return entry.timed;
  const { name, coefficients } = modelAt(instant, asked);
  const years = decimalYear(instant) - coefficients.epoch;
  const change = changes.get(coefficients) ?? weigh(coefficients.change, coefficients.change, 0);
  changes.set(coefficients, change);
  const timed = { name, coefficients, years, main: weigh(coefficients.main, coefficients.change, years), change };
  kept.unshift({ time, asked, timed });
  if (kept.length > KEPT) kept.pop();
  return timed;
}
