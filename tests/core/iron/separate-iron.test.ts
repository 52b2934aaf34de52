import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { exactCoefficients } from '../../../core/iron/exact-coefficients.js';
import type { IronObservation } from '../../../core/iron/iron-observation.js';
import { separateIron } from '../../../core/iron/separate-iron.js';
import { assertClose } from '../../support/assert-close.js';
import { shipsIron } from './any-iron.js';
import { placeOf, swingAt, travelledShips } from './places.js';

/** A thousandth of the value, as asked; or the rounding of the file where the value is next to nothing. */
function assertWithin(found: number | null, expected: number, rounding: number, what: string): void {
  assertClose(found ?? NaN, expected, Math.max(Math.abs(expected) / 1000, rounding), what);
}

for (const ship of travelledShips) {
  const swings = [swingAt(placeOf(ship, 'first')), swingAt(placeOf(ship, 'second'))];

  test(`ship ${ship.id} (${ship.group}): deviations at two places give P/λ, c/λ, Q/λ, f/λ within 0.1 %, and no P without λ`, () => {
    const found = separateIron(swings);
    assertWithin(found.overLambda.P, ship.separated.PoverLambda, 0.01, 'P/λ');
    assertWithin(found.overLambda.c, ship.separated.cOverLambda, 1e-6, 'c/λ');
    assertWithin(found.overLambda.Q, ship.separated.QoverLambda, 0.01, 'Q/λ');
    assertWithin(found.overLambda.f, ship.separated.fOverLambda, 1e-6, 'f/λ');
    assert.deepEqual(found.determined, ['P', 'c', 'Q', 'f']);
    assert.deepEqual([found.P, found.c, found.Q, found.f], [null, null, null, null]);
  });

  test(`ship ${ship.id}: with λ measured, P, c, Q and f within 0.1 %`, () => {
    const found = separateIron(swings.map((swing) => ({ ...swing, lambda: ship.lambda })));
    assertWithin(found.P, ship.separated.P, 0.01, 'P');
    assertWithin(found.c, ship.separated.c, 1e-6, 'c');
    assertWithin(found.Q, ship.separated.Q, 0.01, 'Q');
    assertWithin(found.f, ship.separated.f, 1e-6, 'f');
  });
}

test('the iron put in comes out, for any ship at three magnetic latitudes; λ of exactCoefficients counts as measured', () => {
  fc.assert(
    fc.property(shipsIron, (iron) => {
      const fields = [{ h: 15000, z: 52000 }, { h: 36000, z: 3000 }, { h: 22000, z: -48000 }];
      const found = separateIron(fields.map((field) => ({ field, exact: exactCoefficients(iron, field) })));
      assertClose(found.P ?? NaN, iron.P, 1e-6);
      assertClose(found.Q ?? NaN, iron.Q, 1e-6);
      assertClose(found.c ?? NaN, iron.c, 1e-10);
      assertClose(found.f ?? NaN, iron.f, 1e-10);
    }),
  );
});

const north: IronObservation = { exact: { B: 0.1, C: -0.02 }, field: { h: 18000, z: 44000 } };
const codes = (observations: readonly IronObservation[]): string[] =>
  separateIron(observations).warnings.map(({ code }) => code);

test('one place determines nothing, and says so; no place neither', () => {
  for (const observations of [[north], []]) {
    const found = separateIron(observations);
    assert.deepEqual(found.determined, []);
    assert.deepEqual(found.overLambda, { P: null, c: null, Q: null, f: null });
    assert.deepEqual(found.warnings.map(({ code }) => code), ['separate.one-place']);
  }
});

test('two places of the same vertical force determine nothing, however H differs', () => {
  const found = separateIron([north, { exact: { B: 0.06, C: 0 }, field: { h: 30000, z: 44000 } }]);
  assert.deepEqual(found.determined, []);
  assert.deepEqual(found.warnings.map(({ code }) => code), ['separate.places-alike']);
});

