import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { cosDegrees } from '../../../core/angle/trigonometry.js';
import { angleFromTo } from '../../../core/angle/wrap.js';
import { altitudeAzimuth } from '../../../core/sky/altitude-azimuth.js';
import { geographicalPosition } from '../../../core/sky/geographical-position.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { allowed, bodyOf, places, rowOf, Worst } from './places.js';

const at = (latitude: number, declination: number, localHourAngle: number) => altitudeAzimuth({ latitude, declination, localHourAngle });

test('289 azimuths × cos h agree with DE405 and ERFA: 0.015′ Sun, 0.05′ Moon, 0.08′ planets, 0.01′ stars', (t) => {
  const worst = new Worst();
  for (const { id, lat, lon, utc, hc_deg, zn_deg, ...place } of places) {
    const body = bodyOf(place);
    const { gha, declination } = geographicalPosition(body, new Date(utc));
    const { altitude, azimuth } = at(lat, declination, gha + lon);
    const off = angleFromTo(zn_deg, azimuth ?? NaN) * 60 * cosDegrees(hc_deg);
    worst.note(rowOf(body), off);
    assertClose(off, 0, allowed(body), `${id} ${body} azimuth × cos h, minutes`);
    assertClose(altitude * 60, hc_deg * 60, allowed(body), `${id} ${body} altitude, minutes`);
  }
  t.diagnostic(`worst azimuth × cos h, minutes: ${worst}`);
});

test('the triangle alone, given the reference GHA and declination, agrees to the last printed figure', () => {
  for (const { id, lat, lon, gha_deg, dec_deg, hc_deg, zn_deg } of places) {
    const { altitude, azimuth } = at(lat, dec_deg, gha_deg + lon);
    assertClose(altitude, hc_deg, 2e-6, id);
    assertClose(angleFromTo(zn_deg, azimuth ?? NaN) * cosDegrees(hc_deg), 0, 2e-6, id);
  }
});

// Geometry: what each must be follows from where the body stands.
for (const [what, triangle, altitude, azimuth] of [
  ['on the meridian to the south', [50, 10, 0], 50, 180],
  ['on the meridian to the north', [-50, -10, 0], 50, 0],
  ['between zenith and elevated pole', [50, 70, 0], 70, 0],
  ['at lower transit', [50, 70, 180], 30, 0],
  ['at lower transit in the south', [-50, -70, 180], 30, 180],
  ['below at LHA 180', [50, -10, 180], -50, 0],
  ['rising due east on the equator', [0, 0, 270], 0, 90],
  ['setting due west on the equator', [0, 0, 90], 0, 270],
  ['on the equator in the east', [0, 0, 330], 60, 90],
  ['rising due east anywhere at declination 0', [63, 0, 270], 0, 90],
  ['setting due west in the south at declination 0', [-63, 0, 90], 0, 270],
  ['in the celestial pole', [35, 90, 123], 35, 0],
  ['in the other pole', [35, -90, 123], -35, 180],
  ['a turn further', [50, 10, 360], 50, 180],
  ['a turn back', [50, 10, -360], 50, 180],
  ['in the zenith', [20, 20, 0], 90, null],
  ['in the zenith of the equator', [0, 0, 0], 90, null],
  ['in the nadir', [20, -20, 180], -90, null],
  ['at the north pole', [90, 23, 77], 23, null],
  ['at the south pole', [-90, 23, 77], -23, null],
] as const) {
  test(`L ${triangle[0]}, d ${triangle[1]}, LHA ${triangle[2]}, ${what}: altitude ${altitude}, azimuth ${azimuth ?? 'undetermined'}`, () => {
    const found = at(triangle[0], triangle[1], triangle[2]);
    assertClose(found.altitude, altitude, 1e-12);
    if (azimuth === null || found.azimuth === null) assert.equal(found.azimuth, azimuth);
    else assertSameDirection(found.azimuth, azimuth, 1e-12);
  });
}

// A plane triangle with sides of an arc second: the sphere differs by parts in 10¹¹.
test('an arc second from the zenith both altitude and azimuth keep their figures', () => {
  const second = 1 / 3600;
  const north = at(45, 45 + second, 0);
  assertClose(north.altitude, 90 - second, 1e-12);
  assert.equal(north.azimuth, 0);
  const west = at(0, 0, second);
  assertClose(west.altitude, 90 - second, 1e-12);
  assertSameDirection(west.azimuth ?? NaN, 270, 1e-9);
  const northwest = at(0, second, second);
  assertSameDirection(northwest.azimuth ?? NaN, 315, 1e-7);
});

const triangles = fc.record({
  latitude: fc.double({ min: -89.9, max: 89.9, noNaN: true }),
  declination: fc.double({ min: -90, max: 90, noNaN: true }),
  localHourAngle: fc.double({ min: -720, max: 720, noNaN: true }),
});

test('the figures satisfy the sine rule and the cosine rule of the triangle', () => {
  fc.assert(
    fc.property(triangles, ({ latitude, declination, localHourAngle }) => {
      const { altitude, azimuth } = at(latitude, declination, localHourAngle);
      if (azimuth === null) return;
      const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);
      const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);
      assertClose(cos(altitude) * sin(azimuth), -cos(declination) * sin(localHourAngle), 1e-12);
      assertClose(sin(declination), sin(latitude) * sin(altitude) + cos(latitude) * cos(altitude) * cos(azimuth), 1e-12);
    }),
  );
});

test('east and west are mirror images, and so are the hemispheres', () => {
  fc.assert(
    fc.property(triangles, ({ latitude, declination, localHourAngle }) => {
      const here = at(latitude, declination, localHourAngle);
      const mirrored = at(latitude, declination, -localHourAngle);
      const opposite = at(-latitude, -declination, localHourAngle);
      assertClose(mirrored.altitude, here.altitude, 1e-12);
      assertClose(opposite.altitude, here.altitude, 1e-12);
      if (here.azimuth === null || mirrored.azimuth === null || opposite.azimuth === null) return;
      const slack = 1e-11 / Math.max(cosDegrees(here.altitude), 1e-10);
      assertSameDirection(mirrored.azimuth, -here.azimuth, slack);
      assertSameDirection(opposite.azimuth, 180 - here.azimuth, slack);
    }),
  );
});

test('bad arguments are refused by name', () => {
  assert.throws(() => at(90.1, 0, 0), { name: 'RangeError', message: /^latitude/ });
  assert.throws(() => at(0, -91, 0), { name: 'RangeError', message: /^declination/ });
  assert.throws(() => at(0, 0, Infinity), { name: 'RangeError', message: /^localHourAngle/ });
  assert.throws(() => at(NaN, 0, 0), { name: 'RangeError', message: /^latitude/ });
});
