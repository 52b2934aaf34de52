import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { angleFromTo } from '../../../core/angle/wrap.js';
import { altitudeAzimuth } from '../../../core/sky/altitude-azimuth.js';
import { bodyNames } from '../../../core/sky/body.js';
import type { BodyName } from '../../../core/sky/body.js';
import { geographicalPosition } from '../../../core/sky/geographical-position.js';
import { horizonAltitude } from '../../../core/sky/horizon-altitude.js';
import type { HorizonMoment } from '../../../core/sky/horizon-altitude.js';
import { horizonEvent } from '../../../core/sky/horizon-event.js';
import type { HorizonEventArguments } from '../../../core/sky/horizon-event.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';
import { bodyOf, rowOf, Worst } from './places.js';

interface Event {
  id: string;
  body: string;
  kind: 'rise' | 'set';
  mode: 'centre_celestial' | 'centre_visible' | 'upper_limb_visible' | 'lower_limb_visible';
  search_from_utc: string;
  lat: number;
  lon: number;
  height_of_eye_m: number;
  expected: 'event' | 'none';
  reason: 'always above' | 'always below';
  utc: string;
  zn_deg: number;
  alt_rate_arcmin_per_min: number;
  zn_rate_deg_per_min: number;
}

/** DE405 with ERFA; refraction 34′, dip 1.76′ √h: the method stands in the header of the file. */
const events = reference<{ cases: Event[] }>('horizon-events.json').cases;
const moments = { centre_celestial: 'celestial', centre_visible: 'centre', upper_limb_visible: 'upper-limb', lower_limb_visible: 'lower-limb' } as const;

function soughtBy(event: Event): HorizonEventArguments {
  return {
    body: bodyOf(event),
    latitude: event.lat,
    longitude: event.lon,
    after: new Date(event.search_from_utc),
    event: event.kind === 'rise' ? 'rising' : 'setting',
    moment: moments[event.mode],
    heightOfEye: event.height_of_eye_m,
  };
}

test('170 risings and settings agree with DE405 and ERFA: 0.3′ of altitude, and 0.01° of bearing besides', (t) => {
  const [ofBearing, ofAltitude] = [new Worst(), new Worst()];
  for (const event of events) {
    if (event.expected === 'none') continue;
    const found = horizonEvent(soughtBy(event));
    assert.ok(found.occurs, `${event.id} occurs`);
    const altitudeRate = Math.abs(event.alt_rate_arcmin_per_min);
    const minutesLate = (found.instant.getTime() - Date.parse(event.utc)) / 60_000;
    // The reference rounds to a tenth of a second.
    assertClose(minutesLate, 0, 0.3 / altitudeRate + 0.1 / 60, `${event.id} instant, minutes`);
    assertSameDirection(found.azimuth ?? NaN, event.zn_deg, 0.01 + (0.3 * Math.abs(event.zn_rate_deg_per_min)) / altitudeRate, `${event.id} bearing`);
    assertClose(found.azimuthRate ?? NaN, event.zn_rate_deg_per_min, 1e-4, `${event.id} rate of the bearing`);
    const row = `${rowOf(bodyOf(event))} ${moments[event.mode]}`;
    ofBearing.note(row, angleFromTo(event.zn_deg, found.azimuth ?? NaN));
    ofAltitude.note(row, minutesLate * altitudeRate);
  }
  t.diagnostic(`worst bearing, degrees: ${ofBearing}`);
  t.diagnostic(`worst instant as altitude, minutes of arc: ${ofAltitude}`);
});

for (const event of events.filter(({ expected }) => expected === 'none')) {
  const reason = event.reason === 'always above' ? 'stays above' : 'stays below';
  test(`${event.body} ${event.kind} at L ${event.lat} from ${event.search_from_utc} (${event.id}): none, ${reason}`, () => {
    assert.deepEqual(horizonEvent(soughtBy(event)), { occurs: false, reason });
  });
}

const sun = (changes: Partial<HorizonEventArguments>): HorizonEventArguments => ({
  body: 'Sun',
  latitude: 0,
  longitude: 0,
  after: new Date('2026-03-20T00:00:00Z'),
  event: 'rising',
  moment: 'celestial',
  ...changes,
});

// Geometry: at the pole altitude is declination, and the Sun's is 0 at the equinox; it was
// 2026-03-20 14:46 UTC (Astronomical Almanac, from memory).
test('at the north pole the Sun rises at the March equinox, with no bearing', () => {
  const found = horizonEvent(sun({ latitude: 90 }));
  assert.ok(found.occurs);
  assertClose(found.instant.getTime() / 60_000, Date.parse('2026-03-20T14:46:00Z') / 60_000, 2);
  assert.equal(found.azimuth, null);
  assert.equal(found.azimuthRate, null);
});