// Poisson: with Z = 0 nothing is induced through c and f.
test('on the magnetic equator one place gives the permanent part alone', () => {
  const found = separateIron([{ exact: { B: 0.1, C: -0.02 }, field: { h: 30000, z: 0 }, lambda: 0.9 }]);
  assert.deepEqual(found.determined, ['P', 'Q']);
  assertClose(found.P ?? NaN, 2700, 1e-9);
  assertClose(found.Q ?? NaN, -540, 1e-9);
  assert.equal(found.c, null);
});

test('places whose vertical forces differ little are noted as near, far ones not', () => {
  assert.deepEqual(codes([north, { exact: { B: 0.09, C: 0 }, field: { h: 19000, z: 42000 } }]), ['separate.places-near']);
  assert.deepEqual(codes([north, { exact: { B: 0.09, C: 0 }, field: { h: 30000, z: 0 } }]), []);
});

test('a λ or a D that changes between the places says the ship is not the same', () => {
  const south = { exact: { B: -0.1, C: 0, D: 0.03 }, field: { h: 20000, z: -40000 } };
  const withD = { ...north, exact: { ...north.exact, D: 0.08 } };
  assert.deepEqual(codes([withD, south]), ['separate.ship-changed']);
  assert.deepEqual(codes([{ ...north, lambda: 0.8 }, { ...south, lambda: 0.9 }]), ['separate.lambda-differs']);
});

// Two readings on a line: P/λ = (y₁Z₂ − y₂Z₁)/(Z₂ − Z₁) with y = H𝔅; the errors by that formula, by hand.
test('standard errors of two places follow from those of the swings', () => {
  const found = separateIron([
    { exact: { B: 0.1, C: 0 }, field: { h: 20000, z: 40000 }, standardErrors: { B: 0.002, C: 0.001 }, lambda: 0.9 },
    { exact: { B: 0.05, C: 0 }, field: { h: 30000, z: 0 }, standardErrors: { B: 0.001, C: 0.001 }, lambda: 0.9 },
  ]);
  assertClose(found.standardErrorsOverLambda.P ?? NaN, 30, 1e-9);
  assertClose(found.standardErrorsOverLambda.c ?? NaN, Math.hypot(40, 30) / 40000, 1e-12);
  assertClose(found.standardErrors.P ?? NaN, 27, 1e-9);
  assertClose(found.standardErrorsOverLambda.Q ?? NaN, 30, 1e-9);
  assertClose(found.standardErrorsOverLambda.f ?? NaN, Math.hypot(20, 30) / 40000, 1e-12);
});

test('a doubt of λ enters P, not P/λ: 2 % of 1000 nT with nothing else is 20 nT', () => {
  const swing = { standardErrors: { B: 1e-12, C: 1e-12, lambda: 0.018 }, lambda: 0.9 };
  const found = separateIron([{ exact: { B: 1 / 27, C: 0 }, field: { h: 30000, z: 0 }, ...swing }]);
  assertClose(found.P ?? NaN, 1000, 1e-9);
  assertClose(found.standardErrors.P ?? NaN, 20, 1e-6);
  assert.ok((found.standardErrorsOverLambda.P ?? 1) < 1e-4);
});

test('without standard errors two places leave the doubt unknown, three tell it by their misfit', () => {
  const two = [north, { exact: { B: 0.02, C: 0 }, field: { h: 30000, z: 0 } }];
  assert.equal(separateIron(two).standardErrorsOverLambda.P, null);
  const three = [...two, { exact: { B: -0.1, C: 0.03 }, field: { h: 25000, z: -40000 } }];
  assert.ok((separateIron(three).standardErrorsOverLambda.P ?? 0) > 0);
});

/** Normal deviates from a fixed seed: a linear congruence and the sum of twelve. */
function normals(): () => number {
  let state = 20261125;
  const next = (): number => (state = (state * 1103515245 + 12345) % 2 ** 31) / 2 ** 31;
  return () => Array.from({ length: 12 }, next).reduce((sum, value) => sum + value, -6);
}

