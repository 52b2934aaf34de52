import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { coefficientSteps } from '../../../core/iron/coefficient-steps.js';
import { deviationSteps } from '../../../core/iron/deviation-steps.js';
import { magneticDip, totalForce } from '../../../core/iron/earth-field.js';
import { exactCoefficients } from '../../../core/iron/exact-coefficients.js';
import { fieldSteps } from '../../../core/iron/field-steps.js';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import type { KnownCoefficients } from '../../../core/iron/iron-from-exact.js';
import { noIron } from '../../../core/iron/iron-parameters.js';
import { evaluate } from '../../../core/working/evaluate.js';
import type { Step } from '../../../core/working/step.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { anyField, anyHeading, anyHeel, shipsIron } from './any-iron.js';

function assertWorks({ code, expression, values, result }: Step): void {
  assert.ok(expression, code);
  const numbers = Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value]));
  const size = Math.max(1, Math.abs(result.value));
  assertClose(evaluate(expression, numbers), result.value, 1e-10 * size, code);
}

// The triangle 3, 4, 5.
test('H 30000 and Z -40000: dip -53.13°, total 50000', () => {
  const [inclination, total] = fieldSteps({ h: 30000, z: -40000 });
  assertClose(inclination?.result.value ?? NaN, -53.130102354, 1e-9);
  assert.equal(total?.result.value, 50000);
});

test('dip is 90° where H is 0 and there is none without a field', () => {
  assert.equal(magneticDip({ h: 0, z: 60000 }), 90);
  assert.equal(magneticDip({ h: 0, z: -60000 }), -90);
  assert.equal(magneticDip({ h: 0, z: 0 }), null);
  assert.equal(totalForce({ h: 0, z: 0 }), 0);
  assert.deepEqual(fieldSteps({ h: 0, z: 0 }).map(({ code }) => code), ['iron.total']);
  fieldSteps({ h: 0, z: -60000 }).forEach(assertWorks);
  assert.throws(() => magneticDip({ h: -1, z: 0 }), /^RangeError: field\.h/);
});

test('every line of the field and of the coefficients works out to its result, and ends where the core does', () => {
  fc.assert(
    fc.property(shipsIron, anyField, anyHeel, (iron, field, heel) => {
      fieldSteps(field).forEach(assertWorks);
      const steps = coefficientSteps(iron, field, heel);
      steps.forEach(assertWorks);
      assert.deepEqual(
        steps.map(({ result }) => result.value),
        Object.values(exactCoefficients(iron, field, heel)),
      );
    }),
  );
});

test('the lines of tan δ work out and end at the deviation of Poisson’s equations', () => {
  fc.assert(
    fc.property(shipsIron, anyField, anyHeading, (iron, field, heading) => {
      const { deviation, directiveForce } = ironDeviation(iron, field, heading);
      fc.pre(directiveForce > 10);
      const steps = deviationSteps(exactCoefficients(iron, field) as KnownCoefficients, heading);
      steps.forEach(assertWorks);
      assertSameDirection(steps[2]?.result.value ?? NaN, deviation ?? NaN, 1e-7);
    }),
  );
});

const south: [string, KnownCoefficients, number, number][] = [
  // By Poisson: P = -3H, so the needle points astern.
  ['on north: the whole half turn', { A: 0, B: -3, C: 0, D: 0, E: 0 }, 0, 180],
  ['heading 045: to the west', { A: 0, B: -3, C: 0, D: 0, E: 0 }, 45, -(180 - Math.atan2(3 * Math.SQRT1_2, 3 * Math.SQRT1_2 - 1) * (180 / Math.PI))],
  ['λ below 0 turns a ship without other iron about', { lambda: -1, A: 0, B: 0, C: 0, D: 0, E: 0 }, 30, 180],
];
for (const [what, exact, heading, expected] of south) {
  test(`a needle that points south, ${what}: ${expected.toFixed(1)}°`, () => {
    const last = deviationSteps(exact, heading)[2];
    assert.equal(last?.code, 'iron.tan-deviation-south');
    assertWorks(last as Step);
    assertClose(last?.result.value ?? NaN, expected, 1e-9);
  });
}

test('where the forces cancel the working ends without a deviation', () => {
  assert.equal(deviationSteps({ A: 0, B: -1, C: 0, D: 0, E: 0 }, 0).length, 2);
  assert.equal(coefficientSteps({ ...noIron, P: 1 }, { h: 0, z: 1 }).length, 4);
  assert.throws(() => deviationSteps({ A: 0, B: NaN, C: 0, D: 0, E: 0 }, 0), /^RangeError: exact\.B/);
});
