import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { altitudeAzimuth } from '../../../core/sky/altitude-azimuth.js';
import { amplitude } from '../../../core/sky/amplitude.js';
import { azimuthByAltitude } from '../../../core/sky/azimuth-by-altitude.js';
import { geographicalPosition } from '../../../core/sky/geographical-position.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

interface Printed {
  id: string;
  topic: string;
  source: string;
  seen: boolean;
  inputs: { utc: string; lat_deg: number; dec_deg: number; compass_bearing: number; gyro_bearing: number; variation: number; event: string; horizon?: string };
  expected: { true_bearing_at_rising: number; apparent_time_of_rising: string; true_bearing: number };
  tolerance: { deg: number; minutes: number };
}

const cases = reference<{ cases: Printed[] }>('sky-published.json').cases.filter(({ topic }) => topic.startsWith('amplitude'));

for (const { id, source, inputs, expected, tolerance } of cases.filter(({ topic }) => topic === 'amplitude table')) {
  test(`${source} (${id}, seen in print): L 32 N, d ${inputs.dec_deg} N rises at ${expected.true_bearing_at_rising}°, ${expected.apparent_time_of_rising}`, () => {
    const found = amplitude({ latitude: inputs.lat_deg, declination: inputs.dec_deg });
    assertClose(found?.rising ?? NaN, expected.true_bearing_at_rising, tolerance.deg);
    // At the time printed the Sun stands on the horizon: the printed minute of time is a quarter of a degree.
    const [hours = NaN, minutes = NaN] = expected.apparent_time_of_rising.split(':').map(Number);
    const { altitude } = altitudeAzimuth({ latitude: inputs.lat_deg, declination: inputs.dec_deg, localHourAngle: 15 * (hours + minutes / 60 - 12) });
    assertClose(altitude, 0, tolerance.minutes / 4);
  });
}

/** Bearing of the Sun by the examination's rule: Pub. 9 takes the altitude as −0.7° on the visible horizon. */
function examined({ inputs }: Printed): number {
  const { declination } = geographicalPosition('Sun', new Date(inputs.utc));
  const altitude = inputs.horizon?.startsWith('visible') ? -0.7 : 0;
  return amplitude({ latitude: inputs.lat_deg, declination, altitude })?.[inputs.event === 'rise' ? 'rising' : 'setting'] ?? NaN;
}

