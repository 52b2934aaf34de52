import { checkLongitude } from './check-place.js';
import { fieldVector } from './field-vector.js';
import { timedModel } from './timed-model.js';
import type { MagneticFieldOptions } from './magnetic-field.js';

/** The magnetic equator keeps within 16° of the geographic one in every model. */
const FURTHEST = 40;

/**
 * Latitude, degrees, at which a meridian crosses the magnetic equator, where the field on
 * the ellipsoid lies level (z = 0). North of it z is positive. To better than 0.00001°.
 * Throws `RangeError` naming `longitude` ([-180, 360)), `instant` or `model`.
 */
export function magneticEquatorLatitude(
  longitude: number,
  instant: Date,
  options: MagneticFieldOptions = {},
): number {
  checkLongitude(longitude);
  const { main } = timedModel(instant, options.model);
  let south = -FURTHEST;
  let north = FURTHEST;
  while (north - south > 1e-6) {
    const middle = (south + north) / 2;
    if (fieldVector(main, middle, longitude, 0).z > 0) north = middle;
    else south = middle;
  }
  return (south + north) / 2;
}
