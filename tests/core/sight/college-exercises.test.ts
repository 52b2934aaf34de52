import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { amplitudeSight } from '../../../core/sight/amplitude-sight.js';
import { azimuthSight } from '../../../core/sight/azimuth-sight.js';
import type { BodyName } from '../../../core/sky/body.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';

/**
 * Exercises of nautical colleges with the answers printed beside them, worked there by hand
 * from the almanac of the year and the tables A, B, C. Seen on the web; degrees, east positive.
 */
interface Exercise {
  readonly source: string;
  readonly body: BodyName;
  readonly utc: string;
  readonly position: readonly [latitude: number, longitude: number];
  readonly bearing: number;
  readonly variation: number;
  /** Degrees, where the printed working is rougher than a tenth. */
  readonly within?: number;
  readonly printed: { readonly bearing: number; readonly error: number; readonly deviation: number };
}

const dm = (degrees: number, minutes: number): number => degrees + minutes / 60;

const sheet = (question: number): string => `exercise sheet "Amplitude Sun" of 1992, question ${question}`;
const sunSheet = (question: number): string => `exercise 28, azimuth of the Sun, 2008, question ${question}`;

const amplitudes: readonly Exercise[] = [
  { source: sheet(1), body: 'Sun', utc: '1992-03-04T18:28:56Z', position: [dm(32, 12), dm(178, 16)], bearing: 100, variation: 3, printed: { bearing: 97.2, error: -2.8, deviation: -5.8 } },
  { source: sheet(2), body: 'Sun', utc: '1992-09-02T01:09:40Z', position: [dm(40, 28), dm(64, 20)], bearing: 90, variation: -5, printed: { bearing: 79.6, error: -10.4, deviation: -5.4 } },
  // The sheet gives the time of question 2 here again; the Sun sets in that place at the time of the 2008 edition of the exercise.
  { source: `${sheet(3)}, at 06h 37m`, body: 'Sun', utc: '1992-05-02T06:37:00Z', position: [dm(30, 6), -dm(179, 45)], bearing: 285, variation: -2, printed: { bearing: 287.9, error: 2.9, deviation: 4.9 } },
  // sin 20-07.0 / cos 54-20 makes W 36.15 S, 233.85: the sheet has rounded on the way.
  { source: sheet(4), within: 0.15, body: 'Sun', utc: '1992-01-20T23:26:48Z', position: [-dm(54, 20), -dm(46, 27)], bearing: 234, variation: -3, printed: { bearing: 234, error: 0, deviation: 3 } },
  { source: sheet(5), body: 'Sun', utc: '1992-11-30T00:15:10Z', position: [dm(49, 18), dm(110, 12)], bearing: 110, variation: 10, printed: { bearing: 124.4, error: 14.4, deviation: 4.4 } },
  { source: sheet(6), body: 'Sun', utc: '1992-09-23T13:50:48Z', position: [0, -dm(120, 27)], bearing: 94, variation: -2.7, printed: { bearing: 90.3, error: -3.7, deviation: -1 } },
  { source: 'exercise 29, rising Sun, 2008, question 1', body: 'Sun', utc: '2008-09-02T01:10:40Z', position: [dm(40, 28), dm(64, 20)], bearing: 90, variation: -5, printed: { bearing: 79.7, error: -10.3, deviation: -5.3 } },
  { source: 'exercise 29, rising Sun, 2008, question 4', body: 'Sun', utc: '2008-11-30T00:15:10Z', position: [dm(49, 18), dm(110, 12)], bearing: 110, variation: 10, printed: { bearing: 124.5, error: 14.5, deviation: 4.5 } },
];

const azimuths: readonly Exercise[] = [
  { source: sunSheet(1), body: 'Sun', utc: '2008-07-20T04:06:12Z', position: [dm(44, 31), dm(69, 42)], bearing: 100, variation: 8, printed: { bearing: 103.1, error: 3.1, deviation: -4.9 } },
  { source: sunSheet(2), body: 'Sun', utc: '2008-09-22T10:09:38Z', position: [dm(18, 20), dm(85, 40)], bearing: 265, variation: -2, printed: { bearing: 259.8, error: -5.2, deviation: -3.2 } },
  { source: 'exercise 34, azimuth of a star, 2008', body: 'Vega', utc: '2008-12-01T07:39:22Z', position: [dm(48, 57), -dm(173, 18)], bearing: 296, variation: 1, printed: { bearing: 299.47, error: 3.5, deviation: 2.5 } },
  { source: 'a sample of 2006, star', body: 'Canopus', utc: '2006-05-05T11:00:00Z', position: [dm(4, 30), -10], bearing: 145, variation: 4, printed: { bearing: 143.6, error: -1.4, deviation: -5.4 } },
  { source: 'a sample of 2006, planet', body: 'Mars', utc: '2006-05-06T22:20:10Z', position: [48, 50], bearing: 327, variation: 4, printed: { bearing: 327.8, error: 0.8, deviation: -3.2 } },
];

// Printed to a tenth, from an almanac and tables that are rounded before.
const tenth = 0.1;

function agrees(sight: { trueBearing: number; error: number; deviation: number | null }, { printed, source, within = tenth }: Exercise): void {
  assertSameDirection(sight.trueBearing, printed.bearing, within + 1e-9, `${source}: true bearing`);
  assertClose(sight.error, printed.error, within + 1e-9, `${source}: error`);
  assert.ok(sight.deviation !== null);
  assertClose(sight.deviation, printed.deviation, within + 1e-9, `${source}: deviation`);
}

describe('exercises of nautical colleges', () => {
  for (const exercise of amplitudes) {
    it(`${exercise.source}: ${exercise.printed.bearing}°, deviation ${exercise.printed.deviation}°`, () => {
      const { body, utc, position: [latitude, longitude], bearing, variation } = exercise;
      const sight = amplitudeSight({ body, latitude, longitude, instant: new Date(utc), moment: 'celestial', heightOfEye: 15, compassBearing: bearing, compass: 'magnetic', variation });
      assert.ok(sight.determined);
      agrees(sight, exercise);
    });
  }

  for (const exercise of azimuths) {
    it(`${exercise.source}: ${exercise.body} ${exercise.printed.bearing}°, deviation ${exercise.printed.deviation}°`, () => {
      const { body, utc, position: [latitude, longitude], bearing, variation } = exercise;
      const sight = azimuthSight({ source: { by: 'body', body }, latitude, longitude, instant: new Date(utc), compassBearing: bearing, compass: 'magnetic', variation });
      assert.ok(sight.determined);
      agrees(sight, exercise);
    });
  }
});