test('at the south pole it sets then', () => {
  const found = horizonEvent(sun({ latitude: -90, event: 'setting' }));
  assert.ok(found.occurs);
  assertClose(found.instant.getTime() / 60_000, Date.parse('2026-03-20T14:46:00Z') / 60_000, 2);
  assert.deepEqual(horizonEvent(sun({ latitude: -90 })), { occurs: false, reason: 'not within 24 h' });
});

test('at a pole a star stays where it is', () => {
  assert.deepEqual(horizonEvent(sun({ body: 'Vega', latitude: 90 })), { occurs: false, reason: 'stays above' });
  assert.deepEqual(horizonEvent(sun({ body: 'Vega', latitude: -90 })), { occurs: false, reason: 'stays below' });
});

// Geometry: at the equinox the Sun rises due east everywhere; her daily change of declination is 0.4°.
test('at the equinox the Sun rises due east and sets due west in any latitude', () => {
  for (const latitude of [-60, -20, 0, 20, 60]) {
    for (const [event, bearing] of [['rising', 90], ['setting', 270]] as const) {
      const found = horizonEvent(sun({ latitude, event }));
      assert.ok(found.occurs && found.azimuth !== null);
      assertSameDirection(found.azimuth, bearing, 0.3 / Math.cos((latitude * Math.PI) / 180), `${latitude}`);
    }
  }
});

test('180° W, 180° E and 180° counted eastward are one meridian', () => {
  const found = horizonEvent(sun({ latitude: 35, longitude: 180 }));
  assert.deepEqual(horizonEvent(sun({ latitude: 35, longitude: -180 })), found);
  assert.deepEqual(horizonEvent(sun({ latitude: 35, longitude: 350 })), horizonEvent(sun({ latitude: 35, longitude: -10 })));
});

// The Moon rises some fifty minutes later every day, so once a month a day has no moonrise.
test('the Moon misses a day: she is on both sides of the horizon and yet does not rise within 24 h', () => {
  const rising = sun({ body: 'Moon', latitude: 50, after: new Date('2026-11-20T00:00:00Z') });
  const first = horizonEvent(rising);
  assert.ok(first.occurs);
  assert.deepEqual(horizonEvent({ ...rising, after: first.instant }), { occurs: false, reason: 'not within 24 h' });
});

test('the instant found, given as `after`, is left out and the next day’s is found; two seconds earlier it is found again', () => {
  const first = horizonEvent(sun({ body: 'Vega', latitude: 30 }));
  assert.ok(first.occurs);
  const next = horizonEvent(sun({ body: 'Vega', latitude: 30, after: first.instant }));
  assert.ok(next.occurs);
  // A sidereal day, 23h56m04.09s (Explanatory Supplement, from memory).
  assertClose((next.instant.getTime() - first.instant.getTime()) / 1000, 86_164.09, 0.05);
  const again = horizonEvent(sun({ body: 'Vega', latitude: 30, after: new Date(first.instant.getTime() - 2000) }));
  assert.ok(again.occurs);
  assertClose(again.instant.getTime(), first.instant.getTime(), 2);
});

// Geometry: 90° less the Sun's greatest declination, 23.436°, is 66.564°.
test('just outside the polar circle midsummer sunset and sunrise lie close together, and inside there are none', () => {
  const grazing = sun({ latitude: 66.5, after: new Date('2026-06-21T12:00:00Z'), event: 'setting' });
  const set = horizonEvent(grazing);
  const risen = horizonEvent({ ...grazing, event: 'rising' });
  assert.ok(set.occurs && risen.occurs);
  const minutes = (risen.instant.getTime() - set.instant.getTime()) / 60_000;
  assert.ok(minutes > 0 && minutes < 90, `${minutes} minutes`);
  assert.deepEqual(horizonEvent({ ...grazing, latitude: 66.6 }), { occurs: false, reason: 'stays above' });
  assert.deepEqual(horizonEvent({ ...grazing, latitude: -66.6 }), { occurs: false, reason: 'stays below' });
});

