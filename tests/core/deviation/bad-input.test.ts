import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { coefficientNames, deviationAt } from '../../../core/deviation/approximate-deviation.js';
import { checkCard } from '../../../core/deviation/check-card.js';
import { confidenceBand } from '../../../core/deviation/confidence-band.js';
import { deviationLimits } from '../../../core/deviation/deviation-limits.js';
import { exactDeviationByCompass } from '../../../core/deviation/exact-deviation.js';
import { fitDeviation } from '../../../core/deviation/fit-deviation.js';
import { fittedCard } from '../../../core/deviation/fitted-card.js';
import { reversedNaming } from '../../../core/deviation/reversed-naming.js';
import { assertClose } from '../../support/assert-close.js';
import { assertCoefficients } from './ships.js';

const truth = { A: 1, B: -4, C: 3, D: 2, E: 0.5 };

function read(headings: readonly number[], coefficients = truth) {
  return headings.map((heading) => ({ heading, deviation: deviationAt(coefficients, heading) }));
}

function codes(fit: ReturnType<typeof fitDeviation>): string[] {
  return fit.warnings.map(({ code }) => code);
}

const eight = [0, 45, 90, 135, 180, 225, 270, 315];

test('order, laps and the name of north do not matter', () => {
  const fit = fitDeviation(read([315, 360, 90, -315, 180, 585, 270, 135]));
  assertCoefficients(fit.coefficients, truth, 1e-9);
});

// Which coefficients headings determine, by algebra: sin 2ζ is 0 on every cardinal, cos 2ζ on every intercardinal.
test('the cardinals leave D undetermined, the intercardinals E, two opposite headings all but C', () => {
  const cardinal = fitDeviation(read([0, 90, 180, 270]));
  assert.deepEqual(cardinal.determined, ['A', 'B', 'C', 'E']);
  assert.equal(cardinal.coefficients.D, null);
  assertClose(cardinal.coefficients.B ?? NaN, -4, 1e-9);
  assert.deepEqual(fitDeviation(read([45, 135, 225, 315])).determined, ['A', 'B', 'C', 'D']);
  assert.deepEqual(fitDeviation(read([0, 180])).determined, ['C']);
  assert.deepEqual(fitDeviation(read([30])).determined, []);
  assert.equal(fittedCard(cardinal), null);
  assert.equal(confidenceBand(cardinal, 10), null);
  assert.ok(codes(cardinal).includes('not-determined'));
});

test('headings in one half of the compass do not tell A from B or C, and the fit says which', () => {
  const east = fitDeviation(read([0, 22.5, 45, 67.5, 90, 112.5, 135, 157.5, 180]));
  assert.deepEqual(east.determined, ['C', 'D', 'E']);
  assert.ok(codes(east).includes('half-of-compass'));
  const south = fitDeviation(read([90, 112.5, 135, 157.5, 180, 202.5, 225, 247.5, 270]));
  assert.deepEqual(south.determined, ['B', 'D', 'E']);
  const three = fitDeviation(read([0, 30, 60, 90, 120, 150, 180, 210, 240, 270]));
  assert.equal(three.determined.length, 5);
});

test('a constant that all readings share and nobody knows takes A away', () => {
  const fit = fitDeviation(read(eight, { ...truth, A: 77 }), { constantUnknown: true });
  assert.deepEqual(fit.determined, ['B', 'C', 'D', 'E']);
  assert.equal(fit.coefficients.A, null);
  assertClose(fit.coefficients.B ?? NaN, -4, 1e-9);
});

test('headings twice, and 0 with 360, are used and noted', () => {
  const fit = fitDeviation(read([...eight, 360, 90.02]));
  const twice = fit.warnings.filter(({ code }) => code === 'heading-twice').map(({ values }) => Object.values(values)[0]);
  assert.deepEqual(twice, [{ value: 0, unit: 'bearing' }, { value: 90, unit: 'bearing' }]);
  assertCoefficients(fit.coefficients, truth, 1e-9);
});

