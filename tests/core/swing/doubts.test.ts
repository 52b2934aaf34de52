import assert from 'node:assert/strict';
import test from 'node:test';
import { Body, Equator, Horizon, Observer } from 'astronomy-engine';
import geomagnetism from 'geomagnetism';
import { adjustedSwing, swungStage } from '../../../core/swing/adjusted-swing.js';
import { readCorrectors } from '../../../core/deviation/corrector-states.js';
import { swing } from '../../../core/swing/swing.js';
import type { Swing, SwungRow } from '../../../core/swing/swing.js';
import type { SwingRow } from '../../../core/swing/swing-row.js';
import type { SwingSettings } from '../../../core/swing/swing-settings.js';
import { steeringSwing } from '../../../core/swing/steering-swing.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { deviationOf, evenly, ship, shown, turned } from './synthetic-ship.js';

const RAD = Math.PI / 180;
const names = ['A', 'B', 'C', 'D', 'E'] as const;
const codes = ({ cautions }: Pick<Swing, 'cautions'>): string[] => cautions.map(({ code }) => code);

function rowOf(row: SwingRow, settings: SwingSettings = {}): Extract<SwungRow, { ok: true }> {
  const [found] = swing([row], settings).rows;
  assert.ok(found?.ok, JSON.stringify(found));
  return found;
}
const reasonOf = (row: SwingRow, settings: SwingSettings = {}): string | null => {
  const [found] = swing([row], settings).rows;
  return found?.ok === false ? found.reason : null;
};

/** Unknowns of a square system by elimination, the columns of its inverse too. */
function inverse(matrix: readonly (readonly number[])[]): number[][] {
  const size = matrix.length;
  const work = matrix.map((row, i) => [...row, ...Array.from({ length: size }, (_, j) => (i === j ? 1 : 0))]);
  for (let i = 0; i < size; i++) {
    const best = work.slice(i).reduce((found, row, k) => (Math.abs(row[i] ?? 0) > Math.abs(work[found]?.[i] ?? 0) ? i + k : found), i);
    [work[i], work[best]] = [work[best] as number[], work[i] as number[]];
    const pivot = work[i] as number[];
    const by = pivot[i] as number;
    for (let j = 0; j < 2 * size; j++) pivot[j] = (pivot[j] as number) / by;
    for (let k = 0; k < size; k++) {
      if (k === i) continue;
      const row = work[k] as number[];
      const times = row[i] as number;
      for (let j = 0; j < 2 * size; j++) row[j] = (row[j] as number) - times * (pivot[j] as number);
    }
  }
  return work.map((row) => row.slice(size));
}

interface Plain { readonly heading: number; readonly value: number; readonly sigma: number; readonly group: number | null }

/** A to E and the constants of groups by the normal equations, weights 1/σ² about their mean; and their standard errors. */
function leastSquares(readings: readonly Plain[], groups: number): { estimate: number[]; errors: number[]; scatter: number } {
  const mean = readings.reduce((all, { sigma }) => all + sigma ** -2, 0) / readings.length;
  const rows = readings.map(({ heading, group }) => {
    const h = heading * RAD;
    return [1, Math.sin(h), Math.cos(h), Math.sin(2 * h), Math.cos(2 * h), ...Array.from({ length: groups }, (_, k) => (group === k ? 1 : 0))];
  });
  const weights = readings.map(({ sigma }) => sigma ** -2 / mean);
  const size = 5 + groups;
  const normal = Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => rows.reduce((all, row, k) => all + (weights[k] ?? 0) * (row[i] ?? 0) * (row[j] ?? 0), 0)));
  const right = Array.from({ length: size }, (_, i) => rows.reduce((all, row, k) => all + (weights[k] ?? 0) * (row[i] ?? 0) * (readings[k]?.value ?? 0), 0));
  const cofactors = inverse(normal);
  const estimate = cofactors.map((row) => row.reduce((all, cofactor, j) => all + cofactor * (right[j] ?? 0), 0));
  const squares = rows.reduce((all, row, k) => all + (weights[k] ?? 0) * ((readings[k]?.value ?? 0) - row.reduce((sum, part, j) => sum + part * (estimate[j] ?? 0), 0)) ** 2, 0);
  const variance = squares / (readings.length - size);
  return { estimate, errors: cofactors.map((row, i) => Math.sqrt((row[i] ?? 0) * variance)), scatter: Math.sqrt(variance) };
}

/** Reading errors that look like some, degrees: nothing hangs on what they are. */
const noise = (k: number): number => 0.6 * Math.sin(12.9898 * (k + 1) * (k + 2));