test('a grazing event of any smallness is found: a star that dips two thousandths of a degree under the horizon', () => {
  const after = new Date('2026-11-25T00:00:00Z');
  const { declination } = geographicalPosition('Vega', after);
  const latitude = 90 - declination - 0.002;
  const [set, risen] = (['setting', 'rising'] as const).map((event) => horizonEvent(sun({ body: 'Vega', latitude, after, event })));
  assert.ok(set?.occurs && risen?.occurs);
  assert.deepEqual(horizonEvent(sun({ body: 'Vega', latitude: latitude + 0.004, after })), { occurs: false, reason: 'stays above' });
});

test('the search holds at both ends of the years known', () => {
  for (const after of [new Date('1900-01-01T00:00:00Z'), new Date('2100-01-01T00:00:00Z')]) {
    const found = horizonEvent(sun({ latitude: 10, after }));
    assert.ok(found.occurs && found.azimuth !== null);
    // The Sun of New Year is 23.0° S: sin A = sin 23.0° / cos 10°, so she rises at 113.4°.
    assertSameDirection(found.azimuth, 113.4, 0.1);
  }
});

const anySought = fc.record({
  body: fc.constantFrom<BodyName>(...bodyNames),
  latitude: fc.double({ min: -89.99, max: 89.99, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  // A minute in, so that the test itself may look just before the event.
  after: fc.date({ min: new Date('1900-01-01T00:01:00Z'), max: new Date('2099-12-30T00:00:00Z'), noInvalidDate: true }),
  event: fc.constantFrom('rising' as const, 'setting' as const),
  moment: fc.constantFrom<HorizonMoment>('celestial', 'centre', 'upper-limb', 'lower-limb'),
  heightOfEye: fc.double({ min: 0, max: 60, noNaN: true }),
});

test('wherever an event is found, the body stands at that altitude then, on the right bearing, going the right way', () => {
  fc.assert(
    fc.property(anySought, (sought) => {
      const found = horizonEvent(sought);
      if (!found.occurs) return;
      const heightAt = (time: number): number => {
        const place = geographicalPosition(sought.body, new Date(time));
        const { altitude } = altitudeAzimuth({ ...sought, declination: place.declination, localHourAngle: place.gha + sought.longitude });
        return altitude - horizonAltitude(sought.moment, { ...sought, ...place }).altitude;
      };
      const time = found.instant.getTime();
      assert.ok(time > sought.after.getTime() && time <= sought.after.getTime() + 86_400_000);
      // Half a second of arc: the interpolated path, and the millisecond.
      assertClose(heightAt(time), 0, 1.5e-4, 'height');
      const place = geographicalPosition(sought.body, found.instant);
      const { azimuth } = altitudeAzimuth({ ...sought, declination: place.declination, localHourAngle: place.gha + sought.longitude });
      assertSameDirection(found.azimuth ?? NaN, azimuth ?? NaN, 1.5e-4);
      const climb = heightAt(time + 20_000) - heightAt(time - 20_000);
      if (Math.abs(climb) > 3e-4) assert.equal(climb > 0, sought.event === 'rising');
    }),
    { numRuns: 150 },
  );
});

test('wherever none is found, a look every quarter of an hour finds none either', () => {
  fc.assert(
    fc.property(anySought, (sought) => {
      const found = horizonEvent(sought);
      if (found.occurs) return;
      const heights = Array.from({ length: 97 }, (_, quarter) => {
        const place = geographicalPosition(sought.body, new Date(sought.after.getTime() + quarter * 900_000));
        const { altitude } = altitudeAzimuth({ ...sought, declination: place.declination, localHourAngle: place.gha + sought.longitude });
        return altitude - horizonAltitude(sought.moment, { ...sought, ...place }).altitude;
      });
      const signs = heights.map((height) => Math.abs(height) < 1e-3 ? 0 : Math.sign(height));
      if (found.reason === 'stays above') assert.ok(signs.every((sign) => sign >= 0));
      if (found.reason === 'stays below') assert.ok(signs.every((sign) => sign <= 0));
      const way = sought.event === 'rising' ? 1 : -1;
      assert.ok(!signs.some((sign, index) => index > 0 && sign === way && signs[index - 1] === -way));
    }),
    { numRuns: 150 },
  );
});

test('bad arguments are refused by name', () => {
  for (const [name, changes] of Object.entries({
    body: { body: 'Pluto' as BodyName },
    latitude: { latitude: -91 },
    longitude: { longitude: 361 },
    after: { after: new Date('1800-01-01T00:00:00Z') },
    event: { event: 'culmination' as 'rising' },
    moment: { moment: 'visible' as 'centre' },
    heightOfEye: { heightOfEye: -1 },
  })) {
    assert.throws(() => horizonEvent(sun(changes)), { name: 'RangeError', message: new RegExp(`^${name}:`) });
  }
});
