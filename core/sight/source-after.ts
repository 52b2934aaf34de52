import { wrap360 } from '../angle/wrap.js';
import { MEAN_SUN_RATE, STARS_RATE } from '../sky/hour-angle-rates.js';
import type { TimedSource } from './azimuth-source.js';

/**
 * The source as it stands some minutes on: figures typed from an almanac hold for one time and
 * their hour angle runs on from there, that of a body at the rate of the mean Sun.
 */
export function sourceAfter(source: TimedSource, minutes: number): TimedSource {
  switch (source.by) {
    case 'hour-angle':
      return { ...source, gha: wrap360(source.gha + MEAN_SUN_RATE * minutes) };
    case 'sidereal-hour-angle':
      return { ...source, ghaAries: wrap360(source.ghaAries + STARS_RATE * minutes) };
    // A body has its own time; what is no source is refused where its place is asked for.
    default:
      return source;
  }
}