test('mixed methods of unequal doubt, their constants unknown: A to E, standard errors and scatter are those of the normal equations', () => {
  const gyroConstant = -17.3;
  const rows: SwingRow[] = [];
  const plain: Plain[] = [];
  evenly(24).forEach((heading, k) => {
    const value = deviationOf(ship, heading) + noise(k);
    const struck = k === 7 || k === 14;
    const sigma = [0.3, 0.5, 0.9, 2][k % 4] as number;
    const group = k % 3 === 0 ? null : k % 3 === 1 ? 0 : 1;
    if (group === null) rows.push({ method: 'deviation', heading, deviation: value, sigma, struck });
    // The mean of the bearings, near to 200°, less the magnetic bearing is the constant of the object.
    else if (group === 0) rows.push({ method: 'unknown-object', heading, bearing: turned(200 - value), sigma, struck });
    else rows.push({ method: 'gyro', heading, reading: turned(heading + value + gyroConstant), sigma, struck });
    if (!struck) plain.push({ heading, value: group === 1 ? value + gyroConstant : group === 0 ? value + 1 : value, sigma, group });
  });
  const found = swing(rows, { model: 'approximate' });
  const expected = leastSquares(plain, 2);
  names.forEach((name, i) => {
    assertClose(found.fit.coefficients[name] ?? NaN, expected.estimate[i] ?? 0, 1e-7, name);
    assertClose(found.fit.standardErrors[name] ?? NaN, expected.errors[i] ?? 0, 1e-7, `doubt of ${name}`);
  });
  assertClose(found.fit.scatter ?? NaN, expected.scatter, 1e-7);
  assert.deepEqual([found.fit.degreesOfFreedom, found.fit.basis], [plain.length - 7, 'scatter']);
  assert.deepEqual(found.fit.curve.covariance?.map((row) => row.length), [5, 5, 5, 5, 5]);
});

test('as many readings as unknowns leave no freedom: the coefficients stand, their doubts are not told', () => {
  const rows = evenly(6).map((heading, k): SwingRow =>
    k === 0 ? { method: 'deviation', heading, deviation: deviationOf(ship, heading) } : { method: 'unknown-object', heading, bearing: turned(30 - deviationOf(ship, heading)) });
  const { fit } = swing(rows, { model: 'approximate' });
  names.forEach((name) => assertClose(fit.coefficients[name] ?? NaN, ship[name], 1e-7, name));
  assert.deepEqual(names.map((name) => fit.standardErrors[name]), [null, null, null, null, null]);
  assert.deepEqual([fit.scatter, fit.degreesOfFreedom, fit.basis, fit.curve.covariance], [null, 0, null, null]);
});

test('an unknown object and a gyro of unknown error together, and nothing else: B to E of both, A lost', () => {
  const rows = evenly(24).map((heading, k): SwingRow =>
    k % 3 ? { method: 'unknown-object', heading, bearing: shown(181, heading) } : { method: 'gyro', heading, reading: turned(heading + deviationOf(ship, heading) + 177) });
  for (const model of ['approximate', 'auto'] as const) {
    const found = swing(rows, { model });
    assert.equal(found.constantLost, true);
    assert.equal(found.fit.coefficients.A, null);
    for (const name of ['B', 'C', 'D', 'E'] as const) assertClose(found.fit.coefficients[name] ?? NaN, ship[name], 1e-7, name);
    assert.equal(found.card, null);
  }
  const taken = swing(rows, { model: 'approximate', constant: ship.A });
  assert.ok(taken.card?.kind === 'approximate');
  assert.equal(taken.card.coefficients.A, ship.A);
  taken.rows.forEach((row) => assertClose(row.ok ? row.deviation : NaN, deviationOf(ship, row.ok ? row.heading : 0), 1e-7));
});

test('all struck, or none to tell: still deviations, and no curve', () => {
  const rows = evenly(8).map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(10, heading), struck: true }));
  const found = swing(rows);
  assert.ok(found.rows.every((row) => row.ok && row.struck && row.residual === null));
  assert.deepEqual([found.fit.determined, found.card, found.advice], [[], null, []]);
  // Bearings that cancel have no mean: each is then its own.
  const opposite = swing([0, 180].map((bearing): SwingRow => ({ method: 'unknown-object', heading: bearing, bearing })));
  assert.ok(opposite.rows.every((row) => row.ok));
});

// Half a degree for a bearing, 0.7° for two compasses, 0.4° for two heads: common practice, no source.
test('each method has its usual doubt, one given for the method prevails over it, and one of the row over both', () => {
  const place = { latitude: 0, longitude: -30 };
  const settings: SwingSettings = { object: { bearing: 80, by: 'magnetic' }, transit: { kind: 'charted', bearing: 30 }, variation: 0, place };
  const rows: readonly (readonly [SwingRow, number])[] = [
    [{ method: 'deviation', heading: 0, deviation: 1 }, 0.5],
    [{ method: 'known-object', heading: 0, bearing: 80 }, 0.5],
    [{ method: 'unknown-object', heading: 0, bearing: 80 }, 0.5],
    [{ method: 'transit', heading: 0, bearing: 30 }, 0.5],
    [{ method: 'shore-compass', heading: 0, bearing: 30, shoreBearing: 210 }, 0.7],
    [{ method: 'gyro', heading: 0, reading: 0 }, 0.4],
  ];
  for (const [row, usual] of rows) {
    assertClose(rowOf(row, settings).sigma, usual, 1e-12, row.method);
    assertClose(rowOf(row, { ...settings, sigmas: { [row.method]: 0.21 } }).sigma, 0.21, 1e-12, row.method);
    assertClose(rowOf({ ...row, sigma: 0.17 }, { ...settings, sigmas: { [row.method]: 0.21 }, circle: { radius: 300, distance: 9000 } }).sigma, 0.17, 1e-12, row.method);
  }
});

