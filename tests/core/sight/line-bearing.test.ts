import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { lineBearing } from '../../../core/sight/line-bearing.js';
import type { MeasuredLine } from '../../../core/sight/line-bearing.js';
import { meridianArc } from '../../../core/sight/meridian-arc.js';
import { meridionalParts } from '../../../core/sight/rhumb-line.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { at, buninyong, dms, flindersPeak, flindersToBuninyong } from './transit-lines.js';

function assertLine(line: MeasuredLine, bearing: number, metres: number, tolerance = { bearing: 1e-9, metres: 1e-4 }): void {
  assert.ok(line.determined, JSON.stringify(line));
  assertSameDirection(line.bearing, bearing, tolerance.bearing);
  assertClose(line.distance, metres, tolerance.metres);
}

function reasonOf(line: MeasuredLine): string {
  assert.equal(line.determined, false);
  return line.determined ? '' : line.reason;
}

test('Flinders Peak to Buninyong: 306°52′05.37″, 54 972.271 m; back 127°10′25.07″', () => {
  const { forward, back, metres } = flindersToBuninyong;
  const tolerance = { bearing: dms(0, 0, 0.006), metres: 0.001 };
  assertLine(lineBearing(flindersPeak, buninyong).geodesic, forward, metres, tolerance);
  assertLine(lineBearing(buninyong, flindersPeak).geodesic, back, metres, tolerance);
});

// A degree of longitude on the equator of WGS 84 is 6378.137 km × π/180, and a mile 1.852 km, by definition.
test('miles of 1852 m', () => {
  const line = lineBearing(at(0, 10), at(0, 11));
  assertClose(line.geodesic.nauticalMiles, (6378.137 * Math.PI) / 180 / 1.852, 1e-6);
  assertClose(line.rhumb.nauticalMiles, line.geodesic.nauticalMiles, 1e-6);
});

// Karney, Algorithms for geodesics, Journal of Geodesy 87 (2013), tables 3 and 4 (from memory).
test('a geodesic of five metres, and one nearly to the antipodes', () => {
  assertLine(lineBearing(at(-30.12345, 0), at(-30.12344, 0.00005)).geodesic, 77.043533542, 4.944208, { bearing: 3e-9, metres: 1e-6 });
  assertLine(lineBearing(at(-30, 0), at(29.9, 179.8)).geodesic, 161.890524736, 19_989_832.82761, { bearing: 1e-9, metres: 1e-4 });
});

// The manual page of RhumbSolve, GeographicLib: 103:34:58.2, 18523563 m; the second line and more
// figures of the first from the tests of a port of that library.
test('rhumb lines: New York to Singapore 103.582833003°, 33.3 44.4 to 12.34 56.78 151.483174375°', () => {
  const newYork = at(dms(40, 38, 23), dms(-73, 46, 44));
  const singapore = at(dms(1, 21, 33), dms(103, 59, 22));
  assertLine(lineBearing(newYork, singapore).rhumb, 103.582833003410954, 18_523_563.0423774);
  assertLine(lineBearing(at(33.3, 44.4), at(12.34, 56.78)).rhumb, 151.483174375421527, 2_641_839.7239669);
});

// Pub. 9, American Practical Navigator, Mercator sailing, example 1 (from memory): course 302°,
// and 538.2 minutes of latitude along it.
test('Mercator sailing: 32-14.7N 066-28.9W to 36-58.7N 075-42.2W, course 302°, 538.2 minutes', () => {
  const { rhumb } = lineBearing(at(dms(32, 14.7), dms(-66, 28.9)), at(dms(36, 58.7), dms(-75, 42.2)));
  assert.ok(rhumb.determined);
  assertSameDirection(rhumb.bearing, 302, 0.5);
  assertClose(284 / Math.cos((rhumb.bearing * Math.PI) / 180), 538.2, 0.3);
});

// Quarter of the meridian on WGS 84: 10 001 965.729 m (NIMA TR8350.2, 3.4).
test('from equator to pole there are 10 001 965.729 m', () => {
  assertClose(meridianArc(90), 10_001_965.729, 0.001);
  assert.equal(meridianArc(-90), -meridianArc(90));
});

// Table of meridional parts, Clarke 1866: 2607.6 for 40° (Pub. 9, table 6, from memory); on
// the sphere the parts of 45° are 10800/π ln tan 67.5° = 3029.94, on any ellipsoid about 16 less.
test('meridional parts: 40° 2607.7, and the south as the north', () => {
  assertClose(meridionalParts(0, 40), 2607.6, 0.3);
  assertClose(meridionalParts(0, 45), 3029.94 - 23.1 * Math.sin(Math.PI / 4), 0.2);
  assert.equal(meridionalParts(-40, 0), meridionalParts(0, 40));
});

