import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseBearing } from '../../../core/angle/parse-bearing.js';
import { parseGyroError } from '../../../core/angle/parse-gyro-error.js';
import { parseError, parseLatitude, parseLongitude } from '../../../core/angle/parse-position.js';
import { parseInstant } from '../../../core/time/instant.js';
import { parseDate } from '../../../core/time/parse-date.js';
import { parseTimeOfDay } from '../../../core/time/parse-time-of-day.js';
import { parseLength } from '../../../core/text/parse-length.js';
import { parseNumber } from '../../../core/text/parse-number.js';
import type { Reading } from '../../../core/text/reading.js';
import { hostileTexts } from './any-text.js';

const readers: Readonly<Record<string, (text: string) => Reading<unknown>>> = {
  parseLatitude, parseLongitude, parseError, parseGyroError, parseBearing, parseDate, parseTimeOfDay, parseInstant,
  parseNumber: (text) => parseNumber(text),
  parseLength: (text) => parseLength(text, 0, 60),
};

// A pattern that grows with the square of the text would take minutes for these 100,000
// characters; a slow machine reads them in a tenth of a second.
const LENGTH = 100_000;
const LONGEST = 2000;

for (const [name, reader] of Object.entries(readers)) {
  test(`${name} reads long hostile texts without trying every way to cut them`, () => {
    for (const text of hostileTexts(LENGTH)) {
      const start = performance.now();
      reader(text);
      const took = performance.now() - start;
      assert.ok(took < LONGEST, `${text.slice(0, 20)} took ${took} ms`);
    }
  });
}

/** Texts that are understood, in every shape each reader knows. */
const good: readonly (readonly [name: string, texts: readonly string[]])[] = [
  ['parseLatitude', ['33.4', 'N 33 24', '33-24.0N', '-33.4', "33°24'00\"S"]],
  ['parseLongitude', ['10.7', 'W 071 42.5', '010-44.2E', '+10']],
  ['parseBearing', ['045', '113-12', 'N 45 E', 'S 4.5 W', 'ENE', '045 T']],
  ['parseDate', ['2026-1-5', '20260105', '5 Jan 2026', '5.1.2026', '05. 01. 2026']],
  ['parseTimeOfDay', ['0905', '090520', '9:05', '09:05:20.5', '9h5', '9h05m', '9h5m3s', "9h05'20.5\""]],
  ['parseInstant', ['2026-1-5 0905', '20260105T0905', '5 Jan 2026 9h5m']],
  ['parseNumber', ['12.5', '.5', '-3']],
  ['parseLength', ['12.5', '12 m', "41'", '41 ft']],
];

test('what stands before or behind what is understood is never passed over', () => {
  for (const [name, texts] of good) {
    const reader = readers[name] as (text: string) => Reading<unknown>;
    for (const text of texts) {
      const reading = reader(text);
      assert.ok(reading.ok, `${name} ${text}`);
      for (const more of [`@${text}`, `${text}@`, `é${text}`, `@ ${text}`, `${text} @`]) assert.equal(reader(more).ok, false, `${name} ${more}`);
      for (const figure of '1379') {
        for (const more of [figure + text, text + figure, `${figure} ${text}`, `${text} ${figure}`]) {
          const other = reader(more);
          if (other.ok) assert.notDeepEqual(other.value, reading.value, `${name} ${more}`);
        }
      }
    }
  }
});