function printed(id: string): Printed {
  const found = cases.find((item) => item.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
}

// Question and choices seen, the key not: of the four choices one fits.
test(`${printed('amp-uscg-0111').source}, 11 January 1981: deviation 1.4° E`, () => {
  const item = printed('amp-uscg-0111');
  assertClose(examined(item) - item.inputs.compass_bearing - item.inputs.variation, 1.4, item.tolerance.deg);
});

test(`${printed('amp-uscg-0620-visible').source}, 20 June 1981, visible horizon: gyro error 1.3° E, not 0 and not west`, () => {
  const item = printed('amp-uscg-0620-visible');
  assertClose(examined(item) - item.inputs.gyro_bearing, 1.3, item.tolerance.deg);
});

for (const item of cases.filter(({ id, seen }) => id.startsWith('amp-uscg') && !seen)) {
  test(`${item.source} (${item.id}, answer not seen: a check of regression only): ${item.expected.true_bearing}°`, () => {
    assertSameDirection(examined(item), item.expected.true_bearing, item.tolerance.deg);
  });
}

interface Event {
  id: string;
  kind: 'rise' | 'set';
  expected: string;
  lat: number;
  dec_deg: number;
  true_alt_deg: number;
  zn_deg: number;
  alt_rate_arcmin_per_min: number;
  zn_rate_deg_per_min: number;
  amp_at_event_deg: number;
  amp_theoretical_deg: number | null;
}

test('the bearings of 170 risings and settings follow from latitude, declination and altitude (DE405 and ERFA)', () => {
  for (const event of reference<{ cases: Event[] }>('horizon-events.json').cases) {
    if (event.expected === 'none') continue;
    const { lat: latitude, dec_deg: declination, true_alt_deg: altitude } = event;
    const found = amplitude({ latitude, declination, altitude });
    // Declination and altitude are given to 0.00001°: near the turning point of the bearing that shows.
    const slack = 3e-5 + 2e-5 * Math.abs((60 * event.zn_rate_deg_per_min) / event.alt_rate_arcmin_per_min);
    assertSameDirection(found?.[event.kind === 'rise' ? 'rising' : 'setting'] ?? NaN, event.zn_deg, slack, event.id);
    assertClose(found?.amplitude ?? NaN, event.amp_at_event_deg, slack, event.id);
    const celestial = amplitude({ latitude, declination });
    if (event.amp_theoretical_deg === null) assert.equal(celestial, null, event.id);
    else assertClose(celestial?.amplitude ?? NaN, event.amp_theoretical_deg, 1e-4, event.id);
  }
});

// Geometry: sin A = sin d / cos L at the hard places.
for (const [what, latitude, declination, expected] of [
  ['on the equator the amplitude is the declination', 0, 23, { amplitude: 23, rising: 67, setting: 293 }],
  ['at declination 0 it is nothing', 51, 0, { amplitude: 0, rising: 90, setting: 270 }],
  ['in the south it is named as the declination', -60, -14.477512185929925, { amplitude: -30, rising: 120, setting: 240 }],
  ['a body that only touches the horizon does so due north', 66.5, 23.5, { amplitude: 90, rising: 0, setting: 0 }],
  ['or due south', 66.5, -23.5, { amplitude: -90, rising: 180, setting: 180 }],
  ['a body that never sets', 66.6, 23.5, null],
  ['a body that never rises', 66.6, -23.5, null],
  ['at the north pole nothing rises', 90, 0, null],
  ['at the south pole neither', -90, 10, null],
  ['the celestial pole stands still', 40, 90, null],
] as const) {
  test(`L ${latitude}, d ${declination}: ${what}`, () => {
    const found = amplitude({ latitude, declination });
    if (expected === null || found === null) {
      assert.equal(found, expected);
      return;
    }
    assertClose(found.amplitude, expected.amplitude, 1e-9);
    assertSameDirection(found.rising, expected.rising, 1e-9);
    assertSameDirection(found.setting, expected.setting, 1e-9);
  });
}

test('a lower altitude shifts the bearing of rising towards the elevated pole', () => {
  for (const latitude of [40, -40]) {
    const [celestial, seen] = [amplitude({ latitude, declination: 10 }), amplitude({ latitude, declination: 10, altitude: -0.7 })];
    const shift = (seen?.rising ?? NaN) - (celestial?.rising ?? NaN);
    assert.ok(latitude > 0 ? shift < -0.1 : shift > 0.1, `${latitude}: ${shift}`);
  }
});

test('the bearing by altitude is the bearing by time', () => {
  const angle = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(angle(-89, 89), angle(-89, 89), angle(1, 179), (latitude, declination, localHourAngle) => {
      const { altitude, azimuth } = altitudeAzimuth({ latitude, declination, localHourAngle });
      if (azimuth === null || Math.abs(altitude) > 89) return;
      const found = azimuthByAltitude({ latitude, declination, altitude });
      // Near the meridian a last figure of the altitude is worth its square root in bearing.
      assertSameDirection(found?.setting ?? azimuth, azimuth, 1e-4);
      assertSameDirection(found?.rising ?? -azimuth, -azimuth, 1e-4);
    }),
  );
});

test('bad arguments are refused by name', () => {
  assert.throws(() => amplitude({ latitude: 91, declination: 0 }), { name: 'RangeError', message: /^latitude/ });
  assert.throws(() => amplitude({ latitude: 0, declination: NaN }), { name: 'RangeError', message: /^declination/ });
  assert.throws(() => amplitude({ latitude: 0, declination: 0, altitude: 100 }), { name: 'RangeError', message: /^altitude/ });
});
