import assert from 'node:assert/strict';
import { test } from 'node:test';
import { fitDeviation } from '../../../core/deviation/fit-deviation.js';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import { ironFromExact, type KnownCoefficients } from '../../../core/iron/iron-from-exact.js';
import { ironDeviationByCompass } from '../../../core/iron/iron-by-compass.js';
import { predictAt, predictionError } from '../../../core/iron/predict-at.js';
import type { IronObservation } from '../../../core/iron/iron-observation.js';
import { separateIron } from '../../../core/iron/separate-iron.js';
import { assertClose } from '../../support/assert-close.js';
import { fieldOf, placeOf, swingAt, travelledShips, type Place, type TravelledShip } from './places.js';

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

/** A swing fitted from readings, as an adjuster has it. */
function fittedSwing(ship: TravelledShip, role: Place['role']): IronObservation {
  const place = placeOf(ship, role);
  const readings = place.deviationObserved24 ?? place.deviationByCompass24;
  const observations = ship.compassHeadings24.map((heading, index) => ({ heading, deviation: readings[index] ?? NaN }));
  const { coefficients, standardErrors } = fitDeviation(observations, { model: 'exact' });
  return { exact: coefficients, standardErrors, field: fieldOf(place) };
}

for (const ship of travelledShips) {
  const said = ship.referencePredictionError;
  test(`ship ${ship.id}, σ ${ship.sigma}°: two fitted swings predict the third place ${said ? `to ${said.rms}° rms like the file's own solution` : 'within 0.01°'}`, () => {
    const third = placeOf(ship, 'predicted');
    const separated = separateIron([fittedSwing(ship, 'first'), fittedSwing(ship, 'second')]);
    const predicted = predictAt(separated, fieldOf(third));
    const iron = ironFromExact(predicted.exact as KnownCoefficients, fieldOf(third));
    const misses = ship.compassHeadings24.map((heading, index) => {
      const [answer] = ironDeviationByCompass(iron, fieldOf(third), heading).answers;
      return (answer?.deviation ?? NaN) - (third.deviationByCompass24[index] ?? NaN);
    });
    const rms = Math.sqrt(misses.reduce((sum, miss) => sum + miss ** 2, 0) / misses.length);
    if (said) {
      // Another way of least squares than the file's: alike to a hundredth.
      assertClose(rms, said.rms, 0.01);
      assertClose(Math.max(...misses.map(Math.abs)), said.max, 0.01);
      for (const miss of misses.keys()) {
        const sigma = predictionError(predicted, ship.compassHeadings24[miss] ?? NaN) ?? NaN;
        assert.ok(Math.abs(misses[miss] ?? NaN) < 4 * sigma);
      }
    } else {
      assert.ok(Math.max(...misses.map(Math.abs)) < 0.01);
    }
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

test('doubts of A, D and E join where they were given, halved in variance by two swings', () => {
  const full = swings.map((swing) => ({
    ...swing,
    exact: { ...swing.exact, A: 0.01, D: 0.03, E: 0 },
    standardErrors: { ...swing.standardErrors, A: 0.001, D: 0.002, E: 0.002 },
  }));
  const predicted = predictAt(separateIron(full), { h: 20000, z: 40000 });
  // On north 𝔄, ℭ and 𝔈 count: 0.001² / 2 + 0.002² + 0.002² / 2.
  assertClose(predictionError(predicted, 0) ?? NaN, (Math.sqrt(6.5e-6) * 180) / Math.PI, 1e-9);
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

// One swing on the magnetic equator tells P and Q alone: 𝔅 goes with 1/H, by hand.
test('what was learnt on the magnetic equator is good for places without vertical force, and no others', () => {
  const equator = separateIron([{ exact: { B: 0.1, C: -0.02 }, field: { h: 30000, z: 0 } }]);
  // A dip of 0.04° induces nothing worth telling: tan 0.04° is below a thousandth.
  const near = predictAt(equator, { h: 40000, z: 30 });
  assertClose(near.exact.B ?? NaN, 0.075, 1e-12);
  assertClose(near.exact.C ?? NaN, -0.015, 1e-12);
  const away = predictAt(equator, { h: 40000, z: 50 });
  assert.deepEqual([away.exact.B, away.exact.C], [null, null]);
});
