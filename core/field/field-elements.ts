import { atan2Degrees, degreesOfArc } from '../angle/trigonometry.js';
import type { FieldVector } from './field-vector.js';

/** The elements of the field. Intensities in nT, angles in degrees. */
export interface FieldElements {
  /** North, east and down. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** Horizontal and total intensity, never negative. */
  readonly h: number;
  readonly f: number;
  /** Variation, (-180, 180], east positive; null where h is 0 and no direction is magnetic north. */
  readonly variation: number | null;
  /** The same under the name geomagnetism gives it. */
  readonly declination: number | null;
  /** Dip, [-90, 90], positive where the north end points down. */
  readonly inclination: number;
}

/** What the elements change by in a year; null where h is 0 and the change has no value. */
export interface FieldElementsChange {
  /** nT per year. */
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly h: number | null;
  readonly f: number;
  /** Degrees per year. */
  readonly variation: number | null;
  readonly declination: number | null;
  readonly inclination: number | null;
}

/** Elements of a field vector. Source: WMM2020 technical report, equation 19. */
export function fieldElements({ x, y, z }: FieldVector): FieldElements {
  const h = Math.sqrt(x * x + y * y);
  const f = Math.sqrt(x * x + y * y + z * z);
  const direction = h === 0 ? null : atan2Degrees(y, x);
  // Due south lies at 180, never at -180.
  const variation = direction === -180 ? 180 : direction;
  return { x, y, z, h, f, variation, declination: variation, inclination: atan2Degrees(z, h) };
}

/** Change of the elements from the change of the vector, exact. Source: as above, equation 20. */
export function fieldElementsChange(elements: FieldElements, change: FieldVector): FieldElementsChange {
  const { x, y, z, h, f } = elements;
  const total = f === 0 ? 0 : (x * change.x + y * change.y + z * change.z) / f;
  if (h === 0) {
    return { x: change.x, y: change.y, z: change.z, h: null, f: total, variation: null, declination: null, inclination: null };
  }
  const horizontal = (x * change.x + y * change.y) / h;
  const variation = degreesOfArc((x * change.y - y * change.x) / (h * h));
  return {
    x: change.x,
    y: change.y,
    z: change.z,
    h: horizontal,
    f: total,
    variation,
    declination: variation,
    inclination: degreesOfArc((h * change.z - z * horizontal) / (f * f)),
  };
}