// A sine of largest value arcsin(r/d) has that over √2 as its root mean square.
test('not knowing the way she turns, the parallax is in the doubt of an object’s bearing, and of nothing else', () => {
  const circle = { radius: 300, distance: 9000 };
  const settings: SwingSettings = { object: { bearing: 80, by: 'magnetic' }, transit: { kind: 'charted', bearing: 30 }, variation: 0, circle };
  const parallax = Math.asin(300 / 9000) / RAD / Math.SQRT2;
  for (const method of ['known-object', 'unknown-object', 'transit'] as const) {
    const row: SwingRow = { method, heading: 20, bearing: 80 };
    const near = method !== 'transit';
    assertClose(rowOf(row, settings).sigma, near ? Math.hypot(0.5, parallax) : 0.5, 1e-12, method);
    assertClose(rowOf(row, { ...settings, circle: { ...circle, turning: 'port' } }).sigma, 0.5, 1e-12, method);
    assert.equal(codes(swing([row], settings)).includes('parallax'), near, method);
    assert.ok(!codes(swing([row], { ...settings, circle: { ...circle, turning: 'starboard' } })).includes('parallax'));
    // 0.1° is lost in the readings: common practice, no source.
    assert.ok(!codes(swing([row], { ...settings, circle: { radius: 15, distance: 9000 } })).includes('parallax'));
  }
  assertClose(rowOf({ method: 'transit', heading: 20, bearing: 29 }, { ...settings, circle: { ...circle, turning: 'port' } }).magneticBearing ?? NaN, 30, 1e-12, 'a line is not turned by the circle');
});

/** Altitude of the Sun's centre, degrees, by the second ephemeris. */
function sunAltitude(latitude: number, longitude: number, instant: Date): number {
  const observer = new Observer(latitude, longitude, 0);
  const { ra, dec } = Equator(Body.Sun, instant, observer, true, true);
  return Horizon(instant, observer, ra, dec).altitude;
}

// Tilt of 0.3° and 2 s of time by common practice, no source; dZ/dt = (sin L − cos L tan h cos Z) × 15.04″ a second, Pub. 9.
test('the doubt of the Sun grows with altitude and with the way the bearing moves; too low and too high it is none at all', () => {
  const place = { latitude: -12, longitude: 179.9 };
  let [low, high, read, set] = [0, 0, 0, 0];
  for (let minute = 0; minute < 790; minute += 7) {
    const instant = new Date(Date.UTC(2026, 1, 10, 17, minute));
    const altitude = sunAltitude(place.latitude, place.longitude, instant);
    const row: SwingRow = { method: 'sun', heading: 0, bearing: 100, instant };
    if (Math.abs(altitude + 2) < 0.05 || Math.abs(altitude - 80) < 0.05) continue;
    const reason = altitude < -2 ? 'sun-below-horizon' : altitude > 80 ? 'sun-too-high' : null;
    assert.equal(reasonOf(row, { place, variation: 0 }), reason, `${altitude}`);
    if (reason !== null) {
      if (altitude < 0) low += 1;
      else high += 1;
      continue;
    }
    const found = rowOf(row, { place, variation: 0 });
    assertClose(found.altitude ?? NaN, altitude, 0.01);
    const [L, h, Z] = [place.latitude * RAD, altitude * RAD, (found.magneticBearing ?? NaN) * RAD];
    const drift = 2 * (15.041 / 3600) * (Math.sin(L) - Math.cos(L) * Math.tan(h) * Math.cos(Z));
    assertClose(found.sigma, Math.hypot(0.5, 0.3 * Math.tan(Math.max(0, h)), drift), 2e-3, `at ${altitude}°`);
    assertClose(rowOf({ ...row, sigma: 0.2 }, { place, variation: 0 }).sigma, 0.2, 1e-12);
    // Below the horizon nothing is left of the tilt.
    if (altitude < 0) {
      set += 1;
      assertClose(rowOf(row, { place, variation: 0, sigmas: { sun: 1e-6 } }).sigma / Math.abs(drift), 1, 0.02, 'drift');
    }
    assertClose(rowOf(row, { place, variation: 0, sigmas: { sun: 5 } }).sigma, Math.hypot(5, 0.3 * Math.tan(Math.max(0, h)), drift), 2e-3);
    assert.equal(codes(swing([row], { place, variation: 0 })).includes('sun-high'), altitude > 30, `${altitude}`);
    read += 1;
  }
  assert.ok(low > 2 && high > 2 && read > 60 && set > 0, `${low} ${high} ${read} ${set}`);
  assert.equal(reasonOf({ method: 'sun', heading: 0, bearing: 100, instant: new Date('2026-06-21T12:00:00Z') }, { place: { latitude: 90, longitude: 0 }, variation: 0 }), 'no-azimuth');
});

test('the highest Sun is told of those that count', () => {
  const place = { latitude: 20, longitude: -30 };
  const at = (hour: number, struck = false): SwingRow => ({ method: 'sun', heading: 15 * hour, bearing: 100, instant: new Date(Date.UTC(2026, 2, 20, hour)), struck });
  const altitude = sunAltitude(20, -30, new Date(Date.UTC(2026, 2, 20, 11)));
  const told = swing([at(9), at(11), at(13, true)], { place, variation: 0 }).cautions.find(({ code }) => code === 'sun-high')?.values['altitude'];
  assert.ok(typeof told === 'object');
  assertClose(told.value, altitude, 0.01);
});

