import assert from 'node:assert/strict';
import { test } from 'node:test';
import { nextEntry } from '../../../core/record/chain.js';
import { checkAgainstCard } from '../../../core/record/check-against-card.js';
import type { EntryDraft, RecordEntry } from '../../../core/record/entry.js';
import { entryMarks } from '../../../core/record/entry-marks.js';
import { judgeRecord } from '../../../core/record/judge-record.js';
import type { RecordQuestion } from '../../../core/record/judge-record.js';
import { observedDeviations, lastRestart } from '../../../core/record/observed-deviations.js';
import type { ObservedDeviation } from '../../../core/record/observed-deviations.js';
import { prepareEntry } from '../../../core/record/prepare-entry.js';
import { refit } from '../../../core/record/refit.js';
import { standingEntries } from '../../../core/record/standing-entries.js';
import { swingFromRecord } from '../../../core/record/swing-from-record.js';
import { headingTrend, timeTrend } from '../../../core/record/trend.js';
import { assertClose } from '../../support/assert-close.js';

const HOUR = 3_600_000;
const START = Date.UTC(2026, 9, 26);
const at = (days: number): Date => new Date(START + days * 24 * HOUR);
const flat = { kind: 'approximate', coefficients: { A: 0, B: 0, C: 0, D: 0, E: 0 } } as const;

function book(drafts: readonly EntryDraft[], by: Parameters<typeof prepareEntry>[1] = { card: flat }): RecordEntry[] {
  const entries: RecordEntry[] = [];
  for (const draft of drafts) {
    const reading = prepareEntry(draft, by);
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    entries.push(nextEntry('test', entries[entries.length - 1] ?? null, reading.fields, new Date(draft.instant)));
  }
  return entries;
}
const seen = (days: number, headingStandard: number, deviation: number, more: Partial<EntryDraft> = {}): EntryDraft => ({
  kind: 'observation', instant: at(days), headingStandard, deviation, deviationOf: 'standard', ...more,
});
const event = (days: number, kind: NonNullable<EntryDraft['event']>): EntryDraft => ({ kind: 'event', instant: at(days), event: kind });
const judge = (drafts: readonly EntryDraft[], more: Partial<RecordQuestion> = {}) => judgeRecord(book(drafts), { compass: 'standard', card: flat, now: at(30), ...more });
const told = (drafts: readonly EntryDraft[], code: string, more: Partial<RecordQuestion> = {}) => {
  const found = judge(drafts, more).advice.filter((one) => one.code === code);
  assert.ok(found.length < 2, code);
  return found[0] ? [found[0].level, found[0].values, found[0].source] : null;
};
const degrees = (value: number, unit: 'angle' | 'error' | 'bearing') => ({ value, unit });

// Figures by hand; STCW Code A-VIII/2 from memory.
test('a check that is overdue: whole hours since the last that was tried, of the hours allowed', () => {
  const drafts = [seen(1, 0, 0), event(2, 'cargo')];
  assert.deepEqual(told(drafts, 'watch-check-overdue', { now: new Date(at(1).getTime() + 30.7 * HOUR) }), ['warning', { hours: '30', limit: '4' }, 'stcw']);
  assert.equal(told(drafts, 'watch-check-overdue', { now: new Date(at(1).getTime() + 4 * HOUR) }), null);
  assert.deepEqual(told(drafts, 'watch-check-overdue', { now: new Date(at(1).getTime() + 8.5 * HOUR), settings: { watchHours: 8 } })?.[1], { hours: '8', limit: '8' });
  assert.deepEqual(told([event(2, 'cargo')], 'no-check-yet'), ['note', {}, 'stcw'], 'an event is no check');
  // The newest by time, not by writing.
  assert.equal(told([seen(29.95, 0, 0), seen(1, 0, 0)], 'watch-check-overdue'), null);
});

