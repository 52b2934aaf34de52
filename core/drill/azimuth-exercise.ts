import { roundTo } from '../angle/format-angle.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { azimuthBearing } from '../sight/azimuth-bearing.js';
import type { AzimuthBearing } from '../sight/azimuth-bearing.js';
import { bearingSteps } from '../sight/azimuth-steps.js';
import { altitudeAzimuth } from '../sky/altitude-azimuth.js';
import type { BodyName } from '../sky/body.js';
import { geographicalPosition } from '../sky/geographical-position.js';
import { almanacExtract, HOUR, zoneClock } from './almanac-extract.js';
import { anyInstant, anyPlace, anyReading, givenReading } from './any-sight.js';
import type { AnyPlace } from './any-sight.js';
import type { Chance } from './chance.js';
import type { Draft, Given, Level } from './exercise.js';
import type { Distractor } from '../answer/question.js';
import { given, givenText, givenWord } from './given.js';
import { readingSteps } from './reading-steps.js';
import { isSeenByEye } from './seen-by-eye.js';
import { sightQuestions } from './sight-questions.js';
import type { Tolerances } from '../answer/tolerances.js';

/** Altitudes at which a bearing is taken over a compass, degrees: low, but clear of the horizon. */
const LOWEST = 6;
const HIGHEST = 38;

const bodies: Record<Level, readonly BodyName[]> = {
  1: ['Sun'],
  2: ['Sun', 'Sun', 'Moon', 'Venus'],
  3: ['Sun', 'Moon', 'Venus', 'Mars', 'Jupiter', 'Saturn', 'Sirius', 'Arcturus', 'Vega', 'Canopus', 'Spica', 'Antares'],
};

/** True bearings by the mistakes people make of the triangle. */
function wrongBearings(sight: AzimuthBearing, longitude: number, level: Level): Distractor<number>[] {
  const { latitude, declination, trueBearing } = sight;
  const localHourAngle = sight.localHourAngle ?? 0;
  const found: Distractor<number>[] = [];
  const add = (code: string, at: { latitude?: number; declination?: number; localHourAngle?: number }): void => {
    const { azimuth } = altitudeAzimuth({ latitude, declination, localHourAngle, ...at });
    if (azimuth !== null) found.push({ code, value: azimuth });
  };
  add('declination-name', { declination: -declination });
  if (level > 1) add('longitude-sign', { localHourAngle: wrap360(localHourAngle - 2 * longitude) });
  found.push({ code: 'east-for-west', value: wrap360(-trueBearing) }, { code: 'from-other-pole', value: wrap360(180 - trueBearing) });
  add('latitude-name', { latitude: -latitude });
  return found;
}

/** The bearings at the times taken by mistake: in half a day the Moon's declination changes too. */
function timeMistakes(body: BodyName, { latitude, longitude }: AnyPlace, instant: Date, zoneHours: number): Distractor<number>[] {
  const bearingAt = (time: number): number | null => {
    const { gha, declination } = geographicalPosition(body, new Date(time));
    return altitudeAzimuth({ latitude, declination, localHourAngle: gha + longitude }).azimuth;
  };
  const wrong = [
    { code: 'zone-time', value: bearingAt(instant.getTime() - zoneHours * HOUR) },
    { code: 'increment-forgotten', value: bearingAt(Math.floor(instant.getTime() / HOUR) * HOUR) },
  ];
  return wrong.flatMap(({ code, value }) => (value === null ? [] : [{ code, value }]));
}

/** What level by level is told of the body's place in the sky. */
function skyGivens(sight: AzimuthBearing, longitude: number, level: Level): Given[] {
  const declination = given('declination', roundTo(sight.declination * 600, 0) / 600, 'declination');
  if (level === 1) return [declination, given('localHourAngle', wrap360(roundTo(sight.localHourAngle ?? 0, 2)), 'hourAngle')];
  return [given('longitude', longitude, 'longitude'), declination, given('greenwichHourAngle', wrap360(roundTo(sight.gha ?? 0, 2)), 'hourAngle')];
}

/** Error or deviation from the bearing of a body above the horizon; null where none stands fit for it. */
export function azimuthExercise(chance: Chance, level: Level, tolerances: Tolerances): Draft | null {
  const place = anyPlace(chance, 5, level === 1 ? 45 : 60);
  const body = chance.pick(bodies[level]);
  const instant = anyInstant(chance);
  const source = { by: 'body', body } as const;
  const sight = azimuthBearing({ source, ...place, instant });
  if (!sight.determined || sight.altitude < LOWEST || sight.altitude > HIGHEST || !isSeenByEye(body, { ...place, instant })) return null;
  // So fast that a minute would matter more than the rule practised.
  if (Math.abs(sight.azimuthRate) > 0.5) return null;
  const clock = zoneClock(place.longitude, instant);
  if (level === 3 && !clock.sameDay) return null;
  const reading = anyReading(chance, level, sight.trueBearing, place, instant);
  if (!reading) return null;
  const wrong = wrongBearings(sight, place.longitude, level);
  const givens =
    level === 3
      ? [
          givenText('zoneTime', clock.text),
          givenText('zoneDescription', clock.description),
          given('longitude', place.longitude, 'longitude'),
          almanacExtract(body, instant, clock.hours),
        ]
      : skyGivens(sight, place.longitude, level);
  const working = bearingSteps(source, sight, wrap180(place.longitude));
  return {
    task: reading.variation === null ? `azimuth.${reading.compass}` : 'azimuth.deviation',
    givens: [givenWord('body', `body.${body}`), given('latitude', place.latitude, 'latitude'), ...givens, ...givenReading(reading)],
    asked: sightQuestions(
      { ...reading, trueBearing: sight.trueBearing, wrongBearings: level === 3 ? [...timeMistakes(body, place, instant, clock.hours), ...wrong] : wrong },
      tolerances,
    ),
    // The hour angle that is given needs no line.
    steps: [...(level === 1 ? working.filter(({ symbol }) => symbol !== 'GHA' && symbol !== 'LHA') : working), ...readingSteps(sight.trueBearing, reading)],
  };
}
