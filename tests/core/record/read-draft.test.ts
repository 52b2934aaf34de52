import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { prepareEntry } from '../../../core/record/prepare-entry.js';
import { readDraft } from '../../../core/record/read-draft.js';

const base = { kind: 'observation', instant: '2026-11-26T08:52:40Z', bearing: 10 };

function problems(draft: unknown): string[] {
  const reading = readDraft(draft);
  return reading.ok ? [] : reading.problems.map(({ field, problem }) => `${field}: ${problem}`);
}

const refused: readonly [string, Record<string, unknown>, readonly string[]][] = [
  ['no kind', { kind: null }, ['kind: missing']],
  ['a kind nobody knows', { kind: 'rumour' }, ['kind: not-a-choice']],
  ['31 February', { instant: '2026-02-31T00:00:00Z' }, ['instant: not-an-instant']],
  ['a date that is none', { instant: new Date(NaN) }, ['instant: not-an-instant']],
  ['latitude 91', { latitude: 91 }, ['latitude: out-of-range']],
  ['a bearing that is NaN', { bearing: NaN }, ['bearing: not-a-number']],
  ['a bearing as text', { bearing: '045' }, ['bearing: not-a-number']],
  ['latitude 91 south', { latitude: -91 }, ['latitude: out-of-range']],
  ['half a number of an entry', { kind: 'correction', corrects: 1.5, remarks: 'x' }, ['corrects: out-of-range']],
  ['the entry before the first', { kind: 'correction', corrects: 0, remarks: 'x' }, ['corrects: out-of-range']],
  ['the number of an entry as text', { kind: 'correction', corrects: '1', remarks: 'x' }, ['corrects: out-of-range']],
  ['a number for a text', { remarks: 5 }, ['remarks: not-a-text']],
  ['a number for a day', { cardDate: 20260101 }, ['cardDate: not-a-day']],
  ['31 February for a card', { cardDate: '2026-02-31' }, ['cardDate: not-a-day']],
  ['no time at all', { instant: null }, ['instant: missing']],
  ['an empty kind', { kind: '' }, ['kind: missing']],
  ['a correction that puts an event nobody named in the place', { kind: 'correction', corrects: 1, remarks: 'x', replacement: 'event' }, ['event: missing']],
  ['a correction that puts an observation of nothing in the place', { kind: 'correction', corrects: 1, remarks: 'x', replacement: 'observation', bearing: null }, ['bearing: nothing-observed']],
  ['a field nobody knows', { colour: 'red' }, ['colour: unknown-field']],
  ['remarks without end', { remarks: 'x'.repeat(2001) }, ['remarks: too-long']],
  ['nothing observed', { bearing: null }, ['bearing: nothing-observed']],
  ['an event without its kind', { kind: 'event' }, ['event: missing']],
  ['an observation with an event', { event: 'dock' }, ['event: does-not-belong']],
  ['a correction of nothing, without a reason', { kind: 'correction' }, ['corrects: missing', 'remarks: missing']],
  ['an observation that corrects', { corrects: 1 }, ['corrects: does-not-belong']],
];

for (const [what, change, expected] of refused) {
  test(`refused: ${what}`, () => assert.deepEqual(problems({ ...base, ...change }), expected));
}

// The book once kept a variation of 1.248° E as 1.25 and showed 1.3° E, where the sight had said 1.2° E.
test('what is kept to a hundredth and shown to a tenth is rounded once', () => {
  const kept = (value: number): number => {
    const reading = readDraft({ ...base, variation: value, deviation: -value, doubt: value, trueBearing: value });
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const { variation, deviation, doubt, trueBearing } = reading.fields;
    assert.equal(deviation, -(variation ?? NaN));
    assert.equal(doubt, variation);
    assert.equal(trueBearing, variation);
    return variation ?? NaN;
  };
  assert.equal(kept(1.248), 1.24);
  assert.equal(kept(1.25), 1.25);
  assert.equal(kept(1.252), 1.25);
  assert.equal(kept(1.2461), 1.24);
  assert.equal(kept(1.244), 1.24);
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 179.9, noNaN: true }), (value) => {
      const book = kept(value);
      // Tenths by the decimal text of the number, half away from zero: toFixed is exact on the binary value, and no random double lies on a half.
      assert.equal(Math.round(book * 10 + 1e-9), Math.round(value * 10));
      assert.ok(Math.abs(book - value) < 0.01);
    }),
  );
});