// Overcast is a reason for a watch; days of it kept the advice quiet for ever (common practice, no source: a mark or a gyro may tell the error).
test('entries that nothing could be observed keep the watch, and after a day are told as such, quietly', () => {
  const overcast = (days: number): EntryDraft => ({ kind: 'no-observation', instant: at(days), remarks: 'overcast' });
  const watches = Array.from({ length: 18 }, (_, i) => overcast(27 + i / 6));
  const now = new Date(at(27).getTime() + 17 * 4 * HOUR + HOUR);
  assert.equal(told(watches, 'watch-check-overdue', { now }), null);
  assert.deepEqual(told(watches, 'error-not-observed', { now }), ['note', { day: '2026-11-22' }, 'practice']);
  assert.deepEqual(told([seen(26.5, 0, 0), ...watches], 'error-not-observed', { now })?.[1], { day: '2026-11-21' });
  assert.equal(told([...watches.slice(0, 12), seen(29, 0, 0), ...watches.slice(13)], 'error-not-observed', { now }), null);
  assert.equal(told(watches.slice(0, 6), 'error-not-observed', { now: at(28) }), null, 'a day of them');
  assert.equal(told(watches, 'error-not-observed', { now, settings: { unobservedHours: 96 } }), null);
});

// STCW Code A-VIII/2, part 4-1 (from memory): "the standard compass error is determined at least once a watch".
test('an azimuth by gyro alone is no check of the magnetic compass, nor is an entry of a time to come', () => {
  const byGyro: EntryDraft = { kind: 'observation', instant: at(29.95), bearingBy: 'gyro', bearing: 61, trueBearing: 60, headingGyro: 101, variation: 12 };
  const overdue = (...drafts: EntryDraft[]): unknown => told(drafts, 'watch-check-overdue')?.[1];
  assert.deepEqual(overdue(seen(29, 0, 0), byGyro), { hours: '24', limit: '4' });
  assert.ok(told([byGyro], 'no-check-yet'));
  // With her head read by both it is one: standard 085 under a true head of 100 is 15 E.
  assert.equal(overdue(seen(29, 0, 0), { ...byGyro, headingStandard: 85 }), undefined);
  assert.equal(overdue(seen(29, 0, 0), { kind: 'no-observation', instant: at(29.95), remarks: 'overcast' }), undefined);
  // A year typed wrong silenced the book until that year came.
  assert.deepEqual(overdue(seen(29, 0, 0), seen(29.95 + 365, 0, 0)), { hours: '24', limit: '4' });
  assert.equal(overdue(seen(29, 0, 0), seen(30 + 4 / 1440, 0, 0)), undefined, 'four minutes are a clock’s difference');
  // Nor do they make a record of deviations kept (guidance to SOLAS V, annex 13, summary).
  const gyros = Array.from({ length: 20 }, (_, i): EntryDraft => ({ ...byGyro, instant: at(29 - i * 0.4) }));
  assert.ok(told([event(-740, 'adjustment'), ...gyros], 'adjustment-overdue'));
});

// Guidance to SOLAS V, annex 13 (summary): two years, and a record kept.
test('an adjustment two years ago: its day, the months allowed, and whether twenty observations of thirty days stand for it', () => {
  const recent = (count: number): EntryDraft[] => Array.from({ length: count }, (_, i) => seen(29 - i * 0.4, 10 * i, 0));
  const old = event(-740, 'adjustment');
  assert.deepEqual(told([old, ...recent(19)], 'adjustment-overdue'), ['warning', { day: '2024-10-16', months: '24' }, 'solas']);
  assert.equal(told([old, ...recent(20)], 'adjustment-overdue'), null);
  assert.deepEqual(told([old, ...recent(20)], 'adjustment-two-years'), ['note', { day: '2024-10-16', months: '24' }, 'solas']);
  // Overcast watches are no observations, nor is what is older than thirty days.
  const overcast = recent(20).map(({ instant }): EntryDraft => ({ kind: 'no-observation', instant, remarks: 'overcast' }));
  assert.ok(told([old, ...overcast], 'adjustment-overdue'));
  assert.ok(told([old, ...recent(19), seen(-0.1, 0, 0)], 'adjustment-overdue'));
  assert.ok(told([old, ...recent(19), seen(0, 0, 0)], 'adjustment-two-years'));
  // 24 months of 30.44 days are 730.6 days.
  for (const [days, overdue] of [[-700.4, false], [-700.7, true]] as const) assert.equal(told([event(days, 'adjustment')], 'adjustment-overdue') !== null, overdue, String(days));
  assert.equal(told([event(-740, 'adjustment'), event(-10, 'adjustment')], 'adjustment-overdue'), null, 'the last counts');
  assert.deepEqual(told([event(-10, 'dock')], 'adjustment-unknown'), ['note', {}, 'solas']);
  assert.ok(told([event(-200, 'adjustment')], 'adjustment-overdue', { settings: { adjustmentMonths: 6 } }));
});

