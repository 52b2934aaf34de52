import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  formatAngle, formatBearing, formatError, formatLatitude, formatLongitude, formatNumber, roundTo,
} from '../../../core/angle/format-angle.js';

// The three-figure bearing and the error with its letter: common practice, no source.
function prints(name: string, format: (value: number, decimals?: number) => string, cases: readonly (readonly [number, number | undefined, string])[]): void {
  for (const [value, decimals, text] of cases) {
    test(`${name} ${Object.is(value, -0) ? '-0' : value}${decimals === undefined ? '' : ` to ${decimals} decimals`} is printed ${text}`, () => {
      assert.equal(format(value, decimals), text);
    });
  }
}

prints('bearing', formatBearing, [
  [45, undefined, '045.0°'], [0, undefined, '000.0°'], [-0, undefined, '000.0°'], [360, undefined, '000.0°'], [359.94, undefined, '359.9°'],
  [359.95, undefined, '000.0°'], [359.96, undefined, '000.0°'], [-0.04, undefined, '000.0°'], [-0.06, undefined, '359.9°'], [5.5, undefined, '005.5°'],
  [359.5, 0, '000°'], [359.4, 0, '359°'], [7, 0, '007°'], [113.254, 2, '113.25°'], [359.996, 2, '000.00°'], [725, undefined, '005.0°'],
]);
prints('error', formatError, [
  [3.2, undefined, '3.2° E'], [-3.2, undefined, '3.2° W'], [0, undefined, '0.0°'], [-0, undefined, '0.0°'], [-0.04, undefined, '0.0°'], [0.04, undefined, '0.0°'],
  [-0.05, undefined, '0.1° W'], [0.05, undefined, '0.1° E'], [180, undefined, '180.0° E'], [-180, undefined, '180.0° E'], [-179.96, undefined, '180.0° E'],
  [359.96, undefined, '0.0°'], [-2.5, 0, '3° W'], [356.8, undefined, '3.2° W'],
]);
prints('latitude', formatLatitude, [
  [33.4, undefined, '33° 24.0′ N'], [-33.4, undefined, '33° 24.0′ S'], [0, undefined, '00° 00.0′ N'], [-0.0001, undefined, '00° 00.0′ N'], [-0.001, undefined, '00° 00.1′ S'],
  [59.9993333, undefined, '60° 00.0′ N'], [-33.99999, undefined, '34° 00.0′ S'], [90, undefined, '90° 00.0′ N'], [-89.99999, undefined, '90° 00.0′ S'], [5.05, 0, '05° 03′ N'], [5.999, 0, '06° 00′ N'],
]);
prints('longitude', formatLongitude, [
  [-71.70833333, undefined, '071° 42.5′ W'], [180, undefined, '180° 00.0′ E'], [-180, undefined, '180° 00.0′ E'], [-179.9995, undefined, '180° 00.0′ E'], [-179.998, undefined, '179° 59.9′ W'],
  [179.9995, undefined, '180° 00.0′ E'], [181, undefined, '179° 00.0′ W'], [-0.0001, undefined, '000° 00.0′ E'], [9.99999, undefined, '010° 00.0′ E'], [-179.999, 0, '180° 00′ E'],
]);
prints('angle', formatAngle, [[-0.7, undefined, '−0.7°'], [0.25, undefined, '0.3°'], [-0.04, undefined, '0.0°'], [12, 0, '12°']]);
prints('number', (value, decimals) => formatNumber(value, decimals ?? 0), [[-2.5, 0, '−3'], [1.005, 2, '1.01'], [-0.004, 2, '0.00'], [1e-9, 3, '0.000']]);

test('half is rounded away from zero by the figures as they are printed', () => {
  assert.equal(roundTo(1.005, 2), 1.01);
  assert.equal(roundTo(-1.005, 2), -1.01);
  assert.equal(roundTo(0.15, 1), 0.2);
  assert.equal(roundTo(2.5, 0), 3);
  assert.equal(roundTo(-2.5, 0), -3);
  assert.ok(Object.is(roundTo(-0.04, 1), 0));
  assert.ok(Object.is(roundTo(-1e-9, 1), 0));
});

test('rounding an opposite gives the opposite, and is never off by more than half a step', () => {
  fc.assert(fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 6 }), (value, decimals) => {
    assert.equal(roundTo(-value, decimals), 0 - roundTo(value, decimals));
    assert.ok(Math.abs(roundTo(value, decimals) - value) <= 0.5 * 10 ** -decimals + 1e-9);
    assert.equal(roundTo(roundTo(value, decimals), decimals), roundTo(value, decimals));
  }));
});

test('nothing that is no number is ever printed', () => {
  for (const bad of [NaN, Infinity, -Infinity]) {
    for (const format of [formatBearing, formatError, formatLatitude, formatLongitude, formatAngle]) {
      assert.throws(() => format(bad), { name: 'RangeError', message: /^degrees: / }, format.name);
    }
    assert.throws(() => roundTo(bad, 1), { name: 'RangeError', message: /^value: / });
    assert.throws(() => formatNumber(bad, 1), { name: 'RangeError', message: /^value: / });
  }
});
