import { DEGREE } from './field-coefficients.js';
import type { GeocentricPlace } from './geocentric.js';
import { TERMS } from './harmonic-weights.js';

/** Radius of the sphere the coefficients belong to, km (WMM technical reports). */
export const REFERENCE_RADIUS = 6371.2;

/** The factors of the two recursions below, in the order of the table. */
export const backwardShare = new Float64Array(TERMS);
export const slopeShare = new Float64Array(TERMS);
{
  let at = 0;
  for (let m = 0; m <= DEGREE; m++) {
    for (let n = Math.max(m, 1); n <= DEGREE; n++, at++) {
      backwardShare[at] = n === 1 ? 0 : ((n - 1) ** 2 - m * m) / ((2 * n - 1) * (2 * n - 3));
      slopeShare[at] = (n * n - m * m) / (2 * n - 1);
    }
  }
}

/** Length of a table for `fillLegendre`. */
export const LEGENDRE_TABLE = 2 * TERMS;

/**
 * Fills a table with two numbers for each order m from 0 and degree n from max(m, 1),
 * both times (a/r)^(n+2), the fading of the harmonic with the distance r:
 *
 *   the value, P(n,m), divided by cos φ for m > 0, which stays finite at the poles;
 *   the slope, dP(n,m)/dθ
 *
 * where φ is the geocentric latitude, θ = 90° - φ, and P the associated Legendre function
 * of sin φ in Gauss's normalisation:
 *
 *   P(n,m) = sin φ P(n-1,m) - ((n-1)² - m²) / ((2n-1)(2n-3)) P(n-2,m), P(m,m) = cos^m φ
 *   cos φ dP(n,m)/dθ = n sin φ P(n,m) - (n² - m²) / (2n-1) P(n-1,m)
 *   dP(n,0)/dθ = -n P(n,1)
 *
 * Source: Langel, The main field, in Geomagnetism vol. 1, Academic Press 1987 (from
 * memory; confirmed by the official test values).
 */
export function fillLegendre(place: GeocentricPlace, table: Float64Array): void {
  // Copies, because engines read imported constants anew at every turn of a loop.
  const degrees = DEGREE;
  const backward = backwardShare;
  const share = slopeShare;
  const { sinLatitude, cosLatitude } = place;
  const ratio = REFERENCE_RADIUS / place.radius;
  const square = ratio * ratio;
  const forward = ratio * sinLatitude;
  const sideways = ratio * cosLatitude;
  let sectoral = square * ratio;
  let at = degrees;
  for (let m = 1; m <= degrees; m++) {
    let before = 0;
    let last = sectoral;
    table[2 * at] = last;
    table[2 * at + 1] = m * sinLatitude * last;
    at++;
    for (let n = m + 1; n <= degrees; n++, at++) {
      const value = forward * last - square * (backward[at] as number) * before;
      table[2 * at] = value;
      table[2 * at + 1] = n * sinLatitude * value - ratio * (share[at] as number) * last;
      before = last;
      last = value;
    }
    sectoral *= sideways;
  }

  let before = 0;
  let last = square;
  for (let n = 1; n <= degrees; n++) {
    const value = forward * last - square * (backward[n - 1] as number) * before;
    table[2 * n - 2] = value;
    // Order 1 follows order 0 in the table.
    table[2 * n - 1] = -n * cosLatitude * (table[2 * (n - 1 + degrees)] as number);
    before = last;
    last = value;
  }
}
