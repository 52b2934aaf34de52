import assert from 'node:assert/strict';
import { test } from 'node:test';
import { alongGeodesic } from '../../../core/sight/geodesic-line.js';
import { usualTransitDoubts } from '../../../core/sight/transit-doubts.js';
import type { TransitLine } from '../../../core/sight/transit-line.js';
import { transitSight } from '../../../core/sight/transit-sight.js';
import type { NoTransit, TransitSight } from '../../../core/sight/transit-result.js';
import type { TransitObservation } from '../../../core/sight/transit-observation.js';
import { evaluate } from '../../../core/working/evaluate.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { at, buninyong, dms, flindersPeak, flindersToBuninyong } from './transit-lines.js';

const charted = (bearing: number): TransitLine => ({ kind: 'charted', bearing });

function sight(observation: Partial<TransitObservation> & Pick<TransitObservation, 'sightings'>): TransitSight {
  const found = transitSight({ compass: 'magnetic', ...observation });
  assert.ok(found.determined, JSON.stringify(found));
  return found;
}

function codes(found: TransitSight): string[] {
  return found.cautions.map(({ code }) => code);
}

function assertWorks(found: TransitSight): void {
  for (const { code, expression, values, result } of found.steps) {
    if (!expression) continue;
    const numbers = Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value]));
    const check = result.unit === 'number' ? assertClose : assertSameDirection;
    check(evaluate(expression, numbers), result.value, 1e-9 * Math.max(1, Math.abs(result.value)), code);
  }
}

const anchorage = at(-37.9, 144.6);
const instant = new Date('2026-11-25T06:00:00Z');

// By hand: 045.0 − 042.5 = 2.5 E; 2.5 E − 4.0 W = 6.5 E; 6.5 E − 5.0 E = 1.5 E.
test('a charted bearing of 045.0°, read 042.5°, variation 4.0° W, card 5.0° E: error 2.5° E, deviation 6.5° E, difference 1.5° E', () => {
  const found = sight({ sightings: [{ line: charted(45), compassBearing: 42.5 }], variation: -4, cardDeviation: 5 });
  assertClose(found.error, 2.5, 1e-12);
  assertClose(found.deviation ?? NaN, 6.5, 1e-12);
  assertClose(found.difference ?? NaN, 1.5, 1e-12);
  assert.equal(found.scatter, null);
  assert.equal(found.trueBearing, 45);
  assertWorks(found);
});

// Geoscience Australia's line, see transit-lines.
test('two marks by position give the bearing of their line: 306°52′05.37″', () => {
  const line: TransitLine = { kind: 'two-marks', front: flindersPeak, rear: buninyong };
  const found = sight({ sightings: [{ line, compassBearing: 295 }], variation: 10 });
  assertSameDirection(found.trueBearing ?? NaN, flindersToBuninyong.forward, 2e-6);
  assertClose(found.marks[0]?.markDistance ?? NaN, flindersToBuninyong.metres, 0.001);
  assertClose(found.deviation ?? NaN, flindersToBuninyong.forward - 305, 2e-6);
  assertWorks(found);
});

// What is measured on a Mercator chart, with its difference of meridional parts, comes before the bearing it is compared with.
test('the working of one mark begins with the line of the chart, and that of a charted line has none', () => {
  const codesOf = (line: TransitLine): string[] => sight({ sightings: [{ line, compassBearing: 306 }], ship: flindersPeak, variation: 10 }).steps.map(({ code }) => code);
  assert.deepEqual(codesOf({ kind: 'one-mark', mark: buninyong }).slice(1, 4), ['transit.parts', 'transit.rhumb', 'transit.true.one-mark']);
  assert.equal(codesOf(charted(306))[0], 'transit.true.charted');
});

test('the bearing is that at the ship, where the line has turned', () => {
  // Ship at Flinders Peak, rear mark Buninyong, front mark 10 km before it on the same line.
  const front = alongGeodesic(buninyong, flindersToBuninyong.back, 10_000);
  const line: TransitLine = { kind: 'two-marks', front, rear: buninyong };
  const found = sight({ sightings: [{ line, compassBearing: 300 }], ship: flindersPeak });
  assertSameDirection(found.trueBearing ?? NaN, flindersToBuninyong.forward, 1e-4);
  const withoutShip = sight({ sightings: [{ line, compassBearing: 300 }] });
  // By the back bearing the whole line turns 18′20″; over its first 10 km a fifth of it.
  assertClose((withoutShip.trueBearing ?? NaN) - flindersToBuninyong.forward, dms(0, 18, 19.7) * (45 / 55), 0.005);
  assert.deepEqual(codes(found).filter((code) => code === 'off-line'), []);
});