test('after an event the book asks for eight observations, a note after cargo and adjustment, a warning after what may change the iron', () => {
  for (const kind of ['dock', 'lightning', 'lay-up', 'electrical', 'other'] as const) {
    assert.deepEqual(told([seen(0, 0, 0), event(1, kind), seen(2, 0, 0)], 'checks-after-event'), ['warning', { event: kind, day: '2026-10-27', count: '1', needed: '8' }, 'solas-checks']);
  }
  for (const kind of ['cargo', 'adjustment'] as const) assert.equal(told([event(1, kind)], 'checks-after-event')?.[0], 'note');
  assert.equal(told([seen(0, 0, 0)], 'checks-after-event'), null, 'no event');
  assert.equal(told([event(1, 'dock'), seen(2, 0, 0)], 'checks-after-event', { settings: { checksAfterEvent: 1 } }), null);
  // Of the very second of the event an observation counts, of the second before it does not.
  const entries = book([event(1, 'dock'), { ...seen(1, 0, 1) }, seen(1 - 1 / 86_400, 0, 2)]);
  assert.deepEqual(observedDeviations(entries, 'standard').map(({ deviation }) => deviation), [1]);
  assert.equal(lastRestart(standingEntries(entries))?.number, 1);
});

test('how often a card was missed, by how much and of how many; three of the last five', () => {
  const miss = (...differences: number[]) => differences.map((difference, i) => seen(i, 0, difference));
  assert.deepEqual(told(miss(9, 9, 9, 0, 2.1, -2.1, 0, 2.1), 'card-differs'), ['warning', { degrees: degrees(2, 'angle'), count: '3', of: '5' }, 'solas-figures']);
  assert.deepEqual(told(miss(2.1, -2.1, 2.1), 'card-differs')?.[1], { degrees: degrees(2, 'angle'), count: '3', of: '3' });
  assert.equal(told(miss(9, 9, 9, 0, 0, 0, 2.1, 2.1), 'card-differs'), null);
  assert.equal(told(miss(2, -2, 2, 2, 2), 'card-differs'), null, 'two degrees are not more than two');
  assert.equal(told([...miss(9, 9, 9), event(4, 'dock'), seen(5, 0, 9)], 'card-differs'), null, 'since the event');
});

test('two of the last five beyond the limit: the latest of them, with its heading', () => {
  const large = (...deviations: number[]) => deviations.map((deviation, i) => seen(i, 40 * i, deviation));
  assert.deepEqual(told(large(0, -5.1, 0, 5.2, 0), 'deviation-beyond-limit'), [
    'warning', { deviation: degrees(5.2, 'error'), heading: degrees(120, 'bearing'), limit: degrees(5, 'angle') }, 'marshall']);
  assert.equal(told(large(0, -5.1, 0, 5, 0), 'deviation-beyond-limit'), null, 'five degrees are within');
  assert.equal(told(large(-9, 0, 0, 9, 0, 0), 'deviation-beyond-limit'), null, 'six ago');
  assert.ok(told(large(3.1, -3.1), 'deviation-beyond-limit', { settings: { largestDeviation: 3 } }));
});

