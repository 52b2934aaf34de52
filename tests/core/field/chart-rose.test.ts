import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { chartedVariation } from '../../../core/field/charted-variation.js';
import { magneticField } from '../../../core/field/magnetic-field.js';
import { modelAgainstRose } from '../../../core/field/model-against-rose.js';
import { parseChartRose } from '../../../core/field/parse-chart-rose.js';
import { assertClose } from '../../support/assert-close.js';

const newYear = (year: number) => new Date(Date.UTC(year, 0, 1));

test("3°45'W (1988) decreasing 6' annually is 3°27'W in 1991 (textbook example)", () => {
  const reading = parseChartRose("3°45'W (1988) decreasing 6' annually");
  assert.ok(reading.ok);
  assertClose(chartedVariation(reading.value, newYear(1991)), -(3 + 27 / 60), 1e-12);
});

test('a decrease passes through zero and goes on (arithmetic)', () => {
  const rose = { variation: -0.2, year: 2020, annualChangeMinutes: 6 };
  assertClose(chartedVariation(rose, newYear(2022)), 0, 1e-12);
  assertClose(chartedVariation(rose, newYear(2024)), 0.2, 1e-12);
  assertClose(chartedVariation(rose, newYear(2018)), -0.4, 1e-12);
});

test('years count with decimals and by their own length: the middle of leap year 2024 is 2 July 00:00', () => {
  const rose = { variation: 0, year: 2024, annualChangeMinutes: 60 };
  assertClose(chartedVariation(rose, new Date('2024-07-02T00:00:00Z')), 0.5, 1e-12);
  assertClose(chartedVariation({ ...rose, year: 2023.5 }, newYear(2024)), 0.5, 1e-12);
});

test('the change goes on across south: 179°59′E changing 20′E is 179°41′W after a year', () => {
  const rose = { variation: 179 + 59 / 60, year: 2020, annualChangeMinutes: 20 };
  assertClose(chartedVariation(rose, newYear(2021)), -(179 + 41 / 60), 1e-9);
});

test('bad figures of a rose are refused by name', () => {
  const rose = { variation: 1, year: 2020, annualChangeMinutes: 5 };
  const refuses = (name: string, bad: object, instant = newYear(2021)) =>
    assert.throws(() => chartedVariation({ ...rose, ...bad }, instant), { name: 'RangeError', message: new RegExp(`^${name}: `) });
  refuses('variation', { variation: 181 });
  refuses('year', { year: 15 });
  refuses('annualChangeMinutes', { annualChangeMinutes: NaN });
  refuses('instant', {}, new Date(NaN));
});

