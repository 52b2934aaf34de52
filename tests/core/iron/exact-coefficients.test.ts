import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { exactDeviation } from '../../../core/deviation/exact-deviation.js';
import { exactCoefficients, type IronCoefficients } from '../../../core/iron/exact-coefficients.js';
import { ironCurve } from '../../../core/iron/iron-curve.js';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import { ironFromExact, type KnownCoefficients } from '../../../core/iron/iron-from-exact.js';
import { noIron, type IronParameters } from '../../../core/iron/iron-parameters.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';
import { anyField, anyHeading, anyHeel, shipsIron } from './any-iron.js';

interface Ship {
  id: string;
  params: IronParameters & { H: number; Z: number };
  heel_deg: number;
  exact: IronCoefficients;
}
interface HeeledShip {
  id: string;
  parameters: IronParameters;
  H: number;
  Z: number;
  exactUpright: IronCoefficients;
  heelCases: Record<string, { heel: number; exactAtHeel: IronCoefficients }>;
}

const { cases: ships } = reference<{ cases: Ship[] }>('iron-ships.json');
const { cases: heeledShips } = reference<{ cases: HeeledShip[] }>('iron-heel.json');
const names = ['lambda', 'A', 'B', 'C', 'D', 'E'] as const;

function assertSame(found: IronCoefficients, expected: IronCoefficients, tolerance: number): void {
  for (const name of names) assertClose(found[name] ?? NaN, expected[name] ?? NaN, tolerance, name);
}

test('exact coefficients of every stored ship to 1e-8, upright and heeled', () => {
  for (const { params, heel_deg: heel, exact } of ships) {
    assertSame(exactCoefficients(params, { h: params.H, z: params.Z }, heel), exact, 1e-8);
  }
});

test('exact coefficients of 16 ships upright and heeled to both sides to 1e-8', () => {
  assert.equal(heeledShips.length, 16);
  for (const { parameters, H, Z, exactUpright, heelCases } of heeledShips) {
    assertSame(exactCoefficients(parameters, { h: H, z: Z }), exactUpright, 1e-8);
    for (const { heel, exactAtHeel } of Object.values(heelCases)) {
      assertSame(exactCoefficients(parameters, { h: H, z: Z }, heel), exactAtHeel, 1e-8);
    }
  }
});

// λ is defined as that mean: trade definition.
test('the mean of the force to magnetic north over all headings is λ, heeled too', () => {
  fc.assert(
    fc.property(shipsIron, anyField, anyHeel, (iron, field, heel) => {
      const curve = ironCurve(iron, field, heel, 8);
      const mean = curve.reduce((sum, point) => sum + (point.northForce ?? NaN), 0) / curve.length;
      assertClose(mean, exactCoefficients(iron, field, heel).lambda, 1e-9);
    }),
  );
});

test('the formula of tan δ gives the deviation of the rods, on any heading and at any heel', () => {
  fc.assert(
    fc.property(shipsIron, anyField, anyHeading, anyHeel, (iron, field, heading, heel) => {
      const { deviation, directiveForce } = ironDeviation(iron, field, heading, heel);
      fc.pre(deviation !== null && directiveForce > 10);
      const exact = exactCoefficients(iron, field, heel) as KnownCoefficients & { lambda: number };
      assertSameDirection(exactDeviation(exact, heading) ?? NaN, deviation ?? NaN, 1e-7);
    }),
  );
});

test('iron found from coefficients gives them back, and the same deviations', () => {
  fc.assert(
    fc.property(shipsIron, anyField, anyHeading, (iron, field, heading) => {
      const { directiveForce, deviation } = ironDeviation(iron, field, heading);
      fc.pre(directiveForce > 10);
      const exact = exactCoefficients(iron, field) as KnownCoefficients & { lambda: number };
      const back = ironFromExact(exact, field);
      for (const name of ['a', 'b', 'd', 'e'] as const) assertClose(back[name], iron[name], 1e-12, name);
      assertSameDirection(ironDeviation(back, field, heading).deviation ?? NaN, deviation ?? NaN, 1e-8);
      const withoutLambda = ironFromExact({ ...exact, lambda: undefined }, field);
      assertSameDirection(ironDeviation(withoutLambda, field, heading).deviation ?? NaN, deviation ?? NaN, 1e-8);
    }),
  );
});

test('λ of 0 leaves no coefficient, H of 0 no 𝔅 and ℭ', () => {
  const none = exactCoefficients({ ...noIron, a: -1, e: -1, P: 500 }, { h: 20000, z: 0 });
  assert.deepEqual(none, { lambda: 0, A: null, B: null, C: null, D: null, E: null });
  const pole = exactCoefficients({ ...noIron, P: 500 }, { h: 0, z: 60000 });
  assert.deepEqual(pole, { lambda: 1, A: 0, B: null, C: null, D: 0, E: 0 });
});

test('a coefficient that is not a number is named', () => {
  assert.throws(() => ironFromExact({ A: 0, B: NaN, C: 0, D: 0, E: 0 }, { h: 1, z: 0 }), /^RangeError: exact\.B/);
  assert.throws(() => ironFromExact({ A: 0, B: 0, C: 0, D: 0, E: 0 }, { h: NaN, z: 0 }), /^RangeError: field\.h/);
});
