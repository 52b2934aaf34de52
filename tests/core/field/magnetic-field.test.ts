import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { fieldElements, fieldElementsChange } from '../../../core/field/field-elements.js';
import { magneticField } from '../../../core/field/magnetic-field.js';
import { magneticModels, magneticModelYears } from '../../../core/field/magnetic-models.js';
import type { MagneticModelName } from '../../../core/field/magnetic-models.js';
import { instantOfDecimalYear } from '../../../core/time/decimal-year.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';

const instant = new Date('2026-11-25T06:30:00Z');

const refuses = (name: string, work: () => unknown) =>
  assert.throws(work, { name: 'RangeError', message: new RegExp(`^${name}: `) });

test('the newest model that holds is used: v2 before 2020, and plain WMM2015 only when named', () => {
  const place = { latitude: 10, longitude: 20 };
  const modelOn = (utc: string, model?: MagneticModelName) =>
    magneticField(place, new Date(utc), model ? { model } : {}).model;
  assert.equal(modelOn('2015-01-01T00:00:00Z'), 'WMM2015v2');
  assert.equal(modelOn('2019-12-31T23:59:59.999Z'), 'WMM2015v2');
  assert.equal(modelOn('2020-01-01T00:00:00Z'), 'WMM2020');
  assert.equal(modelOn('2024-12-31T23:59:59.999Z'), 'WMM2020');
  assert.equal(modelOn('2025-01-01T00:00:00Z'), 'WMM2025');
  assert.equal(modelOn('2030-01-01T00:00:00Z'), 'WMM2025');
  assert.equal(modelOn('2017-01-01T00:00:00Z', 'WMM2015'), 'WMM2015');
  assert.equal(modelOn('2025-01-01T00:00:00Z', 'WMM2020'), 'WMM2020');
  assert.deepEqual(magneticModelYears, { from: 2015, until: 2030 });
  assert.deepEqual(magneticModels.map(({ name }) => name), ['WMM2025', 'WMM2020', 'WMM2015v2', 'WMM2015']);
});

test('an instant outside the models, or outside the named one, is refused and never extrapolated', () => {
  const place = { latitude: 10, longitude: 20 };
  refuses('instant', () => magneticField(place, new Date('2014-12-31T23:59:59.999Z')));
  refuses('instant', () => magneticField(place, new Date('2030-01-01T00:00:00.001Z')));
  refuses('instant', () => magneticField(place, new Date('2019-12-31T23:59:59Z'), { model: 'WMM2025' }));
  refuses('instant', () => magneticField(place, new Date('2020-01-01T00:00:00.001Z'), { model: 'WMM2015' }));
  refuses('instant', () => magneticField(place, new Date(NaN)));
  refuses('instant', () => magneticField(place, 2026 as unknown as Date));
  refuses('model', () => magneticField(place, instant, { model: 'IGRF14' as MagneticModelName }));
});

test('a place off the Earth or outside the heights of the models is refused by name', () => {
  refuses('latitude', () => magneticField({ latitude: 90.0001, longitude: 0 }, instant));
  refuses('latitude', () => magneticField({ latitude: NaN, longitude: 0 }, instant));
  refuses('longitude', () => magneticField({ latitude: 0, longitude: 360 }, instant));
  refuses('longitude', () => magneticField({ latitude: 0, longitude: -180.0001 }, instant));
  refuses('heightKm', () => magneticField({ latitude: 0, longitude: 0, heightKm: -1.1 }, instant));
  refuses('heightKm', () => magneticField({ latitude: 0, longitude: 0, heightKm: 851 }, instant));
});

test('east and west of the 180° meridian the field is one, and longitudes may be counted to 360°', () => {
  for (const latitude of [-90, -61.5, 0, 33.4, 89.9, 90]) {
    assert.deepEqual(
      magneticField({ latitude, longitude: 180 }, instant),
      magneticField({ latitude, longitude: -180 }, instant),
    );
    const east = magneticField({ latitude, longitude: 250 }, instant);
    const west = magneticField({ latitude, longitude: -110 }, instant);
    assertClose(east.x, west.x, 1e-9);
    assertClose(east.y, west.y, 1e-9);
  }
});

