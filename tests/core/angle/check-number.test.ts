import assert from 'node:assert/strict';
import { test } from 'node:test';
import { checkFinite, checkRange } from '../../../core/angle/check-number.js';

test('a number passes at both ends of its range', () => {
  assert.doesNotThrow(() => checkRange('latitude', 90, -90, 90));
  assert.doesNotThrow(() => checkRange('latitude', -90, -90, 90));
  assert.doesNotThrow(() => checkFinite('heading', -1e9));
});

test('what lies outside or is no number throws a RangeError that names the argument', () => {
  for (const bad of [90.000001, -91, NaN, Infinity, '45', null, undefined]) {
    assert.throws(() => checkRange('latitude', bad as number, -90, 90), { name: 'RangeError', message: /^latitude: / });
  }
  for (const bad of [NaN, Infinity, '45', null, undefined]) {
    assert.throws(() => checkFinite('heading', bad as number), { name: 'RangeError', message: /^heading: / });
  }
});