// WMM2025, 1 σ of declination √(0.26² + (5417/H)²), H in nT; variation and H here 10.8° W and 24,000 nT or so, so the doubt lies just above 0.26° (published error model).
test('what all rows share, the variation, is told apart: of the model where it is taken, a quarter degree where it is given, none where it is not needed', () => {
  const place = { latitude: 50, longitude: -30 };
  const instant = new Date('2026-06-01T12:00:00Z');
  const sun: SwingRow = { method: 'sun', heading: 0, bearing: 180, instant };
  const gyro: SwingRow = { method: 'gyro', heading: 0, reading: 0 };
  const object: SwingRow = { method: 'known-object', heading: 0, bearing: 80 };
  const transit: SwingRow = { method: 'transit', heading: 0, bearing: 80 };
  const common: SwingSettings = { place, instant, gyroError: 0, transit: { kind: 'charted', bearing: 70 } };
  const doubt = (rows: readonly SwingRow[], settings: SwingSettings = {}): number => swing(rows, { ...common, ...settings }).commonDoubt;
  const byTrue: SwingSettings = { object: { bearing: 70, by: 'true' } };
  const byMagnetic: SwingSettings = { object: { bearing: 80, by: 'magnetic' } };
  const given: SwingRow = { method: 'deviation', heading: 90, deviation: 1 };
  for (const rows of [[sun], [gyro], [transit], [given, transit, given]]) {
    assertClose(doubt(rows), 0.34, 0.07);
    assert.equal(doubt(rows, { variation: -12 }), 0.25);
  }
  assertClose(doubt([object], byTrue), 0.34, 0.07);
  assert.equal(doubt([sun], { instant: undefined }) > 0.26, true, 'the Sun’s own time will do');
  for (const [rows, settings] of [[[object], byMagnetic], [[given], {}], [[{ ...gyro, headingBy: 'magnetic' } as SwingRow], {}], [[{ method: 'shore-compass', heading: 0, bearing: 1, shoreBearing: 181 } as SwingRow], byTrue], [[{ method: 'unknown-object', heading: 0, bearing: 1 } as SwingRow], byTrue]] as const) {
    assert.equal(doubt(rows, settings), 0, rows[0]?.method);
  }
  // Where A is lost nothing shared by all rows can be in it.
  const unknown = Array.from({ length: 8 }, (_, place): SwingRow => ({ method: 'gyro', heading: 45 * place, reading: 45 * place + 2 }));
  assert.equal(doubt(unknown, { gyroError: undefined }), 0);
});

test('the model’s variation is taken at the place and time, a transit’s front mark or mark standing for the place', () => {
  const instant = new Date('2027-01-01T00:00:00Z');
  const [east, west] = [{ latitude: -40, longitude: -170 }, { latitude: -40, longitude: 60 }];
  const line: SwingRow = { method: 'transit', heading: 0, bearing: 80 };
  const variationOf = (settings: SwingSettings, row: SwingRow = line): number => {
    const found = rowOf(row, settings);
    return 90 - (found.magneticBearing ?? NaN);
  };
  const charted: SwingSettings = { transit: { kind: 'charted', bearing: 90 }, instant };
  const there = variationOf({ ...charted, place: east });
  const here = variationOf({ ...charted, place: west });
  // The second library, geomagnetism, with the same model.
  for (const [found, { latitude, longitude }] of [[there, east], [here, west]] as const) assertClose(found, geomagnetism.model(instant).point([latitude, longitude]).decl, 0.01);
  assert.ok(there > 10 && here < -10, `${there} and ${here}`);
  // The same object by true bearing takes the same variation, from the marks of a transit where no place is given.
  const object: SwingRow = { method: 'known-object', heading: 0, bearing: 80 };
  const known: SwingSettings = { object: { bearing: 90, by: 'true' }, instant };
  assertClose(variationOf({ ...known, place: east }, object), there, 1e-9);
  assertClose(variationOf({ ...known, transit: { kind: 'two-marks', front: east, rear: west } }, object), there, 1e-9);
  assertClose(variationOf({ ...known, transit: { kind: 'one-mark', mark: west } }, object), here, 1e-9);
  assertClose(variationOf({ ...known, place: west, transit: { kind: 'one-mark', mark: east } }, object), here, 1e-9);
  assert.equal(reasonOf(object, { ...known, transit: { kind: 'charted', bearing: 90 } }), 'no-variation');
  assert.equal(reasonOf(object, { object: { bearing: 90, by: 'true' }, place: east }), 'no-variation', 'no time');
  // A given one prevails, and the swing's instant over the Sun's own.
  assertClose(variationOf({ ...known, place: east, variation: 5 }, object), 5, 1e-9);
  const sun: SwingRow = { method: 'sun', heading: 0, bearing: 100, instant: new Date('2029-06-01T23:00:00Z') };
  const [own, late, early] = [{}, { instant: sun.instant }, { instant: new Date('2020-01-01T00:00:00Z') }].map((more) => rowOf(sun, { place: east, ...more }).magneticBearing ?? NaN) as [number, number, number];
  assert.equal(own, late);
  assert.notEqual(own, early);
});

