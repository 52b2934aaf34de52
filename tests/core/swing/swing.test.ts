import assert from 'node:assert/strict';
import test from 'node:test';
import { swing } from '../../../core/swing/swing.js';
import { swingMethods } from '../../../core/swing/swing-row.js';
import type { SwingRow } from '../../../core/swing/swing-row.js';
import { assertClose } from '../../support/assert-close.js';
import { deviationOf, evenly, ship } from './synthetic-ship.js';

const given = (heading: number, deviation: number): SwingRow => ({ method: 'deviation', heading, deviation });
const codes = (cautions: readonly { code: string }[]): string[] => cautions.map(({ code }) => code);

// Handbook of Magnetic Compass Adjustment, article 501.
const printed = [10.5, 20, 11.5, -1.2, -5.5, -8, -12.5, -6.8];
const article501 = printed.map((deviation, i) => given(i * 45, deviation));

test('article 501 by the eight points: A 1.0 B 12.0 C 8.0 D 5.0 E 1.5', () => {
  const { eightPoints } = swing(article501);
  assert.ok(eightPoints.ok);
  for (const [name, value] of Object.entries({ A: 1, B: 12, C: 8, D: 5, E: 1.5 })) {
    assertClose(eightPoints.coefficients[name as 'A'], value, 0.05, name);
  }
});

test('article 501: beside it least squares, a limit of 5° exceeded, and advice from B first', () => {
  const found = swing(article501, { model: 'approximate' });
  // Least squares of eight even headings by hand: B = Σ δ sin ζ′ / 4 = (11.5 + 12.5 + (20 − 1.2 + 8 + 6.8)·√½) / 4.
  assertClose(found.fit.coefficients.B ?? NaN, (24 + 33.6 * Math.SQRT1_2) / 4, 1e-9);
  assert.equal(found.check?.withinLimit, false);
  assert.equal(found.advice[0]?.code, 'magnet.red-forward');
});

test('rows in any order, 360 for 0 and headings beyond a turn are the same swing', () => {
  const shuffled = [3, 7, 0, 5, 1, 6, 2, 4].map((i) => given(i === 0 ? 360 : i * 45 + 360 * (i % 2), printed[i] ?? 0));
  const [one, other] = [swing(article501), swing(shuffled)];
  for (const name of ['A', 'B', 'C', 'D', 'E'] as const) assertClose(other.fit.coefficients[name] ?? NaN, one.fit.coefficients[name] ?? NaN, 1e-9, name);
});

test('no rows at all: nothing is determined, and there is no card', () => {
  const found = swing([]);
  assert.deepEqual([found.fit.determined, found.card, found.rows], [[], null, []]);
  assert.deepEqual(codes(found.cautions), ['no-readings']);
});

test('a slip of 6° among 16 headings is marked beside its row; struck, it keeps its residual and the rest agree', () => {
  const rows = evenly(16).map((heading, i) => given(heading, deviationOf(ship, heading) + (i === 5 ? 6 : 0)));
  const found = swing(rows);
  assert.deepEqual(found.rows.map((row) => row.ok && row.suspect).indexOf(true), 5);
  const struck = swing(rows.map((row, i) => ({ ...row, struck: i === 5 })));
  assertClose(struck.fit.coefficients.B ?? NaN, ship.B, 1e-9);
  const row = struck.rows[5];
  assert.ok(row?.ok && row.struck);
  assertClose(row.residual ?? NaN, 6, 1e-9);
});

test('headings twice, missing and only in one half are each told', () => {
  const half = [0, 20, 40, 60, 80, 100, 120, 140, 140].map((heading) => given(heading, deviationOf(ship, heading)));
  for (const code of ['heading-twice', 'half-of-compass', 'not-determined']) assert.ok(codes(swing(half).cautions).includes(code), code);
  const found = swing(half, { planned: 8 });
  assert.deepEqual(codes(found.cautions), ['heading-twice', 'headings-missing']);
  assert.equal(found.cautions.find(({ code }) => code === 'headings-missing')?.values['headings'], '180°, 225°, 270°, 315°');
  assert.equal(found.card, null);
  assert.deepEqual(found.eightPoints, { ok: false, missing: ['NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] });
});

test('a swing begun is told of the headings to come and of nothing that follows from them; of a curve it is told all', () => {
  for (const taken of [1, 3]) assert.deepEqual(codes(swing(article501.slice(0, taken), { planned: 8 }).cautions), ['headings-missing'], String(taken));
  const five = swing(article501.slice(0, 5), { planned: 8 }).cautions;
  assert.deepEqual([codes(five), five[0]?.values['coefficients']], [['not-determined', 'headings-missing'], 'A B']);
  // With these A is lost for good: that is no matter of headings to come.
  const unknown = evenly(8).map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: 100 - deviationOf(ship, heading) }));
  assert.deepEqual(codes(swing(unknown.slice(0, 3), { planned: 8 }).cautions), ['headings-missing', 'constant-lost']);
  assert.deepEqual(codes(swing(unknown, { planned: 8 }).cautions), ['too-few-to-find-slips', 'constant-lost']);
  assert.deepEqual(codes(swing(article501.slice(0, 7), { planned: 8, model: 'approximate' }).cautions).slice(0, 2), ['too-few-readings', 'too-few-to-find-slips']);
});

