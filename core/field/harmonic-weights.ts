import { decimalYear } from '../time/decimal-year.js';
import { DEGREE, placeOfG } from './field-coefficients.js';
import type { FieldCoefficients } from './field-coefficients.js';
import { modelAt } from './magnetic-models.js';
import type { MagneticModelName } from './magnetic-models.js';

/**
 * Coefficients made ready for `orderSums`: for each order m from 0 and each degree n
 * from max(m, 1), g(n,m) and h(n,m) in a row, brought from Schmidt's normalisation to
 * Gauss's, in which the recursion of legendre.ts is cheapest.
 */
export type HarmonicWeights = Float64Array;

/** How many pairs of degree and order there are; degree 0 is no part of the field. */
export const TERMS = ((DEGREE + 1) * (DEGREE + 2)) / 2 - 1;

/** Gauss's function of degree n, order m times this is Schmidt's. */
function schmidtFactor(n: number, m: number): number {
  let factor = 1;
  for (let degree = 2; degree <= n; degree++) factor *= (2 * degree - 1) / degree;
  for (let order = 1; order <= m; order++) {
    factor *= Math.sqrt(((n - order + 1) * (order === 1 ? 2 : 1)) / (n + order));
  }
  return factor;
}

function weigh(main: readonly number[], change: readonly number[], years: number): HarmonicWeights {
  const weights = new Float64Array(2 * TERMS);
  let at = 0;
  for (let m = 0; m <= DEGREE; m++) {
    for (let n = Math.max(m, 1); n <= DEGREE; n++) {
      const factor = schmidtFactor(n, m);
      const place = placeOfG(n, m);
      const current = (index: number) => factor * ((main[index] as number) + years * (change[index] as number));
      weights[at++] = current(place);
      weights[at++] = m === 0 ? 0 : current(place + 1);
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
const NO_CHANGE = new Array<number>(DEGREE * (DEGREE + 2)).fill(0);
const kept: { time: number; asked: MagneticModelName | undefined; timed: TimedModel }[] = [];
const changes = new Map<FieldCoefficients, HarmonicWeights>();

/** The model at an instant; throws `RangeError` as `modelAt` does. */
export function timedModel(instant: Date, asked?: MagneticModelName): TimedModel {
  const time = instant instanceof Date ? instant.getTime() : NaN;
  for (const entry of kept) if (entry.time === time && entry.asked === asked) return entry.timed;
  const { name, coefficients } = modelAt(instant, asked);
  const years = decimalYear(instant) - coefficients.epoch;
  const change = changes.get(coefficients) ?? weigh(coefficients.change, NO_CHANGE, 0);
  changes.set(coefficients, change);
  const timed = { name, coefficients, years, main: weigh(coefficients.main, coefficients.change, years), change };
  kept.unshift({ time, asked, timed });
  if (kept.length > KEPT) kept.pop();
  return timed;
}