test('what is wanting is named', () => {
  const bearing = 80;
  const instant = new Date('2027-01-01T12:00:00Z');
  const place = { latitude: 10, longitude: 0 };
  const mark = { latitude: 11, longitude: 0 };
  const cases: readonly (readonly [SwingRow, SwingSettings, string])[] = [
    [{ method: 'known-object', heading: 0, bearing }, {}, 'no-object'],
    [{ method: 'known-object', heading: 0, bearing }, { object: { bearing, by: 'true' } }, 'no-variation'],
    [{ method: 'transit', heading: 0, bearing }, { variation: 0 }, 'no-transit'],
    [{ method: 'transit', heading: 0, bearing }, { transit: { kind: 'charted', bearing } }, 'no-variation'],
    [{ method: 'transit', heading: 0, bearing }, { variation: 0, transit: { kind: 'one-mark', mark } }, 'no-place'],
    [{ method: 'transit', heading: 0, bearing }, { variation: 0, place, transit: { kind: 'one-mark', mark: place } }, 'transit-undetermined'],
    [{ method: 'sun', heading: 0, bearing, instant }, { place: { latitude: 10, longitude: 0 }, instant: new Date('1950-01-01T00:00:00Z') }, 'no-variation'],
    [{ method: 'sun', heading: 0, bearing, instant }, { variation: 0 }, 'no-place'],
    [{ method: 'gyro', heading: 0, reading: 0 }, { gyroError: 1 }, 'no-variation'],
    [{ method: 'gyro', headingBy: 'gyro', heading: 0, reading: 0 }, { gyroError: 1 }, 'no-variation'],
    [{ method: 'transit', headingBy: 'gyro', heading: 0, bearing }, { variation: 0, gyroError: null, transit: { kind: 'charted', bearing } }, 'gyro-error-needed'],
  ];
  for (const [row, settings, reason] of cases) assert.equal(reasonOf(row, settings), reason, JSON.stringify([row, settings]));
  assert.equal(rowOf({ method: 'transit', heading: 0, bearing: 1 }, { variation: 3, place, transit: { kind: 'one-mark', mark } }).deviation, -4, 'due north of it: 000 − 3 − 1');
  // Of unknown error, null or left out alike, the gyro still tells all but A.
  for (const settings of [{ gyroError: null }, {}]) {
    const found = rowOf({ method: 'gyro', heading: 10, reading: 12 }, settings);
    assert.equal(found.constant, 'gyro');
  }
});

// Differences by hand.
test('readings on both sides of north, in every method, are taken round it', () => {
  const cases: readonly (readonly [SwingRow, SwingSettings, heading: number, deviation: number, magneticBearing: number | null])[] = [
    [{ method: 'deviation', heading: -10, deviation: -180 }, {}, 350, 180, null],
    [{ method: 'known-object', heading: 370, bearing: 358 }, { object: { bearing: 2, by: 'magnetic' } }, 10, 4, 2],
    [{ method: 'known-object', heading: 10, bearing: 2 }, { object: { bearing: 1, by: 'true' }, variation: 5 }, 10, -6, 356],
    [{ method: 'transit', heading: -0.5, bearing: 1 }, { transit: { kind: 'charted', bearing: 359 }, variation: -3 }, 359.5, 1, 2],
    [{ method: 'shore-compass', heading: 0, bearing: 359, shoreBearing: 181 }, {}, 0, 2, 1],
    [{ method: 'shore-compass', heading: 0, bearing: 359, shoreBearing: 181 }, { shoreError: -4 }, 0, -2, 357],
    [{ method: 'gyro', heading: 359, reading: 1 }, { gyroError: 1, variation: -2 }, 359, 5, null],
    [{ method: 'gyro', heading: -1, headingBy: 'magnetic', reading: 2 }, {}, 2, -3, null],
    [{ method: 'gyro', heading: 358, headingBy: 'gyro', reading: 2 }, { gyroError: -1, variation: 3 }, 2, -8, null],
    [{ method: 'gyro', heading: 2, reading: 360 }, { gyroError: 0, variation: 0 }, 2, -2, null],
    // Steadied by magnetic 001° on an object of 355° that reads 358°: 3° W of deviation, head 004° by compass.
    [{ method: 'known-object', heading: 1, headingBy: 'magnetic', bearing: 358 }, { object: { bearing: 355, by: 'magnetic' } }, 4, -3, 355],
    // By gyro 359°, its error 2° E, variation 4° W: 005° magnetic.
    [{ method: 'transit', heading: 359, headingBy: 'gyro', bearing: 350 }, { transit: { kind: 'charted', bearing: 356 }, gyroError: 2, variation: -4 }, 355, 10, 0],
  ];
  for (const [row, settings, heading, deviation, magneticBearing] of cases) {
    const found = rowOf(row, settings);
    assertClose(found.heading, heading, 1e-9, JSON.stringify(row));
    assertClose(found.deviation, deviation, 1e-9, JSON.stringify(row));
    assert.equal(found.magneticBearing, magneticBearing, JSON.stringify(row));
  }
});

// The ship on her circle by coordinates.
function bearingOnCircle(objectBearing: number, distance: number, radius: number, magneticHead: number, side: 1 | -1): number {
  const toCentre = (magneticHead + 90 * side) * RAD;
  const [north, east] = [distance * Math.cos(objectBearing * RAD) + radius * Math.cos(toCentre), distance * Math.sin(objectBearing * RAD) + radius * Math.sin(toCentre)];
  return turned(Math.atan2(east, north) / RAD);
}