test('a ship swung both ways: the eight points take the mean of each, and one sentence names the headings', () => {
  const both = printed.flatMap((deviation, i) => [given(i * 45, deviation + 0.4), given(i * 45 + 2, deviation - 0.2)]);
  const { eightPoints } = swing(both);
  assert.ok(eightPoints.ok);
  assertClose(eightPoints.deviations.NE, 20.1, 1e-12);
  const twice = evenly(8).flatMap((heading) => [given(heading, 3.1), given(heading, 3)]);
  const { cautions } = swing(twice);
  assert.deepEqual(codes(cautions).sort(), ['constant-curve', 'headings-twice']);
  assert.equal(cautions.find(({ code }) => code === 'headings-twice')?.values['headings'], '000°, 045°, 090°, 135°, 180°, 225°, 270°, 315°');
});

test('east and west exchanged throughout is suspected beside the old card', () => {
  const rows = evenly(8).map((heading) => given(heading, -deviationOf(ship, heading)));
  const oldCard = { kind: 'approximate', coefficients: ship } as const;
  assert.equal(codes(swing(rows, { oldCard }).cautions)[0], 'reversed-naming');
  assert.ok(!codes(swing(rows).cautions).includes('reversed-naming'));
});

test('one deviation on every heading is called a constant', () => {
  assert.ok(codes(swing(evenly(16).map((heading) => given(heading, 3))).cautions).includes('constant-curve'));
});

// tan δ of Archibald Smith's exact coefficients, solved for the compass heading by halving here.
const exactShip = { A: 0.01, B: 0.32, C: -0.21, D: 0.09, E: 0.01 };
function exactByCompass(compass: number): number {
  const rad = Math.PI / 180;
  const deviationAt = (magnetic: number): number => {
    const z = magnetic * rad;
    const { A, B, C, D, E } = exactShip;
    const over = A + B * Math.sin(z) + C * Math.cos(z) + D * Math.sin(2 * z) + E * Math.cos(2 * z);
    const under = 1 + B * Math.cos(z) - C * Math.sin(z) + D * Math.cos(2 * z) - E * Math.sin(2 * z);
    return Math.atan2(over, under) / rad;
  };
  let [low, high] = [compass - 90, compass + 90];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (middle - deviationAt(middle) < compass) low = middle;
    else high = middle;
  }
  return deviationAt(low);
}

test('deviations up to 25° without noise: the exact fit is taken, and gives the exact coefficients back', () => {
  const rows = evenly(24).map((heading) => given(heading, exactByCompass(heading)));
  const found = swing(rows);
  assert.equal(found.model, 'exact');
  assert.equal(found.exactBetter, true);
  for (const name of ['A', 'B', 'C', 'D', 'E'] as const) assertClose(found.fit.coefficients[name] ?? NaN, exactShip[name], 1e-6, name);
  assert.equal(swing(rows, { model: 'approximate' }).card?.kind, 'approximate');
});

test('an object of unknown bearing with large deviations: exact B to E, A lost', () => {
  const rows = evenly(24).map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: (200 - exactByCompass(heading) + 360) % 360 }));
  const found = swing(rows, { constant: (Math.asin(exactShip.A) * 180) / Math.PI });
  assert.equal(found.model, 'exact');
  assert.equal(found.fit.coefficients.A, null);
  for (const name of ['B', 'C', 'D', 'E'] as const) assertClose(found.fit.coefficients[name] ?? NaN, exactShip[name], 1e-6, name);
});

