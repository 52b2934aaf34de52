import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseBearing } from '../../../core/angle/parse-bearing.js';
import { parseError, parseLatitude, parseLongitude } from '../../../core/angle/parse-position.js';
import { parseInstant } from '../../../core/time/instant.js';
import { parseDate } from '../../../core/time/parse-date.js';
import { parseTimeOfDay } from '../../../core/time/parse-time-of-day.js';
import { parseLength } from '../../../core/text/parse-length.js';
import { parseNumber } from '../../../core/text/parse-number.js';
import type { Reading } from '../../../core/text/reading.js';
import { hostileTexts } from './any-text.js';

const readers: Readonly<Record<string, (text: string) => Reading<unknown>>> = {
  parseLatitude, parseLongitude, parseError, parseBearing, parseDate, parseTimeOfDay, parseInstant,
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
