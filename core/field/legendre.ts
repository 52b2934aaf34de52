import { DEGREE } from './field-coefficients.js';
import type { GeocentricPlace } from './geocentric.js';
import { TERMS } from './harmonic-weights.js';

/** Radius of the sphere the coefficients belong to, km (WMM technical reports). */
const REFERENCE_RADIUS = 6371.2;

/** K(n,m) of the recursion below, in the order of the table. */
const recursionFactors = new Float64Array(TERMS);
{
  let at = 0;
  for (let m = 0; m <= DEGREE; m++) {
    for (let n = Math.max(m, 1); n <= DEGREE; n++) {
      recursionFactors[at++] = n < 2 ? 0 : ((n - 1) ** 2 - m * m) / ((2 * n - 1) * (2 * n - 3));
    }
  }
}

/**
 * Fills a table with T(n,m) for each order m from 0 and degree n from max(m, 1):
 *
 *   T = (a/r)^(n+2) P(n,m)             for m = 0
 *   T = (a/r)^(n+2) P(n,m) / cos φ     for m > 0, which stays finite at the poles
 *
 * with φ the geocentric latitude, a/r the reference radius over the distance, and P the
 * associated Legendre function of sin φ in Gauss's normalisation, whose recursion is
 * P(n) = sin φ P(n-1) - K(n,m) P(n-2) with K = ((n-1)² - m²) / ((2n-1)(2n-3)).
 * Returns a/r. Source: Winch et al., Geophysical Journal International 160 (2005), and
 * Langel in Geomagnetism vol. 1 (1987) for the normalisations; from memory, confirmed by
 * the official test values.
 */
export function fillLegendre(place: GeocentricPlace, table: Float64Array): number {
  const { sinLatitude, cosLatitude } = place;
  const ratio = REFERENCE_RADIUS / place.radius;
  const step = ratio * sinLatitude;
  const square = ratio * ratio;
  const sideways = ratio * cosLatitude;
  let sectoral = square;
  let at = 0;
  for (let m = 0; m <= DEGREE; m++) {
    // Order 0 starts from degree 0, which is no part of the field; the others from n = m.
    if (m === 1) sectoral = square * ratio;
    else if (m > 1) sectoral *= sideways;
    let before = 0;
    let last = sectoral;
    if (m > 0) table[at++] = last;
    for (let n = m + 1; n <= DEGREE; n++) {
      const next = step * last - square * (recursionFactors[at] as number) * before;
      table[at++] = next;
      before = last;
      last = next;
    }
  }
  return ratio;
}
