import assert from 'node:assert/strict';
import { test } from 'node:test';
import { coefficientNames, deviationAt } from '../../../core/deviation/approximate-deviation.js';
import { confidenceBand } from '../../../core/deviation/confidence-band.js';
import { fitDeviation } from '../../../core/deviation/fit-deviation.js';
import { studentLimit, studentProbability } from '../../../core/deviation/student.js';
import { assertClose } from '../../support/assert-close.js';
import { chance, readSwing } from './seeded-swings.js';

test('Student’s t: the printed tables (Abramowitz and Stegun, table 26.10, from memory)', () => {
  assertClose(studentLimit(0.95, 1), 12.706, 0.0005);
  assertClose(studentLimit(0.95, 2), 4.303, 0.0005);
  assertClose(studentLimit(0.95, 10), 2.228, 0.0005);
  assertClose(studentLimit(0.95, 11), 2.201, 0.0005);
  assertClose(studentLimit(0.99, 5), 4.032, 0.0005);
  assertClose(studentLimit(0.9, 30), 1.697, 0.0005);
  assertClose(studentLimit(0.999, 3), 12.924, 0.0005);
});

test('Student’s t with 1 and 2 degrees of freedom has closed forms', () => {
  for (const t of [0, 0.3, 1, 2.5, 12, 400]) {
    assertClose(studentProbability(t, 1), (2 / Math.PI) * Math.atan(t), 1e-12);
    assertClose(studentProbability(t, 2), t / Math.sqrt(2 + t * t), 1e-12);
  }
  assert.throws(() => studentLimit(0.95, 0), /RangeError: degreesOfFreedom/);
  assert.throws(() => studentLimit(1, 5), /RangeError: probability/);
});

// 20,000 swings are in tests/bench; 2,000 of five coefficients pool to ±0.6 % (three standard deviations, with correlation none).
test('over 2,000 seeded swings of 16 the 95 % interval and band hold the truth in 94 to 96 %', () => {
  const luck = chance(20261125);
  const truth = { A: 0.5, B: -4, C: 3, D: 2.5, E: -0.4 };
  const limit = studentLimit(0.95, 11);
  let held = 0;
  let inBand = 0;
  for (let i = 0; i < 2000; i++) {
    const fit = fitDeviation(readSwing((heading) => deviationAt(truth, heading), luck, 16, 0.3));
    assert.equal(fit.degreesOfFreedom, 11);
    for (const name of coefficientNames) {
      const miss = Math.abs((fit.coefficients[name] ?? NaN) - truth[name]);
      if (miss <= limit * (fit.standardErrors[name] ?? NaN)) held++;
    }
    for (const heading of [10, 130, 250]) {
      const band = confidenceBand(fit, heading);
      if (Math.abs((band?.deviation ?? NaN) - deviationAt(truth, heading)) <= (band?.halfWidth ?? NaN)) inBand++;
    }
  }
  assert.ok(held / 10000 > 0.94 && held / 10000 < 0.96, `${held} of 10,000`);
  assert.ok(inBand / 6000 > 0.935 && inBand / 6000 < 0.965, `${inBand} of 6,000`);
});

test('the standard errors of an even swing are σ√(1/n) and σ√(2/n)', () => {
  // A third harmonic is at right angles to all five: it is the scatter and touches no coefficient.
  const readings = Array.from({ length: 16 }, (_, i) => ({ heading: i * 22.5, deviation: 2 + 0.4 * Math.cos((i * 3 * Math.PI) / 8) }));
  const fit = fitDeviation(readings);
  const scatter = 0.4 * Math.sqrt(8 / 11);
  assertClose(fit.scatter ?? NaN, scatter, 1e-12);
  assertClose(fit.rms ?? NaN, 0.4 * Math.sqrt(0.5), 1e-12);
  assertClose(fit.standardErrors.A ?? NaN, scatter / 4, 1e-12);
  assertClose(fit.standardErrors.D ?? NaN, scatter / Math.sqrt(8), 1e-12);
});

test('doubled weights are doubled readings, and sigmas weigh by their inverse squares', () => {
  const luck = chance(3);
  const readings = readSwing((heading) => Math.sin(heading), luck, 16, 0.5);
  const twice = fitDeviation([...readings, ...readings.slice(0, 5)]);
  const weighted = fitDeviation(readings.map((reading, i) => ({ ...reading, weight: i < 5 ? 2 : 1 })));
  const doubted = fitDeviation(readings.map((reading, i) => ({ ...reading, sigma: i < 5 ? 0.5 / Math.SQRT2 : 0.5 })));
  for (const name of coefficientNames) {
    assertClose(weighted.coefficients[name] ?? NaN, twice.coefficients[name] ?? NaN, 1e-10, name);
    assertClose(doubted.coefficients[name] ?? NaN, twice.coefficients[name] ?? NaN, 1e-10, name);
    assertClose(doubted.standardErrors[name] ?? NaN, weighted.standardErrors[name] ?? NaN, 1e-10, name);
  }
});

test('five readings that claim a doubt give standard errors by it, and none without', () => {
  const five = [0, 72, 144, 216, 288].map((heading) => ({ heading, deviation: 1 }));
  const claimed = fitDeviation(five.map((reading) => ({ ...reading, sigma: 0.5 })));
  assert.equal(claimed.basis, 'claimed');
  assertClose(claimed.standardErrors.A ?? NaN, 0.5 / Math.sqrt(5), 1e-9);
  const bare = fitDeviation(five);
  assert.equal(bare.basis, null);
  assert.deepEqual(bare.standardErrors, { A: null, B: null, C: null, D: null, E: null });
});

// 𝔅 = 1.5 alone: sin δ = 1.5 sin ζ′, so no compass comes to a heading of which 1.5 sin ζ′ is beyond 1.
test('a band has a gap where the fitted iron gives no deviation', () => {
  const readings = [0, 180].flatMap((middle) =>
    [-40, -20, -10, 0, 10, 20, 40].map((off) => {
      const heading = middle + off;
      const sine = 1.5 * Math.sin((heading * Math.PI) / 180);
      return { heading, deviation: (Math.asin(sine) * 180) / Math.PI, sigma: 0.5 };
    }),
  );
  const fit = fitDeviation(readings, { model: 'exact' });
  assert.equal(confidenceBand(fit, 90), null);
  assertClose(confidenceBand(fit, 30)?.deviation ?? NaN, (Math.asin(0.75) * 180) / Math.PI, 1e-6);
});

test('scatter exceeds the doubts claimed beyond the 99 % point of χ²: 24.72 for 11 degrees of freedom (printed tables, from memory)', () => {
  // A third harmonic alone is scatter: 16 readings of 0.4 cos 3ζ′ have 8 × 0.4² of squares.
  const claimed = (sigma: number) =>
    fitDeviation(Array.from({ length: 16 }, (_, i) => ({ heading: i * 22.5, deviation: 0.4 * Math.cos((i * 3 * Math.PI) / 8), sigma })));
  const sigmaFor = (chiSquare: number): number => Math.sqrt((8 * 0.4 ** 2) / chiSquare);
  const exceeds = (chiSquare: number): boolean => claimed(sigmaFor(chiSquare)).warnings.some(({ code }) => code === 'scatter-exceeds-doubt');
  assert.deepEqual([exceeds(24.5), exceeds(24.95)], [false, true]);
});
