import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { cosDegrees } from '../../../core/angle/trigonometry.js';
import { angleFromTo } from '../../../core/angle/wrap.js';
import { bodyNames } from '../../../core/sky/body.js';
import type { BodyName } from '../../../core/sky/body.js';
import { geographicalPosition, ghaAries } from '../../../core/sky/geographical-position.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';
import { allowed, bodyOf, places, rowOf, Worst } from './places.js';

test('289 places agree with DE405 and ERFA: 0.015′ Sun, 0.05′ Moon, 0.08′ planets, 0.01′ stars', (t) => {
  const [ofGha, ofDeclination] = [new Worst(), new Worst()];
  for (const place of places) {
    const body = bodyOf(place);
    const { gha, declination } = geographicalPosition(body, new Date(place.utc));
    const byGha = angleFromTo(place.gha_deg, gha) * 60 * cosDegrees(place.dec_deg);
    const byDeclination = (declination - place.dec_deg) * 60;
    ofGha.note(rowOf(body), byGha);
    ofDeclination.note(rowOf(body), byDeclination);
    assertClose(byGha, 0, allowed(body), `${place.id} ${body} GHA × cos d, minutes`);
    assertClose(byDeclination, 0, allowed(body), `${place.id} ${body} declination, minutes`);
  }
  t.diagnostic(`worst GHA × cos d, minutes: ${ofGha}`);
  t.diagnostic(`worst declination, minutes: ${ofDeclination}`);
});

test('GHA Aries agrees with IAU 2006/2000A sidereal time within 0.005′', () => {
  for (const { utc, gha_aries_deg } of places) assertSameDirection(ghaAries(new Date(utc)), gha_aries_deg, 0.005 / 60, utc);
});

// Distances of DE405; the almanac prints both figures to a tenth of a minute.
test('parallax and semidiameter agree with the distances of DE405 within 0.01′', () => {
  for (const place of places) {
    const { horizontalParallax, semidiameter } = geographicalPosition(bodyOf(place), new Date(place.utc));
    assertClose(horizontalParallax * 60, place.hp_arcmin ?? 0, 0.01, `${place.id} parallax`);
    if (place.sd_arcmin !== undefined) assertClose(semidiameter * 60, place.sd_arcmin, 0.01, `${place.id} semidiameter`);
  }
});

interface Printed {
  id: string;
  topic: string;
  source: string;
  inputs: { ut: string; body: string };
  expected: { gha?: number; dec?: number };
}

for (const { id, topic, source, inputs, expected } of reference<{ cases: Printed[] }>('sky-published.json').cases) {
  if (topic !== 'ephemeris') continue;
  test(`${source}: ${inputs.body} at ${inputs.ut} (${id}), seen in print to 0.1′`, () => {
    const instant = new Date(inputs.ut);
    if (inputs.body === 'Aries') {
      assertSameDirection(ghaAries(instant), expected.gha ?? NaN, 0.1 / 60);
      return;
    }
    const { gha, declination } = geographicalPosition(inputs.body as BodyName, instant);
    // The almanac shifts the Sun's printed hour angle by up to 0.15′ to spare a correction of it.
    const tolerance = 0.15 / 60;
    assertClose(declination, expected.dec ?? NaN, tolerance);
    if (expected.gha !== undefined) assertSameDirection(gha, expected.gha, tolerance);
  });
}

test('Meeus, Astronomical Algorithms, ex. 25.b (seen as a library quotes it): Sun of 1992-10-13 0 h TD at RA 198.37818°, d −7.78387°', () => {
  // TT−UTC was 59.184 s.
  const instant = new Date(Date.UTC(1992, 9, 13) - 59_184);
  const { gha, declination } = geographicalPosition('Sun', instant);
  assertClose(declination, -7.78387, 0.05 / 60);
  assertSameDirection(ghaAries(instant) - gha, 198.378179, 0.05 / 60);
});

test('Astronomical Almanac (seen as a library quotes it): Sun of 1982-05-01 0 h at RA 02h31m32.58s, d 14°54′34.9″ N', () => {
  const instant = new Date('1982-05-01T00:00:00Z');
  const { gha, declination } = geographicalPosition('Sun', instant);
  assertClose(declination, 14 + 54 / 60 + 34.9 / 3600, 0.05 / 60);
  assertSameDirection(ghaAries(instant) - gha, 15 * (2 + 31 / 60 + 32.58 / 3600), 0.05 / 60);
});

test('every body has a place within range at both ends of the years and between', () => {
  for (const text of ['1900-01-01T00:00:00Z', '1971-12-31T23:59:59Z', '2026-11-25T12:00:00Z', '2100-01-01T00:00:00Z']) {
    for (const body of bodyNames) {
      const { gha, declination, horizontalParallax, semidiameter } = geographicalPosition(body, new Date(text));
      assert.ok(gha >= 0 && gha < 360 && Math.abs(declination) <= 90, `${body} ${text}: ${gha} ${declination}`);
      assert.ok(horizontalParallax >= 0 && horizontalParallax < 1.1 && semidiameter >= 0 && semidiameter < 0.3, `${body} ${text}`);
    }
  }
});

test('the Sun keeps within the tropics and goes round once a day, whatever the instant', () => {
  const instants = fc.date({ min: new Date('1900-01-01T00:00:00Z'), max: new Date('2099-12-30T00:00:00Z'), noInvalidDate: true });
  fc.assert(
    fc.property(instants, (instant) => {
      const today = geographicalPosition('Sun', instant);
      const tomorrow = geographicalPosition('Sun', new Date(instant.getTime() + 86_400_000));
      assertSameDirection(tomorrow.gha, today.gha, 0.15);
      assert.ok(Math.abs(today.declination) < 23.46);
    }),
  );
});

test('a body in any capitals is the same body', () => {
  const instant = new Date('2026-11-25T12:00:00Z');
  assert.deepEqual(geographicalPosition('sun' as BodyName, instant), geographicalPosition('Sun', instant));
  assert.deepEqual(geographicalPosition('al nair' as BodyName, instant), geographicalPosition("Al Na'ir", instant));
});

test('an unknown body and an instant outside 1900 to 2100 are refused by name', () => {
  const now = new Date('2026-11-25T12:00:00Z');
  for (const body of ['', 'Pluto', 'toString', null]) {
    assert.throws(() => geographicalPosition(body as BodyName, now), { name: 'RangeError', message: /^body/ });
  }
  for (const instant of [new Date('1899-12-31T23:59:59Z'), new Date('2100-01-01T00:00:00.001Z'), new Date(NaN)]) {
    assert.throws(() => geographicalPosition('Sun', instant), { name: 'RangeError', message: /^instant/ });
    assert.throws(() => ghaAries(instant), { name: 'RangeError', message: /^instant/ });
  }
});
