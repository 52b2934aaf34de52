import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { IronObservation } from '../../../core/iron/iron-observation.js';
import { predictAt, predictionError } from '../../../core/iron/predict-at.js';
import { separateIron } from '../../../core/iron/separate-iron.js';
import { assertClose } from '../../support/assert-close.js';

const RAD = Math.PI / 180;

/** H𝔅 as a straight line over Z, weights 1/(σH)², by the normal equations of two unknowns; scale 1 where σ is known. */
function line(points: readonly { readonly B: number; readonly h: number; readonly z: number; readonly sigma: number }[], known: boolean) {
  let [w, wz, wzz, wy, wzy] = [0, 0, 0, 0, 0];
  for (const { B, h, z, sigma } of points) {
    const weight = 1 / (sigma * h) ** 2;
    w += weight;
    wz += weight * z;
    wzz += weight * z * z;
    wy += weight * B * h;
    wzy += weight * z * B * h;
  }
  const det = w * wzz - wz * wz;
  const [P, c] = [(wzz * wy - wz * wzy) / det, (w * wzy - wz * wy) / det];
  const misfit = points.reduce((all, { B, h, z, sigma }) => all + ((B * h - P - c * z) / (sigma * h)) ** 2, 0);
  const scale = known ? 1 : misfit / (points.length - 2);
  return { P, c, varP: (scale * wzz) / det, varc: (scale * w) / det, cov: (-scale * wz) / det };
}

const places = [{ h: 18_000, z: 48_000 }, { h: 29_000, z: 21_000 }, { h: 36_000, z: -2000 }, { h: 24_000, z: -39_000 }];
const Bs = [0.14, 0.071, 0.038, -0.002];
const Cs = [-0.02, 0.011, 0.004, 0.05];
const swings: readonly IronObservation[] = places.map((field, i) => ({ field, exact: { B: Bs[i] as number, C: Cs[i] as number } }));
const plain = (values: readonly number[], sigmas: readonly number[]) => places.map(({ h, z }, i) => ({ B: values[i] as number, h, z, sigma: sigmas[i] as number }));

test('four places in both hemispheres without doubts given: parts and their doubts by the misfit, as the normal equations have it', () => {
  const found = separateIron(swings);
  for (const [values, permanent, induced] of [[Bs, 'P', 'c'], [Cs, 'Q', 'f']] as const) {
    const expected = line(plain(values, [1, 1, 1, 1]), false);
    assertClose(found.overLambda[permanent] ?? NaN, expected.P, 1e-6);
    assertClose(found.overLambda[induced] ?? NaN, expected.c, 1e-12);
    assertClose(found.standardErrorsOverLambda[permanent] ?? NaN, Math.sqrt(expected.varP), 1e-6);
    assertClose(found.standardErrorsOverLambda[induced] ?? NaN, Math.sqrt(expected.varc), 1e-12);
  }
  assert.deepEqual([found.P, found.standardErrors.P, found.unchanging.lambda], [null, null, null]);
});

test('doubts given for every place weigh and tell; for all but one they are as if not given', () => {
  const sigmas = [0.004, 0.001, 0.002, 0.003];
  const doubted = swings.map((swing, i) => ({ ...swing, standardErrors: { B: sigmas[i] as number, C: 0.002 } }));
  const expected = line(plain(Bs, sigmas), true);
  const found = separateIron(doubted);
  assertClose(found.overLambda.P ?? NaN, expected.P, 1e-6);
  assertClose(found.standardErrorsOverLambda.P ?? NaN, Math.sqrt(expected.varP), 1e-6);
  assertClose(found.standardErrorsOverLambda.c ?? NaN, Math.sqrt(expected.varc), 1e-12);
  const [first, ...rest] = doubted as [(typeof doubted)[0], ...typeof doubted];
  const without = separateIron([{ ...first, standardErrors: { B: null as unknown as number, C: 0.002 } }, ...rest]);
  assertClose(without.overLambda.P ?? NaN, line(plain(Bs, [1, 1, 1, 1]), false).P, 1e-6);
  assertClose(without.standardErrorsOverLambda.P ?? NaN, Math.sqrt(line(plain(Bs, [1, 1, 1, 1]), false).varP), 1e-6);
  assertClose(without.standardErrorsOverLambda.f ?? NaN, Math.sqrt(line(plain(Cs, [0.002, 0.002, 0.002, 0.002]), true).varc), 1e-12);
});