test('one mark from the ship’s place: 306°52′05.37″, and without a place it is refused', () => {
  const sightings = [{ line: { kind: 'one-mark', mark: buninyong } as const, compassBearing: 306 }];
  const found = sight({ sightings, ship: flindersPeak, compass: 'gyro' });
  assertSameDirection(found.trueBearing ?? NaN, flindersToBuninyong.forward, 2e-6);
  assert.equal(found.deviation, null);
  assertWorks(found);
  assert.throws(() => transitSight({ compass: 'gyro', sightings }), /^RangeError: ship/);
});

// By hand: errors −3.0, −2.4, −3.6: mean −3.0, standard deviation 0.6.
test('three lines: mean 3.0° W, scatter 0.6°, doubt of the reading down by √3', () => {
  const found = sight({
    sightings: [
      { line: charted(10), compassBearing: 13 },
      { line: charted(359), compassBearing: 1.4 },
      { line: charted(271), compassBearing: 274.6 },
    ],
    variation: -1,
  });
  assertClose(found.error, -3, 1e-12);
  assertClose(found.scatter ?? NaN, 0.6, 1e-12);
  assert.equal(found.trueBearing, null);
  const reading = found.doubt.items.find(({ code }) => code === 'reading');
  assertClose(reading?.effect ?? NaN, 0.5 / Math.sqrt(3), 1e-12);
  assertWorks(found);
});

test('each line of the working names its own true and compass bearing and error by number, and the mean names them all', () => {
  const sightings = [
    { line: charted(10), compassBearing: 13 },
    { line: { kind: 'two-marks', front: flindersPeak, rear: buninyong } as const, compassBearing: 309.5 },
    { line: { kind: 'one-mark', mark: buninyong } as const, compassBearing: 310 },
  ];
  for (const [compass, read, error] of [['magnetic', 'C', 'CE'], ['gyro', 'G', 'GE']] as const) {
    const found = sight({ sightings, compass, ship: flindersPeak, variation: -1 });
    const lines = found.steps.slice(0, 7);
    assert.deepEqual(lines.map(({ code, symbol }) => `${code} ${symbol}`), [
      'transit.true.charted T_1', `transit.error.${compass} ${error}_1`,
      'transit.true.two-marks T_2', `transit.error.${compass} ${error}_2`,
      'transit.true.one-mark T_3', `transit.error.${compass} ${error}_3`,
      `transit.mean ${error}`,
    ]);
    sightings.forEach(({ compassBearing }, index) => {
      const [truth, ofError] = [lines[2 * index], lines[2 * index + 1]];
      const [T, X] = [`T_${index + 1}`, `${read}_${index + 1}`];
      assert.deepEqual(Object.keys(ofError?.values ?? {}), [T, X]);
      assertSameDirection(truth?.result.value ?? NaN, index === 0 ? 10 : flindersToBuninyong.forward, 2e-6, T);
      assert.deepEqual([ofError?.values[T], ofError?.values[X]], [truth?.result, { value: compassBearing, unit: 'bearing' }]);
      // E = T − C, by the figures put in.
      assertSameDirection(ofError?.result.value ?? NaN, (truth?.result.value ?? NaN) - compassBearing, 1e-9);
      assertSameDirection(lines[6]?.values[`${error}_${index + 1}`]?.value ?? NaN, ofError?.result.value ?? NaN, 1e-9);
    });
    assert.equal(Object.keys(lines[6]?.values ?? {}).length, 3);
    assertWorks(found);
  }
});

test('errors on both sides of half a turn have a mean there', () => {
  const found = sight({ sightings: [{ line: charted(179), compassBearing: 0 }, { line: charted(182), compassBearing: 0 }] });
  assertClose(Math.abs(found.error), 179.5, 1e-12);
  assert.ok(found.error < 0, 'E 179, W 178: the mean is 179.5° W');
  assertWorks(found);
});

// A gyro is held by the cosine of the latitude, wherever its error was found (makers' manuals, from memory).
test('beyond 75° of latitude a gyro is told to be weakly held by marks too, where the ship’s place is known', () => {
  const told = (latitude: number) => codes(sight({ sightings: [{ line: charted(45), compassBearing: 45 }], ship: at(latitude, 15), compass: 'gyro' }));
  assert.deepEqual([told(78), told(-78), told(70)], [['gyro-high-latitude'], ['gyro-high-latitude'], []]);
});