test('the gyro’s last error found is the one that counts', () => {
  const gyro = (...errors: (number | null)[]) => errors.map((errorGyro, i) => seen(i, 0, 0, { errorGyro }));
  assert.deepEqual(told(gyro(0, -3.1, null), 'gyro-error-large'), ['warning', { error: degrees(-3.1, 'error') }, 'practice']);
  assert.equal(told(gyro(-9, 3), 'gyro-error-large'), null);
  assert.equal(told(gyro(null), 'gyro-error-large'), null);
});

test('a card is as old as its day, the last that was named', () => {
  const dated = [seen(0, 0, 0, { cardDate: '2020-01-01' }), seen(1, 0, 0, { cardDate: '2025-11-25' }), seen(2, 0, 0)];
  // From 25 November 2025 to 25 November 2026: 365 days, 11.99 months of 30.44 days.
  assert.equal(told(dated, 'card-old', { settings: { cardMonths: 12 } }), null);
  assert.deepEqual(told(dated, 'card-old', { settings: { cardMonths: 11.9 } }), ['warning', { day: '2025-11-25', months: '11.9' }, 'panama-canal']);
});

/** Least squares by hand: x = days, y = differences. */
function lineThrough(points: readonly (readonly [number, number])[]) {
  const n = points.length;
  const [sx, sy, sxx, sxy] = points.reduce(([a, b, c, d], [x, y]) => [a + x, b + y, c + x * x, d + x * y] as const, [0, 0, 0, 0] as readonly [number, number, number, number]);
  const slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
  const start = (sy - slope * sx) / n;
  const squares = points.reduce((all, [x, y]) => all + (y - start - slope * x) ** 2, 0);
  const doubt = Math.sqrt(squares / (n - 2) / (sxx - (sx * sx) / n));
  return { mean: sy / n, slope, doubt, at: (x: number) => start + slope * x };
}

test('the drift by the sums of least squares: mean, change in thirty days, its doubt, and the line at both ends', () => {
  const points = [[0, 0.2], [1.5, -0.4], [4, 0.9], [9, 1.2], [13, 2.4]] as const;
  const { comparisons, trend, advice } = judge(points.map(([day, deviation]) => seen(day, 0, deviation)));
  const expected = lineThrough(points);
  assertClose(trend?.mean ?? NaN, expected.mean, 1e-9);
  assertClose(trend?.perMonth ?? NaN, 30 * expected.slope, 1e-6);
  assertClose(trend?.perMonthDoubt ?? NaN, 30 * expected.doubt, 1e-6);
  assertClose(trend?.line?.from ?? NaN, expected.at(0), 1e-6);
  assertClose(trend?.line?.to ?? NaN, expected.at(13), 1e-6);
  // Student's t of 3 degrees of freedom, two-sided 5 %: 3.182 (tables).
  assert.equal(trend?.significant, expected.slope / expected.doubt > 3.182);
  const drift = advice.find(({ code }) => code === 'drifting');
  assert.ok(drift && typeof drift.values['change'] === 'object' && typeof drift.values['doubt'] === 'object');
  assertClose(drift.values['change'].value, 30 * expected.slope, 1e-6);
  assertClose(drift.values['doubt'].value, 30 * expected.doubt, 1e-6);
  assert.equal(timeTrend([]), null);
  const flatTrend = (count: number) => timeTrend(comparisons.slice(0, count));
  assert.deepEqual(flatTrend(2), { count: 2, mean: (0.2 - 0.4) / 2, perMonth: null, perMonthDoubt: null, significant: false, line: null });
  assert.notEqual(flatTrend(3)?.perMonth, null);
  // Three on a line but for 0.1° and 0.2°: the slope is 5.8 times its doubt, and Student asks 12.7 of one degree of freedom.
  assert.equal(judge(([[0, 0], [1, 1.3], [2, 2]] as const).map(([day, deviation]) => seen(day, 0, deviation))).trend?.significant, false);
  // Within the hour no line is laid: root mean square about the middle below one hour.
  const hours = (step: number) => judge([0, 1, 2].map((i) => seen((i * step) / 24, 0, i))).trend?.perMonth;
  assert.equal(hours(1.2), null);
  assertClose(hours(1.3) ?? NaN, 720 / 1.3, 1e-3);
  // A slow one is no drift to speak of, nor one that chance may bring.
  assert.equal(judge(points.map(([day, deviation]) => seen(day, 0, deviation / 10))).advice.find(({ code }) => code === 'drifting'), undefined);
  assert.equal(judge(([[0, 0], [1, 2], [2, -2], [3, 1]] as const).map(([day, deviation]) => seen(day, 0, deviation))).trend?.significant, false);
  assert.ok(judge(points.map(([day, deviation]) => seen(day, 0, -deviation))).advice.some(({ code }) => code === 'drifting'), 'westwards too');
});