test('with λ measured, mean and doubt of it enter the rods and forces by the rule of products', () => {
  const lambdas = [0.88, 0.9, 0.92, 0.9];
  const found = separateIron(swings.map((swing, i) => ({ ...swing, lambda: lambdas[i], standardErrors: { B: 0.002, C: 0.002, lambda: 0.01 } })));
  const { P, varP, c, varc } = line(plain(Bs, [0.002, 0.002, 0.002, 0.002]), true);
  // Mean of four, each doubted by 0.01.
  assertClose(found.unchanging.lambda ?? NaN, 0.9, 1e-12);
  assertClose(found.unchanging.standardErrors.lambda ?? NaN, 0.005, 1e-12);
  assertClose(found.P ?? NaN, 0.9 * P, 1e-6);
  assertClose(found.standardErrors.P ?? NaN, Math.hypot(0.9 * Math.sqrt(varP), 0.005 * P), 1e-6);
  assertClose(found.standardErrors.c ?? NaN, Math.hypot(0.9 * Math.sqrt(varc), 0.005 * c), 1e-12);
  // One λ without a doubt leaves that of the mean unknown, and it counts as none.
  const partly = separateIron(swings.map((swing, i) => ({ ...swing, lambda: i === 2 ? null : 0.9, standardErrors: { B: 0.002, C: 0.002, ...(i === 0 ? {} : { lambda: 0.01 }) } })));
  assert.equal(partly.unchanging.lambda, 0.9);
  assert.equal(partly.unchanging.standardErrors.lambda, null);
  assertClose(partly.standardErrors.P ?? NaN, 0.9 * Math.sqrt(varP), 1e-6);
});

test('at another place the doubt is that of the line there, the covariance in it, south as north', () => {
  const doubted = swings.map((swing) => ({ ...swing, exact: { ...swing.exact, A: 0.01, D: 0.04, E: -0.01 }, standardErrors: { B: 0.002, C: 0.003, A: 0.001, D: 0.002, E: 0.004 } }));
  const separated = separateIron(doubted);
  const [B, C] = [line(plain(Bs, [0.002, 0.002, 0.002, 0.002]), true), line(plain(Cs, [0.003, 0.003, 0.003, 0.003]), true)];
  for (const field of [{ h: 12_000, z: 56_000 }, { h: 40_000, z: 0 }, { h: 15_000, z: -58_000 }]) {
    const predicted = predictAt(separated, field);
    const at = ({ varP, varc, cov }: typeof B): number => Math.sqrt(varP + 2 * field.z * cov + field.z ** 2 * varc) / field.h;
    assertClose(predicted.exact.B ?? NaN, (B.P + B.c * field.z) / field.h, 1e-9);
    assertClose(predicted.exact.C ?? NaN, (C.P + C.c * field.z) / field.h, 1e-9);
    assertClose(predicted.standardErrors.B ?? NaN, at(B), 1e-9);
    assertClose(predicted.standardErrors.C ?? NaN, at(C), 1e-9);
    assertClose(predicted.amplification.B ?? NaN, at(B) / 0.002, 1e-6);
    assertClose(predicted.amplification.C ?? NaN, at(C) / 0.003, 1e-6);
    assert.ok(predicted.card);
    // Independent causes of δ = 𝔄 + 𝔅 sin ζ′ + ℭ cos ζ′ + 𝔇 sin 2ζ′ + 𝔈 cos 2ζ′; means of four halve the doubts of A, D and E.
    for (const heading of [0, 20, 75, 135, 250]) {
      const z = heading * RAD;
      const expected = Math.hypot(0.0005, at(B) * Math.sin(z), at(C) * Math.cos(z), 0.001 * Math.sin(2 * z), 0.002 * Math.cos(2 * z)) / RAD;
      assertClose(predictionError(predicted, heading) ?? NaN, expected, 1e-9);
    }
    const bare = predictAt(separateIron(doubted.map(({ exact, field: there }) => ({ exact, field: there, standardErrors: { B: 0.002, C: 0.003 } }))), field);
    const z = 75 * RAD;
    assertClose(predictionError(bare, 75) ?? NaN, Math.hypot(at(B) * Math.sin(z), at(C) * Math.cos(z)) / RAD, 1e-9);
  }
});

test('a card, or a doubt, wants all it is made of', () => {
  const whole = swings.map((swing) => ({ ...swing, exact: { ...swing.exact, A: 0.01, D: 0.04, E: -0.01 } }));
  const there = { h: 20_000, z: 30_000 };
  assert.ok(predictAt(separateIron(whole), there).card);
  for (const name of ['A', 'B', 'C', 'D', 'E'] as const) {
    const lacking = predictAt(separateIron(whole.map((swing) => ({ ...swing, exact: { ...swing.exact, [name]: null } }))), there);
    assert.equal(lacking.card, null, name);
    assert.equal(lacking.exact[name], null, name);
    if (name === 'B' || name === 'C') assert.equal(predictionError(lacking, 40), null, name);
  }
});

