import assert from 'node:assert/strict';
import { test } from 'node:test';
import { addCorrectors } from '../../../core/iron/add-correctors.js';
import { magnetForce, type Corrector } from '../../../core/iron/correctors.js';
import { exactCoefficients, type IronCoefficients } from '../../../core/iron/exact-coefficients.js';
import { heelingCoefficient } from '../../../core/iron/heeling-error.js';
import { noIron } from '../../../core/iron/iron-parameters.js';
import { assertClose } from '../../support/assert-close.js';

const north = { h: 20000, z: 40000 };
const south = { h: 20000, z: -40000 };

/** Change of a coefficient that a corrector makes on a ship without iron. */
function effect(name: keyof IronCoefficients, corrector: Corrector, field = north): number {
  return exactCoefficients(addCorrectors(noIron, [corrector]), field)[name] ?? NaN;
}

const magnet = { place: 'below', force: 500 } as const;
const spheres = { kind: 'spheres', radius: 0.1, distance: 0.3 } as const;

// The trade's rules for correctors below the card and beside it: common practice, no source at hand.
test('+B is cured by a magnet below with its red end forward, −B red aft; end-on it is the reverse', () => {
  assert.ok(effect('B', { kind: 'fore-and-aft-magnet', redEnd: 'forward', ...magnet }) < 0);
  assert.ok(effect('B', { kind: 'fore-and-aft-magnet', redEnd: 'aft', ...magnet }) > 0);
  assert.ok(effect('B', { kind: 'fore-and-aft-magnet', redEnd: 'forward', force: 500, place: 'end-on' }) > 0);
});

test('+C is cured by a magnet below with its red end to starboard, −C red to port', () => {
  assert.ok(effect('C', { kind: 'athwartship-magnet', redEnd: 'starboard', ...magnet }) < 0);
  assert.ok(effect('C', { kind: 'athwartship-magnet', redEnd: 'port', ...magnet }) > 0);
});

test('+D is cured by spheres athwartships, −D fore and aft; λ grows with those athwartships', () => {
  assert.ok(effect('D', { ...spheres, bearing: 90 }) < 0);
  assert.ok(effect('D', { ...spheres, bearing: 0 }) > 0);
  assert.ok(effect('lambda', { ...spheres, bearing: 90 }) > 1);
});

test('+E is cured by spheres abeam turned clockwise, the reverse fore and aft', () => {
  assert.ok(effect('E', { ...spheres, bearing: 100 }) < 0);
  assert.ok(effect('E', { ...spheres, bearing: 10 }) > 0);
  assertClose(effect('E', { ...spheres, bearing: 90 }), 0, 1e-15);
});

test('spheres abeam turned by ½ atan(E/D) cure D and E together', () => {
  const ship = { ...noIron, a: 0.06, e: -0.06, b: 0.03, d: 0.03 };
  const { D, E } = exactCoefficients(ship, north);
  const turn = (Math.atan2(E ?? NaN, D ?? NaN) / 2) * (180 / Math.PI);
  // Size by the formula 3s = 2 √(0.06² + 0.03²), s = 2 (radius/distance)³.
  const size = (2 * Math.hypot(0.06, 0.03)) / 3;
  const cured = addCorrectors(ship, [
    { kind: 'spheres', radius: Math.cbrt(size / 2), distance: 1, bearing: 90 + turn },
  ]);
  assertClose(exactCoefficients(cured, north).D ?? NaN, 0, 1e-12);
  assertClose(exactCoefficients(cured, north).E ?? NaN, 0, 1e-12);
});

test('a Flinders bar forward is for c below 0, aft for c above 0, in either hemisphere', () => {
  for (const field of [north, south]) {
    const bar = { kind: 'flinders-bar', strength: 0.05 } as const;
    const forward = addCorrectors({ ...noIron, c: -0.05 }, [{ ...bar, bearing: 0 }]);
    assertClose(exactCoefficients(forward, field).B ?? NaN, 0, 1e-15);
    const aft = addCorrectors({ ...noIron, c: 0.05 }, [{ ...bar, bearing: 180 }]);
    assertClose(exactCoefficients(aft, field).B ?? NaN, 0, 1e-15);
    assertClose(addCorrectors(noIron, [{ ...bar, bearing: 90 }]).f, 0.05, 1e-15);
  }
});

