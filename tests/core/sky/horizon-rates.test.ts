import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { altitudeAzimuth } from '../../../core/sky/altitude-azimuth.js';
import { bodyMotion } from '../../../core/sky/body-motion.js';
import { geographicalPosition } from '../../../core/sky/geographical-position.js';
import { horizonRates } from '../../../core/sky/horizon-rates.js';
import { assertClose } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';
import { bodyOf } from './places.js';

interface Event {
  id: string;
  body: string;
  expected: string;
  utc: string;
  lat: number;
  lon: number;
  alt_rate_arcmin_per_min: number;
  zn_rate_deg_per_min: number;
}

test('the rates of 170 risings and settings are those of DE405 and ERFA, the body’s own motion included', () => {
  for (const event of reference<{ cases: Event[] }>('horizon-events.json').cases) {
    if (event.expected === 'none') continue;
    const instant = new Date(event.utc);
    const { gha, declination } = geographicalPosition(bodyOf(event), instant);
    const triangle = { latitude: event.lat, declination, localHourAngle: gha + event.lon };
    const rates = horizonRates(triangle, bodyMotion(bodyOf(event), instant));
    assertClose((rates.altitude ?? NaN) * 60, event.alt_rate_arcmin_per_min, 2e-3, `${event.id} altitude`);
    assertClose(rates.azimuth ?? NaN, event.zn_rate_deg_per_min, 1e-4, `${event.id} bearing`);
  }
});

// Geometry: on the equator a body of declination 0 climbs straight up; at the pole it goes round level.
test('due east on the equator a body climbs a quarter of a degree a minute and keeps its bearing', () => {
  const rates = horizonRates({ latitude: 0, declination: 0, localHourAngle: 280 });
  assertClose(rates.altitude ?? NaN, 0.25, 1e-12);
  assertClose(rates.azimuth ?? NaN, 0, 1e-12);
});

test('near the pole it goes round with the clock; south of the line on the meridian against it', () => {
  assertClose(horizonRates({ latitude: 89.999, declination: 20, localHourAngle: 70 }).azimuth ?? NaN, 0.25, 1e-4);
  assert.ok((horizonRates({ latitude: -40, declination: 0, localHourAngle: 0 }).azimuth ?? NaN) < -0.25);
});

test('at a pole the bearing has no rate, in the zenith nothing has', () => {
  assert.deepEqual(horizonRates({ latitude: 90, declination: 20, localHourAngle: 70 }), { altitude: 0, azimuth: null });
  assert.deepEqual(horizonRates({ latitude: 20, declination: 20, localHourAngle: 0 }), { altitude: null, azimuth: null });
});

test('the rates are what a second of time changes', () => {
  const angle = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(angle(-89, 89), angle(-60, 60), angle(0, 360), angle(-0.001, 0.001), (latitude, declination, localHourAngle, declinationRate) => {
      const motion = { hourAngleRate: 0.2412, declinationRate };
      const at = (minutes: number) =>
        altitudeAzimuth({
          latitude,
          declination: declination + declinationRate * minutes,
          localHourAngle: localHourAngle + motion.hourAngleRate * minutes,
        });
      const [before, after] = [at(-1 / 60), at(1 / 60)];
      if (before.azimuth === null || after.azimuth === null || Math.abs(before.altitude) > 88) return;
      const rates = horizonRates({ latitude, declination, localHourAngle }, motion);
      assertClose(rates.altitude ?? NaN, (after.altitude - before.altitude) * 30, 1e-5);
      assertClose(rates.azimuth ?? NaN, ((((after.azimuth - before.azimuth + 540) % 360) - 180) * 30), 1e-4);
    }),
  );
});

// A star's hour angle grows by 15.04107° an hour, the Moon's by some half a degree less (Nautical Almanac, from memory: 15.0411° and 14.3167° the least).
test('a star gains on the clock and the Moon falls behind', () => {
  const instant = new Date('2026-11-25T12:00:00Z');
  assertClose(bodyMotion('Vega', instant).hourAngleRate * 60, 15.04107, 1e-4);
  const moon = bodyMotion('Moon', instant).hourAngleRate * 60;
  assert.ok(moon > 14.3 && moon < 14.7, `${moon}`);
});

test('bad arguments are refused by name', () => {
  const triangle = { latitude: 0, declination: 0, localHourAngle: 0 };
  assert.throws(() => horizonRates({ ...triangle, latitude: 100 }), { name: 'RangeError', message: /^latitude/ });
  assert.throws(() => horizonRates(triangle, { hourAngleRate: NaN }), { name: 'RangeError', message: /^hourAngleRate/ });
  assert.throws(() => horizonRates(triangle, { declinationRate: Infinity }), { name: 'RangeError', message: /^declinationRate/ });
  assert.throws(() => bodyMotion('Sun', new Date(NaN)), { name: 'RangeError', message: /^instant/ });
});
