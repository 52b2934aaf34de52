import { FLATTENING } from '../angle/ellipsoid.js';
import { asinDegrees, atan2Degrees, atanDegrees, cosDegrees, sinDegrees, tanDegrees } from '../angle/trigonometry.js';
import { wrap180 } from '../angle/wrap.js';
import { placeOfG } from './field-coefficients.js';
import { fieldVector } from './field-vector.js';
import type { HarmonicWeights } from './harmonic-weights.js';
import type { MagneticFieldOptions } from './magnetic-field.js';
import type { MagneticModelName } from './magnetic-models.js';
import { timedModel } from './timed-model.js';
import type { TimedModel } from './timed-model.js';

/** Degrees, geodetic, longitude in (-180, 180]. */
export interface Pole {
  readonly latitude: number;
  readonly longitude: number;
}

export interface GeomagneticPole extends Pole {
  readonly geocentricLatitude: number;
}

export interface MagneticPoles {
  /** Where the field on the ellipsoid stands upright, h = 0. The two are not opposite each other. */
  readonly dip: { readonly north: Pole; readonly south: Pole };
  /** The axis of the field's dipole part: opposite each other by definition. */
  readonly geomagnetic: { readonly north: GeomagneticPole; readonly south: GeomagneticPole };
  readonly model: MagneticModelName;
}

/** A place near a geographic pole on a flat chart around it, in degrees from the pole. */
interface ChartPoint {
  readonly u: number;
  readonly v: number;
}

function placeOf({ u, v }: ChartPoint, side: 1 | -1): Pole {
  return { latitude: side * (90 - Math.sqrt(u * u + v * v)), longitude: atan2Degrees(v, u) };
}

/** The horizontal field along the axes of that chart, which stay steady where meridians crowd. */
function horizontalField(weights: HarmonicWeights, point: ChartPoint, side: 1 | -1): ChartPoint {
  const { latitude, longitude } = placeOf(point, side);
  const { x, y } = fieldVector(weights, latitude, longitude, 0);
  const c = cosDegrees(longitude);
  const s = sinDegrees(longitude);
  return { u: -side * x * c - y * s, v: -side * x * s + y * c };
}

/** The point of a coarse net around the geographic pole where the horizontal field is weakest. */
function weakestNearPole(weights: HarmonicWeights, side: 1 | -1): ChartPoint {
  let best = { u: 0, v: 0 };
  let least = Infinity;
  for (let u = -36; u <= 36; u += 4) {
    for (let v = -36; v <= 36; v += 4) {
      const field = horizontalField(weights, { u, v }, side);
      const size = Math.hypot(field.u, field.v);
      if (size < least) {
        least = size;
        best = { u, v };
      }
    }
  }
  return best;
}

/** Newton's method from there, with slopes by difference. */
function dipPole(weights: HarmonicWeights, side: 1 | -1): Pole {
  const SHIFT = 1e-4;
  let point = weakestNearPole(weights, side);
  for (let round = 0; round < 12; round++) {
    const here = horizontalField(weights, point, side);
    const along = horizontalField(weights, { u: point.u + SHIFT, v: point.v }, side);
    const across = horizontalField(weights, { u: point.u, v: point.v + SHIFT }, side);
    const uu = (along.u - here.u) / SHIFT;
    const vu = (along.v - here.v) / SHIFT;
    const uv = (across.u - here.u) / SHIFT;
    const vv = (across.v - here.v) / SHIFT;
    const determinant = uu * vv - uv * vu;
    point = {
      u: point.u - (here.u * vv - here.v * uv) / determinant,
      v: point.v - (here.v * uu - here.u * vu) / determinant,
    };
  }
  const { latitude, longitude } = placeOf(point, side);
  return { latitude, longitude: wrap180(longitude) };
}

/** Source: WMM2020 technical report, section 1.9 (from memory; confirmed by printed poles). */
function geomagneticNorth({ coefficients, years }: TimedModel): GeomagneticPole {
  // In tenths of nT, which drop out: only directions are asked.
  const dipole = (place: number) => (coefficients.main[place] as number) + years * (coefficients.change[place] as number);
  const g10 = dipole(placeOfG(1, 0));
  const g11 = dipole(placeOfG(1, 1));
  const h11 = dipole(placeOfG(1, 1) + 1);
  const geocentricLatitude = asinDegrees(-g10 / Math.sqrt(g10 * g10 + g11 * g11 + h11 * h11));
  return {
    geocentricLatitude,
    latitude: atanDegrees(tanDegrees(geocentricLatitude) / (1 - FLATTENING) ** 2),
    longitude: wrap180(atan2Degrees(-h11, -g11)),
  };
}

/**
 * The dip poles, to better than 0.001°, and the geomagnetic poles at an instant.
 * Throws `RangeError` naming `instant` or `model`.
 */
export function magneticPoles(instant: Date, options: MagneticFieldOptions = {}): MagneticPoles {
  const timed = timedModel(instant, options.model);
  const north = geomagneticNorth(timed);
  const south = {
    geocentricLatitude: -north.geocentricLatitude,
    latitude: -north.latitude,
    longitude: wrap180(north.longitude + 180),
  };
  return {
    dip: { north: dipPole(timed.main, 1), south: dipPole(timed.main, -1) },
    geomagnetic: { north, south },
    model: timed.name,
  };
}
