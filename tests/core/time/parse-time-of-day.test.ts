import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseTimeOfDay } from '../../../core/time/parse-time-of-day.js';
import { anyText } from '../text/any-text.js';

// ISO 8601 and RFC 3339 for the colon forms, common practice without source for the rest. Seconds by hand:
// 09:05 is 9 × 3600 + 5 × 60 = 32700.
const read: readonly (readonly [string, number])[] = [
  ['09:05', 32700], ['9:05', 32700], ['0905', 32700], ['09:05:20', 32720], ['090520', 32720], ['9.05', 32700], ['09.05.20', 32720], ['09-05-20', 32720], ['09-05', 32700],
  ['09 05 20', 32720], ['09h05', 32700], ['9h5', 32700], ['09h05m', 32700], ['09h05m20s', 32720], ['9 h 5 m 20 s', 32720], ['9h5m3s', 32703], ['9h05m20', 32720], ['09h05m20.5s', 32720.5], ['0905hrs', 32700], ['0905hours', 32700], ['0905+0000', 32700], ["09h05'20\"", 32720], ['０９：０５', 32700],
  ['09:05Z', 32700], ['0905 z', 32700], ['09:05 UTC', 32700], ['09:05 UT', 32700], ['09:05 UT1', 32700], ['09:05 GMT', 32700], ['09:05+00:00', 32700], ['0905+00', 32700],
  ['0905 hrs', 32700], ['0905 hours UTC', 32700], ['09:05:20.5', 32720.5], ['09:05:20,25', 32720.25], ['09:05:20.123456Z', 32720.123456], ['090520.5', 32720.5],
  ['00:00', 0], ['0000', 0], ['23:59:59', 86399], ['23:59:60', 86400],
];
for (const [text, seconds] of read) {
  test(`${text} is second ${seconds} of the day`, () => assert.deepEqual(parseTimeOfDay(text), { ok: true, value: seconds }));
}

const refusals: readonly (readonly [string, string])[] = [
  ['', 'empty'], ['24:00', 'hours-over-23'], ['2400', 'hours-over-23'], ['25:10', 'hours-over-23'], ['12:60', 'minutes-over-59'], ['1260', 'minutes-over-59'], ['12:30:60', 'seconds-over-59'],
  ['23:58:60', 'seconds-over-59'], ['22:59:60', 'seconds-over-59'], ['23:59:60.5', 'seconds-over-59'], ['23:59:61', 'seconds-over-59'],
  ['09:05 +02:00', 'not-utc'], ['09:05+0200', 'not-utc'], ['0905+2', 'not-utc'], ['09:05-02', 'not-utc'], ['09:05 - 2', 'not-utc'], ['09:05 CET', 'not-utc'], ['09:05 cest', 'not-utc'], ['0905 LT', 'not-utc'],
  ['0905 EST', 'not-utc'], ['0905A', 'not-utc'], ['0905 B', 'not-utc'], ['0905 HST', 'not-utc'], ['0905 MSK', 'not-utc'], ['0905 AMT', 'not-utc'], ['0905 PMST', 'not-utc'],
  ['9:05 pm', 'not-understood'], ['9:05 AM', 'not-understood'], ['9', 'not-understood'], ['09', 'not-understood'], ['905', 'not-understood'], ['9:5', 'not-understood'], ['9.5', 'not-understood'],
  ['09:05.5', 'not-understood'], ['09.05:20', 'not-understood'], ['-09:05', 'not-understood'], ['Z', 'not-understood'], ['UTC', 'not-understood'], ['noon', 'not-understood'], ['09:05:20:10', 'not-understood'], ['0x10', 'not-understood'],
];
for (const [text, refusal] of refusals) {
  test(`${JSON.stringify(text)} is refused: ${refusal}`, () => assert.deepEqual(parseTimeOfDay(text), { ok: false, refusal }));
}

test('09:05.5, nine hours and five and a half minutes, was once read as five seconds past 09:05', () => {
  assert.equal(parseTimeOfDay('09:05.5').ok, false);
});

test('no text whatever throws, and a time understood lies in [0, 86400]', () => {
  fc.assert(fc.property(anyText, (text) => {
    const reading = parseTimeOfDay(text);
    if (reading.ok) assert.ok(reading.value >= 0 && reading.value <= 86400, `${text}: ${reading.value}`);
  }), { numRuns: 3000 });
});
