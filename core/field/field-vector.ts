import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { DEGREE } from './field-coefficients.js';
import { geocentric } from './geocentric.js';
import type { GeocentricPlace } from './geocentric.js';
import type { HarmonicWeights } from './harmonic-weights.js';
import { backwardShare, REFERENCE_RADIUS, slopeShare } from './legendre.js';

/** North, east and down in geodetic axes: nT, or nT per year. */
export interface FieldVector {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/**
 * The harmonics added up for one place, in a single pass: what `fillLegendre` and
 * `orderSums` do for a whole parallel, whose comments give the formulas.
 */
function addHarmonics(weights: HarmonicWeights, place: GeocentricPlace, cosine: number, sine: number): FieldVector {
  // Copies, because engines read imported constants anew at every turn of a loop.
  const degrees = DEGREE;
  const backward = backwardShare;
  const share = slopeShare;
  const { sinLatitude, cosLatitude } = place;
  const ratio = REFERENCE_RADIUS / place.radius;
  const square = ratio * ratio;
  const forward = ratio * sinLatitude;
  const sideways = ratio * cosLatitude;

  // Order 0: the value and its derivative by sin φ, both by recursion.
  let value = square;
  let valueBefore = 0;
  let derivative = 0;
  let derivativeBefore = 0;
  let north = 0;
  let east = 0;
  let down = 0;
  for (let n = 1; n <= degrees; n++) {
    const back = square * (backward[n - 1] as number);
    const g = weights[2 * n - 2] as number;
    const nextDerivative = ratio * value + forward * derivative - back * derivativeBefore;
    const next = forward * value - back * valueBefore;
    north -= g * nextDerivative;
    down -= (n + 1) * g * next;
    valueBefore = value;
    value = next;
    derivativeBefore = derivative;
    derivative = nextDerivative;
  }
  north *= cosLatitude;

  let sectoral = square * ratio;
  // Cosine and sine of m times the longitude, turned on from order to order.
  let c = cosine;
  let s = sine;
  let term = degrees;
  for (let m = 1; m <= degrees; m++) {
    let before = 0;
    let last = sectoral;
    let gWeight = weights[2 * term] as number;
    let hWeight = weights[2 * term + 1] as number;
    let g = gWeight * last;
    let h = hWeight * last;
    let gRunning = g;
    let hRunning = h;
    let gShare = 0;
    let hShare = 0;
    term++;
    for (let n = m + 1; n <= degrees; n++, term++) {
      const next = forward * last - square * (backward[term] as number) * before;
      const shared = (share[term] as number) * last;
      gWeight = weights[2 * term] as number;
      hWeight = weights[2 * term + 1] as number;
      g += gWeight * next;
      h += hWeight * next;
      gRunning += g;
      hRunning += h;
      gShare += gWeight * shared;
      hShare += hWeight * shared;
      before = last;
      last = next;
    }
    sectoral *= sideways;
    // Sums with each degree counted n times: what the running sums leave of DEGREE + 1 times.
    const gByDegree = (degrees + 1) * g - gRunning;
    const hByDegree = (degrees + 1) * h - hRunning;
    north += (sinLatitude * gByDegree - ratio * gShare) * c + (sinLatitude * hByDegree - ratio * hShare) * s;
    east += m * (g * s - h * c);
    down -= cosLatitude * ((g + gByDegree) * c + (h + hByDegree) * s);
    const turned = c * cosine - s * sine;
    s = s * cosine + c * sine;
    c = turned;
  }
  const { sinTilt, cosTilt } = place;
  return { x: north * cosTilt - down * sinTilt, y: east, z: north * sinTilt + down * cosTilt };
}

/**
 * The vector at geodetic latitude and longitude (degrees) and height above the
 * ellipsoid (km); at ±90° x lies along the meridian of the given longitude.
 */
export function fieldVector(weights: HarmonicWeights, latitude: number, longitude: number, heightKm: number): FieldVector {
  return addHarmonics(weights, geocentric(latitude, heightKm), cosDegrees(longitude), sinDegrees(longitude));
}

/** The vectors of two sets of weights, as of the field and of its change, at one place. */
export function fieldVectors(
  first: HarmonicWeights,
  second: HarmonicWeights,
  latitude: number,
  longitude: number,
  heightKm: number,
): readonly [FieldVector, FieldVector] {
  const place = geocentric(latitude, heightKm);
  const cosine = cosDegrees(longitude);
  const sine = sinDegrees(longitude);
  return [addHarmonics(first, place, cosine, sine), addHarmonics(second, place, cosine, sine)];
}