test('the parallax is allowed for across north and with heads by magnetic reckoning too', () => {
  for (const headingBy of ['compass', 'magnetic'] as const) {
    const rows = evenly(16).map((compass): SwingRow => {
      const head = compass + deviationOf(ship, compass);
      return { method: 'known-object', heading: headingBy === 'compass' ? compass : head, headingBy, bearing: turned(bearingOnCircle(0.5, 6000, 500, head, -1) - deviationOf(ship, compass)) };
    });
    const found = swing(rows, { object: { bearing: 0.5, by: 'magnetic' }, circle: { radius: 500, distance: 6000, turning: 'port' } });
    found.rows.forEach((row, k) => {
      assert.ok(row.ok);
      assertSameDirection(row.heading, evenly(16)[k] ?? 0, 1e-6);
      assertClose(row.deviation, deviationOf(ship, evenly(16)[k] ?? 0), 1e-6);
      assert.ok((row.magneticBearing ?? NaN) >= 0 && (row.magneticBearing ?? NaN) < 360);
    });
  }
});

test('an A taken from elsewhere is told with its value, and stands in the card, as a sine where the card is exact', () => {
  const rows = evenly(16).map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(80, heading) }));
  const lost = swing(rows);
  assert.deepEqual(lost.cautions.filter(({ code }) => code.startsWith('constant')), [{ code: 'constant-lost', level: 'warning', values: {} }]);
  assert.deepEqual(swing(rows, { constant: null }).cautions, lost.cautions);
  const taken = swing(rows, { constant: 1.5, model: 'exact' });
  assert.deepEqual(taken.cautions.filter(({ code }) => code.startsWith('constant')), [{ code: 'constant-taken', level: 'note', values: { constant: { value: 1.5, unit: 'error' } } }]);
  assert.ok(taken.card?.kind === 'exact');
  assertClose(taken.card.coefficients.A, Math.sin(1.5 * RAD), 1e-12);
  // A large one is no work for magnets and is said to be so, taken or found.
  const alignment = (found: Swing) => found.advice.find(({ code }) => code === 'alignment.check')?.values['A'];
  for (const constant of [4, -4]) assert.deepEqual(alignment(swing(rows, { constant })), { value: constant, unit: 'error' });
  assert.equal(alignment(lost), undefined);
  const crooked = evenly(16).map((heading): SwingRow => ({ method: 'deviation', heading, deviation: 5 + deviationOf(ship, heading) }));
  const found = alignment(swing(crooked, { model: 'approximate', constant: -4 }));
  assert.ok(typeof found === 'object');
  assertClose(found.value, 5 + ship.A, 1e-9, 'the one found prevails');
});

test('a known bearing that is struck out tells no A', () => {
  const rows = evenly(16).map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(80, heading) }));
  const known: SwingRow = { method: 'known-object', heading: 10, bearing: shown(80, 10) };
  const object = { bearing: 80, by: 'magnetic' } as const;
  assert.equal(swing([...rows, known], { object }).constantLost, false);
  const found = swing([...rows, { ...known, struck: true }], { object });
  assert.deepEqual([found.constantLost, found.fit.coefficients.A], [true, null]);
});

test('headings that do not tell a coefficient give no card and no advice: cardinal ones D, intercardinal ones E, one line of them B or C', () => {
  const on = (headings: readonly number[]): Swing => swing(headings.flatMap((heading) => [0, 1, 2].map((): SwingRow => ({ method: 'deviation', heading, deviation: deviationOf(ship, heading) }))), { model: 'approximate', constant: 0 });
  for (const [headings, lacks] of [[[0, 90, 180, 270], 'D'], [[45, 135, 225, 315], 'E'], [[0, 180], 'B'], [[90, 270], 'C']] as const) {
    const found = on(headings);
    assert.equal(found.fit.coefficients[lacks], null, lacks);
    assert.deepEqual([found.card, found.check, found.advice], [null, null, []], lacks);
  }
});

test('the limit asked for is the one checked', () => {
  const rows = evenly(8).map((heading): SwingRow => ({ method: 'deviation', heading, deviation: 0.8 * deviationOf(ship, heading), steering: heading - 3 }));
  const limit = { code: 'own', largest: 2, inclusive: true, months: null, source: 'practice' } as const;
  assert.deepEqual([swing(rows).check?.withinLimit, swing(rows, { limit }).check?.withinLimit], [true, false]);
  const steering = (settings: SwingSettings) => steeringSwing(rows, swing(rows, settings), settings);
  assert.equal(steering({ limit })?.check?.withinLimit, false);
  for (const model of ['exact', 'approximate'] as const) assert.equal(steering({ model })?.model, model);
  assert.ok(steeringSwing(rows.slice(0, 6), swing(rows.slice(0, 6)), { planned: 8 })?.cautions.some(({ code }) => code === 'headings-missing'));
});