test('sectors of the compass about the eight points, their means, the seam of north within the first', () => {
  const { comparisons } = judge([seen(0, 337.5, 1), seen(1, 22.49, 3), seen(2, 337.49, 5), seen(3, 180, -2), seen(4, 67.5, 4)]);
  assert.deepEqual(headingTrend(comparisons), [
    { heading: 0, count: 2, mean: 2 }, { heading: 45, count: 0, mean: null }, { heading: 90, count: 1, mean: 4 }, { heading: 135, count: 0, mean: null },
    { heading: 180, count: 1, mean: -2 }, { heading: 225, count: 0, mean: null }, { heading: 270, count: 0, mean: null }, { heading: 315, count: 1, mean: 5 },
  ]);
});

const observed = (deviation: number, more: Partial<ObservedDeviation> = {}): ObservedDeviation => ({ number: 1, instant: at(0), heading: 90, deviation, sigma: null, cardDeviation: null, ...more });

// A single sight 0.7°, a card rounded to half a degree 0.3°: common practice, no source.
test('a deviation against a card: round the seam, doubts in squares, far beyond 3°', () => {
  const found = checkAgainstCard(observed(2, { cardDeviation: 0.5 }), null);
  assert.deepEqual([found?.cardDeviation, found?.difference, found?.verdict], [0.5, 1.5, 'within']);
  assertClose(found?.doubt ?? NaN, Math.hypot(0.7, 0.3), 1e-12);
  assertClose(checkAgainstCard(observed(2, { cardDeviation: 0.5, sigma: 0.4 }), null)?.doubt ?? NaN, 0.5, 1e-12);
  const doubts = { observation: 0.03, card: 0.04 };
  assertClose(checkAgainstCard(observed(2, { cardDeviation: 0.5 }), null, doubts)?.doubt ?? NaN, 0.05, 1e-12);
  assert.equal(checkAgainstCard(observed(3.5, { cardDeviation: 0.5 }), null, doubts)?.verdict, 'beyond', 'three degrees are not more than three');
  assert.equal(checkAgainstCard(observed(-3.6, { cardDeviation: -0.5 }), null, doubts)?.verdict, 'far');
  assert.equal(checkAgainstCard(observed(179, { cardDeviation: -179 }), null)?.difference, -2);
  assert.equal(checkAgainstCard(observed(1), null), null);
  for (const bad of [-1, NaN, 181]) {
    assert.throws(() => checkAgainstCard(observed(1), null, { observation: bad, card: 0 }), /^RangeError: doubts\.observation/);
    assert.throws(() => checkAgainstCard(observed(1), null, { observation: 0, card: bad }), /^RangeError: doubts\.card/);
  }
});

