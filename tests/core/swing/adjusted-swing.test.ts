import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { readCorrectors } from '../../../core/deviation/corrector-states.js';
import { adjustedSwing, swungStage } from '../../../core/swing/adjusted-swing.js';
import type { SwungStage } from '../../../core/swing/adjusted-swing.js';
import { swing } from '../../../core/swing/swing.js';
import { steeringSwing } from '../../../core/swing/steering-swing.js';
import type { SwingRow } from '../../../core/swing/swing-row.js';
import { assertClose } from '../../support/assert-close.js';
import { deviationOf, evenly, ship, shown, turned } from './synthetic-ship.js';
import type { Coefficients } from './synthetic-ship.js';

const names = ['A', 'B', 'C', 'D', 'E'] as const;
const wheelhouse: Coefficients = { A: -1.2, B: 3.1, C: -5.4, D: 2.8, E: 0.6 };
const none = { standard: readCorrectors(null), steering: readCorrectors(null) };

/** The head a compass of such coefficients shows on a magnetic head: found by halving, for it rises with the head. */
function headOn(magnetic: number, of: Coefficients): number {
  let [low, high] = [magnetic - 60, magnetic + 60];
  for (let turn = 0; turn < 60; turn++) {
    const middle = (low + high) / 2;
    if (middle + deviationOf(of, middle) < magnetic) low = middle;
    else high = middle;
  }
  return turned(low);
}

/** Both compasses read on standard headings, the standard against an object bearing 080° magnetic. */
const both = (count: number, method: 'known-object' | 'unknown-object' = 'known-object'): SwingRow[] =>
  evenly(count).map((heading) => ({ method, heading, bearing: shown(80, heading), steering: headOn(heading + deviationOf(ship, heading), wheelhouse) }));

const settings = { object: { bearing: 80, by: 'magnetic' } } as const;

function assertCoefficients(found: Readonly<Record<(typeof names)[number], number | null>>, expected: Coefficients, among: readonly (typeof names)[number][] = names): void {
  for (const name of among) assertClose(found[name] ?? NaN, expected[name], 1e-6, name);
}

