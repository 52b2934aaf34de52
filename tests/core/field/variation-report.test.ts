import assert from 'node:assert/strict';
import { test } from 'node:test';
import { magneticField } from '../../../core/field/magnetic-field.js';
import type { ModelAgainstRose } from '../../../core/field/model-against-rose.js';
import { outsideModels } from '../../../core/field/outside-models.js';
import { roseSteps } from '../../../core/field/rose-steps.js';
import { differenceCautions, placeCautions, roseCautions } from '../../../core/field/variation-cautions.js';
import { variationReport } from '../../../core/field/variation-report.js';
import { evaluate } from '../../../core/working/evaluate.js';
import { assertClose } from '../../support/assert-close.js';

const newYear = (year: number) => new Date(Date.UTC(year, 0, 1));
const cape = { latitude: -33.4, longitude: 18.4 };
// Textbook example: 3°45'W (1988) decreasing 6' annually is 3°27'W in 1991.
const printed = { variation: -3.75, year: 1988, annualChangeMinutes: 6 };

const codes = (report: { cautions: readonly { code: string }[] }): string[] => report.cautions.map(({ code }) => code);

test('a rose is brought up to date outside the models’ years too: 3°27′W in 1991 (textbook example)', () => {
  const report = variationReport({ place: cape, instant: newYear(1991), rose: printed });
  assert.equal(report.field, null);
  assertClose(report.rose?.charted ?? 0, -(3 + 27 / 60), 1e-12);
  assert.equal(report.rose?.difference, null);
  assert.deepEqual(report.outside, { from: 2015, until: 2030, nearest: 2015 });
});

test('the last line of the working is the printed 3°27′W, and every line works out (textbook example)', () => {
  const steps = roseSteps(printed, newYear(1991));
  for (const step of steps) {
    const values = Object.fromEntries(Object.entries(step.values).map(([name, { value }]) => [name, value]));
    if (step.expression) assertClose(evaluate(step.expression, values), step.result.value, 1e-9, step.code);
  }
  assertClose(steps[steps.length - 1]?.result.value ?? 0, -3.45, 1e-12);
});

test('a change that carries the rose across south ends in the shorter count: 179°59′E changing 20′E is 179°41′W (arithmetic)', () => {
  const last = roseSteps({ variation: 179 + 59 / 60, year: 2020, annualChangeMinutes: 20 }, newYear(2021)).pop();
  assert.equal(last?.code, 'rose.turned');
  assertClose(last?.result.value ?? 0, -(179 + 41 / 60), 1e-9);
});

test('the nearest year is the first before them, the last after them; both ends belong to the models', () => {
  assert.equal(outsideModels(newYear(1990))?.nearest, 2015);
  assert.equal(outsideModels(newYear(2090))?.nearest, 2030);
  assert.equal(outsideModels(newYear(2015)), null);
  assert.equal(outsideModels(newYear(2030)), null);
  assert.deepEqual(outsideModels(newYear(2026), 'WMM2020'), { from: 2020, until: 2025, nearest: 2025 });
});

test('model and rose agree, differ, or differ by the letter', () => {
  // WMM2020 report line: 0N 120E at 2020.0 is 0.16E; 80S 120W is 69.36E.
  const line = { place: { latitude: -80, longitude: -120 }, instant: newYear(2020) };
  const with_ = (variation: number) => codes(variationReport({ ...line, rose: { variation, year: 2020, annualChangeMinutes: 0 } }));
  assert.deepEqual(with_(69), ['rose-agrees']);
  assert.deepEqual(with_(66), ['rose-differs']);
  assert.deepEqual(with_(-69), ['rose-turned']);
});

// The chart is the better source while its annual change holds, and no longer (common practice, no source; some ten years).
test('an old rose that differs does not prevail over the model, and its age is told once', () => {
  const line = { place: { latitude: 50, longitude: -5 }, instant: newYear(2026) };
  const of = (year: number) => codes(variationReport({ ...line, rose: { variation: -10, year, annualChangeMinutes: 0 } }));
  assert.deepEqual(of(2024), ['rose-differs']);
  assert.deepEqual(of(1960), ['rose-outdated']);
});

