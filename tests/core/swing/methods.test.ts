import assert from 'node:assert/strict';
import test from 'node:test';
import { swing } from '../../../core/swing/swing.js';
import type { Swing } from '../../../core/swing/swing.js';
import type { SwingRow } from '../../../core/swing/swing-row.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';
import { deviationOf, evenly, ship, shown, turned } from './synthetic-ship.js';

const names = ['A', 'B', 'C', 'D', 'E'] as const;

function assertShip(found: Swing, tolerance: number, without: readonly string[] = []): void {
  for (const name of names) {
    if (without.includes(name)) assert.equal(found.fit.coefficients[name], null, name);
    else assertClose(found.fit.coefficients[name] ?? NaN, ship[name], tolerance, name);
  }
}

// Each reading below is made from the closed formula of the synthetic ship and the definition
// deviation = magnetic bearing − compass bearing (Handbook of Magnetic Compass Adjustment).
const headings = evenly(16);
const variation = -17.3;

test('a distant object of known magnetic bearing 347.2°, across north by compass, gives back the ship', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'known-object', heading, bearing: shown(347.2, heading) }));
  const found = swing(rows, { object: { bearing: 347.2, by: 'magnetic' } });
  assertShip(found, 1e-9);
  assert.equal(found.constantLost, false);
});

test('a distant object of known true bearing 002.5° with variation 17.3° W: magnetic 019.8°', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'known-object', heading, bearing: shown(19.8, heading) }));
  const found = swing(rows, { object: { bearing: 2.5, by: 'true' }, variation });
  assertShip(found, 1e-9);
  assertClose(found.rows[0]?.ok ? (found.rows[0].magneticBearing ?? NaN) : NaN, 19.8, 1e-9);
  assertClose(found.commonDoubt, 0.25, 1e-12, 'doubt of a variation given');
});

test('an object of unknown bearing gives B to E and loses A; the mean of its compass bearings stands for the magnetic one', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(1, heading) }));
  const found = swing(rows);
  assertShip(found, 1e-9, ['A']);
  assert.equal(found.constantLost, true);
  assert.equal(found.card, null);
  assert.deepEqual(found.fit.determined, ['B', 'C', 'D', 'E']);
  assert.ok(found.cautions.some(({ code }) => code === 'constant-lost'));
  assert.ok(!found.cautions.some(({ code }) => code === 'not-determined'), 'told once');
  // By hand: the mean of the bearings is 1° − A, so each deviation comes out short of A.
  found.rows.forEach((row, i) => assertClose(row.ok ? row.deviation : NaN, deviationOf(ship, headings[i] ?? 0) - ship.A, 1e-9));
});

test('a bearing of it that is struck has no part in the mean', () => {
  const rows = headings.map((heading, i): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(i === 3 ? 41 : 1, heading), struck: i === 3 }));
  // Without one of sixteen the five terms no longer cancel: the mean of the fifteen bearings, by the closed formula (of directions, so to 0.005°).
  const mean = headings.reduce((total, heading, i) => total + (i === 3 ? 0 : 1 - deviationOf(ship, heading)), 0) / 15;
  for (const row of swing(rows).rows) assertSameDirection(row.ok ? (row.magneticBearing ?? NaN) : NaN, mean, 0.005);
});

test('in half the compass the constant part is not told, and the mean of its deviations is left at nought', () => {
  const rows = evenly(32).slice(0, 17).map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(200, heading) }));
  const found = swing(rows, { model: 'approximate' });
  assert.ok(found.fit.determined.length < 4);
  assertClose(found.rows.reduce((total, row) => total + (row.ok ? row.deviation : NaN), 0) / 17, 0, 0.01);
});

test('the same with A known from elsewhere makes a card', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'unknown-object', heading, bearing: shown(1, heading) }));
  const { card } = swing(rows, { constant: 0.7 });
  assert.ok(card?.kind === 'approximate');
  assertClose(card.coefficients.A, 0.7, 1e-12);
  assertClose(card.coefficients.B, ship.B, 1e-9);
});

