import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { deviationAt } from '../../../core/deviation/approximate-deviation.js';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import { deviationCurve } from '../../../core/deviation/deviation-curve.js';
import { exactDeviation, exactDeviationByCompass, exactMagneticHeadings } from '../../../core/deviation/exact-deviation.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { chance } from './seeded-swings.js';

// The expected value of a round trip is where it began.

test('compass to magnetic and back within 1e-9° for 10,000 random cards up to 40° whose slope stays above −0.9', () => {
  const luck = chance(40);
  let cards = 0;
  let steep = 0;
  while (cards < 10_000) {
    const spread = (most: number): number => (2 * luck.even() - 1) * most;
    const coefficients = { A: spread(5), B: spread(28), C: spread(28), D: spread(15), E: spread(6) };
    const largest = Math.max(...Array.from({ length: 36 }, (_, i) => Math.abs(deviationAt(coefficients, i * 10))));
    if (largest > 40) continue;
    const curve = deviationCurve({ kind: 'approximate', coefficients });
    if (curve.steepest.slope <= -0.9) {
      steep++;
      continue;
    }
    cards++;
    assert.deepEqual(curve.ambiguous, []);
    for (const heading of [0, 359.999999, luck.even() * 360]) {
      const found = curve.toCompass(curve.toMagnetic(heading) ?? NaN);
      assert.ok(found.determined);
      assertSameDirection(found.heading, heading, 1e-9);
      assert.ok(found.heading >= 0 && found.heading < 360);
    }
  }
  assert.ok(steep > 0, 'the draw comes near the limit');
});

test('a card of 40° in the semicircular part alone is unique both ways: slope −0.70', () => {
  // From calculus: the slope of B sin ζ′ is B in radians at most.
  const curve = deviationCurve({ kind: 'approximate', coefficients: { A: 0, B: 40, C: 0, D: 0, E: 0 } });
  assertClose(curve.steepest.slope, (-40 * Math.PI) / 180, 1e-9);
  assertSameDirection(curve.steepest.heading, 180, 1e-3);
});

test('the compass of exact coefficients falls back fastest where its deviation, differenced, rises fastest', () => {
  const [A, B, C, D, E] = [0.01, 0.3, -0.2, 0.12, 0.05];
  const rad = Math.PI / 180;
  // tan δ from the forces across and along the needle: Archibald Smith's equation (from memory).
  const deviationOn = (magnetic: number): number => {
    const z = magnetic * rad;
    const across = A + B * Math.sin(z) + C * Math.cos(z) + D * Math.sin(2 * z) + E * Math.cos(2 * z);
    return Math.atan2(across, 1 + B * Math.cos(z) - C * Math.sin(z) + D * Math.cos(2 * z) - E * Math.sin(2 * z)) / rad;
  };
  const slopes = Array.from({ length: 360 }, (_, z) => (deviationOn(z - 0.01) - deviationOn(z + 0.01)) / 0.02);
  const { steepest } = deviationCurve({ kind: 'exact', coefficients: { A, B, C, D, E } });
  assertClose(steepest.slope, Math.min(...slopes), 1e-6);
  assert.equal(steepest.heading, slopes.indexOf(Math.min(...slopes)));
});

test('a pure D is unique to 28.64° and ambiguous from 28.66°: twice D in radians is 1 at 28.648°', () => {
  const withD = (D: number) => deviationCurve({ kind: 'approximate', coefficients: { A: 0, B: 0, C: 0, D, E: 0 } });
  assert.deepEqual(withD(28.64).ambiguous, []);
  assert.equal(withD(28.66).ambiguous.length, 2);
});

test('ambiguous answers all show the magnetic heading asked for, and lie where the card says', () => {
  const curve = deviationCurve({ kind: 'approximate', coefficients: { A: 2, B: 10, C: -15, D: 32, E: 4 } });
  assert.ok(curve.ambiguous.length > 0);
  for (const { from, to } of curve.ambiguous) {
    const middle = from + ((((to - from) % 360) + 360) % 360) / 2;
    const found = curve.toCompass(middle);
    assert.ok(!found.determined && found.headings.length >= 3);
    for (const heading of found.headings) assertSameDirection(curve.toMagnetic(heading) ?? NaN, middle, 1e-9);
    assert.equal(curve.onMagnetic(middle), null);
    assert.ok(curve.toCompass(from - 0.01).determined);
    assert.ok(curve.toCompass(to + 0.01).determined);
  }
});

