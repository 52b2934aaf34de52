import assert from 'node:assert/strict';
import { test } from 'node:test';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import { ironFromExact, type KnownCoefficients } from '../../../core/iron/iron-from-exact.js';
import { ironDeviationByCompass } from '../../../core/iron/iron-by-compass.js';
import { predictAt, predictionError } from '../../../core/iron/predict-at.js';
import { separateIron } from '../../../core/iron/separate-iron.js';
import { assertClose } from '../../support/assert-close.js';
import { fieldOf, placeOf, swingAt, travelledShips } from './places.js';

for (const ship of travelledShips) {
  const separated = separateIron([swingAt(placeOf(ship, 'first')), swingAt(placeOf(ship, 'second'))]);
  const third = placeOf(ship, 'predicted');
  const predicted = predictAt(separated, fieldOf(third));

  test(`ship ${ship.id} (${ship.group}): the card at a third magnetic latitude within 0.01° on 24 headings`, () => {
    const iron = ironFromExact(predicted.exact as KnownCoefficients, fieldOf(third));
    ship.compassHeadings24.forEach((heading, index) => {
      const magnetic = ironDeviation(iron, fieldOf(third), heading);
      const compass = ironDeviationByCompass(iron, fieldOf(third), heading);
      assertClose(magnetic.deviation ?? NaN, third.deviationByMagnetic24[index] ?? NaN, 0.01);
      assertClose(compass.answers[0]?.deviation ?? NaN, third.deviationByCompass24[index] ?? NaN, 0.01);
    });
    const { A, B, C, D, E } = predicted.exact;
    assert.deepEqual(predicted.card, { kind: 'exact', coefficients: { A, B, C, D, E } });
  });

  test(`ship ${ship.id}: noise of the swings grows ${ship.noiseAmplification} times on the way`, () => {
    assertClose(predicted.amplification.B ?? NaN, ship.noiseAmplification, 0.001);
    assertClose(predicted.amplification.C ?? NaN, ship.noiseAmplification, 0.001);
  });
}

const swings = [
  { exact: { B: 0.1, C: 0.02 }, field: { h: 20000, z: 40000 }, standardErrors: { B: 0.002, C: 0.002 } },
  { exact: { B: 0.05, C: 0.03 }, field: { h: 30000, z: 0 }, standardErrors: { B: 0.002, C: 0.002 } },
];

test('at a place already swung the prediction is what was found there, and as doubtful', () => {
  const { exact, standardErrors } = predictAt(separateIron(swings), { h: 20000, z: 40000 });
  assertClose(exact.B ?? NaN, 0.1, 1e-12);
  assertClose(exact.C ?? NaN, 0.02, 1e-12);
  assertClose(standardErrors.B ?? NaN, 0.002, 1e-12);
});

test('the doubt of the deviation is that of 𝔅 on east and west, of ℭ on north and south', () => {
  const predicted = predictAt(separateIron(swings), { h: 20000, z: 40000 });
  assertClose(predictionError(predicted, 90) ?? NaN, (0.002 * 180) / Math.PI, 1e-9);
  assertClose(predictionError(predicted, 180) ?? NaN, (0.002 * 180) / Math.PI, 1e-9);
  const unknown = separateIron(swings.map(({ exact, field }) => ({ exact, field })));
  assert.equal(predictionError(predictAt(unknown, { h: 1, z: 1 }), 0), null);
  assert.throws(() => predictionError(predicted, NaN), /^RangeError: compassHeading/);
});

test('without A, D and E there is no card; with one place no prediction; at H = 0 none', () => {
  const separated = separateIron(swings);
  assert.equal(predictAt(separated, { h: 25000, z: 100 }).card, null);
  assert.equal(predictAt(separated, { h: 0, z: 60000 }).exact.B, null);
  const single = predictAt(separateIron(swings.slice(0, 1)), { h: 25000, z: 100 });
  assert.deepEqual([single.exact.B, single.exact.C, single.standardErrors.B], [null, null, null]);
});

// Poisson: permanent magnetism goes as 1/H, and at the equator there is nothing else.
test('from the magnetic equator one can predict along it and nowhere else', () => {
  const separated = separateIron([{ exact: { B: 0.06, C: 0 }, field: { h: 40000, z: 0 } }]);
  assertClose(predictAt(separated, { h: 30000, z: 0 }).exact.B ?? NaN, 0.08, 1e-12);
  assert.equal(predictAt(separated, { h: 30000, z: 20000 }).exact.B, null);
  assert.throws(() => predictAt(separated, { h: -1, z: 0 }), /^RangeError: field\.h/);
});