test('the seam of north: charted 359.5°, read 001.0°, error 1.5° W; read 360° is 000°', () => {
  assertClose(sight({ sightings: [{ line: charted(359.5), compassBearing: 1 }] }).error, -1.5, 1e-12);
  assertClose(sight({ sightings: [{ line: charted(359.5), compassBearing: 360 }] }).error, -0.5, 1e-12);
});

test('a line across the 180th meridian works like any other, its working too', () => {
  const east: TransitLine = { kind: 'two-marks', front: at(-17, 179.95), rear: at(-17.05, -179.95) };
  const found = sight({ sightings: [{ line: east, compassBearing: 100 }] });
  // Plane sailing: 6.0′ × cos 17.025° = 5.74′ of departure, 3.0′ south: S 62.3° E (from a traverse table, sphere).
  assertSameDirection(found.trueBearing ?? NaN, 180 - 62.4, 0.3);
  assertWorks(found);
  const west: TransitLine = { kind: 'two-marks', front: at(-17.05, -179.95), rear: at(-17, 179.95) };
  const back = sight({ sightings: [{ line: west, compassBearing: 280 }] });
  assertSameDirection(back.trueBearing ?? NaN, (found.trueBearing ?? NaN) + 180, 0.05);
  assertWorks(back);
});

test('marks at one place, at a pole or opposite each other give no bearing, and say which line', () => {
  const none = (line: TransitLine, ship = anchorage): NoTransit => {
    const found = transitSight({ compass: 'magnetic', ship, sightings: [{ line: charted(5), compassBearing: 4 }, { line, compassBearing: 10 }] });
    assert.equal(found.determined, false);
    return found as NoTransit;
  };
  assert.deepEqual(none({ kind: 'two-marks', front: anchorage, rear: anchorage }), { determined: false, reason: 'same-place', index: 1 });
  assert.equal(none({ kind: 'one-mark', mark: at(10, 10) }, at(-90, 0)).reason, 'pole');
  assert.equal(none({ kind: 'one-mark', mark: at(0, 180) }, at(0, 0)).reason, 'two-ways');
});

test('a bearing read the wrong way round is said to be so, and nothing else', () => {
  const found = sight({ sightings: [{ line: charted(45), compassBearing: 222 }], variation: -4, cardDeviation: 1 });
  assert.deepEqual(codes(found), ['reciprocal']);
  assert.deepEqual(found.cautions[0]?.values['turned'], { value: 3, unit: 'error' });
  const across = sight({ sightings: [{ line: charted(300), compassBearing: 140 }], variation: -21 });
  assert.deepEqual(codes(across), ['reciprocal'], 'against a large variation too');
});

test('a line without place or date has an error but no deviation, and says what is missing', () => {
  const found = sight({ sightings: [{ line: charted(45), compassBearing: 44 }] });
  assert.equal(found.error, 1);
  assert.equal(found.deviation, null);
  assert.deepEqual(codes(found), ['place-or-time-missing']);
  const line: TransitLine = { kind: 'two-marks', front: at(-37.9, 144.6), rear: at(-37.85, 144.6) };
  const byModel = sight({ sightings: [{ line, compassBearing: 350 }], instant });
  assert.equal(byModel.variation.source, 'model');
  // Melbourne lies near 11.5° to 12° E (any chart of the 2020s).
  assertClose(byModel.variation.source === 'model' ? byModel.variation.value : NaN, 11.8, 0.6);
});

const front = at(0, 0);
const rear = at(0, -dms(0, 1));
const line: TransitLine = { kind: 'two-marks', front, rear };
const looking = { line, compassBearing: 270 };

test('the ship’s side of the marks: between them, behind them, out of sight', () => {
  const seen = (longitude: number): string[] => codes(sight({ sightings: [looking], ship: at(0, longitude), variation: 0 }));
  assert.ok(!seen(dms(0, 2)).some((code) => /marks|line/.test(code)));
  assert.ok(seen(-dms(0, 0.5)).includes('between-marks'));
  assert.ok(seen(-dms(0, 2)).includes('marks-exchanged'));
  assert.ok(seen(170).includes('mark-beyond-sight'));
});

