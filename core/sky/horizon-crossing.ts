import { checkEvent } from '../angle/check-event.js';
import { checkRange } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';
import { solveTriangle } from './altitude-azimuth.js';
import { bodyPath } from './body-path.js';
import type { BodyPath } from './body-path.js';
import { checkBody } from './body.js';
import type { BodyName } from './body.js';
import { checkSkyInstant } from './check-sky-instant.js';
import { crossing, stretches } from './crossings.js';
import type { Stretch } from './crossings.js';
import { checkHeightOfEye } from './dip.js';
import { checkMoment, horizonAltitude } from './horizon-altitude.js';
import type { HorizonMoment } from './horizon-altitude.js';
import type { Triangle } from './triangle.js';

const MINUTE = 60_000;
const DAY = 86_400_000;
/** The altitude of a body turns twice a day: ten minutes never hold two turning points. */
const STEP = 10 * MINUTE;
/** Milliseconds: finer than a `Date` tells. */
const PRECISION = 0.1;
/** An event so soon after the instant given is that instant: two searches may differ by a millisecond or two. */
const SAME = 1000;

export interface HorizonEventArguments {
  readonly body: BodyName;
  /** Degrees [-90, 90], north positive. */
  readonly latitude: number;
  /** Degrees, east positive, [-180, 360]: both ways of counting it are taken. */
  readonly longitude: number;
  readonly after: Date;
  readonly event: 'rising' | 'setting';
  readonly moment: HorizonMoment;
  /** Metres, 0 to 1000; 0 unless given; counts for the visible horizon only. */
  readonly heightOfEye?: number;
}

/** Why an event does not occur: `not within 24 h` where the body is on both sides of the horizon in that time. */
export type NoEventReason = 'stays above' | 'stays below' | 'not within 24 h';

/** When a body passes the horizon, and its way there; or why it does not. */
export type HorizonCrossing =
  | {
      readonly occurs: true;
      /** To the millisecond. */
      readonly instant: Date;
      readonly path: BodyPath;
      readonly triangle: Triangle;
    }
  | { readonly occurs: false; readonly reason: NoEventReason };

function checkArguments({ latitude, longitude, after, event, moment, heightOfEye = 0 }: HorizonEventArguments): void {
  checkRange('latitude', latitude, -90, 90);
  checkRange('longitude', longitude, -180, 360);
  checkSkyInstant('after', after);
  checkEvent(event);
  checkMoment(moment);
  checkHeightOfEye(heightOfEye);
}

function triangleOn(path: BodyPath, time: number, { latitude, longitude }: HorizonEventArguments): Triangle {
  const { gha, declination } = path(time);
  return { latitude, declination, localHourAngle: gha + longitude };
}

/** How high the centre stands above the altitude of the moment, degrees. */
function heightOver(path: BodyPath, time: number, sought: HorizonEventArguments): number {
  const place = path(time);
  const { latitude, longitude, moment, heightOfEye = 0 } = sought;
  const { altitude } = solveTriangle({ latitude, declination: place.declination, localHourAngle: place.gha + longitude });
  return altitude - horizonAltitude(moment, { heightOfEye, ...place }).altitude;
}

function reasonOf(heights: readonly number[]): NoEventReason {
  if (heights.every((height) => height > 0)) return 'stays above';
  return heights.every((height) => height < 0) ? 'stays below' : 'not within 24 h';
}

function crosses({ first, last }: Stretch, event: 'rising' | 'setting'): boolean {
  return event === 'rising' ? first < 0 && last > 0 : first > 0 && last < 0;
}

/** As `horizonEvent`, without the bearing: all that is needed to know when. */
export function horizonCrossing(asked: HorizonEventArguments): HorizonCrossing {
  const body = checkBody(asked.body);
  checkArguments(asked);
  // One meridian, one answer to the last digit, however its longitude is counted.
  const sought = { ...asked, longitude: wrap180(asked.longitude) };
  const from = sought.after.getTime();
  const to = from + DAY;
  // A little more on both sides, so that turning points at the ends show as such.
  const [early, late] = [from - 2 * STEP, to + 2 * STEP];
  const path = bodyPath(body, early, late);
  const course = (time: number): number => heightOver(path, time, sought);
  const ways = stretches(course, early, late, STEP);
  for (const way of ways) {
    if (!crosses(way, sought.event)) continue;
    const time = Math.round(crossing(course, way, PRECISION));
    if (time < from + SAME || time > to) continue;
    return { occurs: true, instant: new Date(time), path, triangle: triangleOn(path, time, sought) };
  }
  const within = ways.filter((way) => way.to > from && way.to < to).map((way) => way.last);
  return { occurs: false, reason: reasonOf([course(from), ...within, course(to)]) };
}