test('what is no record of fields has no kind; what a record inherits is not its own', () => {
  for (const draft of [null, undefined, 5, 'observation', true, [], [base], () => base]) assert.deepEqual(readDraft(draft), { ok: false, problems: [{ field: 'kind', problem: 'missing' }] }, String(draft));
  assert.deepEqual(problems(Object.create(base)), ['kind: missing', 'instant: missing']);
});

test('ends of lines of every kind are one, an empty choice is none, and a day is written one way', () => {
  const reading = readDraft({ ...base, remarks: 'a\rb\r\nc\u2028d\re', watch: '', cardDate: '1 Mar 2025', target: undefined });
  assert.ok(reading.ok);
  assert.deepEqual([reading.fields.remarks, reading.fields.watch, reading.fields.cardDate, reading.fields.target], ['a\nb\nc\nd\ne', null, '2025-03-01', '']);
});

/**
 * Controls (C0 but tab and line ends, DEL, C1), the mark of byte order and the two noncharacters of the first plane by
 * the Unicode Standard, 23.1 and 23.7 to 23.8; surrogates alone, of which RFC 8259, 8.2 warns. From memory.
 */
test('what no page shows is taken out of a text, and what any does stays', () => {
  const kept = (remarks: string): string => {
    const reading = readDraft({ ...base, remarks });
    assert.ok(reading.ok);
    return reading.fields.remarks;
  };
  const lineEnds = new Set([0x0a, 0x0d, 0x85]);
  for (let code = 0; code <= 0x9f; code++) {
    if (code >= 0x20 && code < 0x7f) continue;
    const character = String.fromCharCode(code);
    assert.equal(kept(`a${character}b`), code === 0x09 ? 'a\tb' : lineEnds.has(code) ? 'a\nb' : 'ab', code.toString(16));
  }
  for (const character of ['\ufeff', '\ufffe', '\uffff', '\ud800', '\udbff', '\udc00', '\udfff']) assert.equal(kept(`a${character}b`), 'ab', character.charCodeAt(0).toString(16));
  assert.equal(kept('\ud83c\udf0a\ud83c\udf0a'), '\ud83c\udf0a\ud83c\udf0a');
  assert.equal(kept('\ud83c\ud83c\udf0a\udf0a'), '\ud83c\udf0a');
  assert.equal(kept('\u2028a\u2029b\u2028 '), 'a\nb');
  for (const plain of ['a b', 'é', '南', '°', "'", '\u00a0a'.trim(), '\ufffd', '\ud7ff', '\ue000']) assert.equal(kept(plain), plain);
});

test('anything at all is read or refused, never thrown, and reading twice changes nothing', () => {
  fc.assert(
    fc.property(fc.oneof(fc.anything(), fc.record({ ...Object.fromEntries(Object.keys(base).map((key) => [key, fc.anything()])), remarks: fc.string({ unit: 'binary' }) })), (draft) => {
      const reading = readDraft(draft);
      if (reading.ok) assert.deepEqual(readDraft(reading.fields), reading);
    }),
  );
});

test('an instant is one of 1900 to 2100, however it is given; a leap second is the first of the next day', () => {
  const kept = (instant: unknown): string | null => {
    const reading = readDraft({ ...base, instant });
    return reading.ok ? reading.fields.instant : null;
  };
  for (const [given, expected] of [['1900-01-01T00:00:00Z', '1900-01-01T00:00:00Z'], ['2100-12-31T23:59:59Z', '2100-12-31T23:59:59Z'], ['2016-12-31T23:59:60Z', '2017-01-01T00:00:00Z'], ['2026-11-26 0905', '2026-11-26T09:05:00Z']] as const) {
    assert.equal(kept(given), expected);
    if (!given.includes(':60')) assert.equal(kept(new Date(expected)), expected);
  }
  for (const given of ['1899-12-31T23:59:59Z', '2101-01-01T00:00:00Z', '2150-06-01T00:00:00Z', '2100-12-31T23:59:60Z', '2026-11-26', '2026-11-26T24:00:00Z', new Date('2101-01-01T00:00:00Z'), new Date('1899-12-31T23:59:59Z'), 0, null]) {
    assert.equal(kept(given), null, String(given));
  }
});

