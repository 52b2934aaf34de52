import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { DEGREE } from './field-coefficients.js';
import { geocentric } from './geocentric.js';
import type { GeocentricPlace } from './geocentric.js';
import { TERMS } from './harmonic-weights.js';
import type { HarmonicWeights } from './harmonic-weights.js';
import { fillLegendre } from './legendre.js';
import { orderSums, SUMS } from './order-sums.js';

/** North, east and down in geodetic axes: nT, or nT per year. */
export interface FieldVector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

// Scratch space: every call fills it anew before reading it.
const table = new Float64Array(TERMS);
const sums = new Float64Array(SUMS);
const cosines = new Float64Array(DEGREE + 1);
const sines = new Float64Array(DEGREE + 1);

function fillLongitude(longitude: number): void {
  const cosine = cosDegrees(longitude);
  const sine = sinDegrees(longitude);
  cosines[0] = 1;
  sines[0] = 0;
  for (let m = 1; m <= DEGREE; m++) {
    const c = cosines[m - 1] as number;
    const s = sines[m - 1] as number;
    cosines[m] = c * cosine - s * sine;
    sines[m] = s * cosine + c * sine;
  }
}

function vectorOf(weights: HarmonicWeights, place: GeocentricPlace, ratio: number): FieldVector {
  orderSums(weights, table, place, ratio, sums);
  let north = 0;
  let east = 0;
  let down = 0;
  for (let m = 0, at = 0; m <= DEGREE; m++, at += 6) {
    const c = cosines[m] as number;
    const s = sines[m] as number;
    north += (sums[at] as number) * c + (sums[at + 1] as number) * s;
    east += (sums[at + 2] as number) * c + (sums[at + 3] as number) * s;
    down += (sums[at + 4] as number) * c + (sums[at + 5] as number) * s;
  }
  const { sinTilt, cosTilt } = place;
  return { x: north * cosTilt - down * sinTilt, y: east, z: north * sinTilt + down * cosTilt };
}

/**
 * The vector at geodetic latitude and longitude (degrees) and height above the
 * ellipsoid (km); at ±90° x lies along the meridian of the given longitude.
 */
export function fieldVector(weights: HarmonicWeights, latitude: number, longitude: number, heightKm: number): FieldVector {
  const place = geocentric(latitude, heightKm);
  const ratio = fillLegendre(place, table);
  fillLongitude(longitude);
  return vectorOf(weights, place, ratio);
}

/** Two vectors, as of the field and of its change, at one place for little more than the price of one. */
export function fieldVectors(
  first: HarmonicWeights,
  second: HarmonicWeights,
  latitude: number,
  longitude: number,
  heightKm: number,
): readonly [FieldVector, FieldVector] {
  const place = geocentric(latitude, heightKm);
  const ratio = fillLegendre(place, table);
  fillLongitude(longitude);
  return [vectorOf(first, place, ratio), vectorOf(second, place, ratio)];
}
