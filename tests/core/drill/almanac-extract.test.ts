import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { almanacExtract, zoneClock } from '../../../core/drill/almanac-extract.js';
import { secondPosition } from '../sky/second-ephemeris.js';

function rowsOf(instant: Date, zoneHours: number): readonly (readonly number[])[] {
  const { value } = almanacExtract('Sun', instant, zoneHours);
  assert.ok(value.is === 'table');
  return value.rows;
}

describe('an extract of the almanac', () => {
  // The Sun's hour angle was told as 360.00°: it stood 0.0015° short of the meridian.
  it('begins the hour angle anew at the meridian of Greenwich', () => {
    const noon = new Date('2026-04-15T12:00:00Z');
    const { gha } = secondPosition('Sun', noon);
    assert.ok(gha > 359.995, `${gha}`);
    const [atNoon] = rowsOf(new Date('2026-04-15T12:20:00Z'), 0);
    assert.deepEqual(atNoon?.slice(0, 2), [12, 0]);
  });

  // Sources of the places: the second ephemeris.
  it('tells the hours about the instant and about the clock, and none of another day', () => {
    const rows = rowsOf(new Date('2027-12-31T23:40:00Z'), 11);
    assert.deepEqual(rows.map(([hour]) => hour), [12, 13, 23, 24]);
    for (const [hour = NaN, gha = NaN, declination = NaN] of rows) {
      const expected = secondPosition('Sun', new Date(Date.UTC(2027, 11, 31, hour)));
      assert.ok(Math.abs(gha - expected.gha) < 0.006, `hour angle of ${hour}: ${gha}`);
      assert.ok(Math.abs(declination - expected.declination) < 0.06 / 60, `declination of ${hour}: ${declination}`);
    }
  });
});

describe("the ship's clock", () => {
  // Zones of 15° about their meridians, their description what makes UTC of zone time: common practice, no source.
  const clocks: readonly (readonly [number, string, number, string, string, boolean])[] = [
    [-74, '2026-12-31T23:30:00Z', 5, '+5 h', '2026-12-31 18:30:00', true],
    [151, '2026-12-31T23:30:00Z', -10, '−10 h', '2027-01-01 09:30:00', false],
    [180, '2026-06-01T06:00:00Z', -12, '−12 h', '2026-06-01 18:00:00', true],
    [-179.9, '2026-06-01T06:00:00Z', 12, '+12 h', '2026-05-31 18:00:00', false],
    [7.4, '2026-06-01T06:00:00Z', 0, '+0 h', '2026-06-01 06:00:00', true],
    [-7.6, '2026-06-01T06:00:00Z', 1, '+1 h', '2026-06-01 05:00:00', true],
  ];
  for (const [longitude, utc, hours, description, text, sameDay] of clocks) {
    it(`shows ${text} in longitude ${longitude} at ${utc}`, () => {
      assert.deepEqual(zoneClock(longitude, new Date(utc)), { hours, description, text, sameDay });
    });
  }
});