test('what is lost besides A is told while headings are missing; A alone has its own sentence', () => {
  const unknown = evenly(8).map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(100, heading) }));
  const half = [0, 20, 40, 60, 80, 100, 120, 140].map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(100, heading) }));
  const lost = swing(half).cautions.find(({ code }) => code === 'not-determined')?.values['coefficients'];
  assert.ok(typeof lost === 'string' && lost.startsWith('A '), lost as string);
  assert.ok(!codes(swing(unknown)).includes('not-determined'));
  // Seven of eight give B to E, and there is a curve: the fit's own words count again.
  const seven = codes(swing(unknown.slice(0, 7), { planned: 8 }));
  assert.ok(seven.includes('too-few-to-find-slips') && seven.includes('headings-missing'), seven.join());
});

test('one near object among rows of other kinds is enough for its parallax; what else there is to say stays beside a swing named the wrong way', () => {
  const rows = evenly(8).map((heading): SwingRow => ({ method: 'deviation', heading, deviation: -deviationOf(ship, heading) }));
  const mixed: SwingRow[] = [...rows, { method: 'known-object', heading: 10, bearing: 80 }];
  assert.ok(codes(swing(mixed, { object: { bearing: 80, by: 'magnetic' }, circle: { radius: 300, distance: 9000 } })).includes('parallax'));
  assert.ok(!codes(swing(rows, { circle: { radius: 300, distance: 9000 } })).includes('parallax'));
  const told = codes(swing(rows.slice(0, 7), { planned: 8, oldCard: { kind: 'approximate', coefficients: ship } }));
  assert.equal(told[0], 'reversed-naming');
  assert.ok(told.includes('headings-missing'));
});

test('half the compass gives neither card nor advice', () => {
  const rows = [0, 20, 40, 60, 80, 100, 120, 140].map((heading): SwingRow => ({ method: 'deviation', heading, deviation: deviationOf(ship, heading) }));
  const found = swing(rows);
  assert.deepEqual([found.card, found.check, found.advice], [null, null, []]);
});

test('two headings taken twice are told one by one, three in one sentence; half degrees are written so', () => {
  const rows = (repeated: readonly number[]): SwingRow[] => [...evenly(16), ...repeated].map((heading) => ({ method: 'deviation', heading, deviation: deviationOf(ship, heading) }));
  assert.deepEqual(codes(swing(rows([22.5, 90]))).filter((code) => code.startsWith('heading')), ['heading-twice', 'heading-twice']);
  const three = swing(rows([22.5, 90, 180]));
  assert.deepEqual(codes(three).filter((code) => code.startsWith('heading')), ['headings-twice']);
  assert.equal(three.cautions.find(({ code }) => code === 'headings-twice')?.values['headings'], '022.5°, 090°, 180°');
});

test('a heading planned is there when something was taken within half the step of it', () => {
  const base = evenly(16).map((heading) => heading + (heading === 90 ? 11.2 : heading === 180 ? -11.2 : 0));
  const rows = (headings: readonly number[]): SwingRow[] => headings.map((heading) => ({ method: 'deviation', heading, deviation: deviationOf(ship, heading) }));
  assert.ok(!codes(swing(rows(base), { planned: 16 })).includes('headings-missing'));
  const off = evenly(16).map((heading) => heading + (heading === 0 ? -11.3 : 0));
  const told = swing(rows(off), { planned: 16 }).cautions.find(({ code }) => code === 'headings-missing');
  assert.equal(told?.values['headings'], '000°');
  assert.ok(!codes(swing(rows(off))).includes('headings-missing'), 'none was planned');
  assert.ok(!codes(swing([], { planned: 16 })).includes('headings-missing'), 'nothing was begun');
});

// Independent doubts in squares; a comparison of two heads 0.4°, common practice, no source.
test('the steering compass bears the doubt of the standard’s row and of the comparison', () => {
  const rows: SwingRow[] = [{ method: 'deviation', heading: 358, deviation: 3, sigma: 0.3, steering: 359 }, { method: 'deviation', heading: 90, deviation: 3, sigma: 0.3, steering: 95, struck: true }];
  const sigmas = (settings: SwingSettings): number[] => (steeringSwing(rows, swing(rows, settings), settings)?.rows ?? []).map((row) => (row.ok ? row.sigma : NaN));
  assertClose(sigmas({})[0] ?? NaN, 0.5, 1e-12);
  assertClose(sigmas({ sigmas: { gyro: 1.6 } })[0] ?? NaN, Math.hypot(0.3, 1.6), 1e-12);
  const found = steeringSwing(rows, swing(rows), {});
  assert.deepEqual(found?.rows.map((row) => row.ok && row.struck), [false, true]);
  assert.deepEqual(found?.rows.map((row) => row.ok && [row.heading, row.deviation]), [[359, 2], [95, -2]]);
  // A row without a deviation of the standard has none for the steering compass either.
  const blind: SwingRow[] = [{ method: 'known-object', heading: 0, bearing: 80, steering: 3 }, ...rows];
  assert.deepEqual(steeringSwing(blind, swing(blind), {})?.places, [1, 2]);
});

