import { lastFigure } from '../angle/last-figure.js';
import { METRES_PER_MILE } from './line-bearing.js';

/** A figure cut to its last place is wrong by anything up to half of it, all alike likely: the standard deviation of that is its width by √12. */
const WIDTH = Math.sqrt(12);

/**
 * One standard deviation of places in each direction, metres: the usual one, or that of their rounding where
 * it is larger. A list of lights may give tenths of a minute, 185 m. `places` holds latitude and longitude of
 * each as typed; the finer of the two tells how it was written down, the roughest place counts for all.
 */
export function roundedDoubt(usual: number, places: readonly (readonly string[])[]): number {
  const last = Math.max(0, ...places.map((place) => Math.min(...place.map(lastFigure))));
  return Math.max(usual, (last * METRES_PER_MILE) / WIDTH);
}
