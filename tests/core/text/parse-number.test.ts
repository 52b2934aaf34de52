import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseNumber } from '../../../core/text/parse-number.js';
import { understood, within } from '../../../core/text/reading.js';
import { anyText } from './any-text.js';

// Which texts are read and which refused: common practice, no source.
const read: readonly (readonly [string, number])[] = [
  ['12.5', 12.5], ['12,5', 12.5], ['+12.5', 12.5], ['-12.5', -12.5], ['−12,5', -12.5], ['- 3', -3],
  ['.5', 0.5], [',5', 0.5], ['5.', 5], ['007', 7], ['１２．５', 12.5],
  ['0.30000000000000004', 0.30000000000000004], ['33.400000000000006', 33.400000000000006],
];
for (const [text, value] of read) {
  test(`${text} is the number ${value}`, () => assert.deepEqual(parseNumber(text), { ok: true, value }));
}

const refusals: readonly (readonly [string, string])[] = [
  ['', 'empty'], ['  \u200b', 'empty'], ['1.234,5', 'two-decimal-marks'], ['1,234,567', 'two-decimal-marks'],
  ['1 234', 'not-understood'], ["1'234", 'not-understood'], ['1e3', 'not-understood'], ['0x10', 'not-understood'],
  ['Infinity', 'not-understood'], ['NaN', 'not-understood'], ['.', 'not-understood'], ['-', 'not-understood'],
  ['--1', 'not-understood'], ['5-3', 'not-understood'], ['5 + 3', 'not-understood'], ['x.5', 'not-understood'], ['3²', 'not-understood'], ['½', 'not-understood'], ['9'.repeat(400), 'not-understood'],
  ['e.g., no', 'not-understood'],
];
for (const [text, refusal] of refusals) {
  test(`${JSON.stringify(text.slice(0, 12))} is refused: ${refusal}`, () => {
    assert.deepEqual(parseNumber(text), { ok: false, refusal });
  });
}

test('a number is understood at both ends of its range and refused beyond', () => {
  assert.deepEqual(parseNumber('10', 10, 20), { ok: true, value: 10 });
  assert.deepEqual(parseNumber('20', 10, 20), { ok: true, value: 20 });
  assert.deepEqual(parseNumber('9.9', 10, 20), { ok: false, refusal: 'out-of-range' });
  assert.deepEqual(parseNumber('20.1', 10, 20), { ok: false, refusal: 'out-of-range' });
});

test('-0 is read as 0', () => {
  assert.deepEqual(parseNumber('-0'), understood(0));
  assert.deepEqual(within(-0, -1, 1), understood(0));
});

test('no text whatever throws, and what is understood is a number in the range', () => {
  fc.assert(fc.property(anyText, (text) => {
    const reading = parseNumber(text, -50, 50);
    if (reading.ok) assert.ok(reading.value >= -50 && reading.value <= 50 && !Object.is(reading.value, -0));
    const free = parseNumber(text);
    if (free.ok) assert.ok(Number.isFinite(free.value));
  }), { numRuns: 2000 });
});

test('a number as the computer prints it is read back the same', () => {
  fc.assert(fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
    fc.pre(!/e/.test(String(value)));
    assert.deepEqual(parseNumber(String(value)), { ok: true, value: value + 0 });
    assert.deepEqual(parseNumber(String(value).replace('.', ',')), { ok: true, value: value + 0 });
  }));
});