test('a variation carried across south has not passed zero: 175° W changing 60′ W for 11 years is 174° E (arithmetic)', () => {
  const report = variationReport({ place: cape, instant: newYear(2011), rose: { variation: -175, year: 2000, annualChangeMinutes: -60 } });
  assertClose(report.rose?.charted ?? 0, 174, 1e-9);
  assert.ok(!codes(report).includes('rose-through-zero'));
});

test('an old rose, one ahead of the date, and a change through zero are noted', () => {
  const report = (year: number, variation: number, annualChangeMinutes: number) =>
    codes(variationReport({ place: cape, instant: newYear(2010), rose: { variation, year, annualChangeMinutes } }));
  assert.deepEqual(report(1999, -3, 0), ['rose-old']);
  assert.deepEqual(report(2000, -3, 0), []);
  assert.deepEqual(report(2012, -3, 0), ['rose-ahead']);
  assert.deepEqual(report(2005, -0.2, 6), ['rose-through-zero']);
  // Two years before a rose of 0.1° W that goes 6′ W a year the variation was 0.1° E and on its way to zero: it does not yet increase.
  assert.deepEqual(report(2012, -0.1, -6), ['rose-ahead']);
});

test('zones and poles are told', () => {
  const at = (latitude: number, longitude: number) => codes(variationReport({ place: { latitude, longitude }, instant: newYear(2025) }));
  assert.deepEqual(at(85.762, 139.298), ['blackout-zone']);
  assert.deepEqual(at(90, 0), ['blackout-zone', 'geographic-pole']);
  assert.deepEqual(at(-90, 180), ['geographic-pole']);
  assert.deepEqual(at(73, -95), ['caution-zone']);
  assert.deepEqual(at(0, 180), []);
});

test('bad arguments are named', () => {
  const ok = { place: cape, instant: newYear(2026) };
  assert.throws(() => variationReport({ ...ok, place: { latitude: 91, longitude: 0 } }), { message: /^latitude: / });
  assert.throws(() => variationReport({ place: { latitude: 91, longitude: 0 }, instant: newYear(1990) }), { message: /^latitude: / });
  assert.throws(() => variationReport({ ...ok, instant: new Date(NaN) }), { message: /^instant: / });
  assert.throws(() => variationReport({ ...ok, rose: { ...printed, year: 12 } }), { message: /^year: / });
  assert.throws(() => variationReport(ok, { model: 'WMM1990' as 'WMM2025' }), { message: /^model: / });
});

// What a difference means, and the years after which a rose is old: common practice, no source; the figures by hand.
test('what is said of a rose beside the model, with its figures, on either side of each limit', () => {
  const compared = (more: Partial<ModelAgainstRose>): ModelAgainstRose => ({ charted: -4, modelled: -3, uncertainty: 0.3, difference: 1, years: 5, ...more });
  const said = (more: Partial<ModelAgainstRose>) => differenceCautions(compared(more)).map(({ code, level, values }) => [code, level, values]);
  const angle = (value: number) => ({ value, unit: 'angle' });
  assert.deepEqual(said({}), [['rose-differs', 'warning', { difference: angle(1), doubt: angle(0.3) }]]);
  assert.deepEqual(said({ difference: -1 }), [['rose-differs', 'warning', { difference: angle(1), doubt: angle(0.3) }]]);
  for (const difference of [0.59, -0.6]) assert.deepEqual(said({ difference }), [['rose-agrees', 'note', { difference: angle(Math.abs(difference)), doubt: angle(0.3) }]]);
  assert.equal(said({ difference: -0.61 })[0]?.[0], 'rose-differs');
  assert.equal(said({ difference: 1, uncertainty: 0.5 })[0]?.[0], 'rose-agrees');
  assert.deepEqual(said({ years: 10.1 }), [['rose-outdated', 'warning', { difference: angle(1), doubt: angle(0.3), years: { value: 10.1, unit: 'years' } }]]);
  assert.equal(said({ years: 10 })[0]?.[0], 'rose-differs');
  // The letter turned: as far to the other side, within a degree.
  for (const charted of [4, -4]) {
    assert.deepEqual(said({ charted, modelled: -charted + 0.9, difference: -2 * charted }), [['rose-turned', 'warning', { charted: { value: charted, unit: 'error' } }]]);
    assert.equal(said({ charted, modelled: -charted + 1.1, difference: -2 * charted })[0]?.[0], 'rose-differs');
  }
  assert.equal(said({ charted: 0.9, modelled: -0.9, difference: -1.8 })[0]?.[0], 'rose-differs', 'too small to tell a letter by');
  for (const lacking of [{ modelled: null }, { difference: null }, { uncertainty: null }]) assert.deepEqual(said(lacking), []);
});