// A wrong place is the cause and the error its consequence: told first, and once (practitioner's review, common practice).
test('the ship’s longitude typed E for W: the mark out of sight is told first, without a large deviation beside it', () => {
  const found = sight({ sightings: [{ line: { kind: 'one-mark', mark: at(50.02, -5) }, compassBearing: 2 }], ship: at(50, 5), variation: -1 });
  assert.deepEqual(codes(found), ['mark-beyond-sight']);
});

// Marks entered in the wrong order were told twice: as such, and as a bearing near half a turn off (practitioner's review, common practice).
test('front and rear mark exchanged: told once, and the line that is odd for it not once more', () => {
  const ship = at(0, -dms(0, 2));
  const warnings = (sightings: TransitObservation['sightings'], more: Partial<TransitObservation> = {}): string[] =>
    sight({ sightings, ship, variation: 0, ...more }).cautions.filter(({ level }) => level === 'warning').map(({ code }) => code);
  const exchanged = { line, compassBearing: 91 };
  assert.deepEqual(warnings([exchanged]), ['marks-exchanged']);
  assert.deepEqual(warnings([exchanged], { cardDeviation: 1 }), ['marks-exchanged']);
  assert.deepEqual(warnings([exchanged], { compass: 'gyro' }), ['marks-exchanged']);
  const others = [0, 40, 300].map((bearing) => ({ line: charted(bearing), compassBearing: bearing }));
  assert.ok(!warnings([exchanged, ...others]).includes('odd-mark'));
  const misread = { line: charted(200), compassBearing: 230 };
  assert.ok(warnings([...others, misread]).includes('odd-mark'));
});

// Plane geometry: two places wrong by 10 m each across a line of 111 m turn it by atan(14.1/111) = 7.3°; a ship's by 20 m
// and a mark's by 10 m one 200 m away by atan(22.4/200) = 6.4°. The error was given with no word of why ± 7° stood beside it.
test('marks too close together, and a mark too near, are told with what they leave uncertain', () => {
  const effectOf = (found: TransitSight, code: string): number => {
    const effect = found.cautions.find((caution) => caution.code === code)?.values['effect'];
    return typeof effect === 'object' ? effect.value : NaN;
  };
  const ship = at(50, -5);
  const pair = (metres: number): TransitLine => ({ kind: 'two-marks', front: at(50.02, -5), rear: at(50.02 + metres / 111_229, -5) });
  const found = (target: TransitLine): TransitSight => sight({ sightings: [{ line: target, compassBearing: 2 }], ship, variation: 0 });
  assertClose(effectOf(found(pair(111)), 'marks-close'), 7.26, 0.02);
  assert.ok(!codes(found(pair(111))).includes('transit-insensitive'), 'one word on marks too close');
  assert.ok(!codes(found(pair(1000))).some((code) => code === 'marks-close'));
  assertClose(effectOf(found({ kind: 'one-mark', mark: at(50 + 200 / 111_229, -5) }), 'mark-close'), 6.38, 0.02);
  assert.ok(!codes(found({ kind: 'one-mark', mark: at(50.2, -5) })).includes('mark-close'));
});

test('off the line by 500 m with the marks 1.86 km away: said, and to which distance', () => {
  // A minute of latitude at the equator is 1842.9 m (Pub. 9, table 7): 0.2713′ are 500 m.
  const found = sight({ sightings: [looking], ship: at(dms(0, 0.2713), dms(0, 1)), variation: 0 });
  const caution = found.cautions.find(({ code }) => code === 'off-line');
  const distance = caution?.values['distance'];
  assertClose(typeof distance === 'object' ? distance.value : NaN, 500, 0.5);
  const allowed = caution?.values['allowed'];
  assert.deepEqual([distance, allowed].map((each) => typeof each === 'object' && each.unit === 'metres' && Number.isInteger(each.value)), [true, true], 'in whole metres, as it is said at sea');
  assertClose(found.marks[0]?.ship?.offLine ?? NaN, 500, 0.5, 'north of a line that leads west is to its right');
});