test('a coefficient refitted is held against the card’s, and told where it moved by more than a degree and more than chance', () => {
  const entries = Array.from({ length: 16 }, (_, i) => seen(i, i * 22.5, -3 * Math.sin((i * 22.5 * Math.PI) / 180) + (i % 2 ? 0.2 : -0.2)));
  const judged = judge(entries);
  const B = judged.refit.coefficients.find(({ name }) => name === 'B');
  assertClose(B?.found ?? NaN, -3, 0.02);
  assertClose(B?.card ?? NaN, 0, 1e-9);
  assertClose(B?.change ?? NaN, -3, 0.02);
  const changed = judged.advice.filter(({ code }) => code === 'coefficient-changed');
  assert.deepEqual(changed.map(({ values, level, source }) => [values['name'], values['count'], level, source]), [['B', '16', 'warning', 'practice']]);
  assert.deepEqual([changed[0]?.values['found'], changed[0]?.values['card']], [degrees(B?.found ?? NaN, 'error'), degrees(B?.card ?? NaN, 'error')]);
  assert.deepEqual(judge(entries, { settings: { coefficientChange: 3.5 } }).advice.filter(({ code }) => code === 'coefficient-changed'), []);
  assert.equal(judge(entries, { settings: { refitLast: 9 } }).refit.count, 9);
  // Without a card of its own the book has nothing to hold them against.
  const alone = judge(entries, { card: null }).refit.coefficients.find(({ name }) => name === 'B');
  assert.deepEqual([alone?.card, alone?.change, alone?.significant], [null, null, false]);
  for (const last of [0, 1.5, NaN]) assert.throws(() => refit([], null, last), /^RangeError: last/);
  // A table says what coefficients it has by its own curve.
  const rows = Array.from({ length: 24 }, (_, i) => ({ heading: i * 15, deviation: 2 * Math.cos((i * 15 * Math.PI) / 180) }));
  const ofTable = judge(entries, { card: { kind: 'table', rows } }).refit.coefficients.find(({ name }) => name === 'C');
  assertClose(ofTable?.card ?? NaN, 2, 0.02);
});

test('what is advised comes in one order, the card first', () => {
  const order = ['card-differs', 'card-old', 'deviation-beyond-limit', 'gyro-error-large', 'drifting', 'coefficient-changed', 'checks-after-event', 'watch-check-overdue', 'adjustment-overdue'];
  const entries = [event(-800, 'adjustment'), ...Array.from({ length: 7 }, (_, i) => seen(i, i * 45, 6 + i + (i % 2 ? 0.1 : -0.1), { errorGyro: 4, cardDate: '2020-01-01' }))];
  const codes = judge(entries, { settings: { cardMonths: 12 } }).advice.map(({ code }) => code);
  assert.deepEqual([...new Set(codes)], order);
});

test('of one compass neither the doubt nor the card of the other is taken', () => {
  const draft: EntryDraft = { kind: 'observation', instant: at(0), headingStandard: 80, headingSteering: 88, errorStandard: 17, errorSteering: 9, variation: 12, deviation: 5, deviationOf: 'standard', doubt: 0.4, cardDeviation: 4 };
  const of = (compass: 'standard' | 'steering') => observedDeviations(book([draft], { card: null }), compass).map(({ heading, deviation, sigma, cardDeviation }) => [heading, deviation, sigma, cardDeviation]);
  assert.deepEqual(of('standard'), [[80, 5, 0.4, 4]]);
  assert.deepEqual(of('steering'), [[88, -3, null, null]]);
  // Errors round the seam: 179° W less 5° E is 176° E.
  const seam: EntryDraft = { kind: 'observation', instant: at(0), headingSteering: 1, errorSteering: -179, variation: 5 };
  assert.deepEqual(observedDeviations(book([seam], { card: null }), 'steering').map(({ deviation }) => deviation), [176]);
  assert.deepEqual(observedDeviations(book([{ ...seam, variation: null }], { card: null }), 'steering'), []);
  assert.deepEqual(swingFromRecord([observed(1, { sigma: 0 }), observed(2, { sigma: 0.3 })]), [{ number: 1, heading: 90, deviation: 1 }, { number: 1, heading: 90, deviation: 2, sigma: 0.3 }]);
});

