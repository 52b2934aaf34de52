import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { Advice } from '../../../core/record/advice.js';
import { usualAdviceSettings } from '../../../core/record/advice-settings.js';
import { nextEntry } from '../../../core/record/chain.js';
import type { EntryDraft, RecordEntry } from '../../../core/record/entry.js';
import { entryMarks } from '../../../core/record/entry-marks.js';
import { judgeRecord } from '../../../core/record/judge-record.js';
import type { RecordQuestion } from '../../../core/record/judge-record.js';
import { observedDeviations } from '../../../core/record/observed-deviations.js';
import { prepareEntry } from '../../../core/record/prepare-entry.js';
import { standingEntries, struckOut } from '../../../core/record/standing-entries.js';
import { swingFromRecord } from '../../../core/record/swing-from-record.js';
import { assertClose } from '../../support/assert-close.js';

const DAY = 86_400_000;
const START = Date.UTC(2026, 9, 26);
const at = (days: number): Date => new Date(START + days * DAY);

/** B 2° and D 1°, by hand: 2.0 on 090, 0 on 000, 2 sin 45 + 1 = 2.41 on 045. */
const card = { kind: 'approximate', coefficients: { A: 0, B: 2, C: 0, D: 1, E: 0 } } as const;

function book(drafts: readonly EntryDraft[]): RecordEntry[] {
  const entries: RecordEntry[] = [];
  for (const draft of drafts) {
    const reading = prepareEntry(draft, { card });
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    entries.push(nextEntry('test', entries[entries.length - 1] ?? null, reading.fields, new Date(draft.instant)));
  }
  return entries;
}

const seen = (days: number, headingStandard: number, deviation: number, more: Partial<EntryDraft> = {}): EntryDraft => ({
  kind: 'observation', instant: at(days), headingStandard, deviation, deviationOf: 'standard', ...more,
});
const event = (days: number, kind: 'dock' | 'adjustment' | 'cargo'): EntryDraft => ({ kind: 'event', instant: at(days), event: kind });
const strike = (days: number, corrects: number, more: Partial<EntryDraft> = {}): EntryDraft => ({
  kind: 'correction', instant: at(days), corrects, remarks: 'misread', ...more,
});

function judge(entries: readonly RecordEntry[], more: Partial<RecordQuestion> = {}) {
  return judgeRecord(entries, { compass: 'standard', card, now: at(30), ...more });
}
const codes = (advice: readonly Advice[]): string[] => advice.map(({ code }) => code);

test('a correction strikes out, puts its own fields in the place, and may itself be struck out', () => {
  const entries = book([
    seen(0, 90, 9),
    strike(1, 1, { replacement: 'observation', instant: at(0), headingStandard: 90, deviation: 2, deviationOf: 'standard' }),
    seen(2, 0, 0),
    strike(3, 3),
  ]);
  assert.deepEqual([...struckOut(entries)].sort(), [[1, 2], [3, 4]]);
  assert.deepEqual(observedDeviations(entries, 'standard').map(({ number, deviation }) => [number, deviation]), [[2, 2]]);
  const again = [...entries, ...book([...Array.from({ length: 4 }, (_, i) => seen(i, 0, i)), strike(5, 4)]).slice(4)];
  assert.deepEqual(standingEntries(again).map(({ entry }) => entry.number), [2, 3], 'with the striking struck out the observation stands again');
});

test('two corrections of one entry: the newer stands for both', () => {
  const put = (days: number, deviation: number) =>
    strike(days, 1, { replacement: 'observation', headingStandard: 90, deviation, deviationOf: 'standard' });
  assert.deepEqual(observedDeviations(book([seen(0, 90, 9), put(1, 2), put(2, 3)]), 'standard').map(({ deviation }) => deviation), [3]);
});

