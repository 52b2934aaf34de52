import { roundTo } from '../angle/format-angle.js';
import { wrap360 } from '../angle/wrap.js';
import { amplitudeSight } from '../sight/amplitude-sight.js';
import type { AmplitudeSight } from '../sight/amplitude-result.js';
import type { AmplitudeObservation } from '../sight/amplitude-observation.js';
import { amplitude } from '../sky/amplitude.js';
import type { BodyName } from '../sky/body.js';
import { horizonAltitude } from '../sky/horizon-altitude.js';
import type { HorizonMoment } from '../sky/horizon-altitude.js';
import { horizonEvent } from '../sky/horizon-event.js';
import { anyInstant, anyPlace, anyReading, dateAndTime, givenReading } from './any-sight.js';
import type { Chance } from './chance.js';
import type { Draft, Given, Level } from './exercise.js';
import type { Distractor } from '../answer/question.js';
import { given, givenText, givenWord } from './given.js';
import { isSeenByEye } from './seen-by-eye.js';
import { sightQuestions } from './sight-questions.js';
import type { Tolerances } from '../answer/tolerances.js';

const moments: readonly HorizonMoment[] = ['celestial', 'upper-limb', 'centre', 'lower-limb'];

/** Where the amplitudes are taken, degrees of latitude: far enough out at level 3 for the horizon to matter. */
const LATITUDES: Record<Level, readonly [number, number]> = { 1: [5, 40], 2: [10, 55], 3: [35, 62] };

/** A body and a moment seen of it: planets are too faint for the visible horizon. */
function anyView(chance: Chance, level: Level): { body: BodyName; moment: HorizonMoment } {
  if (level === 1) return { body: 'Sun', moment: 'celestial' };
  if (level === 2) return { body: 'Sun', moment: chance.pick(moments) };
  const body = chance.pick<BodyName>(['Sun', 'Sun', 'Moon', 'Venus', 'Jupiter']);
  return { body, moment: body === 'Sun' || body === 'Moon' ? chance.pick(moments) : 'celestial' };
}

/** True bearings by the mistakes people make of an amplitude. */
function wrongBearings(sight: AmplitudeSight, observation: AmplitudeObservation): Distractor<number>[] {
  const { side, latitude, declination, altitude } = sight;
  const found: Distractor<number>[] = [];
  const add = (code: string, at: { declination?: number; altitude?: number }): void => {
    const wrong = amplitude({ latitude, declination, altitude, ...at });
    if (wrong) found.push({ code, value: wrong[side] });
  };
  const celestial = observation.moment === 'celestial';
  // The upper limb seen from the same height: what a sunset is to most people.
  const visible = horizonAltitude('upper-limb', { heightOfEye: observation.heightOfEye, horizontalParallax: 0, semidiameter: 16 / 60 });
  add('wrong-horizon', { altitude: celestial ? visible.altitude : 0 });
  add('declination-name', { declination: -declination });
  found.push(
    { code: 'no-latitude', value: side === 'rising' ? 90 - declination : 270 + declination },
    { code: 'rising-for-setting', value: wrap360(-sight.trueBearing) },
    { code: 'amplitude-as-bearing', value: Math.abs(sight.amplitude) },
  );
  return found;
}

/** What an almanac and the bridge tell; the parts of the altitude only where it is to be worked out. */
function givensOf(sight: AmplitudeSight, observation: AmplitudeObservation, level: Level): Given[] {
  const { body, latitude, longitude, instant, moment, heightOfEye } = observation;
  const sky = [
    givenWord('body', `body.${body}`),
    givenWord('event', `event.${sight.side}`),
    givenWord('moment', `moment.${moment}`),
    givenText('instant', dateAndTime(instant)),
    given('latitude', latitude, 'latitude'),
    given('longitude', longitude, 'longitude'),
    given('declination', roundTo(sight.declination * 600, 0) / 600, 'declination'),
  ];
  if (moment === 'celestial') return level === 3 ? [...sky, given('heightOfEye', heightOfEye, 'metres')] : sky;
  if (level === 2) return [...sky, given('trueAltitude', roundTo(sight.altitude, 2), 'angle')];
  const arc = (code: string, minutes: number): Given => given(code, roundTo(minutes, 1), 'arcminutes');
  return [...sky, given('heightOfEye', heightOfEye, 'metres'), arc('semidiameter', sight.semidiameter), arc('parallax', sight.parallax)];
}

/** Error or deviation from a body at rising or setting, at any of the four moments; null where nothing rises. */
export function amplitudeExercise(chance: Chance, level: Level, tolerances: Tolerances): Draft | null {
  const place = anyPlace(chance, ...LATITUDES[level]);
  const { body, moment } = anyView(chance, level);
  const heightOfEye = chance.between(8, 32);
  const event = chance.pick(['rising', 'setting'] as const);
  const occurs = horizonEvent({ body, ...place, after: anyInstant(chance), event, moment, heightOfEye });
  if (!occurs.occurs || occurs.azimuth === null) return null;
  const instant = new Date(Math.round(occurs.instant.getTime() / 60_000) * 60_000);
  const reading = anyReading(chance, level, occurs.azimuth, place, instant);
  if (!reading) return null;
  const { variation, ...read } = reading;
  const observation = { body, ...place, instant, moment, heightOfEye, ...read, ...(variation === null ? {} : { variation }) };
  const sight = amplitudeSight(observation);
  if (!sight.determined || sight.side !== event) return null;
  if (!isSeenByEye(body, observation, true)) return null;
  return {
    task: variation === null ? `amplitude.${reading.compass}` : 'amplitude.deviation',
    givens: [...givensOf(sight, observation, level), ...givenReading(reading)],
    asked: sightQuestions({ ...reading, trueBearing: sight.trueBearing, wrongBearings: wrongBearings(sight, observation) }, tolerances),
    // The working of a bare error ends with it.
    steps: variation === null ? sight.steps.filter(({ code }) => !/^variation\.|^error\.deviation/.test(code)) : sight.steps,
  };
}