test('a heeling magnet red up cures a north point drawn to the high side', () => {
  const drawnHigh = { ...noIron, R: 5000 };
  assert.ok((heelingCoefficient(drawnHigh, { h: 20000, z: 0 }) ?? 0) < 0);
  const cured = addCorrectors(drawnHigh, [{ kind: 'heeling-magnet', redEnd: 'up', force: 5000 }]);
  assert.equal(cured.R, 0);
  assert.equal(addCorrectors(noIron, [{ kind: 'heeling-magnet', redEnd: 'down', force: 1 }]).R, 1);
});

// A dipole's field, from memory: the table of the rods must be free of trace and symmetrical.
test('spheres add a symmetrical table without trace, of the size 2 (radius/distance)³', () => {
  for (const bearing of [0, 33, 90, 250]) {
    const { a, b, d, e, k } = addCorrectors(noIron, [{ ...spheres, bearing }]);
    assertClose(a + e + k, 0, 1e-15);
    assert.equal(b, d);
    assertClose(k, -2 / 27, 1e-15);
  }
});

// B = μ₀/4π m/r³ broadside on: 1 A m² at 1 m is 100 nT; twice that end-on.
test('a magnet of 10 A m² gives 1000 nT broadside on at 1 m, 16000 nT end-on at 0.5 m', () => {
  assertClose(magnetForce(10, 1, 'below'), 1000, 1e-9);
  assertClose(magnetForce(10, 0.5, 'end-on'), 16000, 1e-9);
  assert.throws(() => magnetForce(10, 0, 'below'), /^RangeError: distance/);
  assert.throws(() => magnetForce(NaN, 1, 'below'), /^RangeError: moment/);
  assert.throws(() => magnetForce(1, 1, 'above' as 'below'), /^RangeError: place/);
});

test('correctors add up, in any order, and leave the ship given alone', () => {
  const correctors: Corrector[] = [
    { ...spheres, bearing: 95 },
    { kind: 'fore-and-aft-magnet', redEnd: 'aft', ...magnet },
    { kind: 'flinders-bar', strength: 0.02, bearing: 20 },
  ];
  const ship = Object.freeze({ ...noIron, a: 0.01 });
  const [one, other] = [addCorrectors(ship, correctors), addCorrectors(ship, [...correctors].reverse())];
  for (const [name, value] of Object.entries(one)) assertClose(other[name as keyof typeof other], value, 1e-15, name);
});

test('a corrector that cannot be is named', () => {
  const adding = (corrector: unknown): (() => unknown) => () => addCorrectors(noIron, [corrector as Corrector]);
  assert.throws(adding({ kind: 'spheres', radius: 0.3, distance: 0.2, bearing: 90 }), /^RangeError: correctors\[0\]\.distance/);
  assert.throws(adding({ kind: 'flinders-bar', strength: -1, bearing: 0 }), /^RangeError: correctors\[0\]\.strength/);
  assert.throws(adding({ kind: 'fore-and-aft-magnet', redEnd: 'port', ...magnet }), /^RangeError: correctors\[0\]\.redEnd/);
  assert.throws(adding({ kind: 'athwartship-magnet', redEnd: 'port', ...magnet, place: 'above' }), /^RangeError: correctors\[0\]\.place/);
  assert.throws(adding({ kind: 'heeling-magnet', redEnd: 'up', force: NaN }), /^RangeError: correctors\[0\]\.force/);
  assert.throws(adding({ kind: 'heeling-magnet', redEnd: 'forward', force: 1 }), /^RangeError: correctors\[0\]\.redEnd/);
  assert.throws(adding({ kind: 'toroid' }), /^RangeError: correctors\[0\]\.kind/);
});