// A correction's fields stand in the place of what it strikes out: corrected anew, the first misreading came back beside the last.
test('a correction corrected anew stands in the place of the first entry, however often', () => {
  const put = (days: number, corrects: number, deviation: number): EntryDraft =>
    strike(days, corrects, { replacement: 'observation', headingStandard: 90, deviation, deviationOf: 'standard' });
  const found = (drafts: readonly EntryDraft[]) => observedDeviations(book(drafts), 'standard').map(({ number, deviation }) => [number, deviation]);
  const struck = (drafts: readonly EntryDraft[]) => [...struckOut(book(drafts))].sort(([one], [other]) => one - other);
  const twice = [seen(0, 90, 9), put(1, 1, 2), put(2, 2, 3)];
  assert.deepEqual(found(twice), [[3, 3]]);
  assert.deepEqual(struck(twice), [[1, 3], [2, 3]]);
  assert.deepEqual(found([...twice, put(3, 3, 4)]), [[4, 4]]);
  // Taken back with nothing in its place, the one before holds again, and the first stays struck out.
  assert.deepEqual(found([...twice, strike(3, 3)]), [[2, 2]]);
  assert.deepEqual(struck([...twice, strike(3, 3)]), [[1, 2], [3, 4]]);
  assert.deepEqual(found([...twice, strike(3, 3), strike(4, 2)]), [[1, 9]]);
  // Struck out for nothing, then given what should have stood there.
  assert.deepEqual(found([seen(0, 90, 9), strike(1, 1), put(2, 2, 3)]), [[3, 3]]);
  // Two ways to the same entry: the newer stands for both.
  assert.deepEqual(found([...twice, put(3, 1, 5)]), [[4, 5]]);
  assert.deepEqual(struck([...twice, put(3, 1, 5)]), [[1, 4], [2, 4], [3, 4]]);
  assert.deepEqual(found([seen(0, 0, 1), seen(0, 90, 9), put(1, 2, 2)]), [[1, 1], [3, 2]]);
});

test('an event restarts the statistics by when it happened, not by when it was written', () => {
  const entries = book([seen(0, 0, 1), seen(5, 0, 2), event(3, 'dock')]);
  assert.deepEqual(judge(entries).observed.map(({ deviation }) => deviation), [2]);
  assert.equal(judge(entries).restart?.event, 'dock');
  assert.deepEqual(observedDeviations(entries, 'standard', 'all').length, 2);
});

test('the difference from the card on the heading, and its verdict by twice the doubt and by 3°', () => {
  // Doubts of 0.4 and 0.3 are 0.5 together (3, 4, 5): within up to 1.0.
  const entries = book([seen(0, 45, 3.41, { doubt: 0.4 }), seen(1, 90, 3.1, { doubt: 0.4 }), seen(2, 0, -3.2, { doubt: 0.4 })]);
  const { comparisons } = judge(entries);
  assert.deepEqual(comparisons.map(({ difference }) => Number(difference.toFixed(1))), [1, 1.1, -3.2]);
  assert.deepEqual(comparisons.map(({ verdict }) => verdict), ['within', 'beyond', 'far']);
  for (const { doubt } of comparisons) assertClose(doubt, 0.5, 1e-12);
});

// 17° E less 12° E is 5° E; 9° E less 12° E is 3° W: each compass by its own error.
test('of a compass whose deviation was not entered it follows from its error and the variation', () => {
  const entries = book([{ kind: 'observation', instant: at(0), headingStandard: 80, headingSteering: 88, errorStandard: 17, errorSteering: 9, variation: 12, deviation: 5, deviationOf: 'standard' }]);
  const found = (compass: 'standard' | 'steering') => observedDeviations(entries, compass).map(({ heading, deviation }) => [heading, deviation]);
  assert.deepEqual(found('standard'), [[80, 5]]);
  assert.deepEqual(found('steering'), [[88, -3]]);
});

test('differences across the seam at 180° stay small', () => {
  const entries = book([seen(0, 0, 179.5)]);
  const opposite = { kind: 'approximate', coefficients: { A: -179.5, B: 0, C: 0, D: 0, E: 0 } } as const;
  assertClose(judge(entries, { card: opposite }).comparisons[0]?.difference ?? NaN, -1, 1e-9);
});

test('without a card the entries’ own is taken; without either there is nothing to compare', () => {
  assert.equal(judge(book([seen(0, 90, 3)]), { card: null }).comparisons[0]?.difference, 1);
  assert.deepEqual(judge(book([{ kind: 'observation', instant: at(0), headingSteering: 90, deviation: 3, deviationOf: 'steering' }]), { card: null, compass: 'standard' }).comparisons, []);
});

/** A line through 0, 1, 2 … tenths of a degree a day: 3° in 30 days, by hand. */
test('a drift of a tenth of a degree a day is 3° a month, and is advised upon', () => {
  const noise = [0.05, -0.05, 0.02, -0.02];
  const entries = book(Array.from({ length: 30 }, (_, day) => seen(day, 0, day / 10 + (noise[day % 4] as number))));
  const { trend, advice } = judge(entries);
  assertClose(trend?.perMonth ?? NaN, 3, 0.05);
  assert.equal(trend?.significant, true);
  assert.ok(codes(advice).includes('drifting'));
});

