import { DEGREE, PER_NANOTESLA, placeOfG } from './field-coefficients.js';

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

/** The weights of coefficients `years` after the epoch of `main`, in the order of `FieldCoefficients`. */
export function weigh(main: readonly number[], change: readonly number[], years: number): HarmonicWeights {
  const weights = new Float64Array(2 * TERMS);
  let at = 0;
  for (let m = 0; m <= DEGREE; m++) {
    for (let n = Math.max(m, 1); n <= DEGREE; n++) {
      const factor = schmidtFactor(n, m);
      const place = placeOfG(n, m);
      const current = (index: number) => factor * ((main[index] as number) / PER_NANOTESLA + years * ((change[index] as number) / PER_NANOTESLA));
      weights[at++] = current(place);
      weights[at++] = m === 0 ? 0 : current(place + 1);
    }
  }
  return weights;
}