// Plane geometry: an opening of 1′ seen from d turns the front mark by (d + b)/b minutes.
test('marks one mile apart: the eye’s minute makes 2′ one mile away, 5′ four miles away', () => {
  const opening = (miles: number): number => {
    const found = sight({ sightings: [looking], ship: at(0, dms(0, miles)), variation: 0 });
    return (found.doubt.items.find(({ code }) => code === 'opening')?.effect ?? NaN) * 60;
  };
  assertClose(opening(1), 2, 1e-6);
  assertClose(opening(4), 5, 1e-6);
  const codesAt = (miles: number): string[] => codes(sight({ sightings: [looking], ship: at(0, dms(0, miles)), variation: 0 }));
  assert.ok(codesAt(4).includes('transit-insensitive'));
  assert.ok(!codesAt(2).includes('transit-insensitive'));
});

test('places of marks count by their distance: 10 m each over 1855 m are 0.44°', () => {
  const found = sight({ sightings: [looking], variation: 0 });
  const marks = found.doubt.items.find(({ code }) => code === 'marks');
  assertClose(marks?.effect ?? NaN, 0.4367, 0.001); // atan(14.142 / 1855.3)
  assertClose(found.doubt.total, Math.hypot(...found.doubt.items.map(({ effect }) => effect)), 1e-12);
});

test('a wrong place turns marks on opposite sides against each other, so it falls out of their mean', () => {
  const one = (mark: TransitLine, bearing: number) => ({ line: mark, compassBearing: bearing });
  const [north, south] = [one({ kind: 'one-mark', mark: at(dms(0, 2), 0) }, 0), one({ kind: 'one-mark', mark: at(-dms(0, 2), 0) }, 180)];
  const effect = (sightings: TransitObservation['sightings']): number =>
    sight({ sightings, ship: front, variation: 0 }).doubt.items.find(({ code }) => code === 'ship')?.effect ?? NaN;
  // 20 m at 3685.8 m (two minutes of latitude at the equator): 0.311°.
  assertClose(effect([north]), 0.311, 0.001);
  assertClose(effect([north, south]), 0, 1e-9);
});

test('one mark of four that does not fit is named; two that disagree are not judged', () => {
  const lines = (readings: readonly number[]) => readings.map((compassBearing, index) => ({ line: charted(index * 50), compassBearing: index * 50 + compassBearing }));
  const odd = sight({ sightings: lines([3, 3.4, 9, 2.9]), variation: -3 });
  assert.deepEqual(odd.cautions.find(({ code }) => code === 'odd-mark')?.values['number'], '3');
  assert.ok(codes(sight({ sightings: lines([3, 8]), variation: -3 })).includes('marks-disagree'));
  const fine = sight({ sightings: lines([3, 3.4, 3.3, 2.9]), variation: -3 });
  assert.ok(!codes(fine).some((code) => /odd|disagree/.test(code)));
});

test('chart and eye apart: an east-west mark 20 miles off in latitude 60° differs by a quarter of a degree', () => {
  // Half the convergence: ½ × 40′ × sin 60° = 17.3′.
  const found = sight({ sightings: [{ line: { kind: 'one-mark', mark: at(60, dms(0, 40)) }, compassBearing: 90 }], ship: at(60, 0), variation: 0 });
  const difference = found.cautions.find(({ code }) => code === 'convergence')?.values['difference'];
  assertClose(typeof difference === 'object' ? difference.value * 60 : NaN, 17.3, 0.1);
  assertSameDirection(found.trueBearing ?? NaN, 90 - 17.3 / 60, 0.002);
});

test('bad arguments are refused by name', () => {
  const of = (observation: Partial<TransitObservation>) => () => transitSight({ compass: 'magnetic', sightings: [{ line: charted(5), compassBearing: 5 }], ...observation });
  assert.throws(of({ sightings: [] }), /^RangeError: sightings/);
  assert.throws(of({ sightings: [{ line: charted(5), compassBearing: 361 }] }), /^RangeError: sightings\[0\]\.compassBearing/);
  assert.throws(of({ sightings: [{ line: charted(NaN), compassBearing: 5 }] }), /^RangeError: bearing/);
  assert.throws(of({ ship: at(0, NaN) }), /^RangeError: ship\.longitude/);
  assert.throws(of({ instant: new Date(NaN) }), /^RangeError: instant/);
  assert.throws(of({ variation: 181 }), /^RangeError: variation/);
  assert.throws(of({ cardDeviation: Infinity }), /^RangeError: cardDeviation/);
});

test('the supposed doubts can be changed one by one', () => {
  const found = sight({ sightings: [{ line: charted(45), compassBearing: 44 }], doubts: { reading: 0.2 } });
  assertClose(found.doubt.total, Math.hypot(0.2, usualTransitDoubts.charted), 1e-12);
});
