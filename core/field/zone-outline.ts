import { asinDegrees, atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { checkRange } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';
import { fieldVector } from './field-vector.js';
import type { HarmonicWeights } from './harmonic-weights.js';
import type { MagneticFieldOptions } from './magnetic-field.js';
import { magneticPoles } from './magnetic-poles.js';
import type { Pole } from './magnetic-poles.js';
import { timedModel } from './timed-model.js';

/** Directions in which the edge is looked for, all the way round. */
const RAYS = 72;
const STRIDE = 1;
/** Halvings of the last stride: to a hundredth of a degree. */
const HALVINGS = 7;

/** The place at a distance from a pole in a direction, degrees, on a sphere: the law of cosines. */
function placeAt(pole: Pole, direction: number, distance: number): Pole {
  const [sinLatitude, cosLatitude] = [sinDegrees(pole.latitude), cosDegrees(pole.latitude)];
  const latitude = asinDegrees(sinLatitude * cosDegrees(distance) + cosLatitude * sinDegrees(distance) * cosDegrees(direction));
  const east = sinDegrees(direction) * sinDegrees(distance) * cosLatitude;
  const along = cosDegrees(distance) - sinLatitude * sinDegrees(latitude);
  return { latitude, longitude: wrap180(pole.longitude + atan2Degrees(east, along)) };
}

function edgeAlong(weights: HarmonicWeights, pole: Pole, direction: number, limit: number): Pole {
  const isBeyond = (distance: number): boolean => {
    const { latitude, longitude } = placeAt(pole, direction, distance);
    const { x, y } = fieldVector(weights, latitude, longitude, 0);
    return Math.hypot(x, y) >= limit;
  };
  let outside = STRIDE;
  while (!isBeyond(outside)) outside += STRIDE;
  let inside = outside - STRIDE;
  for (let round = 0; round < HALVINGS; round++) {
    const middle = (inside + outside) / 2;
    if (isBeyond(middle)) outside = middle;
    else inside = middle;
  }
  return placeAt(pole, direction, (inside + outside) / 2);
}

/**
 * The edges of the two areas, one around each dip pole, in which the horizontal field is
 * below a limit (nT, 100 to 10,000): 2000 for the blackout zone, 6000 for the caution zone.
 * Each is a ring of [longitude, latitude], degrees, clockwise as seen from above, closed,
 * to a hundredth of a degree at its points. In every model the edge is met once in each
 * direction from the dip pole. Throws `RangeError` naming `limit`, `instant` or `model`.
 */
export function zoneOutlines(
  limit: number,
  instant: Date,
  options: MagneticFieldOptions = {},
): { readonly north: readonly (readonly [number, number])[]; readonly south: readonly (readonly [number, number])[] } {
  checkRange('limit', limit, 100, 10_000);
  const { dip } = magneticPoles(instant, options);
  const { main } = timedModel(instant, options.model);
  const ring = (pole: Pole): (readonly [number, number])[] =>
    Array.from({ length: RAYS + 1 }, (_, ray) => {
      const { latitude, longitude } = edgeAlong(main, pole, ((ray % RAYS) * 360) / RAYS, limit);
      return [longitude, latitude] as const;
    });
  return { north: ring(dip.north), south: ring(dip.south) };
}