test('on the magnetic equator several swings tell the permanent part, and no other', () => {
  const found = separateIron([{ field: { h: 30_000, z: 20 }, exact: { B: 0.1, C: 0.01 } }, { field: { h: 38_000, z: 20 }, exact: { B: 0.08, C: 0.01 } }, { field: { h: 41_000, z: 20 }, exact: { B: 0.07, C: 0.01 } }]);
  // Weighted mean of H𝔅, weights 1/H², and its doubt by the misfit of three less one.
  const weights = [30_000, 38_000, 41_000].map((h) => 1 / h ** 2);
  const forces = [3000, 3040, 2870];
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = weights.reduce((sum, weight, i) => sum + weight * (forces[i] as number), 0) / all;
  const misfit = weights.reduce((sum, weight, i) => sum + weight * ((forces[i] as number) - mean) ** 2, 0);
  assertClose(found.overLambda.P ?? NaN, mean, 1e-6);
  assertClose(found.standardErrorsOverLambda.P ?? NaN, Math.sqrt(misfit / 2 / all), 1e-6);
  assert.deepEqual([found.overLambda.c, found.standardErrorsOverLambda.c, found.determined], [null, null, ['P', 'Q']]);
  // Permanent iron alone, at a place with no vertical force, either hemisphere's worth of rounding.
  for (const z of [20, -20]) assertClose(predictAt(found, { h: 35_000, z }).exact.B ?? NaN, mean / 35_000, 1e-9);
  for (const z of [4000, -4000]) assert.equal(predictAt(found, { h: 35_000, z }).exact.B, null);
  assert.equal(predictAt(found, { h: 0, z: 0 }).exact.B, null);
  // South of it, just as far, the same; beyond a thousandth of H one place tells nothing.
  assert.deepEqual(separateIron([{ field: { h: 30_000, z: -20 }, exact: { B: 0.1, C: 0.01 } }]).determined, ['P', 'Q']);
  assert.deepEqual(separateIron([{ field: { h: 30_000, z: -40 }, exact: { B: 0.1, C: 0.01 } }]).determined, []);
  assert.deepEqual(separateIron([{ field: { h: 30_000, z: 20 }, exact: { B: 0.1, C: 0.01 } }, { field: { h: 20_000, z: 19.99 }, exact: { B: 0.1, C: 0.01 } }]).determined, ['P', 'Q']);
  assert.deepEqual(separateIron([{ field: { h: 9000, z: 20 }, exact: { B: 0.1, C: 0.01 } }, { field: { h: 30_000, z: 20 }, exact: { B: 0.1, C: 0.01 } }]).determined, [], 'one of the two dips');
  assert.equal(separateIron([{ field: { h: 30_000, z: 0 }, exact: { B: 0.1, C: 0.01 } }]).standardErrorsOverLambda.P, null);
  assert.deepEqual(separateIron([]).determined, []);
});

test('what speaks against a separation is told with its size', () => {
  const told = (observations: readonly IronObservation[]) => separateIron(observations).warnings.map(({ code, values }) => [code, values]);
  const south = { exact: { B: -0.1, C: 0 }, field: { h: 20_000, z: -40_000 } };
  const north = { exact: { B: 0.1, C: 0 }, field: { h: 20_000, z: 40_000 } };
  assert.deepEqual(told([north, { ...north, field: { h: 21_000, z: 34_000 } }]), [['separate.places-near', { apart: { value: 6000, unit: 'nanotesla' } }]]);
  // A fifth of the strongest total force, 44,721 nT: common practice, no source.
  assert.deepEqual(told([north, { ...north, field: { h: 21_000, z: 31_000 } }]), []);
  const [lambda] = told([{ ...north, lambda: 0.85 }, { ...south, lambda: 0.9 }]);
  assert.equal(lambda?.[0], 'separate.lambda-differs');
  assertClose((lambda[1] as { by: { value: number; unit: string } }).by.value, 0.05, 1e-12);
  const [changed] = told([{ ...north, exact: { ...north.exact, E: 0.05 } }, { ...south, exact: { ...south.exact, E: -0.02 } }]);
  assert.equal(changed?.[0], 'separate.ship-changed');
  const values = changed[1] as { coefficient: string; by: { value: number; unit: string } };
  assert.equal(values.coefficient, 'E');
  assert.equal(values.by.unit, 'angle');
  assertClose(values.by.value, 0.07 / RAD, 1e-9);
});

test('a number that is none is named by its place, whichever it is', () => {
  const good: IronObservation = { exact: { B: 0, C: 0 }, field: { h: 20_000, z: 0 } };
  const cases: readonly (readonly [Partial<IronObservation>, RegExp])[] = [
    [{ field: { h: 20_000, z: NaN } }, /observations\[1\]\.field\.z/],
    [{ field: { h: -5, z: 0 } }, /observations\[1\]\.field\.h/],
    [{ exact: { B: 0, C: 0, A: NaN } }, /observations\[1\]\.exact\.A/],
    [{ exact: { B: 0, C: 0, lambda: Infinity } }, /observations\[1\]\.exact\.lambda/],
    [{ standardErrors: { E: -1 } }, /observations\[1\]\.standardErrors\.E/],
    [{ standardErrors: { lambda: NaN } }, /observations\[1\]\.standardErrors\.lambda/],
  ];
  for (const [change, message] of cases) assert.throws(() => separateIron([good, { ...good, ...change }]), { name: 'RangeError', message });
  for (const errors of [{ B: 0 }, { lambda: 0, A: 0 }, { C: null as unknown as number }]) separateIron([good, { ...good, standardErrors: errors }]);
});
