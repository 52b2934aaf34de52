import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseDate } from '../../../core/time/parse-date.js';
import { anyText } from '../text/any-text.js';

// ISO 8601 for the first two forms, common practice without source for the rest.
const read: readonly (readonly [string, number, number, number])[] = [
  ['2026-11-26', 2026, 11, 26], ['2026-1-5', 2026, 1, 5], ['20261126', 2026, 11, 26], ['26 Nov 2026', 2026, 11, 26], ['26 november 2026', 2026, 11, 26], ['26NOV2026', 2026, 11, 26],
  ['26-Nov-2026', 2026, 11, 26], ['26 Nov. 2026', 2026, 11, 26], ['26. Nov 2026', 2026, 11, 26], ['5 Sept 2026', 2026, 9, 5], ['26.11.2026', 2026, 11, 26], ['26. 11. 2026', 2026, 11, 26], ['5.1.2026', 2026, 1, 5], ['5. 1. 2026', 2026, 1, 5],
  ['2026−11−26', 2026, 11, 26], ['２０２６－１１－２６', 2026, 11, 26], ['1900-01-01', 1900, 1, 1], ['2100-12-31', 2100, 12, 31],
  // Leap years of the Gregorian calendar.
  ['2024-02-29', 2024, 2, 29], ['2000-02-29', 2000, 2, 29], ['29 Feb 2028', 2028, 2, 29],
];
for (const [text, year, month, day] of read) {
  test(`${text} is day ${day} of month ${month} of ${year}`, () => {
    assert.deepEqual(parseDate(text), { ok: true, value: { year, month, day } });
  });
}

const refusals: readonly (readonly [string, string])[] = [
  ['', 'empty'], ['2026-02-31', 'no-such-day'], ['31.02.2026', 'no-such-day'], ['31 Feb 2026', 'no-such-day'], ['1900-02-29', 'no-such-day'], ['2100-02-29', 'no-such-day'],
  ['2023-02-29', 'no-such-day'], ['2026-13-01', 'no-such-day'], ['2026-00-10', 'no-such-day'], ['2026-04-31', 'no-such-day'], ['2026-05-00', 'no-such-day'],
  ['1899-12-31', 'out-of-range'], ['2101-01-01', 'out-of-range'], ['0026-11-26', 'out-of-range'],
  ['26/11/2026', 'ambiguous-date'], ['11/26/2026', 'ambiguous-date'], ['2026/11/26', 'ambiguous-date'], ['26/11/26', 'ambiguous-date'], ['26-11-26', 'ambiguous-date'], ['05-06-2026', 'ambiguous-date'], ['5/6/2026', 'ambiguous-date'], ['5/6/26', 'ambiguous-date'], ['2026/6/5', 'ambiguous-date'],
  ['26.11.26', 'not-understood'], ['26 Nov 26', 'not-understood'], ['261126', 'not-understood'], ['26 Xyz 2026', 'not-understood'], ['26 Jankxx 2026', 'not-understood'], ['Thursday', 'not-understood'], ['2026', 'not-understood'], ['2026-11', 'not-understood'],
];
for (const [text, refusal] of refusals) {
  test(`${JSON.stringify(text)} is refused: ${refusal}`, () => assert.deepEqual(parseDate(text), { ok: false, refusal }));
}

test('no text whatever throws, and a day understood is one of the calendar', () => {
  fc.assert(fc.property(anyText, (text) => {
    const reading = parseDate(text);
    if (!reading.ok) return;
    const { year, month, day } = reading.value;
    assert.equal(new Date(Date.UTC(year, month - 1, day)).toISOString().slice(0, 10),
      `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`);
  }), { numRuns: 3000 });
});
