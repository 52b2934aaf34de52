import assert from 'node:assert/strict';
import { test } from 'node:test';
import { deviationAt } from '../../../core/deviation/approximate-deviation.js';
import { deviationCurve } from '../../../core/deviation/deviation-curve.js';
import { deviationTable } from '../../../core/deviation/deviation-table.js';
import { eightPointAnalysis } from '../../../core/deviation/eight-point-analysis.js';
import { exactDeviation, exactDeviationByCompass } from '../../../core/deviation/exact-deviation.js';
import { fitDeviation } from '../../../core/deviation/fit-deviation.js';
import { assertClose } from '../../support/assert-close.js';
import { assertCoefficients, counts, ships, swingOf, whole } from './ships.js';

// Source of every figure: deviation-ships.json, Poisson's equations solved numerically (see its header).

test('least squares equals the independent values to 1e-4° for 8, 16, 24 and 36 headings', () => {
  for (const ship of ships) {
    for (const count of counts) {
      const fit = fitDeviation(swingOf(ship, count));
      const { lsq, rms } = ship.byCompass[count];
      assertCoefficients(fit.coefficients, lsq, 1e-4, `${ship.id} of ${count}`);
      assertClose(fit.rms ?? NaN, rms, 1e-4, `${ship.id} of ${count}, rms`);
      assert.deepEqual(fit.determined, ['A', 'B', 'C', 'D', 'E']);
    }
  }
});

test('the exact fit recovers the exact coefficients to 1e-5 and every deviation within 0.01°', () => {
  for (const ship of ships) {
    for (const count of counts) {
      const { coefficients } = fitDeviation(swingOf(ship, count), { model: 'exact' });
      assertCoefficients(coefficients, ship.exact, 1e-5, `${ship.id} of ${count}`);
      ship.byCompass['36'].deviations.forEach((deviation, i) => {
        assertClose(exactDeviationByCompass(whole(coefficients), i * 10) ?? NaN, deviation, 0.01, `${ship.id} on ${i * 10}`);
      });
      ship.byMagnetic36.forEach((deviation, i) => {
        assertClose(exactDeviation(whole(coefficients), i * 10) ?? NaN, deviation, 0.01, `${ship.id} on magnetic ${i * 10}`);
      });
    }
  }
});

test('the exact coefficients give the deviation by compass and by magnetic heading to 1e-5°', () => {
  for (const ship of ships) {
    const curve = deviationCurve({ kind: 'exact', coefficients: ship.exact });
    ship.byCompass['36'].deviations.forEach((deviation, i) => {
      assertClose(curve.at(i * 10) ?? NaN, deviation, 1e-5, ship.id);
      // On the magnetic heading reached there the deviation is the same.
      assertClose(curve.onMagnetic(i * 10 + deviation) ?? NaN, deviation, 1e-5, ship.id);
    });
    ship.byMagnetic36.forEach((deviation, i) => assertClose(curve.onMagnetic(i * 10) ?? NaN, deviation, 1e-5, ship.id));
    assert.deepEqual(curve.ambiguous, []);
  }
});

test('the eight-point analysis equals the independent values to 1e-5°', () => {
  for (const ship of ships) {
    const [N, NE, E, SE, S, SW, W, NW] = ship.byCompass['8'].deviations as [number, number, number, number, number, number, number, number];
    assertCoefficients(eightPointAnalysis({ N, NE, E, SE, S, SW, W, NW }), ship.eightPoint, 1e-5, ship.id);
  }
});

test('a noise-free swing raises no suspect under either model', () => {
  for (const ship of ships) {
    for (const count of counts) assert.deepEqual(fitDeviation(swingOf(ship, count)).suspects, [], `${ship.id} of ${count}`);
  }
});

test('noise-free ships whose five-term series misses by more than 0.3° are offered the exact fit', () => {
  let large = 0;
  for (const ship of ships) {
    const fit = fitDeviation(swingOf(ship, '36'));
    if (Math.max(...fit.residuals.map((residual) => Math.abs(residual ?? 0))) < 0.3) continue;
    large++;
    const offer = fit.warnings.find(({ code }) => code === 'exact-fit-better');
    // By how much it says the two differ: the ship's own deviations less the series, seen every 10°.
    const { deviations } = ship.byCompass['36'];
    const most = Math.max(...deviations.map((deviation, i) => Math.abs(deviation - deviationAt(ship.byCompass['36'].lsq, i * 10))));
    const said = offer?.values['difference'];
    assertClose(typeof said === 'object' ? said.value : NaN, most, 0.1 * most + 0.01, ship.id);
  }
  assert.ok(large >= 10);
});

test('a table of every 15° converts both ways within 0.05° of the ship, one of every 10° within 0.02°', () => {
  for (const ship of ships) {
    const size = Math.max(...ship.byCompass['36'].deviations.map(Math.abs));
    const table = deviationTable(swingOf(ship, '24'));
    const fine = deviationTable(swingOf(ship, '36'));
    // A tolerance for ships of 10°; stronger ships bend their curves in proportion and more.
    const part = Math.max(1, size / 10) ** 2;
    for (let heading = 0; heading < 360; heading += 3) {
      const truth = exactDeviationByCompass(ship.exact, heading) ?? NaN;
      assertClose(table.at(heading), truth, 0.05 * part, `${ship.id} on ${heading}`);
      assertClose(fine.at(heading), truth, 0.02 * part, `${ship.id} on ${heading}`);
    }
  }
});