// By hand: a card with A 2° E; the steering compass's head 090 stands 3° from the standard's.
test('a draft is completed for the compass watched, a correction like what it puts in the place, and nothing but observations', () => {
  const card = { kind: 'approximate', coefficients: { A: 0, B: 2, C: 0, D: 0, E: 0 } } as const;
  const look: EntryDraft = { kind: 'observation', instant: at(0), bearingBy: 'steering', bearing: 355, trueBearing: 3, headingSteering: 90, headingStandard: 87, variation: 5 };
  const fields = (draft: EntryDraft, watched: 'standard' | 'steering') => {
    const reading = prepareEntry(draft, { card, watched });
    assert.ok(reading.ok);
    const { errorSteering, errorStandard, deviationOf, deviation, cardDeviation, difference } = reading.fields;
    return [errorSteering, errorStandard, deviationOf, deviation, cardDeviation, difference];
  };
  assert.deepEqual(fields(look, 'steering'), [8, 11, 'steering', 3, 2, 1]);
  // The standard's head is 087: true head 098, error 11° E, deviation 6° E, its card 2 sin 87° = 1.997.
  assert.deepEqual(fields(look, 'standard'), [8, 11, 'standard', 6, 2, 4]);
  assert.deepEqual(fields({ ...look, kind: 'correction', corrects: 1, replacement: 'observation', remarks: 'misread' }, 'steering'), [8, 11, 'steering', 3, 2, 1]);
  for (const rest of [{ kind: 'event', event: 'dock' }, { kind: 'no-observation' }, { kind: 'correction', corrects: 1, remarks: 'misread' }] as const) {
    assert.deepEqual(fields({ ...look, ...rest }, 'steering'), [null, null, null, null, null, null], rest.kind);
  }
  assert.deepEqual(fields({ ...look, headingSteering: null, headingStandard: null }, 'steering'), [8, null, 'steering', 3, null, null]);
});

test('an entry is ahead of the clock from five minutes on, and a correction may speak of an old time', () => {
  const [one, two] = book([seen(0, 0, 0), seen(1, 0, 0)]) as [RecordEntry, RecordEntry];
  const late = (seconds: number) => entryMarks({ ...one, instant: new Date(Date.parse(one.written) + seconds * 1000).toISOString().replace('.000', '') }, null);
  assert.deepEqual([late(300), late(301)], [[], ['ahead']]);
  const early = { ...two, instant: '2020-01-01T00:00:00Z' };
  assert.deepEqual(entryMarks(early, one), ['earlier']);
  assert.deepEqual(entryMarks({ ...early, kind: 'correction' }, one), []);
  assert.deepEqual(entryMarks(early, { ...one, kind: 'correction' }), []);
});

test('corrections that strike out each other, as no book of ours has them, come to an end', () => {
  const [first, second, third] = book([seen(0, 0, 0), seen(1, 0, 1), seen(2, 0, 2)]) as [RecordEntry, RecordEntry, RecordEntry];
  const correcting = (entry: RecordEntry, corrects: number): RecordEntry => ({ ...entry, kind: 'correction', replacement: 'observation', corrects });
  const standing = standingEntries([first, correcting(second, 3), correcting(third, 2)]).map(({ entry }) => entry.number);
  assert.ok(standing.includes(1) && standing.length < 3);
  assert.ok(standingEntries([first, correcting(second, 2)]).some(({ entry }) => entry.number === 1));
});

test('what stands is in the order of what happened; of one second, in the order of writing', () => {
  const entries = book([seen(3, 0, 3), seen(1, 0, 1), seen(1, 0, 2), seen(0, 0, 0)]);
  assert.deepEqual(standingEntries(entries).map(({ entry }) => entry.number), [4, 2, 3, 1]);
});

