import assert from 'node:assert/strict';
import { test } from 'node:test';
import { crossCell, nearTo } from '../../../core/field/contour-cell.js';
import { isolines } from '../../../core/field/isolines.js';
import { joinPieces } from '../../../core/field/join-pieces.js';
import { magneticEquatorLatitude } from '../../../core/field/magnetic-equator.js';
import { magneticField } from '../../../core/field/magnetic-field.js';
import { magneticFieldGrid } from '../../../core/field/magnetic-field-grid.js';
import { magneticPoles } from '../../../core/field/magnetic-poles.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';

const instant = new Date('2027-07-02T12:00:00Z');
const grid = magneticFieldGrid({ step: 2, instant });

test('a cell: no line, a corner cut off, a line across, and the two ways through a saddle', () => {
  assert.deepEqual(crossCell(1, 1, 1, 1, 2), []);
  assert.deepEqual(crossCell(4, 0, 0, 0, 1), [[{ side: 3, part: 0.75 }, { side: 0, part: 0.75 }]]);
  assert.deepEqual(crossCell(0, 0, 4, 4, 1), [[{ side: 3, part: 0.25 }, { side: 1, part: 0.25 }]]);
  const sides = (level: number) => crossCell(4, 0, 4, 0, level).map(([from, to]) => `${from.side}${to.side}`);
  assert.deepEqual(sides(1), ['32', '01'], 'the high corners hold together');
  assert.deepEqual(sides(3), ['30', '12'], 'the low corners hold together');
});

test('pieces in any order and direction join to one open line and one closed', () => {
  const open = [{ from: 2, to: 3 }, { from: 2, to: 1 }, { from: 4, to: 3 }];
  const closed = [{ from: 10, to: 11 }, { from: 12, to: 11 }, { from: 12, to: 10 }];
  const [line, ring] = joinPieces([...open, ...closed]);
  assert.deepEqual([line, [...(line ?? [])].reverse()].find((way) => way?.[0] === 1), [1, 2, 3, 4]);
  assert.equal(ring?.length, 4);
  assert.equal(ring?.[0], ring?.[3]);
});

test('directions are made continuous across south', () => {
  assert.equal(nearTo(179, -179), 181);
  assert.equal(nearTo(-179, 179), -181);
  assert.equal(nearTo(10, 20), 20);
});

test('the line of z = 0 is the magnetic equator, once round from seam to seam', () => {
  const [equator] = isolines(grid, 'z', [0]);
  assert.equal(equator?.lines.length, 1);
  const line = equator?.lines[0] ?? [];
  const ends = [line[0]?.[0], line.at(-1)?.[0]].sort();
  assert.deepEqual(ends, [-180, 180]);
  assertClose(line[0]?.[1] as number, line.at(-1)?.[1] as number, 1e-9);
  for (const [longitude, latitude] of line) {
    assertClose(latitude, magneticEquatorLatitude(longitude, instant), 0.02, `${longitude}`);
  }
});

test('on a line of equal variation the variation is that of the line, seam and south included', () => {
  const levels = [-180, -60, -20, 0, 10, 30, 170, 180];
  for (const { level, lines } of isolines(grid, 'variation', levels)) {
    for (const [longitude, latitude] of lines.flat()) {
      const { h, variation } = magneticField({ latitude, longitude }, instant);
      // Straight lines between points 2° apart serve where the field is even.
      if (h > 8000 && Math.abs(latitude) < 80) assertSameDirection(variation as number, level, 0.5, `${latitude} ${longitude}`);
    }
  }
});

test('no line jumps: neighbours on it lie within one cell, also at 180° and about the poles', () => {
  for (const { lines } of isolines(grid, 'variation', [-170, -90, -10, 0, 45, 90, 150, 180])) {
    for (const line of lines) {
      line.slice(1).forEach(([longitude, latitude], index) => {
        const [before, above] = line[index] as readonly [number, number];
        assert.ok(Math.abs(longitude - before) <= 2 + 1e-9 && Math.abs(latitude - above) <= 2 + 1e-9);
      });
    }
  }
});

test('every line of equal variation ends at a pole or at the seam, or closes', () => {
  const { dip } = magneticPoles(instant);
  const nearPole = ([longitude, latitude]: readonly [number, number]) =>
    Math.abs(latitude) > 90 - 1e-9 ||
    Math.abs(longitude) === 180 ||
    [dip.north, dip.south].some((pole) => Math.abs(latitude - pole.latitude) <= 2 && Math.abs(longitude - pole.longitude) <= 2);
  for (const { level, lines } of isolines(grid, 'variation', [-120, -40, -10, 0, 10, 20, 40, 120, 180])) {
    for (const line of lines) {
      const first = line[0] as readonly [number, number];
      const last = line.at(-1) as readonly [number, number];
      const closed = first[0] === last[0] && first[1] === last[1];
      assert.ok(closed || (nearPole(first) && nearPole(last)), `${level}: ${first} to ${last}`);
    }
  }
});

test('variation 180 and -180 are one line; an unreached level has none; a level must be a number', () => {
  const [positive, negative] = isolines(grid, 'variation', [180, -180]);
  assert.deepEqual(positive?.lines, negative?.lines);
  assert.deepEqual(isolines(grid, 'f', [1000]), [{ level: 1000, lines: [] }]);
  assert.throws(() => isolines(grid, 'f', [NaN]), /^RangeError: levels: /);
});