test('at a pole the vector is one, seen from every meridian', () => {
  for (const latitude of [90, -90]) {
    const greenwich = magneticField({ latitude, longitude: 0 }, instant);
    for (const longitude of [-180, -90, 37, 90, 179]) {
      const field = magneticField({ latitude, longitude }, instant);
      assertClose(field.z, greenwich.z, 1e-9);
      assertClose(field.h, greenwich.h, 1e-9);
      // Turning the meridian east at the north pole turns north itself the other way round.
      const turned = latitude > 0 ? longitude : -longitude;
      assertSameDirection(field.variation as number, (greenwich.variation as number) + turned, 1e-9);
    }
  }
});

test('the field close to a pole runs into that of the pole', () => {
  for (const [near, pole] of [[89.9999999, 90], [-89.9999999, -90]] as const) {
    const beside = magneticField({ latitude: near, longitude: 77 }, instant);
    const at = magneticField({ latitude: pole, longitude: 77 }, instant);
    assertClose(beside.x, at.x, 1e-3);
    assertClose(beside.y, at.y, 1e-3);
    assertClose(beside.z, at.z, 1e-3);
  }
});

test('where h is 0 there is no variation, and no rate of what hangs on its direction', () => {
  const upright = fieldElements({ x: 0, y: 0, z: -50000 });
  assert.equal(upright.variation, null);
  assert.equal(upright.declination, null);
  assert.equal(upright.inclination, -90);
  const change = fieldElementsChange(upright, { x: 1, y: 2, z: 3 });
  assert.deepEqual(change, { x: 1, y: 2, z: 3, h: null, f: -3, variation: null, declination: null, inclination: null });
});

test('due south is 180°, from whichever side it is reached', () => {
  assert.equal(fieldElements({ x: -1, y: 0, z: 0 }).variation, 180);
  assert.equal(fieldElements({ x: -1, y: -0, z: 0 }).variation, 180);
  assert.equal(fieldElements({ x: -1, y: -1e-300, z: 0 }).variation, 180);
});

test('everywhere: no NaN, f the hypotenuse, declination another name of variation', () => {
  const when = fc.integer({ min: Date.UTC(2015, 0, 1), max: Date.UTC(2030, 0, 1) }).map((time) => new Date(time));
  const degrees = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
  fc.assert(
    fc.property(degrees(-90, 90), degrees(-180, 180), degrees(-1, 850), when, (latitude, longitude, heightKm, at) => {
      const field = magneticField({ latitude, longitude, heightKm }, at);
      for (const part of [field, field.annualChange, field.uncertainty]) {
        for (const value of Object.values(part)) if (typeof value === 'number') assert.ok(Number.isFinite(value));
        assert.equal(part.declination, part.variation);
      }
      assertClose(field.f, Math.hypot(field.h, field.z), 1e-8);
      assertClose(Math.tan((field.inclination * Math.PI) / 180) * field.h, field.z, 1e-6 * field.f);
      assert.ok(field.variation !== null && field.variation > -180 && field.variation <= 180);
    }),
  );
});

test('the annual change is the slope between the day before and the day after', () => {
  // The coefficients change linearly, so a central difference over a day shows the slope.
  const day = 86_400_000;
  const place = { latitude: -33.4, longitude: 151.2 };
  const year = 365 * day;
  const field = magneticField(place, instant);
  const after = magneticField(place, new Date(instant.getTime() + day));
  const before = magneticField(place, new Date(instant.getTime() - day));
  const perYear = (from: number, to: number) => (to - from) / ((2 * day) / year);
  assertClose(field.annualChange.x, perYear(before.x, after.x), 1e-5);
  assertClose(field.annualChange.h as number, perYear(before.h, after.h), 1e-5);
  assertClose(field.annualChange.f, perYear(before.f, after.f), 1e-5);
  assertClose(field.annualChange.variation as number, perYear(before.variation as number, after.variation as number), 1e-8);
  assertClose(field.annualChange.inclination as number, perYear(before.inclination, after.inclination), 1e-8);
});

