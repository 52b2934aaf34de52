import { DEGREE } from './field-coefficients.js';
import type { HarmonicWeights } from './harmonic-weights.js';

/** Length of the sums: north, east and down for each order, each with cos mλ and with sin mλ. */
export const ORDER_SUMS = 6 * (DEGREE + 1);

/**
 * Adds up the degrees of each order m, so that the field at longitude λ is
 * Σ sums × cos mλ + sums × sin mλ. In the axes of the sphere, from the values and slopes
 * of `fillLegendre` for one latitude:
 *
 *   north = Σ (g cos mλ + h sin mλ) slope
 *   east  = Σ m (g sin mλ - h cos mλ) value
 *   down  = -Σ (n+1) (g cos mλ + h sin mλ) value × (cos φ unless m = 0)
 *
 * Source: WMM2020 technical report, equations 10 to 12.
 */
export function orderSums(weights: HarmonicWeights, table: Float64Array, cosLatitude: number, sums: Float64Array): void {
  // A copy, because engines read an imported constant anew at every turn of a loop.
  const degrees = DEGREE;
  let at = 0;
  for (let m = 0; m <= degrees; m++) {
    let g = 0;
    let h = 0;
    let gRunning = 0;
    let hRunning = 0;
    let gSlope = 0;
    let hSlope = 0;
    for (let n = m || 1; n <= degrees; n++, at += 2) {
      const value = table[at] as number;
      const slope = table[at + 1] as number;
      const gWeight = weights[at] as number;
      const hWeight = weights[at + 1] as number;
      g += gWeight * value;
      h += hWeight * value;
      // Adding up the sums so far counts degree n DEGREE + 1 - n times: n + 1 times is the rest.
      gRunning += g;
      hRunning += h;
      gSlope += gWeight * slope;
      hSlope += hWeight * slope;
    }
    const spread = m === 0 ? -1 : -cosLatitude;
    const sum = 6 * m;
    sums[sum] = gSlope;
    sums[sum + 1] = hSlope;
    sums[sum + 2] = -m * h;
    sums[sum + 3] = m * g;
    sums[sum + 4] = spread * ((degrees + 2) * g - gRunning);
    sums[sum + 5] = spread * ((degrees + 2) * h - hRunning);
  }
}