test('a steady compass gives no drift, and no advice but what is not known', () => {
  const entries = book([event(-100, 'adjustment'), ...Array.from({ length: 30 }, (_, day) => seen(day, day * 12, 2 * Math.sin((day * 12 * Math.PI) / 180) + Math.sin((day * 24 * Math.PI) / 180)))]);
  const { trend, advice } = judge(entries, { now: at(29.1) });
  assertClose(trend?.mean ?? NaN, 0, 0.01);
  assert.equal(trend?.significant, false);
  assert.deepEqual(advice, []);
});

test('the trend by heading: a sector holds 22.5° to either side, the first about north', () => {
  const { byHeading } = judge(book([seen(0, 350, 5), seen(1, 10, 5), seen(2, 22.5, 5)]));
  assert.deepEqual(byHeading.map(({ count }) => count), [2, 1, 0, 0, 0, 0, 0, 0]);
  assert.equal(byHeading[2]?.mean, null);
});

/** The readings are those of A 1, B 4, C −1, D 1, E 0.5: the fit must give them back. */
test('coefficients refitted from the last observations, beside the card’s', () => {
  const sin = (x: number) => Math.sin((x * Math.PI) / 180);
  const drifted = (x: number) => 1 + 4 * sin(x) - sin(x + 90) + sin(2 * x) + 0.5 * sin(2 * x + 90);
  const wobble = [0.1, -0.1, -0.1, 0.1];
  const entries = book([
    ...Array.from({ length: 10 }, (_, i) => seen(i, i * 36, 20)),
    ...Array.from({ length: 24 }, (_, i) => seen(10 + i / 2, i * 15, drifted(i * 15) + (wobble[i % 4] as number))),
  ]);
  const { refit, advice } = judge(entries);
  assert.equal(refit.count, 24);
  const B = refit.coefficients.find(({ name }) => name === 'B');
  assertClose(B?.found ?? NaN, 4, 0.05);
  assertClose(B?.card ?? NaN, 2, 1e-6);
  assert.equal(B?.significant, true);
  assert.equal(refit.coefficients.find(({ name }) => name === 'D')?.significant, false);
  assert.ok(advice.some(({ code, values }) => code === 'coefficient-changed' && values['name'] === 'B'));
});

test('headings all alike determine no coefficients, and nothing breaks', () => {
  const { refit } = judge(book([seen(0, 90, 3), seen(1, 90, 3.1), seen(2, 90, 2.9)]));
  assert.deepEqual(refit.coefficients.map(({ found }) => found), [null, null, null, null, null]);
  assert.deepEqual(judge([]).comparisons, []);
});

test('re-adjust: more than 2° on three of the last five, not on two', () => {
  const within = book([seen(0, 0, 0), seen(1, 0, 2.1), seen(2, 0, -2.1), seen(3, 0, 2), seen(4, 0, 0)]);
  assert.ok(!codes(judge(within).advice).includes('card-differs'));
  const beyond = book([seen(0, 0, 0), seen(1, 0, 2.1), seen(2, 0, -2.1), seen(3, 0, 2.2), seen(4, 0, 0)]);
  const told = judge(beyond).advice.find(({ code }) => code === 'card-differs');
  assert.deepEqual([told?.values['count'], told?.values['of'], told?.level], ['3', '5', 'warning']);
  assert.equal(told?.source, 'solas-figures');
  const strict = { differing: { degrees: 1, times: 1, of: 5 } };
  assert.ok(codes(judge(within, { settings: strict }).advice).includes('card-differs'));
});

test('overdue watch check: four hours after the last, an overcast watch counts as kept', () => {
  const overcast: EntryDraft = { kind: 'no-observation', instant: at(1), remarks: 'overcast' };
  const check = (hours: number) => codes(judge(book([seen(0, 0, 0), overcast]), { now: new Date(at(1).getTime() + hours * 3_600_000) }).advice);
  assert.ok(!check(4).includes('watch-check-overdue'));
  assert.ok(check(4.1).includes('watch-check-overdue'));
  assert.ok(codes(judge([]).advice).includes('no-check-yet'));
});

