import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bearingOfPoint, compassPoints } from '../../../core/angle/compass-points.js';

// The rose of 32 points: a principal point every two points of 11¼°.
const rose: readonly (readonly [string, number])[] = [
  ['N', 0], ['NNE', 22.5], ['NE', 45], ['ENE', 67.5], ['E', 90], ['ESE', 112.5], ['SE', 135], ['SSE', 157.5],
  ['S', 180], ['SSW', 202.5], ['SW', 225], ['WSW', 247.5], ['W', 270], ['WNW', 292.5], ['NW', 315], ['NNW', 337.5],
];
for (const [point, bearing] of rose) test(`${point} is ${bearing}°`, () => assert.equal(bearingOfPoint(point), bearing));

test('there are sixteen points, and other texts are none', () => {
  assert.equal(compassPoints.length, 16);
  for (const other of ['', 'n', 'NO', 'EN', 'NNNE', 'toString']) assert.equal(bearingOfPoint(other), null);
});
