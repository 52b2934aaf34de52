import assert from 'node:assert/strict';
import { test } from 'node:test';
import { geoNaturalEarth1Raw } from 'd3-geo';
import { naturalEarth, naturalEarthLatitude } from '../../../core/angle/natural-earth.js';

// The drawn table behind the polynomial, length of the parallel and distance from the equator as parts of those of
// equator and pole, from memory; the polynomial is smoother than it by a thousandth.
const drawn = [
  [0, 1, 0],
  [30, 0.957, 0.372],
  [60, 0.8196, 0.7346],
] as const;

test('follows the table the projection was drawn by', () => {
  const [equator, pole] = [naturalEarth(0), naturalEarth(90)];
  for (const [latitude, length, distance] of drawn) {
    const { degree, height } = naturalEarth(latitude);
    assert.ok(Math.abs(degree / equator.degree - length) < 0.002, `length at ${latitude}`);
    assert.ok(Math.abs(height / pole.height - distance) < 0.002, `height at ${latitude}`);
  }
});

test('agrees with d3-geo, south as north', () => {
  for (let latitude = -90; latitude <= 90; latitude += 7.5) {
    const { degree, height } = naturalEarth(latitude);
    const [x, y] = geoNaturalEarth1Raw((-120 * Math.PI) / 180, (latitude * Math.PI) / 180);
    assert.ok(Math.abs(-120 * degree - x) < 1e-12 && Math.abs(height - y) < 1e-12, `${latitude}`);
  }
});

test('goes back from the height to the latitude, and nowhere beyond the poles', () => {
  for (const latitude of [-90, -66.5, -0.001, 0, 12.345, 89.9, 90]) {
    assert.ok(Math.abs((naturalEarthLatitude(naturalEarth(latitude).height) ?? NaN) - latitude) < 2e-6, `${latitude}`);
  }
  assert.equal(naturalEarthLatitude(naturalEarth(90).height + 1e-9), null);
  assert.equal(naturalEarthLatitude(naturalEarth(-90).height - 1e-9), null);
  assert.equal(naturalEarthLatitude(NaN), null);
});
