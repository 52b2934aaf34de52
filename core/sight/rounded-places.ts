import { lastFigure } from '../angle/last-figure.js';
import { METRES_PER_MILE } from './line-bearing.js';

/**
 * One standard deviation of places in each direction, metres: the usual one, or that of their rounding where it is
 * larger, as of a list of lights in tenths of a minute, 185 m. What is rounded lies anywhere within its last figure,
 * and the standard deviation of that is its width by √12. `places` holds latitude and longitude of each as typed: the
 * finer of the two tells how it was written down, and the roughest place counts for all.
 */
export function roundedDoubt(usual: number, places: readonly (readonly string[])[]): number {
  const last = Math.max(0, ...places.map((place) => Math.min(...place.map(lastFigure))));
  return Math.max(usual, (last * METRES_PER_MILE) / Math.sqrt(12));
}