test('a bad argument is named', () => {
  assert.throws(() => swing([given(NaN, 1)]), /RangeError: rows\[0\]\.heading/);
  assert.throws(() => swing([given(0, 1), given(0, 181)]), /rows\[1\]\.deviation/);
  assert.throws(() => swing([{ method: 'sun', heading: 0, bearing: 0, instant: new Date(NaN) }]), /rows\[0\]\.instant/);
  assert.throws(() => swing([{ method: 'sextant', heading: 0 } as unknown as SwingRow]), new RegExp(`rows\\[0\\]\\.method: sextant is not one of ${swingMethods.join(', ')}`));
  assert.throws(() => swing([], { circle: { radius: 300, distance: 500 } }), /circle\.distance/);
  assert.throws(() => swing([], { gyroError: Infinity }), /gyroError/);
  assert.throws(() => swing([{ ...given(0, 1), sigma: 0 }]), /rows\[0\]\.sigma/);
  assert.throws(() => swing([], { object: { bearing: 361, by: 'true' } }), /object\.bearing/);
  assert.throws(() => swing([], { constant: 181 }), /constant/);
});

// By hand: the gyro's error goes from 1° W to 2° E while she swings, so that steadied by it on 000° again
// her head by compass is 3° the other way; without deviation the two readings on 000° lie 3° apart.
test('a gyro whose error has changed while the ship was swung shows on the heading that is read again at the end', () => {
  const rows = [0, 45, 90, 135, 180, 225, 270, 315, 360].map((heading, place): SwingRow => ({ method: 'gyro', heading, headingBy: 'gyro', reading: (heading + (3 * place) / 8 + 359) % 360 }));
  const { cautions } = swing(rows, { gyroError: -1, variation: 0 });
  const twice = cautions.find(({ code }) => code === 'heading-twice')?.values ?? {};
  const { heading, apart } = twice as Record<string, { value: number }>;
  assertClose(heading?.value ?? NaN, 0, 1e-9, 'heading');
  assertClose(apart?.value ?? NaN, 3, 1e-9, 'apart');
});

// Four headings within 3° fix no wave of the curve: the size it would have beside them says nothing.
test('a curve that is not determined is not said to be large', () => {
  const found = swing([1, 2, 3, 4].map((heading, place): SwingRow => given(heading, [0, 45, -90, -135][place] ?? 0)));
  assert.ok(!codes(found.cautions).includes('beyond-approximate'), codes(found.cautions).join());
});

// One degree of latitude is 60 sea miles, one of longitude on the equator too: distances by the sphere, from memory.
test('marks that nobody sees from the place of the swing are asked about', () => {
  const front = { latitude: 0, longitude: 9.9 };
  const rear = { latitude: 0, longitude: 10 };
  const rows = [0, 45, 90, 135].map((heading): SwingRow => ({ method: 'transit', heading, bearing: 88 }));
  const asked = (place: { latitude: number; longitude: number } | undefined, marks = { front, rear }) =>
    swing(rows, { place, variation: 2, transit: { kind: 'two-marks', ...marks } }).cautions.filter(({ code }) => code.startsWith('mark'));
  assert.deepEqual(codes(asked({ latitude: 0, longitude: 9.8 })), []);
  assert.deepEqual(codes(asked(undefined)), []);
  const [turned] = asked({ latitude: 0, longitude: -9.8 });
  assert.equal(turned?.code, 'mark-beyond-sight');
  const { distance } = turned?.values ?? {};
  assertClose(typeof distance === 'object' ? distance.value : NaN, 19.7 * 60, 3, 'distance');
  assert.deepEqual(codes(asked(undefined, { front: { latitude: 0, longitude: -9.9 }, rear })), ['mark-beyond-sight']);
  // Where no row is of the transit its marks are of no interest.
  const others: SwingRow[] = [{ method: 'deviation', heading: 0, deviation: 2 }];
  assert.deepEqual(codes(swing(others, { place: { latitude: 0, longitude: -9.8 }, transit: { kind: 'two-marks', front, rear } }).cautions).filter((code) => code.startsWith('mark')), []);
});

test('times of the Sun on either side of midnight, all on one day, are asked about', () => {
  const at = (heading: number, time: string, day = '2026-12-20'): SwingRow => ({ method: 'sun', heading, bearing: 100, instant: new Date(`${day}T${time}Z`) });
  const place = { latitude: -72.25, longitude: 179.5 };
  const asked = (rows: SwingRow[]) => swing(rows, { place, variation: 75 }).cautions.find(({ code }) => code === 'past-midnight')?.values;
  // In whatever order the headings were taken.
  assert.deepEqual(asked([at(0, '00:04:00'), at(45, '00:12:30'), at(90, '23:50:00'), at(135, '23:57:00')]), { early: '00:12:30', late: '23:50:00' });
  assert.equal(asked([at(0, '23:50:00'), at(45, '23:57:00'), at(90, '00:04:00', '2026-12-21')]), undefined);
  assert.equal(asked([at(0, '06:00:00'), at(45, '17:59:00')]), undefined);
  assert.equal(asked([at(0, '06:00:00')]), undefined);
});
