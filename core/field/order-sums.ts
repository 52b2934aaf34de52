import { DEGREE } from './field-coefficients.js';
import type { GeocentricPlace } from './geocentric.js';
import type { HarmonicWeights } from './harmonic-weights.js';

/** Six sums for each order: north, east and down, each with cos mλ and with sin mλ. */
export const SUMS = 6 * (DEGREE + 1);

/**
 * Adds the degrees up for each order m, so that the field at longitude λ is the sum over
 * m of sums × cos mλ and sums × sin mλ. In the axes of the sphere:
 *
 *   north = Σ (g cos mλ + h sin mλ) dP/dθ
 *   east  = Σ m (g sin mλ - h cos mλ) P / cos φ
 *   down  = -Σ (n+1) (g cos mλ + h sin mλ) P
 *
 * each with its (a/r)^(n+2); θ is the colatitude. The slope needs no division:
 * dP(n,m)/dθ = n sin φ T(n,m) - κ(n,m) (a/r) T(n-1,m) for m > 0, with
 * κ = (n² - m²) / (2n-1), and dP(n,0)/dθ = -n cos φ T(n,1).
 * Source: WMM2020 technical report, equations 10 to 12; the slopes worked out from the
 * recursion.
 */
export function orderSums(
  weights: HarmonicWeights,
  table: Float64Array,
  place: GeocentricPlace,
  ratio: number,
  sums: Float64Array,
): void {
  const { sinLatitude, cosLatitude } = place;
  let northOfZero = 0;
  let downOfZero = 0;
  for (let n = 0; n < DEGREE; n++) {
    // Order 1 follows order 0 in the table: T(n,1) stands DEGREE places after T(n,0).
    northOfZero -= (weights[6 * n + 1] as number) * (table[n + DEGREE] as number);
    downOfZero -= ((weights[6 * n] as number) + (weights[6 * n + 1] as number)) * (table[n] as number);
  }
  sums.fill(0, 0, 6);
  sums[0] = cosLatitude * northOfZero;
  sums[4] = downOfZero;

  let term = DEGREE;
  for (let m = 1; m <= DEGREE; m++) {
    let g = 0;
    let gByDegree = 0;
    let gSlope = 0;
    let h = 0;
    let hByDegree = 0;
    let hSlope = 0;
    for (let n = m; n <= DEGREE; n++, term++) {
      const value = table[term] as number;
      const at = 6 * term;
      g += (weights[at] as number) * value;
      gByDegree += (weights[at + 1] as number) * value;
      gSlope += (weights[at + 2] as number) * value;
      h += (weights[at + 3] as number) * value;
      hByDegree += (weights[at + 4] as number) * value;
      hSlope += (weights[at + 5] as number) * value;
    }
    const at = 6 * m;
    sums[at] = sinLatitude * gByDegree - ratio * gSlope;
    sums[at + 1] = sinLatitude * hByDegree - ratio * hSlope;
    sums[at + 2] = -m * h;
    sums[at + 3] = m * g;
    sums[at + 4] = -cosLatitude * (g + gByDegree);
    sums[at + 5] = -cosLatitude * (h + hByDegree);
  }
}
