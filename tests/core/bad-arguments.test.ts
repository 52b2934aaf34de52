import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as core from '../../core/index.js';

/*
 * What the types forbid and a page in plain JavaScript may give all the same: left out, null out of JSON, a text,
 * a word that is none. Each is refused as DEVELOPERS.md says, by a RangeError that names it.
 */

const instant = new Date('2026-11-26T08:52:40Z');
const place = { latitude: -48.28, longitude: -71.7 };
const reading = { compassBearing: 113.5, compass: 'magnetic' } as const;
const coefficients = { A: 1, B: 2, C: -3, D: 1, E: 0.5 };

/** Calls a function as plain JavaScript would. */
const plain = (name: keyof typeof core): ((...given: readonly unknown[]) => unknown) => core[name] as (...given: readonly unknown[]) => unknown;

const refused: readonly [string, keyof typeof core, readonly unknown[], RegExp][] = [
  ['a source that is no source', 'azimuthSight', [{ ...place, ...reading, instant, source: 'Sun' }], /^source\.by: undefined/],
  ['a source that does not say by what', 'azimuthSight', [{ ...place, ...reading, instant, source: { body: 'Sun' } }], /^source\.by: undefined/],
  ['a source by another word', 'azimuthBearing', [{ ...place, instant, source: { by: 'star', body: 'Sirius' } }], /^source\.by: star/],
  ['a body the sky does not have', 'azimuthSight', [{ ...place, ...reading, instant, source: { by: 'body', body: 'Pluto' } }], /^body: Pluto/],
  ['a series without its source', 'bearingSeries', [{ ...place, ...reading, shots: [{ instant, compassBearing: 113 }], source: {} }], /^source\.by: undefined/],
  ['a series whose figures hold for a text', 'bearingSeries', [{ ...place, ...reading, instant: '2026-11-26', shots: [{ instant, compassBearing: 113 }], source: { by: 'body', body: 'Sun' } }], /^instant: /],
  ['a latitude as text', 'azimuthSight', [{ ...place, ...reading, instant, latitude: '-48.28', source: { by: 'body', body: 'Sun' } }], /^latitude: /],
  ['a variation that is null, as out of JSON', 'amplitudeSight', [{ ...place, ...reading, instant, body: 'Sun', moment: 'centre', heightOfEye: 10, variation: null }], /^variation: null/],
  // Its deviation went without a word, as that of a gyro.
  ['a transit by no compass', 'transitSight', [{ sightings: [{ line: { kind: 'charted', bearing: 100 }, compassBearing: 90 }], ship: place, instant }], /^compass: undefined/],
  ['a transit with a card that says a text', 'transitSight', [{ sightings: [{ line: { kind: 'charted', bearing: 100 }, compassBearing: 90 }], compass: 'magnetic', cardDeviation: '2' }], /^cardDeviation: 2/],
  ['a line of another kind', 'transitLine', [{ kind: 'marks', front: place, rear: place }], /^line\.kind: marks/],
  ['a variation given that is null', 'variationSource', [place, instant, null], /^given: null/],
  ['a card of another kind', 'deviationCurve', [{ kind: 'exakt', coefficients }], /^card\.kind: exakt/],
  // Taken for an approximate one: a deviation of 8° passed for one of 8 minutes.
  ['a card of another kind looked into', 'deviationByCard', [{ kind: 'Exact', coefficients }, 40], /^card\.kind: Exact/],
  ['coefficients for a card', 'checkCard', [coefficients], /^card\.kind: undefined/],
  ['a card as its JSON', 'deviationCurve', [JSON.stringify({ kind: 'approximate', coefficients })], /^card\.kind: undefined/],
  ['a conversion with such a card', 'convertDirection', [{ direction: { value: 40, by: 'compass' }, variation: 12, deviation: { kind: 'other', coefficients } }], /^card\.kind: other/],
  ['the day of a card as a Date', 'ageInMonths', [instant, instant], /^date: NaN/],
  // An amplitude that neither rises nor sets was named from west.
  ['an amplitude of neither rising nor setting', 'formatAmplitude', [12.6, 'rise'], /^event: rise/],
  ['an amplitude without its event', 'formatAmplitude', [12.6], /^event: undefined/],
  ['an amplitude that is none', 'formatAmplitude', [NaN, 'rising'], /^amplitude: NaN/],
  // It was taken for a course, and its bearing left out of account.
  ['a conversion of another kind', 'convert', [{ kind: 'Bearing', heading: { value: 40, by: 'compass' }, bearing: { value: 84, by: 'compass' }, variation: 9, deviation: 5, gyroError: null, cardBeside: null, wind: null }], /^kind: Bearing/],
  ['an element the field does not have', 'isolines', [core.magneticFieldGrid({ step: 90, instant }), 'dip', [0]], /^element: dip/],
];

for (const [what, name, given, message] of refused) {
  test(`refused by name: ${what}`, () => {
    assert.throws(() => plain(name)(...given), (error: unknown) => error instanceof RangeError && message.test(error.message));
  });
}

// Half away from zero, as its docstring says; without decimals it was NaN.
test('a number is rounded to whole ones where no decimals are given', () => assert.deepEqual([2.5, -2.5, 7.49].map((value) => plain('roundTo')(value)), [3, -3, 7]));
