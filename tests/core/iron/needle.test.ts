import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { ironCautions } from '../../../core/iron/iron-cautions.js';
import { ironCurve } from '../../../core/iron/iron-curve.js';
import { ironDeviationByCompass } from '../../../core/iron/iron-by-compass.js';
import { noIron, type IronParameters } from '../../../core/iron/iron-parameters.js';
import { needle } from '../../../core/iron/needle.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { anyField, anyHeel, shipsIron } from './any-iron.js';

const field = { h: 20000, z: 40000 };

// Each expectation follows from Poisson's equations for the one or two rods given.
const cases: [string, Partial<IronParameters>, string][] = [
  ['no iron', {}, 'directs'],
  ['P of half H', { P: 10000 }, 'directs'],
  ['P of one and a half H', { P: 30000 }, 'follows-ship'],
  ['P equal to H', { P: 20000 }, 'vanishes'],
  ['c that undoes H', { c: -0.5 }, 'vanishes'],
  ['a and e of -2: the field turned about', { a: -2, e: -2 }, 'points-south'],
  ['a of -2: fore and aft turned about, λ 0', { a: -2 }, 'turns-backward'],
  ['a of -1: no force fore and aft', { a: -1 }, 'vanishes'],
  ['a and e of -1: nothing left', { a: -1, e: -1 }, 'no-force'],
  ['a and e of -1, and P', { a: -1, e: -1, P: 1 }, 'follows-ship'],
];
for (const [what, iron, expected] of cases) {
  test(`${what}: the needle ${expected}`, () => {
    assert.equal(needle({ ...noIron, ...iron }, field).behaviour, expected);
  });
}

test('P against H on north: the force vanishes on 000 and is named there', () => {
  const { lostOn, weakest } = needle({ ...noIron, P: -20000 }, field);
  assert.equal(lostOn.length, 1);
  assertSameDirection(lostOn[0] ?? NaN, 0, 1e-6);
  assertClose(weakest.directiveForce, 0, 1e-4);
});

test('a of -1 loses the needle on 000 and 180', () => {
  const { lostOn } = needle({ ...noIron, a: -1 }, field);
  assert.deepEqual(lostOn.map((heading) => Math.round(heading) % 360).sort(), [0, 180]);
});

test('the weakest heading of P = 0.5 H is south with half of H', () => {
  const { weakest } = needle({ ...noIron, P: 10000 }, field);
  assertSameDirection(weakest.magneticHeading, 180, 0.01);
  assertClose(weakest.directiveForce, 10000, 1e-6);
});

test('no heading of a curve has less force than the weakest found', () => {
  fc.assert(
    fc.property(shipsIron, anyField, anyHeel, (iron, place, heel) => {
      const { weakest } = needle(iron, place, heel);
      const least = Math.min(...ironCurve(iron, place, heel, 720).map(({ directiveForce }) => directiveForce));
      assert.ok(weakest.directiveForce <= least + 1e-6);
    }),
    { numRuns: 50 },
  );
});

test('where the needle follows the ship some compass heading is never shown; where it directs, every one is, once', () => {
  fc.assert(
    fc.property(shipsIron, fc.record({ h: fc.double({ min: 3000, max: 12000, noNaN: true }), z: fc.constant(60000) }), (iron, place) => {
      const { behaviour } = needle(iron, place);
      fc.pre(behaviour === 'directs' || behaviour === 'follows-ship');
      const kinds = Array.from({ length: 72 }, (_, index) => ironDeviationByCompass(iron, place, 5 * index).kind);
      if (behaviour === 'directs') assert.ok(kinds.every((kind) => kind === 'one'));
      else assert.ok(kinds.some((kind) => kind === 'two' || kind === 'none'));
    }),
  );
});

test('cautions name what the needle does and a λ that is not positive', () => {
  const codes = (iron: Partial<IronParameters>): string[] =>
    ironCautions({ ...noIron, ...iron }, field).map(({ code }) => code);
  assert.deepEqual(codes({}), []);
  assert.deepEqual(codes({ P: 30000 }), ['iron.needle-follows-ship']);
  assert.deepEqual(codes({ a: -2, e: -2 }), ['iron.lambda-not-positive', 'iron.needle-points-south']);
  assert.deepEqual(ironCautions(noIron, { h: 0, z: 1 }).map(({ code }) => code), ['iron.needle-no-horizontal-field']);
});

// By hand: on north X′ = (1 − 0.9) H + P = 0 and Y′ = Q = 0; nowhere else, for e leaves the athwartship force.
test('soft iron that weakens one axis and strengthens the other is not "no force" where P undoes the rest', () => {
  const { behaviour, lostOn } = needle({ ...noIron, a: -0.9, e: 0.3, P: -2000 }, field);
  assert.equal(behaviour, 'vanishes');
  assert.equal(lostOn.length, 1);
  assertSameDirection(lostOn[0] ?? NaN, 0, 1e-6);
});