test('what is said of a rose by itself: its age, a date before it, a variation that went through zero', () => {
  const rose = { variation: -0.5, year: 2015, annualChangeMinutes: 8 };
  const said = (variation: number, years: number, charted: number) => roseCautions({ ...rose, variation }, years, charted).map(({ code, level, values }) => [code, level, values]);
  assert.deepEqual(said(-0.5, 5, -0.1), []);
  assert.deepEqual(said(-0.5, 5, 0.2), [['rose-through-zero', 'note', { was: { value: -0.5, unit: 'error' }, is: { value: 0.2, unit: 'error' } }]]);
  assert.deepEqual(said(0.5, 5, -0.2)[0]?.[0], 'rose-through-zero');
  assert.deepEqual(said(-0.5, 5, 0), [], 'at zero it has passed nothing');
  assert.deepEqual(said(179.9, 5, -179.9), [], 'across south it passed no zero');
  assert.deepEqual(said(-0.5, 0, -0.5), []);
  assert.deepEqual(said(-0.5, -2, 0.2), [['rose-ahead', 'note', { years: { value: 2, unit: 'years' } }]]);
  assert.deepEqual(said(-5, 10, -4), []);
  assert.deepEqual(said(-5, 10.5, -4), [['rose-old', 'note', { years: { value: 10.5, unit: 'years' } }]]);
});

test('over a dip pole there is no variation, and at a geographic one it counts from the meridian named', () => {
  const instant = new Date('2026-07-01T00:00:00Z');
  const field = magneticField({ latitude: 0, longitude: 0 }, instant);
  const codes = (latitude: number, more: Partial<typeof field>) => placeCautions({ latitude, longitude: -120 }, { ...field, ...more }).map(({ code, values }) => [code, values]);
  assert.deepEqual(codes(0, {}), []);
  assert.deepEqual(codes(80, { zone: 'blackout', variation: null }), [['blackout-zone', {}], ['dip-pole', {}]]);
  assert.deepEqual(codes(80, { zone: 'caution' }), [['caution-zone', {}]]);
  for (const latitude of [90, -90]) assert.deepEqual(codes(latitude, {}), [['geographic-pole', { longitude: { value: -120, unit: 'longitude' } }]]);
});

// 179° 59′ E changing 20′ E a year is 180° 19′ after one year, which is 179° 41′ W: by hand.
test('the working of a rose has three lines, and a fourth only where the change carried it across south', () => {
  const lines = (variation: number, annualChangeMinutes: number) => roseSteps({ variation, year: 2020, annualChangeMinutes }, newYear(2021)).map(({ code, symbol, result }) => `${code} ${symbol} ${result.value.toFixed(3)} ${result.unit}`);
  const three = ['rose.years n 1.000 years', 'rose.change v 0.333 angle'];
  assert.deepEqual(lines(-4, 20), [...three, 'rose.variation V_chart -3.667 angle']);
  assert.deepEqual(lines(179 + 59 / 60, 20), [...three, 'rose.variation V_chart 180.317 angle', 'rose.turned V_chart -179.683 error']);
});