test('few readings are said to be few, and eight too few to tell a slip', () => {
  assert.ok(codes(fitDeviation(read(eight.slice(0, 6)))).includes('too-few-readings'));
  assert.ok(codes(fitDeviation(read(eight))).includes('too-few-to-find-slips'));
  assert.ok(!codes(fitDeviation(read(Array.from({ length: 16 }, (_, i) => i * 22.5)))).includes('too-few-to-find-slips'));
});

test('a curve that is really a constant is named as one', () => {
  const constant = { A: 3, B: 0, C: 0, D: 0, E: 0 };
  assert.ok(codes(fitDeviation(read(eight, constant))).includes('constant-curve'));
  assert.ok(!codes(fitDeviation(read(eight))).includes('constant-curve'));
  const { cautions } = checkCard({ kind: 'approximate', coefficients: constant });
  assert.ok(cautions.some(({ code }) => code === 'constant-card'));
});

test('a constant of 25°, as of a variation taken wrongly, is told first, and no series is blamed for it', () => {
  const wrong = { ...truth, A: -25 };
  const card = { kind: 'approximate', coefficients: wrong } as const;
  const cautionsOf = (A: number): string[] => checkCard({ ...card, coefficients: { ...truth, A } }).cautions.map(({ code, level }) => `${level} ${code}`);
  assert.deepEqual([cautionsOf(-25), cautionsOf(-2)], [['warning sum-not-zero', 'warning beyond-limit'], ['warning beyond-limit', 'note sum-not-zero']]);
  assert.ok(!codes(fitDeviation(read(eight, wrong))).includes('beyond-approximate'));
  // Elementary Manual for the Deviations of the Compass: beyond some 20° the series fails by more than a degree.
  assert.ok(codes(fitDeviation(read(eight, { ...truth, B: -24 }))).includes('beyond-approximate'));
});

test('no readings at all, or all struck out, is a result and no error', () => {
  const empty = fitDeviation([]);
  assert.deepEqual(codes(empty), ['no-readings']);
  assert.equal(empty.rms, null);
  const struck = fitDeviation([{ heading: 0, deviation: 1, weight: 0 }]);
  assert.deepEqual(codes(struck), ['no-readings']);
  assert.deepEqual(struck.residuals, [null]);
});

test('a reading struck out keeps its residual and its place and moves nothing', () => {
  const sixteen = read(Array.from({ length: 16 }, (_, i) => i * 22.5));
  const fit = fitDeviation([...sixteen.slice(0, 5), { heading: 100, deviation: 40, weight: 0 }, ...sixteen.slice(5)]);
  assertCoefficients(fit.coefficients, truth, 1e-9);
  assertClose(fit.residuals[5] ?? NaN, 40 - deviationAt(truth, 100), 1e-9);
  assert.deepEqual(fit.suspects, []);
});

test('a suspect is named by its place among the observations given, struck-out ones counted', () => {
  const readings = read(Array.from({ length: 16 }, (_, i) => i * 22.5)).map((reading, i) => ({ ...reading, deviation: reading.deviation + 0.1 * Math.cos(i * 7) }));
  const bad = readings.map((reading, i) => (i === 9 ? { ...reading, deviation: reading.deviation + 8 } : reading));
  assert.deepEqual(fitDeviation([{ heading: 3, deviation: 0, weight: 0 }, ...bad]).suspects, [10]);
});

test('scatter far beyond the doubts claimed is noted', () => {
  const rough = read(Array.from({ length: 16 }, (_, i) => i * 22.5)).map((reading, i) => ({ ...reading, deviation: reading.deviation + (i % 2), sigma: 0.1 }));
  assert.ok(codes(fitDeviation(rough)).includes('scatter-exceeds-doubt'));
  assert.ok(!codes(fitDeviation(rough.map((reading) => ({ ...reading, sigma: 0.6 })))).includes('scatter-exceeds-doubt'));
});