test('along a parallel the rhumb line is 090° or 270°, across the 180th meridian too', () => {
  const east = lineBearing(at(60, 179.5), at(60, -179.5)).rhumb;
  const west = lineBearing(at(-60, -179.5), at(-60, 179.5)).rhumb;
  // A degree of longitude in latitude 60° is 55 800 m (WGS 84, Pub. 9 table 7, 30.13 M).
  assertLine(east, 90, 55_800, { bearing: 0, metres: 1 });
  assertLine(west, 270, east.distance, { bearing: 0, metres: 1e-9 });
});

test('along a meridian both lines are 000° or 180° and as long as its arc', () => {
  const north = lineBearing(at(-10, 25), at(20, 25));
  assertLine(north.rhumb, 0, meridianArc(20) + meridianArc(10), { bearing: 0, metres: 1e-6 });
  assertLine(north.geodesic, 0, north.rhumb.distance, { bearing: 1e-12, metres: 1e-6 });
  assertLine(lineBearing(at(20, 180), at(-10, -180)).rhumb, 180, north.rhumb.distance, { bearing: 0, metres: 1e-6 });
});

test('the same place has no bearing, nor has a pole, nor places with two ways as short', () => {
  const same = lineBearing(at(50, 180), at(50, -180));
  assert.deepEqual([reasonOf(same.geodesic), reasonOf(same.rhumb)], ['same-place', 'same-place']);
  const fromPole = lineBearing(at(90, 0), at(60, 30));
  assert.deepEqual([reasonOf(fromPole.geodesic), reasonOf(fromPole.rhumb)], ['pole', 'pole']);
  const toPole = lineBearing(at(-60, 30), at(-90, 0));
  assertLine(toPole.geodesic, 180, meridianArc(90) - meridianArc(60), { bearing: 1e-12, metres: 1e-5 });
  assert.equal(reasonOf(toPole.rhumb), 'pole');
  const opposite = lineBearing(at(30, 10), at(-30, -170));
  assert.deepEqual([reasonOf(opposite.geodesic), reasonOf(opposite.rhumb)], ['two-ways', 'two-ways']);
  assert.equal(reasonOf(lineBearing(at(0, 0), at(0, 179.9)).geodesic), 'two-ways');
  assert.equal(opposite.halfConvergence, null);
});

test('the same place on both sides of a pole is one', () => {
  assert.equal(reasonOf(lineBearing(at(90, 0), at(90, 77)).geodesic), 'same-place');
  assert.equal(reasonOf(lineBearing(at(90, 0), at(90, 77)).rhumb), 'same-place');
});

test('a longitude counted past 180° is the same meridian', () => {
  assert.deepEqual(lineBearing(at(10, 190), at(20, 200)).rhumb, lineBearing(at(10, -170), at(20, -160)).rhumb);
});

test('half the convergence is half the difference of longitude times the sine of the latitude', () => {
  // The rule of the trade; Pub. 9, conversion angle. Good to a few hundredths over a degree.
  assertClose(lineBearing(at(60, 5), at(60, 7)).halfConvergence ?? NaN, -Math.sin(Math.PI / 3), 0.001);
  assertClose(lineBearing(at(-60, 5), at(-60, 7)).halfConvergence ?? NaN, Math.sin(Math.PI / 3), 0.001);
});

test('a rhumb line is never shorter than the geodesic, and back it is the reciprocal', () => {
  const place = fc.record({ latitude: fc.double({ min: -89, max: 89, noNaN: true }), longitude: fc.double({ min: -180, max: 180, noNaN: true }) });
  fc.assert(
    fc.property(place, place, (from, to) => {
      const there = lineBearing(from, to);
      const back = lineBearing(to, from);
      assert.ok(there.rhumb.distance >= there.geodesic.distance - 1e-5);
      assertClose(there.rhumb.distance, back.rhumb.distance, 1e-5);
      if (there.rhumb.determined && back.rhumb.determined) assertSameDirection(there.rhumb.bearing, back.rhumb.bearing + 180, 1e-9);
    }),
    { numRuns: 500, seed: 7 },
  );
});

test('a rhumb line does not jump where quadrature takes over from the difference', () => {
  for (const latitude of [0, 45, 80, -89, 89.9]) {
    // The switch lies at a twentieth of the distance from the pole.
    const seam = (90 - Math.abs(latitude)) / 21;
    const step = 1e-9 * seam;
    const [below, above] = [seam - step, seam + step].map((rise) => lineBearing(at(latitude, 0), at(latitude + Math.sign(latitude || 1) * rise, 0.5)).rhumb);
    assert.ok(below?.determined && above?.determined);
    assertSameDirection(below.bearing, above.bearing, 1e-6);
    assertClose(below.distance, above.distance, 0.001);
  }
});

test('what is no position is refused by name', () => {
  assert.throws(() => lineBearing(at(91, 0), at(0, 0)), /^RangeError: from\.latitude/);
  assert.throws(() => lineBearing(at(0, 0), at(0, NaN)), /^RangeError: to\.longitude/);
  assert.throws(() => lineBearing(at(0, 0), at(0, 361)), /^RangeError: to\.longitude/);
});