test('standard errors are honest: over 4000 noisy separations P/λ and c/λ scatter as said, within 5 %', () => {
  const noise = normals();
  const fields = [{ h: 15000, z: 52000 }, { h: 36000, z: 3000 }, { h: 22000, z: -48000 }];
  const sigmas = [0.004, 0.001, 0.002];
  const separations = Array.from({ length: 4000 }, () =>
    separateIron(
      fields.map((field, index) => {
        const sigma = sigmas[index] ?? NaN;
        const B = (1500 + 0.04 * field.z) / field.h + sigma * noise();
        return { field, exact: { B, C: 0 }, standardErrors: { B: sigma, C: sigma } };
      }),
    ),
  );
  for (const name of ['P', 'c'] as const) {
    const truth = { P: 1500, c: 0.04 }[name];
    const squares = separations.map(({ overLambda }) => ((overLambda[name] ?? NaN) - truth) ** 2);
    const scatter = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
    assertClose(scatter / (separations[0]?.standardErrorsOverLambda[name] ?? NaN), 1, 0.05, name);
  }
});

test('a coefficient a swing did not determine leaves that line to the other places', () => {
  const south = { exact: { B: -0.1, C: null }, field: { h: 20000, z: -40000 } };
  const found = separateIron([north, south]);
  assert.deepEqual(found.determined, ['P', 'c']);
  assert.deepEqual(found.warnings.map(({ code }) => code), ['separate.one-place']);
});

test('swings without any noise separate, with no doubt to speak of', () => {
  const standardErrors = { B: 0, C: 0 };
  const south = { exact: { B: -0.1, C: 0 }, field: { h: 20000, z: -40000 }, standardErrors };
  const found = separateIron([{ ...north, standardErrors }, south]);
  assert.ok((found.standardErrorsOverLambda.P ?? 1) < 1e-4);
});

test('a wrong argument is named with its place', () => {
  const having = (change: Partial<IronObservation>): (() => unknown) => () => separateIron([north, { ...north, ...change }]);
  assert.throws(having({ field: { h: 0, z: 60000 } }), /^RangeError: observations\[1\]\.field\.h/);
  assert.throws(having({ exact: { B: NaN, C: 0 } }), /^RangeError: observations\[1\]\.exact\.B/);
  assert.throws(having({ exact: { B: 0 } as never }), /^RangeError: observations\[1\]\.exact\.C/);
  assert.throws(having({ lambda: NaN }), /^RangeError: observations\[1\]\.lambda/);
  assert.throws(having({ standardErrors: { B: -1 } }), /^RangeError: observations\[1\]\.standardErrors\.B/);
});

// By the formula above with one standard deviation for both: Var P/λ = (H₂ s)², Var c/λ = (H₁² + H₂²) s² / Z₁²; over s², nothing of s is left.
test('the amplification of noise tells of the places alone, however good the swings', () => {
  const places = [{ h: 20000, z: 40000 }, { h: 30000, z: 0 }];
  for (const sigma of [0.001, 0.004]) {
    const found = separateIron(places.map((field) => ({ field, exact: { B: 0.1, C: 0 }, standardErrors: { B: sigma, C: sigma } })));
    assertClose(found.lines.B.amplification?.permanent ?? NaN, 30000 ** 2, 1e-3);
    assertClose((found.lines.B.amplification?.induced ?? NaN) * 40000 ** 2, 20000 ** 2 + 30000 ** 2, 1e-3);
  }
});

test('two places that tell 𝔅 apart but ℭ not are said to be too much alike', () => {
  const bothB = [north, { exact: { B: 0.06, C: 0 }, field: { h: 30000, z: 0 } }];
  assert.deepEqual(codes(bothB), []);
  const alikeForC = [...bothB.map((one) => ({ ...one, exact: { ...one.exact, C: null } })), { exact: { B: null, C: 0.01 }, field: { h: 18000, z: 44000 } }, { exact: { B: null, C: 0.02 }, field: { h: 19000, z: 44000 } }];
  assert.deepEqual(codes(alikeForC), ['separate.places-alike']);
});