test('east and west exchanged throughout is seen against the old card only', () => {
  const card = { kind: 'approximate', coefficients: truth } as const;
  const turned = read(eight).map(({ heading, deviation }) => ({ heading, deviation: -deviation }));
  assert.equal(reversedNaming(turned, card)?.code, 'reversed-naming');
  assert.equal(reversedNaming(read(eight), card), null);
  assert.equal(reversedNaming(turned, { kind: 'approximate', coefficients: { A: 0, B: 0.1, C: 0, D: 0, E: 0 } }), null);
});

test('limits: 5° is allowed at 5° and not at 3°; the canal wants less than 7°', () => {
  const [five, three, service, canal] = deviationLimits;
  const card = (B: number) => ({ kind: 'approximate', coefficients: { A: 0, B, C: 0, D: 0, E: 0 } }) as const;
  assert.ok(checkCard(card(5)).withinLimit);
  assert.ok(!checkCard(card(5.1), five).withinLimit);
  assert.ok(!checkCard(card(5), three).withinLimit);
  assert.ok(checkCard(card(5), service).withinLimit);
  assert.ok(!checkCard(card(7), canal).withinLimit);
  const { largest, spread } = checkCard(card(-4));
  assert.deepEqual([Math.abs(largest.deviation), spread], [4, 8]);
  assert.ok(deviationLimits.every(({ source }) => /^[a-z-]+$/.test(source)));
});

test('a slip of 40° on a ship of very strong iron does not take the exact fit away', () => {
  const deviations = [2.5, 24, 67, 72, -8, -49.5, -50, -10];
  // What least squares leave is never more than what some other ship leaves.
  const other = { A: 0.1, B: 0.7, C: 0, D: -0.2, E: 0 };
  const left = eight.reduce((total, heading, i) => total + ((deviations[i] ?? NaN) - (exactDeviationByCompass(other, heading) ?? NaN)) ** 2, 0);
  const { rms } = fitDeviation(eight.map((heading, i) => ({ heading, deviation: deviations[i] ?? NaN })), { model: 'exact' });
  assert.ok((rms ?? NaN) <= Math.sqrt(left / 8), `${rms} of ${Math.sqrt(left / 8)}`);
});

test('any finite readings give numbers or null, never NaN, and never lose one', () => {
  const reading = fc.record({
    heading: fc.double({ min: -1e6, max: 1e6, noNaN: true }),
    deviation: fc.double({ min: -180, max: 180, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(reading, { maxLength: 20 }), fc.constantFrom('approximate' as const, 'exact' as const), (readings, model) => {
      const fit = fitDeviation(readings, { model });
      assert.equal(fit.residuals.length, readings.length);
      const numbers = [...fit.residuals, fit.rms, fit.scatter, ...coefficientNames.flatMap((name) => [fit.coefficients[name], fit.standardErrors[name]])];
      for (const number of numbers) assert.ok(number === null || Number.isFinite(number), JSON.stringify(fit));
    }),
    { numRuns: 300 },
  );
});

test('bad arguments are refused by name', () => {
  const at = (reading: object) => () => fitDeviation([reading as { heading: number; deviation: number }]);
  assert.throws(at({ heading: NaN, deviation: 0 }), /RangeError: observations\[0\]\.heading/);
  assert.throws(at({ heading: 0, deviation: 200 }), /RangeError: observations\[0\]\.deviation/);
  assert.throws(at({ heading: 0, deviation: 0, weight: -1 }), /RangeError: observations\[0\]\.weight/);
  assert.throws(at({ heading: 0, deviation: 0, sigma: 0 }), /RangeError: observations\[0\]\.sigma/);
  assert.throws(() => fitDeviation([], { model: 'cubic' as 'exact' }), /RangeError: options\.model/);
});