test('two years after the adjustment: overdue without a kept record, a note with one; unknown where none is entered', () => {
  const years = (count: number) => judge(book([event(-365.25 * count, 'adjustment'), seen(29, 0, 0)])).advice;
  assert.ok(!codes(years(1.9)).includes('adjustment-overdue'));
  assert.ok(codes(years(2.1)).includes('adjustment-overdue'));
  const kept = judge(book([event(-800, 'adjustment'), ...Array.from({ length: 25 }, (_, i) => seen(5 + i, 0, 0))])).advice;
  assert.equal(kept.find(({ code }) => code === 'adjustment-two-years')?.level, 'note');
  assert.ok(codes(judge(book([seen(29, 0, 0)])).advice).includes('adjustment-unknown'));
});

test('after dock the card is to be checked anew; a gyro error above 3° is said; two deviations beyond 5° are said', () => {
  const entries = book([event(0, 'dock'), seen(1, 0, 5.5, { errorGyro: 3.2 }), seen(2, 0, -5.2)]);
  const advice = judge(entries).advice;
  assert.ok(codes(advice).includes('checks-after-event'));
  assert.ok(codes(advice).includes('deviation-beyond-limit'));
  assert.ok(codes(advice).includes('gyro-error-large'));
  assert.equal(usualAdviceSettings.largestDeviation, 5);
});

test('deviations beyond the limit are said without any card to hold them against', () => {
  const entries = book([seen(1, 0, 9), seen(2, 90, 8)]).map((entry) => ({ ...entry, cardDeviation: null, difference: null }));
  const judged = judge(entries, { card: null });
  assert.deepEqual(judged.comparisons, []);
  assert.ok(codes(judged.advice).includes('deviation-beyond-limit'));
});

// With no card entered yet, as after an adjustment, the book said that nothing had been observed, and went on asking for ever.
test('observations after an event count without a card to hold them against', () => {
  const swung = (count: number) => judge(book([event(0, 'adjustment'), ...Array.from({ length: count }, (_, i) => seen(1 + i, 45 * i, 1))]).map((entry) => ({ ...entry, cardDeviation: null, difference: null })), { card: null }).advice;
  assert.equal(swung(7).find(({ code }) => code === 'checks-after-event')?.values['count'], '7');
  assert.ok(!codes(swung(8)).includes('checks-after-event'));
});

test('a card of a year and more is old where a rule says so, and where none does it is not', () => {
  const dated = book([seen(1, 0, 0, { cardDate: '2025-10-20' }), { kind: 'event', instant: at(2), event: 'cargo' }]);
  const told = (cardMonths: number | null) => judge(dated, { settings: { cardMonths } }).advice.find(({ code }) => code === 'card-old');
  // From 20 October 2025 to 25 November 2026: thirteen months.
  assert.deepEqual(told(12)?.values, { day: '2025-10-20', months: '12' });
  assert.equal(told(14), undefined);
  assert.equal(told(null), undefined);
  assert.ok(!codes(judge(book([seen(1, 0, 0)]), { settings: { cardMonths: 12 } }).advice).includes('card-old'), 'no date, no age');
});

test('a heading on which the card says nothing is not compared', () => {
  // A pole of 1.2 times the force that directs the needle: by hand, two magnetic headings show 000 and none shows 090.
  const beyond = { kind: 'exact', coefficients: { A: 0, B: 1.2, C: 0, D: 0, E: 0 } } as const;
  const entries = book([seen(0, 90, 3), seen(1, 0, 1)]);
  assert.deepEqual(judge(entries, { card: beyond }).comparisons, []);
});

test('a swing out of the book is a plain list', () => {
  const entries = book([seen(0, 45, 2, { doubt: 0.4 }), seen(1, 90, 3)]);
  assert.deepEqual(swingFromRecord(observedDeviations(entries, 'standard')), [
    { number: 1, heading: 45, deviation: 2, sigma: 0.4 },
    { number: 2, heading: 90, deviation: 3 },
  ]);
});

test('marks: earlier than the last, the clock set back, ahead of the clock, entered twice', () => {
  const [first, second] = book([seen(1, 0, 0), seen(0, 0, 0)]) as [RecordEntry, RecordEntry];
  assert.deepEqual(entryMarks(second, first), ['earlier', 'clock-back']);
  assert.deepEqual(entryMarks(first, null), []);
  assert.deepEqual(entryMarks({ ...first, written: '2026-10-27T00:00:00Z', instant: '2026-10-27T00:06:00Z' }, null), ['ahead']);
  assert.deepEqual(entryMarks({ ...first, number: 2 }, first), ['duplicate']);
});

test('a bad instant is refused by name', () => {
  assert.throws(() => judge([], { now: new Date(NaN) }), /RangeError: now/);
});
