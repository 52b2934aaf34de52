import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Body, Illumination } from 'astronomy-engine';
import { bodyNames } from '../../../core/sky/body.js';
import { magnitude } from '../../../core/sky/magnitude.js';
import { daylight } from '../../../core/sky/daylight.js';
import { assertClose } from '../../support/assert-close.js';

// The library's magnitudes follow other formulas than ours (Hilton 2005 for Venus, Schlyter for Saturn).
test('planets are as bright as astronomy-engine says, within a quarter of a magnitude, whatever the month', () => {
  for (let month = 0; month < 120; month += 1) {
    const instant = new Date(Date.UTC(2020, month, 10));
    for (const body of ['Mars', 'Jupiter', 'Saturn'] as const) {
      assertClose(magnitude(body, instant), Illumination(Body[body], instant).mag, 0.25, `${body} ${instant.toISOString()}`);
    }
    const venus = Illumination(Body.Venus, instant);
    // A thin crescent close to the Sun is not looked for.
    if (venus.phase_angle < 150) assertClose(magnitude('Venus', instant), venus.mag, 0.3, `Venus ${instant.toISOString()}`);
  }
});

// Observers' handbooks, from memory: full Moon about −12.7, Mars −2.9 in August 2003, Saturn with rings wide open −0.2 to 0 at the best.
test('the full Moon is of about −12.7 and the Mars of August 2003 of −2.9', () => {
  assertClose(magnitude('Moon', new Date('2026-11-24T14:54:00Z')), -12.7, 0.2);
  assertClose(magnitude('Mars', new Date('2003-08-28T00:00:00Z')), -2.9, 0.1);
});

test('Sirius is the brightest star and no star of the list is fainter than 3.3', () => {
  const now = new Date('2026-11-25T12:00:00Z');
  const stars = bodyNames.slice(6);
  const brightness = stars.map((star) => magnitude(star, now));
  assert.equal(stars[brightness.indexOf(Math.min(...brightness))], 'Sirius');
  assertClose(magnitude('Sirius', now), -1.46, 0.02);
  // Acamar, the faintest: 3.2 in the almanac's list (from memory).
  assert.ok(Math.max(...brightness) <= 3.3);
});

// Nautical Almanac: civil twilight to 6°, nautical to 12°; astronomical to 18° from memory.
for (const [altitude, light] of [
  [45, 'day'],
  [-0.8, 'day'],
  [-0.9, 'civil twilight'],
  [-6, 'civil twilight'],
  [-6.01, 'nautical twilight'],
  [-12.01, 'astronomical twilight'],
  [-18.01, 'night'],
  [-90, 'night'],
] as const) {
  test(`the Sun at ${altitude}°: ${light}`, () => assert.equal(daylight(altitude), light));
}

test('bad arguments are refused by name', () => {
  assert.throws(() => daylight(NaN), { name: 'RangeError', message: /^sunAltitude/ });
  assert.throws(() => magnitude('Sun', new Date('2200-01-01')), { name: 'RangeError', message: /^instant/ });
});
