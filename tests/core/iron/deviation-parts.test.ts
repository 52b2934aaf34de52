import assert from 'node:assert/strict';
import { test } from 'node:test';
import { largestParts, partsOnHeading, sumOfParts, type DeviationParts } from '../../../core/iron/deviation-parts.js';
import { ironCurve } from '../../../core/iron/iron-curve.js';
import { noIron } from '../../../core/iron/iron-parameters.js';
import { assertClose } from '../../support/assert-close.js';

const iron = { ...noIron, a: 0.02, b: -0.01, c: 0.04, d: 0.02, e: -0.1, f: 0.01, P: 900, Q: -400 };
const field = { h: 20000, z: 40000 };
const largest = largestParts(iron, field) as DeviationParts;
const headings = Array.from({ length: 72 }, (_, index) => 5 * index);
const at = (heading: number): DeviationParts => partsOnHeading(largest, heading);

// What the textbooks say of the five parts: common practice, no source at hand.
test('A is the same on every heading', () => {
  for (const heading of headings) assert.equal(at(heading).A, largest.A);
});

test('the parts of B and C change sign after 180°, those of D and E after 90°', () => {
  for (const heading of headings) {
    for (const name of ['permanentB', 'inducedB', 'permanentC', 'inducedC'] as const) {
      assertClose(at(heading + 180)[name], -at(heading)[name], 1e-12, name);
    }
    for (const name of ['D', 'E'] as const) assertClose(at(heading + 90)[name], -at(heading)[name], 1e-12, name);
  }
});

test('B vanishes on north and south, C on east and west; D on the cardinals, E on the intercardinals', () => {
  for (const heading of [0, 180]) assert.equal(Math.abs(at(heading).permanentB), 0);
  for (const heading of [90, 270]) assert.equal(Math.abs(at(heading).inducedC), 0);
  for (const heading of [0, 90, 180, 270]) assert.equal(Math.abs(at(heading).D), 0);
  for (const heading of [45, 135, 225, 315]) assert.equal(Math.abs(at(heading).E), 0);
});

test('D and E reach their greatest value four times round, B and C twice', () => {
  const peaks = (name: keyof DeviationParts): number =>
    headings.filter((heading) => Math.abs(Math.abs(at(heading)[name]) - Math.abs(largest[name])) < 1e-12).length;
  assert.deepEqual([peaks('D'), peaks('E'), peaks('permanentB'), peaks('inducedC')], [4, 4, 2, 2]);
});

test('permanent parts go as 1/H whatever Z, induced ones as tan dip whatever H; A, D and E stay', () => {
  const elsewhere = largestParts(iron, { h: 10000, z: -30000 }) as DeviationParts;
  for (const name of ['permanentB', 'permanentC'] as const) assertClose(elsewhere[name] / largest[name], 2, 1e-12);
  // tan dip is 2 here and -3 there.
  for (const name of ['inducedB', 'inducedC'] as const) assertClose(elsewhere[name] / largest[name], -1.5, 1e-12);
  for (const name of ['A', 'D', 'E'] as const) assert.equal(elsewhere[name], largest[name]);
  const sameDip = largestParts(iron, { h: 30000, z: 60000 }) as DeviationParts;
  assertClose(sameDip.inducedB, largest.inducedB, 1e-12);
});

// λ = 0.96; degrees of P/(λH), cZ/(λH), (a − e)/2λ, (d ∓ b)/2λ by hand.
test('largest parts of a ship worked by hand', () => {
  const arc = 180 / Math.PI;
  assertClose(largest.permanentB, (900 / 19200) * arc, 1e-12);
  assertClose(largest.inducedB, (1600 / 19200) * arc, 1e-12);
  assertClose(largest.permanentC, (-400 / 19200) * arc, 1e-12);
  assertClose(largest.inducedC, (400 / 19200) * arc, 1e-12);
  assertClose(largest.A, (0.015 / 0.96) * arc, 1e-12);
  assertClose(largest.D, (0.06 / 0.96) * arc, 1e-12);
  assertClose(largest.E, (0.005 / 0.96) * arc, 1e-12);
});

test('the curve is its parts and a rest: under 1° of the 12° of this ship, under a hundredth of one with a tenth of her iron', () => {
  const curve = ironCurve(iron, field);
  assert.equal(curve.length, 72);
  for (const { deviation, parts, rest } of curve) {
    assertClose(sumOfParts(parts as DeviationParts) + (rest ?? NaN), deviation ?? NaN, 1e-12);
    assert.ok(Math.abs(rest ?? 9) < 1);
  }
  const small = { ...iron, a: 0.002, e: -0.01, b: -0.001, d: 0.002, c: 0.004, f: 0.001, P: 90, Q: -40 };
  for (const { rest } of ironCurve(small, field)) assert.ok(Math.abs(rest ?? 9) < 0.01);
});

test('no parts where H is 0, and the curve says which headings have no deviation', () => {
  assert.equal(largestParts(iron, { h: 0, z: 60000 }), null);
  const lost = ironCurve({ ...noIron, P: -20000 }, { h: 20000, z: 0 }, 0, 4)[0];
  assert.equal(lost?.lost, 'no-directive-force');
  assert.equal(lost?.parts, null);
  assert.throws(() => ironCurve(iron, field, 0, 0), /^RangeError: count/);
  assert.throws(() => partsOnHeading(largest, NaN), /^RangeError: compassHeading/);
});
