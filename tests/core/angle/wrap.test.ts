import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { angleFromTo, wrap180, wrap360 } from '../../../core/angle/wrap.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';

// Expected values: the intervals [0, 360) and (-180, 180] and whole turns of 360.
const cases: readonly (readonly [degrees: number, in360: number, in180: number])[] = [
  [0, 0, 0], [-0, 0, 0], [360, 0, 0], [-360, 0, 0], [720, 0, 0], [3600000, 0, 0], [-3600000, 0, 0],
  [180, 180, 180], [-180, 180, 180], [540, 180, 180], [-540, 180, 180], [-3599820, 180, 180],
  [359.5, 359.5, -0.5], [-0.5, 359.5, -0.5], [180.5, 180.5, -179.5], [-179.5, 180.5, -179.5], [-180.5, 179.5, 179.5],
  [90, 90, 90], [-90, 270, -90], [270, 270, -90], [450, 90, 90], [36000045, 45, 45],
];
for (const [degrees, in360, in180] of cases) {
  test(`${Object.is(degrees, -0) ? '-0' : degrees}° is ${in360} in [0, 360) and ${in180} in (-180, 180]`, () => {
    assert.ok(Object.is(wrap360(degrees), in360), `wrap360 gives ${wrap360(degrees)}`);
    assert.ok(Object.is(wrap180(degrees), in180), `wrap180 gives ${wrap180(degrees)}`);
  });
}

test('a tiny negative angle is 0 in [0, 360), never 360, and itself in (-180, 180]', () => {
  for (const tiny of [-Number.MIN_VALUE, -1e-300, -1e-17, -1e-15]) {
    assert.equal(wrap360(tiny), 0);
    assert.equal(wrap180(tiny), tiny);
  }
});

test('the neighbours of the seams stay on their own side', () => {
  assert.equal(wrap180(180 + 2 ** -45), -180 + 2 ** -45);
  assert.equal(wrap180(-180 + 2 ** -45), -180 + 2 ** -45);
  assert.equal(wrap180(-180 - 2 ** -45), 180 - 2 ** -45);
  assert.equal(wrap360(360 - 2 ** -44), 360 - 2 ** -44);
});

const angle = fc.oneof(
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.double({ min: -1000, max: 1000, noNaN: true }),
  fc.tuple(fc.integer({ min: -1e6, max: 1e6 }), fc.double({ min: -1e-9, max: 1e-9, noNaN: true }))
    .map(([quarters, little]) => quarters * 90 + little),
);

test('every angle lands in its interval, twice wrapped it stays, and it is never -0', () => {
  fc.assert(fc.property(angle, (degrees) => {
    const bearing = wrap360(degrees);
    const difference = wrap180(degrees);
    assert.ok(bearing >= 0 && bearing < 360 && !Object.is(bearing, -0), `${bearing}`);
    assert.ok(difference > -180 && difference <= 180 && !Object.is(difference, -0), `${difference}`);
    assert.equal(wrap360(bearing), bearing);
    assert.equal(wrap180(difference), difference);
    assertSameDirection(bearing, difference, 1e-13);
  }), { numRuns: 3000 });
});

test('the turn from 350° to 10° is 20° clockwise, and 20° the other way back', () => {
  assert.equal(angleFromTo(350, 10), 20);
  assert.equal(angleFromTo(10, 350), -20);
  assert.equal(angleFromTo(0, 180), 180);
  assert.equal(angleFromTo(180, 0), 180);
});

test('the turn from one direction to another leads there', () => {
  fc.assert(fc.property(fc.double({ min: -720, max: 720, noNaN: true }), fc.double({ min: -720, max: 720, noNaN: true }), (from, to) => {
    assertSameDirection(from + angleFromTo(from, to), to, 1e-12);
    assertClose(Math.abs(angleFromTo(from, to)), Math.abs(angleFromTo(to, from)), 1e-12);
  }));
});

test('what is no angle is refused by name', () => {
  for (const bad of [NaN, Infinity, -Infinity]) {
    assert.throws(() => wrap360(bad), { name: 'RangeError', message: /degrees/ });
    assert.throws(() => wrap180(bad), { name: 'RangeError', message: /degrees/ });
    assert.throws(() => angleFromTo(bad, 0), { name: 'RangeError', message: /from/ });
    assert.throws(() => angleFromTo(0, bad), { name: 'RangeError', message: /to/ });
  }
});
