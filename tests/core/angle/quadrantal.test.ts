import assert from 'node:assert/strict';
import { test } from 'node:test';
import { formatAmplitude, formatQuadrantal } from '../../../core/angle/quadrantal.js';

// Quadrantal names: common practice, no source; the sizes are differences from 0°, 180° and 360° by hand.
const bearings: readonly (readonly [number, string])[] = [
  [0, 'N'], [90, 'E'], [180, 'S'], [270, 'W'], [360, 'N'], [-90, 'W'], [122.6, 'S 57.4° E'], [45, 'N 45.0° E'], [225, 'S 45.0° W'], [315, 'N 45.0° W'],
  [359.9, 'N 0.1° W'], [359.96, 'N'], [0.04, 'N'], [89.96, 'E'], [90.1, 'S 89.9° E'], [179.9, 'S 0.1° E'], [180.1, 'S 0.1° W'], [269.9, 'S 89.9° W'], [270.1, 'N 89.9° W'],
];
for (const [degrees, text] of bearings) {
  test(`${degrees}° by quadrant is ${text}`, () => assert.equal(formatQuadrantal(degrees), text));
}

// Prefix E rising and W setting, suffix as the declination: trade practice of amplitudes, common practice, no source.
const amplitudes: readonly (readonly [number, 'rising' | 'setting', string])[] = [
  [-32.6, 'rising', 'E 32.6° S'], [32.6, 'rising', 'E 32.6° N'], [-5, 'setting', 'W 5.0° S'], [5, 'setting', 'W 5.0° N'], [0, 'rising', 'E 0.0°'], [-0.04, 'setting', 'W 0.0°'], [0.6, 'setting', 'W 0.6° N'], [-0.6, 'rising', 'E 0.6° S'],
];
for (const [amplitude, event, text] of amplitudes) {
  test(`an amplitude of ${amplitude}° ${event} is ${text}`, () => assert.equal(formatAmplitude(amplitude, event), text));
}

test('what is no angle is refused by name', () => {
  assert.throws(() => formatQuadrantal(NaN), { name: 'RangeError', message: /^degrees: / });
  assert.throws(() => formatAmplitude(NaN, 'rising'), { name: 'RangeError', message: /^amplitude: / });
});