test('a few readings of a known object beside many of an unknown one find A, with its doubt from those few', () => {
  const rows = evenly(24).map((heading, i): SwingRow => {
    const slip = 0.2 * Math.sin(7 * i);
    return i % 6 === 0
      ? { method: 'known-object', heading, bearing: shown(80, heading) + slip }
      : { method: 'unknown-object', heading, bearing: shown(200, heading) + slip };
  });
  const found = swing(rows, { object: { bearing: 80, by: 'magnetic' }, model: 'approximate' });
  assert.equal(found.constantLost, false);
  assertShip(found, 0.2);
  const exactRows = evenly(24).map((heading, i): SwingRow =>
    i % 6 === 0 ? { method: 'known-object', heading, bearing: shown(80, heading) } : { method: 'unknown-object', heading, bearing: shown(200, heading) },
  );
  assertShip(swing(exactRows, { object: { bearing: 80, by: 'magnetic' } }), 1e-8);
  // Four readings in 24 carry A: its standard error is at least that of their mean, √(24/4) times that of all.
  const { standardErrors, scatter } = found.fit;
  assert.ok((standardErrors.A ?? 0) > (0.95 * (scatter ?? 0)) / Math.sqrt(4), `${String(standardErrors.A)}`);
  // 24 readings less A to E and the bearing of the object.
  assert.equal(found.fit.degreesOfFreedom, 18);
  assert.equal(found.fit.basis, 'scatter');
});

test('a transit of charted true bearing 114.0° with variation 17.3° W: magnetic 131.3°', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'transit', heading, bearing: shown(131.3, heading) }));
  assertShip(swing(rows, { transit: { kind: 'charted', bearing: 114 }, variation }), 1e-9);
});

test('a transit by two marks due north of each other bears 000.0° true', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'transit', heading, bearing: shown(17.3, heading) }));
  const marks = { kind: 'two-marks', front: { latitude: -33.9, longitude: 18.4 }, rear: { latitude: -33.8, longitude: 18.4 } } as const;
  assertShip(swing(rows, { transit: marks, variation }), 1e-9);
});

test('reciprocal bearings with a shore compass: its bearing of the ship turned round is magnetic', () => {
  // The ship swings round, so the line between her and the shore differs a little every time.
  const rows = headings.map((heading, i): SwingRow => {
    const line = 355 + 0.9 * i;
    return { method: 'shore-compass', heading, bearing: shown(line, heading), shoreBearing: turned(line + 180) };
  });
  assertShip(swing(rows), 1e-9);
});

test('a shore compass that reads 1.5° too little is allowed for', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'shore-compass', heading, bearing: shown(60, heading), shoreBearing: 240 - 1.5 }));
  assertShip(swing(rows, { shoreError: 1.5 }), 1e-9);
});

// True head = gyro + gyro error; magnetic = true − variation; deviation = magnetic − compass.
const gyroOn = (heading: number, error: number): number => turned(heading + deviationOf(ship, heading) + variation - error);

test('a gyro of error 1.5° W compared on each compass heading gives back the ship', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'gyro', heading, reading: gyroOn(heading, -1.5) }));
  assertShip(swing(rows, { gyroError: -1.5, variation }), 1e-9);
});

test('the same steadied by gyro, the compass read: heads are turned into heads by compass before the fit', () => {
  const rows = headings.map((compass): SwingRow => ({ method: 'gyro', heading: gyroOn(compass, -1.5), headingBy: 'gyro', reading: compass }));
  const found = swing(rows, { gyroError: -1.5, variation });
  assertShip(found, 1e-9);
  found.rows.forEach((row, i) => assertSameDirection(row.ok ? row.heading : NaN, headings[i] ?? 0, 1e-9));
});

test('steadied on magnetic headings the compass is read: deviation is the difference', () => {
  const rows = headings.map((compass): SwingRow => ({ method: 'gyro', heading: turned(compass + deviationOf(ship, compass)), headingBy: 'magnetic', reading: compass }));
  assertShip(swing(rows), 1e-9);
});

test('four bearings of a known object settle both an unknown one and a gyro that is half round', () => {
  const rows = evenly(24).map((heading, i): SwingRow => {
    if (i % 6 === 0) return { method: 'known-object', heading, bearing: shown(80, heading) };
    return i % 2 ? { method: 'unknown-object', heading, bearing: shown(200, heading) } : { method: 'gyro', heading, reading: gyroOn(heading, 176.2) };
  });
  assertShip(swing(rows, { object: { bearing: 80, by: 'magnetic' }, variation }), 1e-8);
});

test('a gyro of unknown error loses A', () => {
  const rows = headings.map((heading): SwingRow => ({ method: 'gyro', heading, reading: gyroOn(heading, 176.2) }));
  assertShip(swing(rows, { variation }), 1e-9, ['A']);
  assertShip(swing(rows), 1e-9, ['A']);
});

