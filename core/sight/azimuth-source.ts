import { checkRange } from '../angle/check-number.js';
import { wrap360 } from '../angle/wrap.js';
import { bodyMotion } from '../sky/body-motion.js';
import type { BodyName } from '../sky/body.js';
import { geographicalPosition } from '../sky/geographical-position.js';
import { MEAN_SUN_RATE, STARS_RATE } from '../sky/hour-angle-rates.js';
import type { AltitudeSource } from './altitude-source.js';

/** What places the body in the sky by time: the ephemeris, or figures typed from an almanac; degrees. */
export type TimedSource =
  | { readonly by: 'body'; readonly body: BodyName }
  | { readonly by: 'hour-angle'; readonly gha: number; readonly declination: number }
  | { readonly by: 'sidereal-hour-angle'; readonly sha: number; readonly ghaAries: number; readonly declination: number };

export type AzimuthSource = TimedSource | AltitudeSource;

/** Where a body stands over the Earth and how fast it moves, degrees and degrees per minute. */
export interface SkyPlace {
  readonly gha: number;
  readonly declination: number;
  readonly horizontalParallax: number;
  readonly semidiameter: number;
  readonly hourAngleRate: number;
  readonly declinationRate: number;
}

const point = { horizontalParallax: 0, semidiameter: 0, declinationRate: 0 };

/** Throws `RangeError` naming the first figure outside its range. */
function checkFigures(figures: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(figures)) {
    if (name === 'declination') checkRange(name, value, -90, 90);
    else checkRange(name, value, 0, 360);
  }
}

/**
 * The place of a body in the sky. Figures of an almanac are taken as they are; the time
 * then counts for nothing. Throws `RangeError` naming a bad argument.
 */
export function skyPlace(source: TimedSource, instant: Date | null): SkyPlace {
  switch (source.by) {
    case 'body': {
      if (instant === null) throw new RangeError('instant: a body of the ephemeris needs one');
      return { ...geographicalPosition(source.body, instant), ...bodyMotion(source.body, instant) };
    }
    case 'hour-angle': {
      const { gha, declination } = source;
      checkFigures({ gha, declination });
      return { ...point, gha: wrap360(gha), declination, hourAngleRate: MEAN_SUN_RATE };
    }
    case 'sidereal-hour-angle': {
      const { sha, ghaAries, declination } = source;
      checkFigures({ sha, ghaAries, declination });
      return { ...point, gha: wrap360(ghaAries + sha), declination, hourAngleRate: STARS_RATE };
    }
    default:
      throw new RangeError(`source.by: ${String((source as TimedSource).by)} is none`);
  }
}
