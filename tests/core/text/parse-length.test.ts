import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseLength } from '../../../core/text/parse-length.js';
import { assertClose } from '../../support/assert-close.js';
import { anyText } from './any-text.js';

// The international foot is 0.3048 m exactly (agreement of 1959).
const read: readonly (readonly [string, number])[] = [
  ['12.5', 12.5], ['12,5 m', 12.5], ['12.5M', 12.5], ['20 metres', 20], ['1 meter', 1], ['1 metre', 1],
  ['41 ft', 12.4968], ["41'", 12.4968], ['41′', 12.4968], ['41 feet', 12.4968], ['1 foot', 0.3048], ['0', 0],
];
for (const [text, metres] of read) {
  test(`${text} is ${metres} m`, () => {
    const reading = parseLength(text, 0, 60);
    assert.ok(reading.ok);
    assertClose(reading.value, metres, 1e-12);
  });
}

const refusals: readonly (readonly [string, string])[] = [
  ['', 'empty'], ['m', 'not-understood'], ['ft', 'not-understood'], ["5'6\"", 'not-understood'], ["5'6", 'not-understood'], ['5m6', 'not-understood'], ['12 km', 'not-understood'],
  ['12 fathoms', 'not-understood'], ['-1', 'out-of-range'], ['60.1 m', 'out-of-range'], ['200 ft', 'out-of-range'], ['1.2.3 m', 'two-decimal-marks'],
];
for (const [text, refusal] of refusals) {
  test(`${JSON.stringify(text)} is refused: ${refusal}`, () => {
    assert.deepEqual(parseLength(text, 0, 60), { ok: false, refusal });
  });
}

test('no text whatever throws, and what is understood lies in the range, feet as well', () => {
  const length = fc.oneof(anyText, fc.tuple(fc.double({ min: 0, max: 250, noNaN: true }), fc.constantFrom(' m', ' ft', "'"))
    .map(([size, unit]) => `${size.toFixed(9)}${unit}`));
  fc.assert(fc.property(length, (text) => {
    const reading = parseLength(text, 0, 60);
    if (reading.ok) assert.ok(reading.value >= 0 && reading.value <= 60);
  }), { numRuns: 2000 });
});