test('exact cards go round both ways within 1e-9° up to 40°', () => {
  const part = fc.double({ min: -0.25, max: 0.25, noNaN: true });
  const small = fc.double({ min: -0.08, max: 0.08, noNaN: true });
  const anyHeading = fc.double({ min: -720, max: 720, noNaN: true });
  fc.assert(
    fc.property(small, part, part, small, small, anyHeading, (A, B, C, D, E, heading) => {
      const exact = { A, B, C, D, E };
      const curve = deviationCurve({ kind: 'exact', coefficients: exact });
      const magnetic = curve.toMagnetic(heading) ?? NaN;
      const found = curve.toCompass(magnetic);
      assertSameDirection(found.determined ? found.heading : NaN, heading, 1e-9);
      assertClose(exactDeviation(exact, magnetic) ?? NaN, exactDeviationByCompass(exact, heading) ?? NaN, 1e-9);
    }),
    { numRuns: 2000 },
  );
});

test('iron stronger than the earth: the compass never comes to some headings, and shows others twice', () => {
  // 𝔅 = 1.5 alone: the force ahead outweighs the earth, and the card cannot leave north by more than asin(1/1.5) = 41.81°.
  const exact = { A: 0, B: 1.5, C: 0, D: 0, E: 0 };
  assert.deepEqual(exactMagneticHeadings(exact, 90), []);
  assert.equal(exactMagneticHeadings(exact, 41.7).length, 2);
  assert.equal(exactMagneticHeadings(exact, 41.9).length, 0);
  const curve = deviationCurve({ kind: 'exact', coefficients: exact });
  assert.equal(curve.at(90), null);
  assert.deepEqual(curve.ambiguous, [{ from: 0, to: 360 }]);
  assert.ok(curve.toCompass(90).determined);
});

test('where the forces cancel the exact deviation is null: 𝔅 = 1 on south', () => {
  assert.equal(exactDeviation({ A: 0, B: 1, C: 0, D: 0, E: 0 }, 180), null);
});

test('headings past 360 or below 0 are the same headings, on every kind of card', () => {
  const coefficients = { A: 0.5, B: 3, C: -2, D: 4, E: 0.3 };
  const cards: DeviationCard[] = [
    { kind: 'approximate', coefficients },
    { kind: 'exact', coefficients: { A: 0, B: 0.05, C: -0.03, D: 0.06, E: 0 } },
    { kind: 'table', rows: [10, 60, 130, 200, 290].map((heading, i) => ({ heading, deviation: i - 2 })) },
  ];
  for (const card of cards) {
    const curve = deviationCurve(card);
    for (const heading of [0, 12.5, 359.5]) {
      assertClose(curve.at(heading - 720) ?? NaN, curve.at(heading) ?? NaN, 1e-9);
      assertClose(curve.onMagnetic(heading + 360) ?? NaN, curve.onMagnetic(heading) ?? NaN, 1e-9);
    }
  }
});

test('bad numbers are refused by name', () => {
  const coefficients = { A: 0, B: 0, C: 0, D: 0, E: NaN };
  assert.throws(() => deviationAt(coefficients, 0), /RangeError: coefficients\.E/);
  assert.throws(() => deviationAt({ ...coefficients, E: 0 }, Infinity), /RangeError: compassHeading/);
  assert.throws(() => exactDeviation(coefficients, 0), /RangeError: exact\.E/);
  assert.throws(() => deviationCurve({ kind: 'approximate', coefficients }), /RangeError: card\.coefficients\.E/);
  assert.throws(() => deviationCurve({ kind: 'table', rows: [] }), /RangeError: rows/);
});