test('bearings of an object on heads by gyro need the gyro’s error, and say so', () => {
  const rows = headings.map((compass): SwingRow => ({ method: 'known-object', heading: gyroOn(compass, -1.5), headingBy: 'gyro', bearing: shown(80, compass) }));
  const object = { bearing: 80, by: 'magnetic' } as const;
  const refusal = swing(rows, { object, variation }).rows[3];
  assert.deepEqual(refusal, { ok: false, reason: 'gyro-error-needed' });
  assertShip(swing(rows, { object, variation, gyroError: -1.5 }), 1e-9);
  assert.deepEqual(swing(rows, { object, gyroError: -1.5 }).rows[3], { ok: false, reason: 'no-variation' });
});

interface SunCase { readonly utc: string; readonly lat: number; readonly lon: number; readonly hc_deg: number; readonly zn_deg: number }

// Azimuths by JPL DE405 and ERFA.
const suns = reference<{ cases: SunCase[] }>('swing-suns.json').cases;

test(`Sun azimuths, each with its time: ${suns.length} places by an independent ephemeris within 0.01° of bearing times cos altitude`, () => {
  for (const { utc, lat, lon, hc_deg, zn_deg } of suns) {
    const heading = turned(zn_deg * 3);
    const row: SwingRow = { method: 'sun', heading, bearing: shown(zn_deg - variation, heading), instant: new Date(utc) };
    const [found] = swing([row], { place: { latitude: lat, longitude: lon }, variation }).rows;
    assert.ok(found?.ok, utc);
    assertClose(found.altitude ?? NaN, hc_deg, 0.01, utc);
    assertClose((found.deviation - deviationOf(ship, heading)) * Math.cos((hc_deg * Math.PI) / 180), 0, 0.01, utc);
  }
});

test('the Sun below the horizon, or without a place or a variation, gives a reason and no deviation', () => {
  const row: SwingRow = { method: 'sun', heading: 0, bearing: 90, instant: new Date('2026-06-21T00:00:00Z') };
  const place = { latitude: 50, longitude: 0 };
  assert.deepEqual(swing([row], { place, variation: 0 }).rows, [{ ok: false, reason: 'sun-below-horizon' }]);
  assert.deepEqual(swing([row], { variation: 0 }).rows, [{ ok: false, reason: 'no-place' }]);
  const longAgo: SwingRow = { ...row, instant: new Date('1950-06-21T12:00:00Z') };
  assert.deepEqual(swing([longAgo], { place }).rows, [{ ok: false, reason: 'no-variation' }]);
});

test('the Sun is read in the first and the last second of the years known, and no later', () => {
  const place = { latitude: 40, longitude: -140 };
  const at = (time: string): SwingRow => ({ method: 'sun', heading: 0, bearing: 220, instant: new Date(time) });
  for (const time of ['1900-01-01T00:00:00Z', '2099-12-31T23:59:59Z', '2100-01-01T00:00:00Z']) {
    const [row] = swing([at(time)], { place, variation: 0 }).rows;
    assert.ok(row?.ok, time);
    // About three in the afternoon of midwinter: the Sun stands in the south-west.
    assertClose(row.magneticBearing ?? NaN, 220, 10, time);
  }
  for (const time of ['1899-12-31T23:59:59Z', '2100-01-01T00:00:01Z']) assert.throws(() => swing([at('2026-01-01T00:00:00Z'), at(time)], { place, variation: 0 }), /^RangeError: rows\[1\]\.instant/);
});

// The ship on her circle by coordinates: no angle formula of the code.
function bearingOnCircle(objectBearing: number, distance: number, radius: number, magneticHead: number, side: 1 | -1): number {
  const rad = Math.PI / 180;
  // She turns to starboard: the centre lies 90° to the right of her head.
  const toCentre = (magneticHead + 90 * side) * rad;
  const ship = { north: -radius * Math.cos(toCentre), east: -radius * Math.sin(toCentre) };
  const object = { north: distance * Math.cos(objectBearing * rad), east: distance * Math.sin(objectBearing * rad) };
  return turned(Math.atan2(object.east - ship.east, object.north - ship.north) / rad);
}

