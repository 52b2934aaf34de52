import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { circularMean } from '../../../core/angle/circular-mean.js';
import { assertSameDirection } from '../../support/assert-close.js';

// Expected means: symmetry of the directions about their mean.
const cases: readonly (readonly [degrees: readonly number[], mean: number])[] = [
  [[359, 1], 0], [[350, 20], 5], [[340, 350, 0, 10, 20], 0], [[359.9, 0.3], 0.1], [[45], 45], [[-10, 730], 0],
  [[179, -179], 180], [[90, 90, 90], 90], [[0, 90], 45], [[120, 240, 180], 180], [[-90], 270],
];
for (const [degrees, mean] of cases) {
  test(`the mean direction of ${degrees.join(', ')} is ${mean}`, () => {
    const found = circularMean(degrees);
    assert.ok(found !== null && found >= 0 && found < 360);
    assertSameDirection(found, mean, 1e-12);
  });
}

test('directions that cancel have no mean, and none have none', () => {
  for (const degrees of [[], [0, 180], [10, 190], [0, 120, 240], [0, 90, 180, 270], [22.5, 112.5, 202.5, 292.5], [0.1, 180.1]]) {
    assert.equal(circularMean(degrees), null, degrees.join(', '));
  }
});

test('nearly opposite directions still have one', () => {
  assertSameDirection(circularMean([0, 179.99]) ?? NaN, 89.995, 1e-9);
});

test('turning every direction turns the mean', () => {
  const narrow = fc.array(fc.double({ min: -60, max: 60, noNaN: true }), { minLength: 1, maxLength: 20 });
  fc.assert(fc.property(narrow, fc.double({ min: -720, max: 720, noNaN: true }), (degrees, turn) => {
    const mean = circularMean(degrees);
    const turned = circularMean(degrees.map((angle) => angle + turn));
    assert.ok(mean !== null && turned !== null && turned >= 0 && turned < 360);
    assertSameDirection(turned, mean + turn, 1e-10);
  }));
});

test('what is no direction is refused by name', () => {
  assert.throws(() => circularMean([10, NaN]), { name: 'RangeError', message: /degrees/ });
  assert.throws(() => circularMean([Infinity]), { name: 'RangeError', message: /degrees/ });
});
