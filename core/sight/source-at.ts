import { wrap360 } from '../angle/wrap.js';
import type { TimedSource } from './azimuth-source.js';

/** Hour angles run on so many degrees a minute: the mean Sun, and the stars (IAU 2000 Earth rotation). */
const RATE = { 'hour-angle': 0.25, 'sidereal-hour-angle': 360.98564736629 / 1440 };

/**
 * The source as it stands some minutes on: figures typed from an almanac hold for one time and
 * their hour angle runs on from there, that of a body at the rate of the mean Sun.
 */
export function sourceAfter(source: TimedSource, minutes: number): TimedSource {
  switch (source.by) {
    case 'body':
      return source;
    case 'hour-angle':
      return { ...source, gha: wrap360(source.gha + RATE['hour-angle'] * minutes) };
    case 'sidereal-hour-angle':
      return { ...source, ghaAries: wrap360(source.ghaAries + RATE['sidereal-hour-angle'] * minutes) };
  }
}