test('"no observation (overcast)" is an entry', () => assert.deepEqual(problems({ kind: 'no-observation', instant: new Date(0), remarks: 'overcast' }), []));

test('360 is written 000, 180 W is written 180 E, and decimals are those of the book', () => {
  const reading = readDraft({ ...base, headingGyro: 359.999, longitude: -180, latitude: -1e-9, heel: -0.04 });
  assert.ok(reading.ok);
  const { headingGyro, longitude, latitude, heel } = reading.fields;
  assert.deepEqual([headingGyro, longitude, latitude, heel].map((value) => Object.is(value, -0) ? 'minus zero' : value), [0, 180, 0, 0]);
});

/**
 * One look at three compasses. The sums by hand: gyro bearing 061.0, true 060.0: gyro error 1 W;
 * gyro head 101, true head 100. Standard 085: error 15 E, variation 12 E: deviation 3 E.
 * Steering 090: error 10 E. Across the seam: true head 002, standard 355: error 7 E.
 */
test('one look: gyro error, then the error of each compass, the deviation and the difference from the card', () => {
  const look = { ...base, bearingBy: 'gyro', bearing: 61, trueBearing: 60, headingGyro: 101, headingStandard: 85, headingSteering: 90, variation: 12 };
  const card = { kind: 'approximate', coefficients: { A: 1, B: 0, C: 0, D: 0, E: 0 } } as const;
  const reading = prepareEntry(look, { card });
  assert.ok(reading.ok);
  const { errorGyro, errorStandard, errorSteering, deviationOf, deviation, cardDeviation, difference } = reading.fields;
  assert.deepEqual([errorGyro, errorStandard, errorSteering], [-1, 15, 10]);
  assert.deepEqual([deviationOf, deviation, cardDeviation, difference], ['standard', 3, 1, 2]);
  const seam = prepareEntry({ ...look, headingGyro: 3, headingStandard: 355 });
  assert.ok(seam.ok);
  assert.equal(seam.fields.errorStandard, 7);
});

test('a bearing without the true one, or without its compass, gives no error', () => {
  for (const look of [{ bearingBy: 'standard', bearing: 10 }, { bearing: 10, trueBearing: 20 }]) {
    const reading = prepareEntry({ ...base, ...look });
    assert.ok(reading.ok);
    const { errorGyro, errorStandard, errorSteering, deviation } = reading.fields;
    assert.deepEqual([errorGyro, errorStandard, errorSteering, deviation], [null, null, null, null]);
  }
});

test('what the draft brings itself stays', () => {
  const reading = prepareEntry({ ...base, bearingBy: 'standard', trueBearing: 20, errorStandard: 9.5, deviation: 1, cardDeviation: 0, difference: 1 });
  assert.ok(reading.ok);
  assert.deepEqual([reading.fields.errorStandard, reading.fields.deviation, reading.fields.difference], [9.5, 1, 1]);
  const card = { kind: 'approximate', coefficients: { A: 2, B: 0, C: 0, D: 0, E: 0 } } as const;
  const carded = prepareEntry({ ...base, headingStandard: 40, deviation: 3, cardDeviation: 0.5 }, { card });
  assert.ok(carded.ok);
  assert.deepEqual([carded.fields.cardDeviation, carded.fields.difference], [0.5, 2.5]);
});

test('a draft that cannot be read is refused before any card is looked up', () => {
  const card = { kind: 'approximate', coefficients: { A: 2, B: 0, C: 0, D: 0, E: 0 } } as const;
  assert.deepEqual(prepareEntry({ ...base, latitude: 91 }, { card }), { ok: false, problems: [{ field: 'latitude', problem: 'out-of-range' }] });
});
