import assert from 'node:assert/strict';
import { test } from 'node:test';
import { checkInstant } from '../../../core/time/check-instant.js';

test('a Date that holds an instant passes', () => {
  assert.doesNotThrow(() => checkInstant('after', new Date(0)));
});

test('an invalid Date, a text, a number and nothing throw a RangeError that names the argument', () => {
  for (const bad of [new Date(NaN), '2026-11-26T09:05Z', 0, null, undefined, {}]) {
    assert.throws(() => checkInstant('after', bad as Date), { name: 'RangeError', message: /^after: / });
  }
});