for (const [turning, side] of [['starboard', 1], ['port', -1]] as const) {
  test(`an object 6 M off a circle of 400 m, turning to ${turning}: the parallax up to 2.1° is allowed for`, () => {
    const [distance, radius] = [11112, 400];
    const rows = headings.map((heading): SwingRow => {
      const magneticHead = heading + deviationOf(ship, heading);
      return { method: 'known-object', heading, bearing: shown(bearingOnCircle(75, distance, radius, magneticHead, side), heading) };
    });
    const object = { bearing: 75, by: 'magnetic' } as const;
    assertShip(swing(rows, { object, circle: { radius, distance, turning } }), 1e-7);
    // Not knowing the turn, B and C are wrong by up to radius over distance, and the user is told: arcsin(400/11112) = 2.06°.
    const blind = swing(rows, { object, circle: { radius, distance } });
    assert.ok(Math.abs((blind.fit.coefficients.C ?? 0) - ship.C) + Math.abs((blind.fit.coefficients.B ?? 0) - ship.B) > 1);
    const caution = blind.cautions.find(({ code }) => code === 'parallax');
    assert.ok(caution && typeof caution.values['largest'] === 'object');
    assertClose(caution.values['largest'].value, 2.063, 0.001);
  });
}

// The turns that settle head and parallax stopped after thirty, up to 0.6° short where the object almost touches the circle's width.
test('an object two and a bit radii off: the parallax up to 29° is allowed for as well', () => {
  const [distance, radius] = [605, 300];
  for (const [turning, side] of [['starboard', 1], ['port', -1]] as const) {
    const rows = evenly(24).map((heading): SwingRow => {
      const magneticHead = heading + deviationOf(ship, heading);
      return { method: 'known-object', heading, bearing: shown(bearingOnCircle(75, distance, radius, magneticHead, side), heading) };
    });
    const found = swing(rows, { object: { bearing: 75, by: 'magnetic' }, circle: { radius, distance, turning } });
    assertShip(found, 0.001);
  }
});

// Zones by the WMM2025 report: H below 6000 and below 2000 nT. 80° N 100° W has 2.1 µT, 85.7° N 139° E by the north dip pole 0.1 µT,
// 48° S 72° W some 19 µT (any chart of H). The swing said nothing of them.
test('a swing where the compass is weak says so, whatever the method, and where it is not says nothing', () => {
  const rows = evenly(16).map((heading): SwingRow => ({ method: 'deviation', heading, deviation: deviationOf(ship, heading) }));
  const zone = (latitude: number, longitude: number): string[] =>
    swing(rows, { place: { latitude, longitude }, instant: new Date('2026-06-21T18:00:00Z') }).cautions.filter(({ code }) => code.endsWith('-zone')).map(({ code, level }) => `${level} ${code}`);
  assert.deepEqual([zone(80, -100), zone(85.7, 139), zone(-48, -72)], [['warning caution-zone'], ['warning blackout-zone'], []]);
  assert.deepEqual(swing(rows, { variation: -17 }).cautions.map(({ code }) => code), []);
});

test('six methods in one swing agree on one ship', () => {
  const sun = suns.find(({ hc_deg }) => hc_deg < 30) as SunCase;
  const rows = evenly(24).map((heading, i): SwingRow => {
    switch (i % 6) {
      case 0: return { method: 'known-object', heading, bearing: shown(80, heading) };
      case 1: return { method: 'unknown-object', heading, bearing: shown(212.2, heading) };
      case 2: return { method: 'sun', heading, bearing: shown(sun.zn_deg - variation, heading), instant: new Date(sun.utc) };
      case 3: return { method: 'transit', heading, bearing: shown(131.3, heading) };
      case 4: return { method: 'shore-compass', heading, bearing: shown(300, heading), shoreBearing: 120 };
      default: return { method: 'gyro', heading, reading: gyroOn(heading, 0.5) };
    }
  });
  const found = swing(rows, {
    object: { bearing: 80, by: 'magnetic' },
    place: { latitude: sun.lat, longitude: sun.lon },
    transit: { kind: 'charted', bearing: 114 },
    variation,
    gyroError: 0.5,
  });
  assert.ok(found.rows.every(({ ok }) => ok));
  assertShip(found, 0.005);
});

test('a worse row weighs less: σ 0.5° and 2° in the ratio of 16 to 1', () => {
  // One heading taken twice, 0° and 17° apart from a ship without deviation: the weighted mean is 1.
  const rows: SwingRow[] = [
    { method: 'deviation', heading: 0, deviation: 0, sigma: 0.5 },
    { method: 'deviation', heading: 0, deviation: 17, sigma: 2 },
  ];
  const [first, second] = swing(rows).rows;
  assertClose(first?.ok ? (first.residual ?? NaN) : NaN, -1, 1e-9);
  assertClose(second?.ok ? (second.residual ?? NaN) : NaN, 16, 1e-9);
});