test('asking at many dates in turn gives the same as asking at each alone', () => {
  const place = { latitude: 50, longitude: -30 };
  const dates = Array.from({ length: 12 }, (_, index) => new Date(Date.UTC(2016 + index, 5, 1)));
  const first = dates.map((date) => magneticField(place, date));
  const again = [...dates].reverse().map((date) => magneticField(place, date)).reverse();
  assert.deepEqual(again, first);
  const mutable = new Date(dates[0] as Date);
  magneticField(place, mutable);
  mutable.setUTCFullYear(2027);
  assert.deepEqual(magneticField(place, mutable), first[11]);
});

// The technical reports of the models: each holds for the five years from its epoch; its coefficients, and with them
// X, Y and Z, change evenly in them.
const epochs = [['WMM2015', 2015], ['WMM2015v2', 2015], ['WMM2020', 2020], ['WMM2025', 2025]] as const;

test('a model named holds from its epoch to five years on, both ends included, and no millisecond longer', () => {
  const there = { latitude: -33, longitude: -71 };
  for (const [model, epoch] of epochs) {
    const [first, last] = [Date.UTC(epoch, 0, 1), Date.UTC(epoch + 5, 0, 1)];
    for (const time of [first, last]) assert.equal(magneticField(there, new Date(time), { model }).model, model);
    for (const time of [first - 1, last + 1]) refuses('instant', () => magneticField(there, new Date(time), { model }));
    assert.deepEqual(magneticModels.find(({ name }) => name === model), { name: model, from: epoch, until: epoch + 5 });
  }
  refuses('instant', () => magneticField(there, new Date(Date.UTC(2015, 0, 1) - 1)));
  refuses('instant', () => magneticField(there, new Date(Date.UTC(2030, 0, 1) + 1)));
  refuses('instant', () => magneticField(there, new Date(NaN), { model: 'WMM2020' }));
  refuses('latitude', () => magneticField({ latitude: 90.1, longitude: 0 }, new Date(Date.UTC(2026, 0, 1))));
  refuses('longitude', () => magneticField({ latitude: 0, longitude: 360 }, new Date(Date.UTC(2026, 0, 1))));
  refuses('longitude', () => magneticField({ latitude: 0, longitude: -180.1 }, new Date(Date.UTC(2026, 0, 1))));
  refuses('heightKm', () => magneticField({ latitude: 0, longitude: 0, heightKm: 851 }, new Date(Date.UTC(2026, 0, 1))));
});

test('north, east and down change evenly through the years of a model, and the changes told of the rest are the slopes there', () => {
  for (const [model, epoch] of epochs) {
    for (const [latitude, longitude] of [[0, 180], [0, -180], [62, -0.001], [-55, 359.9], [85.5, 140], [-90, 30], [89.999, -179.9]] as const) {
      const place = { latitude, longitude };
      const at = (year: number) => magneticField(place, instantOfDecimalYear(year), { model });
      const [start, middle, end] = [at(epoch), at(epoch + 2.5), at(epoch + 5)];
      const [before, after] = [at(epoch + 2.49), at(epoch + 2.51)];
      for (const name of ['x', 'y', 'z'] as const) {
        assertClose(middle[name] - start[name], 2.5 * start.annualChange[name], 1e-4, `${model} ${name} ${latitude}`);
        assertClose(end[name] - start[name], 5 * middle.annualChange[name], 1e-4, `${model} ${name} ${latitude}`);
      }
      for (const name of ['h', 'f', 'inclination', 'variation'] as const) {
        const slope = ((after[name] ?? NaN) - (before[name] ?? NaN)) / 0.02;
        assertClose(middle.annualChange[name] ?? NaN, slope, Math.max(1e-3, Math.abs(slope) * 1e-3), `${model} ${name} ${latitude}`);
      }
    }
  }
});
