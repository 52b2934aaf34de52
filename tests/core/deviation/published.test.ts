import assert from 'node:assert/strict';
import { test } from 'node:test';
import { approximateFromExact, exactFromApproximate } from '../../../core/deviation/convert-coefficients.js';
import { correctorAdvice } from '../../../core/deviation/corrector-advice.js';
import { deviationAt } from '../../../core/deviation/approximate-deviation.js';
import { eightPointAnalysis } from '../../../core/deviation/eight-point-analysis.js';
import { exactDeviationByCompass } from '../../../core/deviation/exact-deviation.js';
import { fitDeviation } from '../../../core/deviation/fit-deviation.js';
import { nearestRow } from '../../../core/deviation/nearest-row.js';
import { degreesOfArc } from '../../../core/angle/trigonometry.js';
import { assertClose } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';
import { assertCoefficients, whole } from './ships.js';

interface Case {
  readonly id: string;
  readonly tolerance: { readonly deg?: number; readonly abs?: number };
  readonly inputs: Readonly<Record<string, number & number[]>>;
  readonly expected: Readonly<Record<string, number & number[]>>;
}

const cases = reference<{ cases: Case[] }>('deviation-published.json').cases;

function printed(id: string): Case {
  const found = cases.find((item) => item.id === id);
  assert.ok(found, id);
  return found;
}

// Deviations seen in the Handbook of Magnetic Compass Adjustment, article 501; its coefficients from memory.
const article501 = { N: 10.5, NE: 20, E: 11.5, SE: -1.2, S: -5.5, SW: -8, W: -12.5, NW: -6.8 };

test('Handbook of Magnetic Compass Adjustment, article 501: A 1.0 B 12.0 C 8.0 D 5.0 E 1.5', () => {
  assertCoefficients(eightPointAnalysis(article501), { A: 1, B: 12, C: 8, D: 5, E: 1.5 }, 0.05);
});

test('the same deviations by least squares: B 11.94 C 7.96 and residuals of 0.07° at most', () => {
  const { tolerance } = printed('dev-226-501-ls');
  const observations = Object.values(article501).map((deviation, i) => ({ heading: i * 45, deviation }));
  const fit = fitDeviation(observations);
  assertCoefficients(fit.coefficients, { A: 1, B: 11.9397, C: 7.9598, D: 5, E: 1.5 }, tolerance.deg ?? 0);
  [0.04, -0.07, 0.06, -0.01, -0.04, 0.07, -0.06, 0.01].forEach((residual, i) => {
    assertClose(fit.residuals[i] ?? NaN, residual, 0.006, `residual ${i}`);
  });
});

// Elementary Manual for the Deviations of the Compass in Iron Ships, 1870 and 1875, worked example (seen).
test('the Admiralty manual: exact 0.020 0.200 0.150 0.060 -0.010 from its approximate coefficients', () => {
  const { inputs, expected, tolerance } = printed('dev-adm-exact');
  const [A, B, C, D, E] = inputs['approx_deg'] as unknown as [number, number, number, number, number];
  const exact = exactFromApproximate({ A, B, C, D, E });
  const want = expected['exact'] as unknown as number[];
  Object.values(exact).forEach((value, i) => assertClose(value, want[i] ?? NaN, tolerance.abs ?? 0, `coefficient ${i}`));
});

test('and back: the approximate coefficients from the exact ones', () => {
  const { inputs } = printed('dev-adm-exact');
  const [A, B, C, D, E] = inputs['approx_deg'] as unknown as [number, number, number, number, number];
  const found = approximateFromExact({ A: 0.02, B: 0.2, C: 0.15, D: 0.06, E: -0.01 });
  assert.ok(found !== null);
  // The printed pure numbers are rounded to a thousandth: 0.03°.
  assertCoefficients(found, { A, B, C, D, E }, degreesOfArc(0.0006));
});

test('the exact deviations of that example fit its exact coefficients, and the series its approximate ones', () => {
  const exact = { A: 0.02, B: 0.2, C: 0.15, D: 0.06, E: -0.01 };
  const observations = Array.from({ length: 32 }, (_, i) => {
    const heading = i * 11.25;
    return { heading, deviation: exactDeviationByCompass(exact, heading) ?? NaN };
  });
  assertCoefficients(fitDeviation(observations, { model: 'exact' }).coefficients, exact, 1e-9);
  const series = whole(fitDeviation(observations).coefficients);
  // The manual allows 1°30′ at 21°; this ship stands at 16°.
  for (const { heading, deviation } of observations) assertClose(deviationAt(series, heading), deviation, 1.5);
});

test('Pub. 9, article 612: with A of 2° E, removing all on east leaves 4° E on west, and half stays on each', () => {
  const { expected } = printed('dev-bow-612');
  const advice = correctorAdvice({ coefficients: { A: 2, B: 6, C: 0, D: 0, E: 0 } });
  const magnet = advice.find(({ corrector }) => corrector === 'fore-and-aft-magnets');
  assert.equal(magnet?.values['left']?.value, 4);
  assertClose((magnet?.values['left']?.value ?? NaN) / 2, expected['remaining_on_each'] ?? NaN, 0.01);
});

test('Pub. 9, article 612, seven tenths: 1° taken out on a cardinal changes the intercardinals by 0.7°', () => {
  const { expected, tolerance } = printed('dev-bow-07');
  const [magnet] = correctorAdvice({ coefficients: { A: 0, B: 1, C: 0, D: 0, E: 0 } });
  assertClose(magnet?.values['onIntercardinals']?.value ?? NaN, expected['change_on_adjacent_intercardinals'] ?? NaN, tolerance.abs ?? 0);
});

test('NAVEDTRA 14067: heading 017 reads the row of 015', () => {
  const { inputs, expected } = printed('cv-rule-qm-near');
  const rows = Array.from({ length: 24 }, (_, i) => ({ heading: i * 15, deviation: i }));
  assert.equal(nearestRow(rows, inputs['heading'] ?? NaN).heading, expected['tabular_heading']);
  assert.equal(nearestRow(rows, 358).heading, 0);
});
