import assert from 'node:assert/strict';
import { test } from 'node:test';
import { magneticEquatorLatitude } from '../../../core/field/magnetic-equator.js';
import { magneticField } from '../../../core/field/magnetic-field.js';
import { magneticPoles } from '../../../core/field/magnetic-poles.js';
import { instantOfDecimalYear } from '../../../core/time/decimal-year.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { fieldReference, published } from './field-reference.js';

test('dip poles and geomagnetic poles of every model, within 0.005°', () => {
  assert.equal(fieldReference.poles.length, 7);
  for (const expected of fieldReference.poles) {
    const { dip, geomagnetic, model } = magneticPoles(instantOfDecimalYear(expected.decimal_year), { model: expected.model });
    assert.equal(model, expected.model);
    assertClose(dip.north.latitude, expected.north_dip_pole.lat, 0.005);
    assertSameDirection(dip.north.longitude, expected.north_dip_pole.lon, 0.005);
    assertClose(dip.south.latitude, expected.south_dip_pole.lat, 0.005);
    assertSameDirection(dip.south.longitude, expected.south_dip_pole.lon, 0.005);
    const axis = expected.north_geomagnetic_pole;
    assertClose(geomagnetic.north.geocentricLatitude, axis.lat_geocentric, 1e-5);
    assertClose(geomagnetic.north.latitude, axis.lat_geodetic, 1e-5);
    assertClose(geomagnetic.north.longitude, axis.lon, 1e-5);
    assertClose(geomagnetic.south.longitude, axis.south_pole_lon, 1e-5);
    assert.equal(geomagnetic.south.latitude, -geomagnetic.north.latitude);
  }
});

test('the wandering dip poles of 2025 to 2030, within 0.005°', () => {
  for (const year of [2025, 2026, 2027, 2028, 2029, 2030]) {
    const { expected } = published(`pole-wmm-${year}`) as unknown as {
      expected: { north_dip: [number, number]; south_dip: [number, number]; geomag_north_geocentric: [number, number] };
    };
    const { dip, geomagnetic } = magneticPoles(instantOfDecimalYear(year), { model: 'WMM2025' });
    assertClose(dip.north.latitude, expected.north_dip[0], 0.005);
    assertClose(dip.north.longitude, expected.north_dip[1], 0.005);
    assertClose(dip.south.latitude, expected.south_dip[0], 0.005);
    assertClose(dip.south.longitude, expected.south_dip[1], 0.005);
    assertClose(geomagnetic.north.geocentricLatitude, expected.geomag_north_geocentric[0], 0.005);
    assertClose(geomagnetic.north.longitude, expected.geomag_north_geocentric[1], 0.005);
  }
});

test('at the dip poles the field stands upright, down in the north and up in the south', () => {
  const instant = new Date('2026-11-25T00:00:00Z');
  const { dip } = magneticPoles(instant);
  const north = magneticField(dip.north, instant);
  const south = magneticField(dip.south, instant);
  assert.ok(north.h < 1e-6 && south.h < 1e-6);
  assertClose(north.inclination, 90, 1e-6);
  assertClose(south.inclination, -90, 1e-6);
});

test('the magnetic equator on thirty meridians, within 0.005°, with its horizontal field', () => {
  assert.equal(fieldReference.magnetic_equator.length, 30);
  for (const { model, decimal_year, lon, lat, H } of fieldReference.magnetic_equator) {
    const instant = instantOfDecimalYear(decimal_year);
    const latitude = magneticEquatorLatitude(lon, instant, { model });
    assertClose(latitude, lat, 0.005, `${model} ${lon}`);
    assertClose(magneticField({ latitude, longitude: lon }, instant, { model }).h, H, 0.01);
  }
});

test('the magnetic equator closes at the 180° meridian; bad arguments are refused by name', () => {
  const instant = new Date('2026-11-25T00:00:00Z');
  assert.equal(magneticEquatorLatitude(180, instant), magneticEquatorLatitude(-180, instant));
  assert.throws(() => magneticEquatorLatitude(361, instant), /^RangeError: longitude: /);
  assert.throws(() => magneticEquatorLatitude(0, new Date('2031-01-01T00:00:00Z')), /^RangeError: instant: /);
  assert.throws(() => magneticPoles(new Date('2031-01-01T00:00:00Z')), /^RangeError: instant: /);
});

// The axis of a dipole goes through the centre of the Earth: its ends are opposite each other, by either latitude.
test('the geomagnetic poles are opposite each other, in every model, longitudes in (-180, 180]', () => {
  for (const [time, model] of [['2015-01-01', 'WMM2015'], ['2019-12-31', 'WMM2015v2'], ['2020-01-01', 'WMM2020'], ['2029-12-31', 'WMM2025']] as const) {
    const { geomagnetic: { north, south }, dip } = magneticPoles(new Date(`${time}T00:00:00Z`), { model });
    assert.equal(south.latitude, -north.latitude);
    assert.equal(south.geocentricLatitude, -north.geocentricLatitude);
    assert.ok(north.geocentricLatitude > 80 && north.geocentricLatitude < north.latitude, 'a geodetic latitude is the larger');
    assert.ok(Math.abs(Math.abs(north.longitude - south.longitude) - 180) < 1e-9);
    for (const { longitude } of [north, south, dip.north, dip.south]) assert.ok(longitude > -180 && longitude <= 180);
  }
});