// The forms are those printed on charts and in textbooks (common practice, no source).
const forms: readonly (readonly [string, number, number, number])[] = [
  ['4°15′W 2015 (8′E)', -4.25, 2015, 8],
  ["VAR 3°05'E (2018) Annual Decrease 6'", 3 + 5 / 60, 2018, -6],
  ["10° 20' W (1999) decreasing about 8' annually", -(10 + 20 / 60), 1999, 8],
  ["10° 20' W (1999) increasing about 8' annually", -(10 + 20 / 60), 1999, -8],
  ['4° 15’ W 2015 (8’ E)', -4.25, 2015, 8],
  ['4º15´W2015(8´E)', -4.25, 2015, 8],
  ["W 4°15' 2015 8'E", -4.25, 2015, 8],
  ["4,25°W (2015) (8,5'E)", -4.25, 2015, 8.5],
  ["12°30'.5E 2010 (7'.5W)", 12 + 30.5 / 60, 2010, -7.5],
  ["0° 2015 (8'W)", 0, 2015, -8],
  ["4°15'W (8'E) 2015", -4.25, 2015, 8],
  ["2015: 4°15'W (8'E)", -4.25, 2015, 8],
  ['4°15′W 2015.5 (8′E)', -4.25, 2015.5, 8],
  ["Magnetic Variation 4°15' West (2015), annual change 8' East", -4.25, 2015, 8],
  ["4°15'W 2015 (no change)", -4.25, 2015, 0],
  ["4°15'W 2015 (0')", -4.25, 2015, 0],
  ["4°15'W 2015 (0°08'E)", -4.25, 2015, 8],
  ["4°15'W 2015 (8'30\"E)", -4.25, 2015, 8.5],
  ['2°W 2015 (0.1°E)', -2, 2015, 6],
  ['4 deg 15 min W 2015 (8 min E)', -4.25, 2015, 8],
  ["4°15'W 2015 increasing 8' W", -4.25, 2015, -8],
  ["Var 4°05'W (1995), Ann. change 7'E", -(4 + 5 / 60), 1995, 7],
  ["23°15'W (2010), annual rate of change 9'W", -23.25, 2010, -9],
  ["Var. 14°W in 1980, decreasing 5' yearly", -14, 1980, 5],
  ["2°10'W 2020 (9'E/yr)", -(2 + 10 / 60), 2020, 9],
  ["Magnetic 12°05'E 2014 (0')", 12 + 5 / 60, 2014, 0],
  ["Decl. mag. 3°05'W 2012 (7'E)", -(3 + 5 / 60), 2012, 7],
  ["Déclinaison: 1°20'W 2012 (8'E)", -(1 + 20 / 60), 2012, 8],
  ["4°15'W Jan 2015 (8'E)", -4.25, 2015, 8],
  ["July 2015: 4°15'W (8'E)", -4.25, 2015.5, 8],
  ["Var 4°15'W (Oct. 2015) increasing 8'", -4.25, 2015.75, -8],
  ["4°15'W 01/2015 (8'E)", -4.25, 2015, 8],
  ["Variation 7/2015 4°15'W 8'E", -4.25, 2015.5, 8],
  ["4¼°W 2015 (8½'E)", -4.25, 2015, 8.5],
  ["Var 12 ¾° E 2015, decreasing ½' annually", 12.75, 2015, -0.5],
  ["¼°E 1988 ¾'W", 0.25, 1988, -0.75],
  ["4°15'W 2015·5 (8'E)", -4.25, 2015.5, 8],
  ["4°15'·5W 2015 (8'·5E)", -(4 + 15.5 / 60), 2015, 8.5],
  // Easterly and less is westerly, whichever the sign was meant to be; beside a variation by its sign it goes as that does.
  ["4°15'E 2015 (−8')", 4.25, 2015, -8],
  ["4°15'E 2015 (+8')", 4.25, 2015, 8],
  ["−4.25° 2015 (−8')", -4.25, 2015, -8],
  ["-4°15' 2015 (+8')", -4.25, 2015, 8],
];

for (const [text, variation, year, minutes] of forms) {
  test(`${text} reads as ${variation.toFixed(4)}°, ${year}, ${minutes}′ a year`, () => {
    const reading = parseChartRose(text);
    assert.ok(reading.ok, JSON.stringify(reading));
    assertClose(reading.value.variation, variation, 1e-12);
    assert.equal(reading.value.year, year);
    assertClose(reading.value.annualChangeMinutes, minutes, 1e-9);
  });
}

