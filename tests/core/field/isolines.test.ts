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
