import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import { convert } from '../../../core/sight/convert.js';
import type { ConversionInput } from '../../../core/sight/conversion.js';
import { markByHand } from '../../../core/sight/hand-answer.js';
import { evaluate } from '../../../core/working/evaluate.js';
import { assertClose } from '../../support/assert-close.js';

const nothing: ConversionInput = { kind: 'course', heading: { value: 0, by: 'compass' }, bearing: undefined, variation: null, deviation: null, cardBeside: null, gyroError: null, wind: null };
const codes = (input: Partial<ConversionInput>): string[] => convert({ ...nothing, ...input }).cautions.map(({ code }) => code);

describe('a course with leeway', () => {
  // Deck licence question bank: 195 psc, variation 13W, deviation 4E, wind WSW with leeway 2: 184 made good.
  it('195 by compass, variation 13W, deviation 4E, leeway 2 with the wind WSW: 184 made good', () => {
    const found = convert({ ...nothing, heading: { value: 195, by: 'compass' }, variation: -13, deviation: 4, wind: { amount: 2, from: 247.5 } });
    assertClose(found.madeGood ?? NaN, 184, 1e-9);
    assert.equal(found.steps[found.steps.length - 1]?.code, 'leeway.made-good');
  });

  // The same: true course 057, gyro error 3E, wind NNW with leeway 1: 053 by gyro.
  it('057 true, gyro error 3E, leeway 1 with the wind NNW: 053 by gyro', () => {
    const found = convert({ ...nothing, heading: { value: 57, by: 'true' }, gyroError: 3, wind: { amount: 1, from: 337.5 } });
    assertClose(found.values.gyro ?? NaN, 53, 1e-9);
    assert.deepEqual([found.steps[0]?.code, found.madeGood], ['leeway.to-steer', 57]);
  });

  it('each line of the leeway works out to its result', () => {
    for (const heading of [{ value: 57, by: 'true' }, { value: 1, by: 'compass' }] as const) {
      const steps = convert({ ...nothing, heading, variation: -13, deviation: 4, wind: { amount: 5, from: 90 } }).steps.filter(({ code }) => code.startsWith('leeway.'));
      assert.equal(steps.length, 1);
      for (const { expression, values, result } of steps) {
        const numbers = Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value]));
        assertClose(((expression ? evaluate(expression, numbers) : NaN) + 360) % 360, result.value, 1e-9);
      }
    }
  });

  it('a wind right astern sets her to neither side', () => {
    const found = convert({ ...nothing, heading: { value: 0, by: 'true' }, variation: 0, wind: { amount: 5, from: 180 } });
    assert.deepEqual([found.leeway, found.values.magnetic], [null, 0]);
  });
});

describe('what is odd about a conversion', () => {
  // 8° E on north, 8° W on south: C alone, cos of the head.
  const card: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 0, C: 8, D: 0, E: 0 } };
  const bearing: Partial<ConversionInput> = { kind: 'bearing', heading: { value: 0, by: 'compass' }, bearing: { value: 180, by: 'compass' }, variation: 0 };

  it('the deviation of the bearing typed for that of the head', () => assert.deepEqual(codes({ ...bearing, deviation: -8, cardBeside: card }).filter((code) => code === 'taken-for-bearing'), ['taken-for-bearing']));
  it('the deviation of the head with the other name', () => assert.deepEqual(codes({ heading: { value: 0, by: 'compass' }, variation: 0, deviation: -8, cardBeside: card }), ['wrong-name']));
  it('the right one is not odd', () => assert.deepEqual(codes({ heading: { value: 0, by: 'compass' }, variation: 0, deviation: 8, cardBeside: card }), []));
  it('by the card: that it belongs to the head', () => assert.deepEqual(codes({ ...bearing, deviation: card }), ['belongs-to-head']));
  it('a variation of the model where no compass points well (WMM2025 report: zones of 6 and 2 µT)', () =>
    assert.deepEqual([codes({ variation: 30, zone: 'normal' }), codes({ variation: 30, zone: 'caution' }), codes({ variation: 30, zone: 'blackout' })], [[], ['caution-zone'], ['blackout-zone']]));
  // What a card gives was asked whether it be the variation.
  // 170W was converted without a word; no corrected compass deviates by 20° (flag notices 5°, Panama Canal 7°; common practice).
  it('an absurd deviation, typed or by a card', () => {
    const uncorrected: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 25, C: 0, D: 0, E: 0 } };
    const on = (head: number): Partial<ConversionInput> => ({ heading: { value: head, by: 'compass' }, variation: -10, deviation: uncorrected });
    assert.deepEqual([codes({ deviation: -170 }), codes({ deviation: 18 }), codes(on(90)), codes(on(0))], [['deviation-beyond'], [], ['deviation-beyond-by-card', 'five-terms'], ['five-terms']]);
  });
  // The Elementary Manual for the Deviations of the Compass has the five terms 1°30′ out at 21°; our own count over 60 ships 1.7° at worst at 16°.
  it('a card of five coefficients that reach so far that the formula itself is out', () => {
    const by = (card: DeviationCard): string[] => codes({ heading: { value: 0, by: 'compass' }, variation: 0, deviation: card });
    const five = (B: number): DeviationCard => ({ kind: 'approximate', coefficients: { A: 0, B, C: 0, D: 0, E: 0 } });
    const table: DeviationCard = { kind: 'table', rows: [0, 45, 90, 135, 180, 225, 270, 315].map((heading) => ({ heading, deviation: 16 * Math.sin((heading * Math.PI) / 180) })) };
    assert.deepEqual([by(five(14)), by(five(16)), by(table)], [[], ['five-terms'], []]);
  });
  // Common practice: a variation typed with the other name than the model has at the ship's place.
  it('a variation far from the model’s, where that is known', () => {
    const beside = (variation: number): string[] => codes({ variation, modelledVariation: { value: -26, sigma: 0.6 } });
    assert.deepEqual([beside(26), beside(-25), codes({ variation: 26 })], [['variation-unlike-model'], [], []]);
  });
  it('a gyro error above 3° (trade practice)', () => assert.deepEqual([codes({ gyroError: 3 }), codes({ gyroError: -3.1 })], [[], ['gyro-error-beyond']]));
});

// It answered as for a course: the ship's head came back in place of the bearing.
describe('a bearing to convert that is not there', () => {
  it('is a bad argument, named', () => {
    for (const bearing of [undefined, null]) {
      assert.throws(() => convert({ ...nothing, kind: 'bearing', variation: 10, bearing } as ConversionInput), { name: 'RangeError', message: /^bearing:/ });
    }
  });
});

describe('an answer found by hand', () => {
  // Our own round figures, by hand: C 100 + 5E + 10W = 095 true.
  const input: ConversionInput = { ...nothing, heading: { value: 100, by: 'compass' }, variation: -10, deviation: 5 };
  const mistake = (text: string): unknown => {
    const mark = markByHand(input, convert(input), text);
    return mark?.outcome === 'wrong' ? mark.mistake : mark?.outcome;
  };

  for (const [text, said] of [['095', 'right'], ['115', 'variation-sign'], ['085', 'deviation-sign'], ['090', 'deviation-omitted'], ['275', 'reciprocal'], ['', 'empty'], ['nine', 'unreadable']] as const) {
    it(`${text || 'nothing'}: ${said}`, () => assert.equal(mistake(text), said));
  }

  it('is not marked where the way is not between compass and true', () => {
    const magnetic: ConversionInput = { ...nothing, heading: { value: 100, by: 'compass' }, deviation: 5 };
    assert.equal(markByHand(magnetic, convert(magnetic), '105'), null);
  });
});