const refusals: readonly (readonly [string, string])[] = [
  ['', 'empty'],
  ['   ', 'empty'],
  ['charted', 'year-missing'],
  ["4°15'W (8'E)", 'year-missing'],
  ["4°15'W 2015", 'change-missing'],
  ["4°15' 2015 (8'E)", 'letter-missing'],
  ["4°15'W 2015 (8')", 'letter-missing'],
  ["0° 2015 decreasing 8'", 'letter-missing'],
  ["4°75'W 2015 (8'E)", 'minutes-over-59'],
  ["190°W 2015 (8'E)", 'out-of-range'],
  ["4°15'W 2015 (900'E)", 'out-of-range'],
  ["4°15'O 2015 (8'E)", 'letter-o'],
  ["4°15'W 2015 (8'O)", 'letter-o'],
  ["4°15'W 2015 increasing 8' E", 'sign-and-letter'],
  ["4°15'W 2015 2018 (8'E)", 'not-understood'],
  ["Local magnetic anomaly 4°15'W 2015 (8'E)", 'not-understood'],
  // 8′ less of it, or 8′ to the west: one is the other's opposite.
  ["4°15'W 2015 (-8')", 'letter-missing'],
  ["4°15'W 2015 (+8')", 'letter-missing'],
  ["4°15'E 2015 (-8'W)", 'sign-and-letter'],
  ["4°15'E 2015 decreasing -8'", 'sign-and-letter'],
  ["4°15'E 2015 - 8'", 'not-understood'],
  ["4°15'W 13/2015 (8'E)", 'not-understood'],
  ["4°15'W 01/02/2015 (8'E)", 'not-understood'],
  ["4°15'W 15 Jan 2015 (8'E)", 'not-understood'],
  ["4¼5°W 2015 (8'E)", 'letter-missing'],
  ["4.5¼°W 2015 (8'E)", 'two-decimal-marks'],
];

for (const [text, refusal] of refusals) {
  test(`"${text}" is refused: ${refusal}`, () => {
    assert.deepEqual(parseChartRose(text), { ok: false, refusal });
  });
}

test('a rose written out reads back as it was', () => {
  const minutesOf = fc.integer({ min: -180 * 60 + 1, max: 180 * 60 });
  fc.assert(
    fc.property(minutesOf, fc.integer({ min: 1900, max: 2100 }), fc.integer({ min: -300, max: 300 }), (minutes, year, change) => {
      const letter = (value: number) => (value < 0 ? 'W' : 'E');
      const size = Math.abs(minutes);
      const text = `${Math.floor(size / 60)}°${String(size % 60).padStart(2, '0')}′${letter(minutes)} ${year} (${Math.abs(change)}′${letter(change)})`;
      const reading = parseChartRose(text);
      assert.ok(reading.ok, text);
      assertClose(reading.value.variation, minutes / 60, 1e-9);
      assert.equal(reading.value.year, year);
      assert.equal(reading.value.annualChangeMinutes, change + 0);
    }),
  );
});

test('no text throws, and what is understood is in range', () => {
  const pieces = fc.constantFrom(' ', '°', "'", '′', '"', '(', ')', ',', '.', '-', 'E', 'W', 'O', '4', '15', '2015', '8', 'VAR', 'decreasing', 'annually', 'no', '¼', '·', '+', 'Jan', '7/');
  const near = fc.array(pieces, { maxLength: 14 }).map((parts) => parts.join(''));
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary' }), near), (text) => {
      const reading = parseChartRose(text);
      if (!reading.ok) return;
      const { variation, year, annualChangeMinutes } = reading.value;
      assert.ok(Math.abs(variation) <= 180 && year >= 1500 && year < 2200 && Math.abs(annualChangeMinutes) <= 600, text);
    }),
    { numRuns: 5000 },
  );
});

test('model against rose: both values, the difference the short way round, the age of the rose', () => {
  const instant = newYear(2027);
  const place = { latitude: -33.4, longitude: 151.2 };
  const { variation, uncertainty } = magneticField(place, instant);
  const rose = { variation: 12, year: 2017, annualChangeMinutes: 3 };
  const compared = modelAgainstRose(rose, place, instant);
  assertClose(compared.charted, 12.5, 1e-12);
  assert.equal(compared.modelled, variation);
  assert.equal(compared.uncertainty, uncertainty.variation);
  assertClose(compared.difference as number, (variation as number) - 12.5, 1e-12);
  assert.equal(compared.years, 10);
  const opposite = modelAgainstRose({ ...rose, variation: -179.5, annualChangeMinutes: 0 }, place, instant);
  assert.ok(Math.abs(opposite.difference as number) <= 180);
});
