import assert from 'node:assert/strict';
import { test } from 'node:test';
import { magneticField } from '../../../core/field/magnetic-field.js';
import { magneticFieldGrid } from '../../../core/field/magnetic-field-grid.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';

const instant = new Date('2027-07-02T12:00:00Z');

test('the 1° grid has 65,160 points, row by row from the north, each row from 180° W', () => {
  const grid = magneticFieldGrid({ step: 1, instant });
  assert.equal(grid.x.length, 65_160);
  assert.deepEqual([grid.latitudes[0], grid.latitudes[1], grid.latitudes[180]], [90, 89, -90]);
  assert.deepEqual([grid.longitudes[0], grid.longitudes[1], grid.longitudes[359]], [-180, -179, 179]);
  assert.equal(grid.model, 'WMM2025');
  assert.equal(grid.declination, grid.variation);
});

// The single places are proved by the official lines; they add the harmonics up in another way.
for (const step of [2, 4.5, 20, 36, 90]) {
  test(`every point of the ${step}° grid is the field of the single place`, () => {
    const heightKm = 12;
    const grid = magneticFieldGrid({ step, instant, heightKm });
    grid.latitudes.forEach((latitude, row) =>
      grid.longitudes.forEach((longitude, column) => {
        const at = row * grid.longitudes.length + column;
        const field = magneticField({ latitude, longitude, heightKm }, instant);
        for (const element of ['x', 'y', 'z', 'h', 'f', 'inclination'] as const) {
          assertClose(grid[element][at] as number, field[element], 1e-9, `${element} ${latitude} ${longitude}`);
        }
        assertSameDirection(grid.variation[at] as number, field.variation as number, 1e-9);
      }),
    );
  });
}

test('an older model can be named, and a bad step, height or instant is refused by name', () => {
  const old = new Date('2016-01-01T00:00:00Z');
  assert.equal(magneticFieldGrid({ step: 30, instant: old, model: 'WMM2015' }).model, 'WMM2015');
  assert.throws(() => magneticFieldGrid({ step: 7, instant }), /^RangeError: step: /);
  assert.throws(() => magneticFieldGrid({ step: 0, instant }), /^RangeError: step: /);
  assert.throws(() => magneticFieldGrid({ step: NaN, instant }), /^RangeError: step: /);
  assert.throws(() => magneticFieldGrid({ step: 30, instant, heightKm: 900 }), /^RangeError: heightKm: /);
  assert.throws(() => magneticFieldGrid({ step: 30, instant: new Date('2035-01-01T00:00:00Z') }), /^RangeError: instant: /);
});