test('a corner on the level counts as above it, and a saddle holds together as the mean of its four corners says', () => {
  const crossings = (a: number, b: number, c: number, d: number) => crossCell(a, b, c, d, 1).flat().map(({ side, part }) => `${side}: ${part + 0}`);
  assert.deepEqual(crossings(1, 0, 0, 0), ['3: 0', '0: 0']);
  assert.deepEqual(crossings(0, 1, 0, 0), ['0: 1', '1: 0']);
  assert.deepEqual(crossings(0, 0, 1, 0), ['1: 1', '2: 1']);
  assert.deepEqual(crossings(0, 0, 0, 1), ['2: 0', '3: 1']);
  assert.deepEqual(crossCell(1, 1, 1, 1, 1), []);
  const joined = (a: number, b: number, c: number, d: number, level: number) => crossCell(a, b, c, d, level).map(([from, to]) => `${from.side}${to.side}`).join(' ') === '32 01';
  // North-west and south-east above: together where the mean is at the level or above.
  assert.deepEqual([joined(4, 0, 4, 0, 2), joined(4, 0, 4, -0.1, 2), joined(9, 1, 3, 1, 3), joined(5, 1, 4, 1, 3), joined(3, 2, 3, -3, 2.5), joined(3, -3, 9, 2, 2.5)], [true, false, true, false, false, true]);
  // The other two above: the cut corners are the same ones where the mean is below.
  assert.deepEqual([joined(0, 4, 0, 4, 2), joined(0, 4, -0.1, 4, 2), joined(1, 9, 1, 3, 3), joined(1, 5, 1, 4, 3)], [false, true, false, true]);
  const [first] = crossCell(0, 0, 4, 3, 1.5);
  assert.deepEqual(first, [{ side: 3, part: 0.5 }, { side: 1, part: 0.375 }]);
  const [south] = crossCell(0, 0, 4, 1, 2);
  assert.equal(south?.[1].side === 2 ? south[1].part : NaN, 1 / 3);
});

/** A world of steps of 90° by hand: rows 90° N, equator, 90° S; columns 180°, 90° W, 0°, 90° E. */
function world(equator: readonly [number, number, number, number], element: 'f' | 'variation' = 'f', poles = 0) {
  const values = Float64Array.from([poles, poles, poles, poles, ...equator, poles, poles, poles, poles]);
  const nothing = new Float64Array(12);
  const plain = { x: nothing, y: nothing, z: nothing, h: nothing, f: nothing, variation: nothing, declination: nothing, inclination: nothing };
  return { step: 90, model: 'WMM2025', latitudes: Float64Array.from([90, 0, -90]), longitudes: Float64Array.from([-180, -90, 0, 90]), ...plain, [element]: values, ...(element === 'variation' ? { declination: values } : {}) } as const;
}
const points = (lines: readonly (readonly (readonly [number, number])[])[]): string[] => lines.map((line) => line.map(([x, y]) => `${x},${y}`).sort().join(' ')).sort();

test('two hills are two rings, and one on the seam is a line on either side of it', () => {
  const [rings] = isolines(world([0, 4, 0, 4]), 'f', [1]);
  assert.deepEqual(rings?.lines.map((line) => line.length), [5, 5]);
  assert.deepEqual(points(rings.lines.map((line) => line.slice(1))), points([[[-157.5, 0], [-90, 67.5], [-22.5, 0], [-90, -67.5]], [[22.5, 0], [90, 67.5], [157.5, 0], [90, -67.5]]]));
  for (const line of rings.lines) assert.deepEqual(line[0], line[4]);
  const [cut] = isolines(world([4, 0, 0, 0]), 'f', [1]);
  assert.deepEqual(points(cut?.lines ?? []), points([[[-180, 67.5], [-112.5, 0], [-180, -67.5]], [[180, 67.5], [112.5, 0], [180, -67.5]]]));
  // Several levels in any order, each its own; the one on the ground is not reached from above.
  const [high, none, low] = isolines(world([0, 4, 0, 0]), 'f', [3, 5, 1]);
  assert.deepEqual([high?.level, none?.level, low?.level], [3, 5, 1]);
  assert.deepEqual(points([high?.lines[0]?.slice(1) ?? []]), points([[[-112.5, 0], [-90, 22.5], [-67.5, 0], [-90, -22.5]]]));
  assert.deepEqual(none?.lines, []);
  assert.equal(low?.lines.length, 1);
});

test('a direction is the same line a turn on, under both its names', () => {
  const coarse = magneticFieldGrid({ step: 15, instant });
  const [plain, turned, ...rest] = isolines(coarse, 'variation', [-10, 350, 180]);
  assert.deepEqual(turned?.lines, plain?.lines);
  assert.deepEqual(isolines(coarse, 'declination', [-10, 350, 180]), [plain, turned, ...rest]);
  // Across south: from 170° over the seam of the figures to -170°, 180 halfway.
  const [south] = isolines(world([170, -170, 170, 170], 'variation', 170), 'variation', [180]);
  assert.ok(south?.lines.flat().some(([longitude, latitude]) => latitude === 0 && longitude === -135));
});
