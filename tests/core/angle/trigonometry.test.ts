import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  acosDegrees, arcOfDegrees, asinDegrees, atan2Degrees, atanDegrees, cosDegrees, degreesOfArc, sinDegrees, tanDegrees,
} from '../../../core/angle/trigonometry.js';
import { assertClose } from '../../support/assert-close.js';

// Values at the quadrants, 30°, 45° and 60°: elementary geometry.
const exact: readonly (readonly [degrees: number, sin: number, cos: number])[] = [
  [0, 0, 1], [90, 1, 0], [180, 0, -1], [270, -1, 0], [360, 0, 1], [450, 1, 0], [540, 0, -1],
  [-90, -1, 0], [-180, 0, -1], [-270, 1, 0], [-360, 0, 1], [-0, 0, 1], [3600000, 0, 1], [-3600090, -1, 0],
];
for (const [degrees, sin, cos] of exact) {
  test(`sin ${degrees}° is ${sin} and cos ${degrees}° is ${cos}, exactly and never -0`, () => {
    assert.ok(Object.is(sinDegrees(degrees), sin), `sin is ${sinDegrees(degrees)}`);
    assert.ok(Object.is(cosDegrees(degrees), cos), `cos is ${cosDegrees(degrees)}`);
  });
}

test('the halves are exact: sin 30° and its fellows, cos 60° and its fellows', () => {
  for (const degrees of [30, 150, -210, -330, 390]) assert.equal(sinDegrees(degrees), 0.5, `sin ${degrees}`);
  for (const degrees of [-30, -150, 210, 330, 570]) assert.equal(sinDegrees(degrees), -0.5, `sin ${degrees}`);
  for (const degrees of [60, -60, 300, 420]) assert.equal(cosDegrees(degrees), 0.5, `cos ${degrees}`);
  for (const degrees of [120, -120, 240, 480]) assert.equal(cosDegrees(degrees), -0.5, `cos ${degrees}`);
});

test('the tangent is exact at 45° and its fellows, 0 at 180° and not -0, infinite at 90°', () => {
  for (const degrees of [45, 225, -135, 405]) assert.equal(tanDegrees(degrees), 1, `tan ${degrees}`);
  for (const degrees of [-45, 135, 315]) assert.equal(tanDegrees(degrees), -1, `tan ${degrees}`);
  for (const degrees of [0, -0, 180, -180, 360]) assert.ok(Object.is(tanDegrees(degrees), 0), `tan ${degrees}`);
  assert.equal(tanDegrees(90), Infinity);
  assert.equal(tanDegrees(-90), -Infinity);
});

test('sin 45° equals cos 45° to the last bit', () => {
  assert.equal(sinDegrees(45), cosDegrees(45));
  assert.equal(sinDegrees(135), -cosDegrees(135));
});

const turns = fc.double({ min: -7200, max: 7200, noNaN: true });

test('an angle and its opposite agree to the last bit', () => {
  fc.assert(fc.property(turns, (degrees) => {
    assert.equal(sinDegrees(-degrees), 0 - sinDegrees(degrees));
    assert.equal(cosDegrees(-degrees), cosDegrees(degrees));
  }), { numRuns: 2000 });
});

test('within ±45° sine, cosine and tangent agree with Math to 1e-15 of their size', () => {
  fc.assert(fc.property(fc.double({ min: -45, max: 45, noNaN: true }), (degrees) => {
    const radians = (degrees * Math.PI) / 180;
    for (const [mine, theirs] of [
      [sinDegrees(degrees), Math.sin(radians)],
      [cosDegrees(degrees), Math.cos(radians)],
      [tanDegrees(degrees), Math.tan(radians)],
    ] as const) {
      // Among the smallest numbers there are, the next one is further off than any part of their size.
      assertClose(mine, theirs, 1e-15 * Math.abs(theirs) + 2 * Number.MIN_VALUE, `${degrees}°`);
    }
  }), { numRuns: 2000 });
});

test('all round the circle sine and cosine agree with Math to 1e-15, the radians being rounded themselves', () => {
  fc.assert(fc.property(fc.double({ min: -360, max: 360, noNaN: true }), (degrees) => {
    const radians = (degrees * Math.PI) / 180;
    assertClose(sinDegrees(degrees), Math.sin(radians), 1.2e-15, `sin ${degrees}°`);
    assertClose(cosDegrees(degrees), Math.cos(radians), 1.2e-15, `cos ${degrees}°`);
  }), { numRuns: 2000 });
});

test('the squares of sine and cosine make one', () => {
  fc.assert(fc.property(turns, (degrees) => {
    assertClose(sinDegrees(degrees) ** 2 + cosDegrees(degrees) ** 2, 1, 5e-16);
  }));
});

test('the inverses are held to the range of a sine, so that a rounding error makes no NaN', () => {
  assert.equal(asinDegrees(1 + 1e-12), 90);
  assert.equal(asinDegrees(-1 - 1e-12), -90);
  assert.equal(acosDegrees(1 + 1e-12), 0);
  assert.equal(acosDegrees(-1 - 1e-12), 180);
});

test('the inverses undo sine, cosine and tangent', () => {
  fc.assert(fc.property(fc.double({ min: -89, max: 89, noNaN: true }), (degrees) => {
    assertClose(asinDegrees(sinDegrees(degrees)), degrees, 1e-12);
    assertClose(atanDegrees(tanDegrees(degrees)), degrees, 1e-13);
    assertClose(acosDegrees(cosDegrees(degrees + 90)), degrees + 90, 1e-12);
    assertClose(degreesOfArc(arcOfDegrees(degrees)), degrees, 1e-13);
  }));
});

test('the direction of a point is exact on the axes and counted from x towards y', () => {
  assert.equal(atan2Degrees(0, 1), 0);
  assert.equal(atan2Degrees(1, 0), 90);
  assert.equal(atan2Degrees(0, -1), 180);
  assert.equal(atan2Degrees(-1, 0), -90);
  assert.equal(atan2Degrees(1, 1), 45);
});