describe('the steering compass swung with the standard', () => {
  it('gets its own five coefficients back, and its own card', () => {
    const { steering, fit } = swungStage(both(16), none, { ...settings, model: 'approximate' });
    assertCoefficients(fit.coefficients, ship);
    assertCoefficients(steering?.fit.coefficients ?? fit.coefficients, wheelhouse);
    assert.equal(steering?.card?.kind, 'approximate');
    assert.deepEqual(steering?.places, evenly(16).map((_, place) => place));
  });

  it('by hand: standard 090°, deviation 4° W, magnetic 086°; steering 089°: deviation 3° W', () => {
    const rows: SwingRow[] = [{ method: 'deviation', heading: 90, deviation: -4, steering: 89 }];
    const [row] = steeringSwing(rows, swing(rows))?.rows ?? [];
    assert.ok(row?.ok);
    assert.deepEqual([row.heading, row.deviation], [89, -3]);
  });

  it('across north: standard 359°, deviation 3° E, magnetic 002°; steering 358°: deviation 4° E', () => {
    const rows: SwingRow[] = [{ method: 'deviation', heading: 359, deviation: 3, steering: 358 }];
    const [row] = steeringSwing(rows, swing(rows))?.rows ?? [];
    assert.ok(row?.ok);
    assertClose(row.deviation, 4, 1e-9);
  });

  it('steadied by magnetic heading it needs nothing of the standard compass but its row', () => {
    const rows: SwingRow[] = evenly(8).map((heading) => ({ method: 'gyro', headingBy: 'magnetic', heading, reading: headOn(heading, ship), steering: headOn(heading, wheelhouse) }));
    const stage = swungStage(rows, none, { model: 'approximate' });
    assertCoefficients(stage.steering?.fit.coefficients ?? stage.fit.coefficients, wheelhouse);
    const [row] = stage.steering?.rows ?? [];
    // A comparison of two heads, and no bearing: common practice, no source.
    assert.ok(row?.ok && row.sigma === 0.4);
  });

  it('loses A where the standard loses it, and has it once that of the standard is taken', () => {
    const rows = both(16, 'unknown-object');
    const lost = swungStage(rows, none, { model: 'approximate' });
    assert.equal(lost.steering?.fit.coefficients.A, null);
    assertCoefficients(lost.steering?.fit.coefficients ?? lost.fit.coefficients, wheelhouse, ['B', 'C', 'D', 'E']);
    const taken = swungStage(rows, none, { model: 'approximate', constant: ship.A });
    assertCoefficients(taken.steering?.fit.coefficients ?? taken.fit.coefficients, wheelhouse);
  });

  it('leaves out a row struck for either; a head misread by 6° is suspect for itself alone', () => {
    const rows = both(16).map((row, place) => (place === 3 ? { ...row, steering: turned((row.steering ?? 0) + 6) } : row));
    const stage = swungStage(rows, none, settings);
    const suspects = (swung: SwungStage | SwungStage['steering']): number[] => (swung?.rows ?? []).flatMap((row, place) => (row.ok && row.suspect ? [place] : []));
    assert.deepEqual([suspects(stage), suspects(stage.steering)], [[], [3]]);
    const struck = swungStage(rows.map((row, place) => ({ ...row, steeringStruck: place === 3 })), none, { ...settings, model: 'approximate' });
    assertCoefficients(struck.steering?.fit.coefficients ?? struck.fit.coefficients, wheelhouse);
  });

  it('is none where no head of it was read', () => {
    assert.equal(swungStage(evenly(8).map((heading) => ({ method: 'known-object', heading, bearing: shown(80, heading) })), none, settings).steering, null);
    assert.throws(() => swungStage([{ method: 'deviation', heading: 0, deviation: 0, steering: NaN }], none), /rows\[0\]\.steering/);
  });
});

describe('as found and as left', () => {
  const round = (of: Coefficients, scale: number): SwungStage =>
    swungStage(evenly(8).map((heading) => ({ method: 'deviation', heading, deviation: scale * deviationOf(of, heading) })), none);

  it('what is left holds, what was found stands beside it', () => {
    const [found, left] = [round(ship, 1), round(ship, 0.2)];
    const whole = adjustedSwing(found, left, true);
    assert.deepEqual([whole?.stage, whole?.found, whole?.card], ['left', found, left.card]);
    assert.ok(!whole?.cautions.some(({ code }) => code === 'larger-than-found'));
  });

  it('what was found holds until something is read after adjusting', () => {
    const found = round(ship, 1);
    assert.deepEqual(adjustedSwing(found, null, true), { ...found, stage: 'found', found });
  });

  it('a swing of one round has none found', () => {
    const whole = adjustedSwing(null, round(ship, 1), false);
    assert.deepEqual([whole?.stage, whole?.found], ['single', null]);
    assert.deepEqual([adjustedSwing(null, null, false), adjustedSwing(null, null, true)], [null, null]);
  });

  it('a larger deviation as left than as found is told first', () => {
    const whole = adjustedSwing(round(ship, 1), round(ship, -1.5), true);
    assert.equal(whole?.cautions[0]?.code, 'larger-than-found');
  });
});

describe('the state of the correctors', () => {
  it('is read from data or JSON; an end the corrector cannot have is left empty', () => {
    const given = { foreAndAft: { what: '2', end: 'red-aft', distance: '31 cm' }, flinders: { end: 'red-aft', what: 5 } };
    const expected = { what: '2', end: 'red-aft', distance: '31 cm' };
    for (const each of [given, JSON.stringify(given)]) {
      assert.deepEqual(readCorrectors(each).foreAndAft, expected);
      assert.deepEqual(readCorrectors(each).flinders, { what: '', end: '', distance: '' });
    }
    assert.deepEqual(readCorrectors('{'), readCorrectors(null));
  });
});
