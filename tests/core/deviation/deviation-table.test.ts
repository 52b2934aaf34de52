import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { deviationTable } from '../../../core/deviation/deviation-table.js';
import { readDeviationCard } from '../../../core/deviation/read-deviation-card.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';

test('a table passes through its rows, whatever their number, order and spacing', () => {
  const rows = fc.uniqueArray(fc.record({ heading: fc.integer({ min: 0, max: 359 }), deviation: fc.double({ min: -30, max: 30, noNaN: true }) }), {
    minLength: 1,
    maxLength: 36,
    selector: ({ heading }) => heading,
  });
  fc.assert(
    fc.property(rows, (given) => {
      const table = deviationTable(given);
      for (const { heading, deviation } of given) {
        assertClose(table.at(heading), deviation, 1e-12);
        assertClose(table.at(heading - 360), deviation, 1e-12);
      }
    }),
  );
});

test('one row is a constant; two rows swing between their values', () => {
  const one = deviationTable([{ heading: 40, deviation: -3 }]);
  assert.equal(one.at(211), -3);
  assert.equal(one.toCompass(7), 10);
  const two = deviationTable([{ heading: 0, deviation: 4 }, { heading: 180, deviation: -4 }]);
  // By symmetry the closed spline crosses zero midway.
  assertClose(two.at(90), 0, 1e-12);
  assertClose(two.at(270), 0, 1e-12);
});

test('the seam at north is smooth: value and slope agree on both sides', () => {
  const table = deviationTable([5, 65, 125, 185, 245, 305].map((heading, i) => ({ heading, deviation: [2, 5, 1, -3, -4, 0][i] as number })));
  const slope = (from: number): number => (table.at(from + 1e-4) - table.at(from)) / 1e-4;
  assertClose(table.at(359.999999), table.at(0), 1e-5);
  assertClose(slope(359.9998), slope(0), 1e-4);
});

test('sines are followed: a table of B 5° and D 3° every 15° gives the curve between within 0.01°', () => {
  const curve = (heading: number): number => 5 * Math.sin((heading * Math.PI) / 180) + 3 * Math.sin((heading * Math.PI) / 90);
  const table = deviationTable(Array.from({ length: 24 }, (_, i) => ({ heading: i * 15, deviation: curve(i * 15) })));
  for (let heading = 0; heading < 360; heading += 0.5) assertClose(table.at(heading), curve(heading), 0.01);
});

test('0 and 360 with the same deviation are one row; with different ones they are refused', () => {
  const rows = [{ heading: 0, deviation: 2 }, { heading: 120, deviation: 1 }, { heading: 240, deviation: 0 }];
  assert.equal(deviationTable([...rows, { heading: 360, deviation: 2 }]).at(60), deviationTable(rows).at(60));
  assert.equal(deviationTable([...rows, { heading: 359.9999999, deviation: 2 }]).at(60), deviationTable(rows).at(60));
  assert.throws(() => deviationTable([...rows, { heading: 360, deviation: 2.5 }]), /RangeError: rows: heading 0 is given twice/);
  assert.throws(() => deviationTable([...rows, { heading: 359.9999999, deviation: 5 }]), /RangeError: rows/);
});

test('a table of a book converts both ways across north', () => {
  const table = deviationTable([0, 45, 90, 135, 180, 225, 270, 315].map((heading, i) => ({ heading, deviation: [10.5, 20, 11.5, -1.2, -5.5, -8, -12.5, -6.8][i] as number })));
  for (const heading of [0, 0.001, 11, 180, 349, 359.999]) {
    assertSameDirection(table.toCompass(table.toMagnetic(heading)) ?? NaN, heading, 1e-9);
  }
  assertSameDirection(table.toMagnetic(355), 355 + table.at(355), 1e-12);
});

test('a table too steep for one answer says so and lists them', () => {
  const table = deviationTable([{ heading: 80, deviation: 20 }, { heading: 100, deviation: -20 }, { heading: 190, deviation: 0 }, { heading: 0, deviation: 0 }]);
  assert.equal(table.toCompass(90), null);
  const found = table.findCompass(90);
  assert.ok(!found.determined && found.reason === 'ambiguous' && found.headings.length === 3);
});

test('bad rows are refused by name', () => {
  assert.throws(() => deviationTable([]), /RangeError: rows/);
  assert.throws(() => deviationTable([{ heading: NaN, deviation: 0 }]), /RangeError: rows\[0\]\.heading/);
  assert.throws(() => deviationTable([{ heading: 0, deviation: 181 }]), /RangeError: rows\[0\]\.deviation/);
});

test('a card from outside is read, or refused with the part that is wrong', () => {
  const rows = [{ heading: 0, deviation: 1, remark: 'lost on the way' }];
  assert.deepEqual(readDeviationCard({ kind: 'table', rows }), { ok: true, card: { kind: 'table', rows: [{ heading: 0, deviation: 1 }] } });
  const exact = { kind: 'exact', coefficients: { A: 0, B: 0.1, C: 0, D: 0, E: 0, lambda: 0.9 } };
  assert.deepEqual(readDeviationCard(JSON.parse(JSON.stringify(exact))), { ok: true, card: exact });
  const refusals: [unknown, string, string][] = [
    [null, 'not-an-object', ''],
    ['card', 'not-an-object', ''],
    [{ kind: 'curve' }, 'unknown-kind', 'kind'],
    [{ kind: 'table', rows: [] }, 'no-rows', 'rows'],
    [{ kind: 'table', rows: [{ heading: '0', deviation: 1 }] }, 'not-a-number', 'rows[0].heading'],
    [{ kind: 'table', rows: [{ heading: 0, deviation: 200 }] }, 'out-of-range', 'rows[0].deviation'],
    [{ kind: 'table', rows: [{ heading: 0, deviation: 1 }, { heading: 360, deviation: 2 }] }, 'headings-disagree', 'rows'],
    [{ kind: 'approximate', coefficients: { A: 1, B: 2, C: 3, D: 4 } }, 'not-a-number', 'coefficients.E'],
    [{ kind: 'exact', coefficients: { A: 0, B: 1e9, C: 0, D: 0, E: 0 } }, 'out-of-range', 'coefficients.B'],
  ];
  for (const [value, reason, where] of refusals) {
    assert.deepEqual(readDeviationCard(value), { ok: false, reason, where }, JSON.stringify(value));
  }
  fc.assert(fc.property(fc.jsonValue(), (value) => typeof readDeviationCard(value).ok === 'boolean'));
});
