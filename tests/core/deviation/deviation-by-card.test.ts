import assert from 'node:assert/strict';
import { test } from 'node:test';
import { deviationByCard } from '../../../core/deviation/deviation-by-card.js';
import { assertClose } from '../../support/assert-close.js';
import { ships, swingOf } from './ships.js';

// Source of the deviations: deviation-ships.json, Poisson's equations solved numerically (see its header).
test('a card of exact coefficients and the table of 36 rows give every deviation of the ships', () => {
  for (const ship of ships) {
    const rows = swingOf(ship, '36');
    for (const { heading, deviation } of rows) {
      assertClose(deviationByCard({ kind: 'exact', coefficients: ship.exact }, heading) ?? NaN, deviation, 1e-5, ship.id);
      assertClose(deviationByCard({ kind: 'table', rows }, heading - 360) ?? NaN, deviation, 1e-9, ship.id);
    }
  }
});

test('approximate coefficients: on east the deviation is A + B − E, by the formula of the Elementary Manual', () => {
  assertClose(deviationByCard({ kind: 'approximate', coefficients: { A: 0.5, B: -3, C: 2, D: 4, E: 1 } }, 90) ?? NaN, -3.5, 1e-12);
});

test('null where an exact card has no deviation for the heading: 𝔅 = 1.5 alone cannot leave north by more than 41.81°', () => {
  const card = { kind: 'exact', coefficients: { A: 0, B: 1.5, C: 0, D: 0, E: 0 } } as const;
  assert.equal(deviationByCard(card, 90), null);
});

test('bad cards and headings are refused by name', () => {
  const coefficients = { A: 0, B: 0, C: 0, D: 0, E: NaN };
  assert.throws(() => deviationByCard({ kind: 'approximate', coefficients }, 0), /RangeError: card\.coefficients\.E/);
  assert.throws(() => deviationByCard({ kind: 'exact', coefficients }, 0), /RangeError: card\.coefficients\.E/);
  assert.throws(() => deviationByCard({ kind: 'table', rows: [] }, 0), /RangeError: rows/);
  for (const card of [{ kind: 'table', rows: [{ heading: 0, deviation: 1 }] }, { kind: 'approximate', coefficients: { ...coefficients, E: 0 } }] as const) {
    assert.throws(() => deviationByCard(card, Infinity), /RangeError: compassHeading/);
  }
});