test('a swing that leaves more deviation than it found says how much, for each compass; what it has to say besides it keeps', () => {
  const none = { standard: readCorrectors(null), steering: readCorrectors(null) };
  const stage = (scale: number, steeringScale: number) => swungStage(evenly(8).map((heading): SwingRow => {
    const deviation = scale * deviationOf(ship, heading);
    return { method: 'deviation', heading, deviation, steering: heading + deviation - steeringScale * deviationOf(ship, heading) };
  }), none, { model: 'approximate' });
  const largest = (of: Pick<Swing, 'check'> | null | undefined): number => of?.check?.largest.deviation ?? NaN;
  const [found, left] = [stage(1, -2), stage(-1.5, 1)];
  const whole = adjustedSwing(found, left, true);
  assert.deepEqual(whole?.cautions[0], { code: 'larger-than-found', level: 'warning', values: { found: { value: largest(found), unit: 'error' }, left: { value: largest(left), unit: 'error' } } });
  assert.deepEqual(whole.cautions.slice(1), left.cautions);
  assert.ok(Math.abs(largest(left)) > Math.abs(largest(found)));
  assert.deepEqual(whole.steering?.cautions, left.steering?.cautions);
  const turnedRound = adjustedSwing(left, found, true);
  assert.deepEqual(turnedRound?.cautions, found.cautions);
  assert.equal(turnedRound?.steering?.cautions[0]?.code, 'larger-than-found');
  assert.deepEqual(turnedRound.steering.fit, found.steering?.fit);
  for (const [before, after] of [[stage(-1, 1), stage(1.5, 1)], [stage(1, 1), stage(1.5, 1)], [stage(-1, 1), stage(-1.5, 1)]] as const) {
    assert.equal(adjustedSwing(before, after, true)?.cautions[0]?.code, 'larger-than-found');
    assert.notEqual(adjustedSwing(after, before, true)?.cautions[0]?.code, 'larger-than-found');
  }
  // Where one of the rounds has no card there is nothing to compare.
  const begun = swungStage([{ method: 'deviation', heading: 0, deviation: 0 }], none);
  for (const [before, after] of [[begun, left], [left, begun]] as const) assert.ok(!adjustedSwing(before, after, true)?.cautions.some(({ code }) => code === 'larger-than-found'));
  assert.deepEqual(adjustedSwing(null, left, false), { ...left, stage: 'single', found: null });
  assert.ok(!adjustedSwing(null, left, true)?.cautions.some(({ code }) => code === 'larger-than-found'));
  assert.ok(!adjustedSwing(found, found, true)?.cautions.some(({ code }) => code === 'larger-than-found'), 'as much is not more');
});

test('every bad row and setting is named', () => {
  const good: SwingRow = { method: 'deviation', heading: 0, deviation: 1 };
  const rows: readonly (readonly [SwingRow, RegExp])[] = [
    [{ ...good, headingBy: 'steam' as 'gyro' }, /rows\[0\]\.headingBy/],
    [{ ...good, sigma: 181 }, /rows\[0\]\.sigma/],
    [{ ...good, steering: Infinity }, /rows\[0\]\.steering/],
    [{ method: 'gyro', heading: 0, reading: 361 }, /rows\[0\]\.reading/],
    [{ method: 'shore-compass', heading: 0, bearing: 0, shoreBearing: -1 }, /rows\[0\]\.shoreBearing/],
    [{ method: 'shore-compass', heading: 0, bearing: -1, shoreBearing: 0 }, /rows\[0\]\.bearing/],
    [{ method: 'transit', heading: 0, bearing: 361 }, /rows\[0\]\.bearing/],
    [{ method: 'sun', heading: 0, bearing: -1, instant: new Date(0) }, /rows\[0\]\.bearing/],
  ];
  for (const [row, message] of rows) assert.throws(() => swing([row]), { name: 'RangeError', message }, JSON.stringify(row));
  const settings: readonly (readonly [SwingSettings, RegExp])[] = [
    [{ variation: 181 }, /^variation/],
    [{ place: { latitude: 91, longitude: 0 } }, /^place\.latitude/],
    [{ instant: new Date(NaN) }, /^instant/],
    [{ gyroError: -181 }, /^gyroError/],
    [{ shoreError: 181 }, /^shoreError/],
    [{ constant: -181 }, /^constant/],
    [{ sigmas: { sun: 0 } }, /^sigmas\.sun/],
    [{ circle: { radius: -1, distance: 500 } }, /^circle\.radius/],
    [{ circle: { radius: NaN, distance: 500 } }, /^circle\.radius/],
    [{ circle: { radius: 0, distance: 0 } }, /^circle\.distance/],
    [{ circle: { radius: 1, distance: NaN } }, /^circle\.distance/],
    [{ circle: { radius: 1, distance: Infinity } }, /^circle\.distance/],
    [{ circle: { radius: 100, distance: 200 } }, /^circle\.distance/],
    [{ object: { bearing: -1, by: 'true' } }, /^object\.bearing/],
  ];
  for (const [setting, message] of settings) assert.throws(() => swing([good], setting), { name: 'RangeError', message }, JSON.stringify(setting));
  for (const bearing of [0, 360]) {
    assert.ok(rowOf({ method: 'shore-compass', heading: 0, bearing, shoreBearing: bearing }).ok);
    assert.ok(rowOf({ method: 'known-object', heading: 0, bearing }, { object: { bearing, by: 'magnetic' } }).ok);
    assert.ok(rowOf({ method: 'gyro', heading: 0, reading: bearing }).ok);
  }
  assert.ok(swing([good], { circle: { radius: 100, distance: 201 }, gyroError: null, constant: null }).fit);
});
