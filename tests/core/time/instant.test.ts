import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { formatDate, formatInstant, formatTimeOfDay, instantOf, parseInstant } from '../../../core/time/instant.js';
import { parseDate } from '../../../core/time/parse-date.js';
import { parseTimeOfDay } from '../../../core/time/parse-time-of-day.js';
import { anyText } from '../text/any-text.js';

// Expected instants: the engine's own reader of ISO 8601.
const read: readonly (readonly [string, string])[] = [
  ['2026-11-26T09:05:20Z', '2026-11-26T09:05:20.000Z'], ['2026-11-26 09:05:20', '2026-11-26T09:05:20.000Z'], ['2026-11-26t09:05:20z', '2026-11-26T09:05:20.000Z'],
  ['2026-11-26T09:05', '2026-11-26T09:05:00.000Z'], ['2026-11-26 0905', '2026-11-26T09:05:00.000Z'], ['2026-11-26  0905 UTC', '2026-11-26T09:05:00.000Z'],
  ['20261126T090520Z', '2026-11-26T09:05:20.000Z'], ['20261126 0905', '2026-11-26T09:05:00.000Z'], ['26 Nov 2026 09:05', '2026-11-26T09:05:00.000Z'], ['26NOV2026 0905Z', '2026-11-26T09:05:00.000Z'],
  ['2026-1-5 09:05', '2026-01-05T09:05:00.000Z'], ['5.1.2026 9h5', '2026-01-05T09:05:00.000Z'], ['2026-01-05 00:00:01.001', '2026-01-05T00:00:01.001Z'], ['2026-01-05 00:00:00.5999', '2026-01-05T00:00:00.600Z'],
  ['26.11.2026 9.05', '2026-11-26T09:05:00.000Z'], ['26. 11. 2026 09h05', '2026-11-26T09:05:00.000Z'], ['2026-11-26T09:05:20.5Z', '2026-11-26T09:05:20.500Z'],
  ['2026-11-26T09:05:20+00:00', '2026-11-26T09:05:20.000Z'], ['1900-01-01T00:00Z', '1900-01-01T00:00:00.000Z'], ['2100-12-31 23:59:59', '2100-12-31T23:59:59.000Z'],
  // A leap second is the first moment of the next day, as everywhere where days have 86400 seconds.
  ['2016-12-31T23:59:60Z', '2017-01-01T00:00:00.000Z'],
];
for (const [text, iso] of read) {
  test(`${text} is ${iso}`, () => {
    const reading = parseInstant(text);
    assert.ok(reading.ok, JSON.stringify(reading));
    assert.equal(reading.value.toISOString(), iso);
  });
}

const refusals: readonly (readonly [string, string])[] = [
  ['', 'empty'], ['2026-11-26', 'not-understood'], ['09:05', 'not-understood'], ['2026-11-26T', 'not-understood'], ['now', 'not-understood'], ['1795683920000', 'not-understood'],
  ['2026-02-31T09:05Z', 'no-such-day'], ['2026-11-26T24:00Z', 'hours-over-23'], ['2026-11-26T12:60', 'minutes-over-59'], ['2026-11-26T09:05:20+02:00', 'not-utc'], ['2026-11-26 09:05 CET', 'not-utc'],
  ['26/11/2026 09:05', 'ambiguous-date'], ['2026/11/26 09:05', 'ambiguous-date'], ['2101-01-01T00:00Z', 'out-of-range'],
];
for (const [text, refusal] of refusals) {
  test(`${JSON.stringify(text)} is refused: ${refusal}`, () => assert.deepEqual(parseInstant(text), { ok: false, refusal }));
}

test('day, time and instant are printed in UTC with all their figures', () => {
  const instant = new Date('2026-01-05T09:05:03.999Z');
  assert.equal(formatDate(instant), '2026-01-05');
  assert.equal(formatTimeOfDay(instant), '09:05:03');
  assert.equal(formatInstant(instant), '2026-01-05T09:05:03Z');
});

const seconds = fc.integer({ min: Date.UTC(1900, 0, 1) / 1000, max: Date.UTC(2101, 0, 1) / 1000 - 1 });

test('an instant printed and read again is the same to the second, whole or by day and time', () => {
  fc.assert(fc.property(seconds, (second) => {
    const instant = new Date(second * 1000);
    assert.equal(formatInstant(instant), instant.toISOString().replace('.000', ''));
    assert.deepEqual(parseInstant(formatInstant(instant)), { ok: true, value: instant });
    const day = parseDate(formatDate(instant));
    const time = parseTimeOfDay(formatTimeOfDay(instant));
    assert.ok(day.ok && time.ok);
    assert.deepEqual(instantOf(day.value, time.value), instant);
  }), { numRuns: 1500 });
});

test('no text whatever throws, and an instant understood is one, from 1900 to 2100', () => {
  fc.assert(fc.property(anyText, anyText, fc.boolean(), (one, other, dated) => {
    const reading = parseInstant(dated ? `2026-11-26T${other}` : `${one} ${other}`);
    if (reading.ok) assert.ok(reading.value.getTime() >= Date.UTC(1900, 0, 1) && reading.value.getTime() <= Date.UTC(2101, 0, 1));
  }), { numRuns: 3000 });
});

test('a day or second that is none is refused by name', () => {
  const day = { year: 2026, month: 11, day: 26 };
  for (const bad of [-1, 86400.5, NaN]) assert.throws(() => instantOf(day, bad), { name: 'RangeError', message: /^secondOfDay: / });
  assert.throws(() => instantOf({ ...day, year: 26 }, 0), { name: 'RangeError', message: /^date.year: / });
  assert.throws(() => instantOf({ ...day, year: 2101 }, 0), { name: 'RangeError', message: /^date.year: / });
  for (const bad of [{ ...day, day: 1.5 }, { ...day, month: 13 }, { ...day, day: 31 }, { ...day, month: 0 }, { ...day, day: NaN }]) {
    assert.throws(() => instantOf(bad, 0), { name: 'RangeError', message: /^date: / });
  }
});

test('an invalid Date is refused and never printed', () => {
  for (const format of [formatDate, formatTimeOfDay, formatInstant]) {
    assert.throws(() => format(new Date(NaN)), { name: 'RangeError', message: /^instant: / });
  }
});