// Sums by hand; true head = head + error, error = true head − head, deviation = error − variation.
test('what follows of one look: the compass of the bearing tells the head first, then the gyro; nothing follows from what was not read', () => {
  const after = (draft: Partial<EntryDraft>, watched: 'standard' | 'steering' = 'standard') => {
    const reading = prepareEntry({ kind: 'observation', instant: at(0), ...draft }, { watched });
    assert.ok(reading.ok, JSON.stringify(reading));
    const { errorGyro, errorStandard, errorSteering, deviationOf, deviation, difference } = reading.fields;
    return [errorGyro, errorStandard, errorSteering, deviationOf, deviation, difference];
  };
  const heads = { headingGyro: 100, errorGyro: 2, headingStandard: 90, headingSteering: 95 };
  assert.deepEqual(after({ ...heads, bearingBy: 'standard', bearing: 350, trueBearing: 0 }), [2, 10, 5, null, null, null], 'true head 100 by the standard compass');
  assert.deepEqual(after(heads), [2, 12, 7, null, null, null], 'true head 102 by the gyro');
  assert.deepEqual(after({ ...heads, headingGyro: null, errorSteering: 4 }), [2, 9, 4, null, null, null], 'a gyro whose head was not read tells none');
  assert.deepEqual(after({ bearingBy: 'standard', trueBearing: 20, headingStandard: 10 }), [null, null, null, null, null, null]);
  assert.deepEqual(after({ headingStandard: 10, variation: 5 }), [null, null, null, null, null, null], 'no error, no deviation');
  assert.deepEqual(after({ headingStandard: 10, errorStandard: 7 }), [null, 7, null, null, null, null], 'no variation, no deviation');
  assert.deepEqual(after({ headingStandard: 10, errorStandard: 7, variation: 5, deviation: 1 }), [null, 7, null, 'standard', 1, null], 'the one brought stays');
  assert.deepEqual(after({ headingStandard: 10, errorStandard: 7, errorSteering: 9, variation: 5, deviationOf: 'steering' }), [null, 7, 9, 'steering', 4, null]);
  // Round half a turn: 179° W less 5° E is 176° E, less a card of 179° W is 5° W. And across north: 359 + 3 is 002.
  assert.deepEqual(after({ headingStandard: 10, errorStandard: -179, variation: 5, cardDeviation: -179 }), [null, -179, null, 'standard', 176, -5]);
  assert.deepEqual(after({ headingGyro: 359, errorGyro: 3, headingStandard: 350, headingSteering: 4 }), [3, 12, -2, null, null, null]);
  const steering = prepareEntry({ kind: 'observation', instant: at(0), headingStandard: 0, headingSteering: 90, deviation: 1, deviationOf: 'steering' }, { card: { kind: 'approximate', coefficients: { A: 0, B: 3, C: 0, D: 0, E: 0 } } });
  assert.ok(steering.ok);
  assert.deepEqual([steering.fields.cardDeviation, steering.fields.difference], [3, -2]);
});

test('a compass is observed where its own head was read and its deviation is told, or follows from its own error', () => {
  const drafts: EntryDraft[] = [
    { kind: 'observation', instant: at(0), headingSteering: 88, headingStandard: 80, errorStandard: 17, errorSteering: 9, variation: 12, deviation: -3, deviationOf: 'steering' },
    { kind: 'observation', instant: at(1), headingSteering: 88, deviation: 4, deviationOf: 'standard' },
    { kind: 'observation', instant: at(2), headingStandard: 80, variation: 12 },
  ];
  const entries = book(drafts, { card: null });
  assert.deepEqual(observedDeviations(entries, 'standard').map(({ number, deviation }) => [number, deviation]), [[1, 5]]);
  assert.deepEqual(observedDeviations(entries, 'steering').map(({ number, deviation }) => [number, deviation]), [[1, -3]]);
  // An entry of another hand that names its compass and leaves the sum to the reader.
  const bare = { ...(entries[0] as RecordEntry), deviation: null, deviationOf: 'standard' } as const;
  assert.deepEqual(observedDeviations([bare], 'standard').map(({ deviation }) => deviation), [5]);
});

test('six observations leave one degree of freedom, and a change of four times its doubt is chance (Student: 12.7)', () => {
  const found = judge(Array.from({ length: 6 }, (_, i) => seen(i, i * 60, 3 * Math.sin((i * 60 * Math.PI) / 180) + (i % 2 ? 0.5 : -0.5)))).refit.coefficients.find(({ name }) => name === 'B');
  // The waver is square to all five terms: s² = 6 × 0.25, doubt of B = s √(2/6).
  assertClose(found?.change ?? NaN, 3, 0.01);
  assertClose(found?.doubt ?? NaN, Math.sqrt(1.5 / 3), 0.01);
  assert.equal(found?.significant, false);
});
