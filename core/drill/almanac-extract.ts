import { roundTo } from '../angle/format-angle.js';
import { wrap360 } from '../angle/wrap.js';
import type { BodyName } from '../sky/body.js';
import { geographicalPosition } from '../sky/geographical-position.js';
import { dateAndTime } from './any-sight.js';
import type { Given } from './exercise.js';
import { givenTable } from './given.js';

/** Milliseconds. */
export const HOUR = 3_600_000;

/** The ship's clock. */
export interface ZoneClock {
  /** Zone description in hours: UTC is zone time plus it; positive in west longitude. */
  readonly hours: number;
  /** The same as it is written: `+5 h`, `−3 h`. */
  readonly description: string;
  /** Date and time by the clock. */
  readonly text: string;
  /** Whether clock and UTC show one date. */
  readonly sameDay: boolean;
}

/** The clock of the zone a longitude lies in, each zone 15° wide about its meridian. */
export function zoneClock(longitude: number, instant: Date): ZoneClock {
  const hours = 0 - Math.round(longitude / 15);
  const byClock = new Date(instant.getTime() - hours * HOUR);
  return {
    hours,
    description: `${hours < 0 ? '−' : '+'}${Math.abs(hours)} h`,
    text: dateAndTime(byClock),
    sameDay: byClock.getUTCDate() === instant.getUTCDate(),
  };
}

/**
 * What the almanac's page says of a body for the whole hours about an instant, and about the
 * hour that the ship's clock shows: whoever takes the wrong one finds it there too.
 */
export function almanacExtract(body: BodyName, instant: Date, zoneHours: number): Given {
  const hour = instant.getUTCHours();
  const midnight = Math.floor(instant.getTime() / (24 * HOUR)) * 24;
  const about = [hour, hour + 1, hour - zoneHours, hour - zoneHours + 1].filter((each) => each >= 0 && each <= 24);
  const hours = [...new Set(about)].sort((a, b) => a - b);
  const rows = hours.map((each) => {
    const { gha, declination } = geographicalPosition(body, new Date((midnight + each) * HOUR));
    // What rounds to 360 is printed 0.
    return [each, wrap360(roundTo(gha, 2)), roundTo(declination * 600, 0) / 600];
  });
  const columns = [
    { code: 'hourUtc', unit: 'hour' },
    { code: 'greenwichHourAngle', unit: 'hourAngle' },
    { code: 'declination', unit: 'declination' },
  ] as const;
  return givenTable('almanac', columns, rows);
}
