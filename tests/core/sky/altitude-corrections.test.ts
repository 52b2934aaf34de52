import assert from 'node:assert/strict';
import { test } from 'node:test';
import { JupiterEquatorial, Mars, SaturnEquatorial, VenusCloud } from 'astronomia/semidiameter';
import fc from 'fast-check';
import { apparentSize } from '../../../core/sky/apparent-size.js';
import { dip, dipMinutes } from '../../../core/sky/dip.js';
import { horizonAltitude } from '../../../core/sky/horizon-altitude.js';
import type { HorizonMoment } from '../../../core/sky/horizon-altitude.js';
import { HORIZON_REFRACTION, refraction } from '../../../core/sky/refraction.js';
import { trueAltitude } from '../../../core/sky/true-altitude.js';
import { assertClose } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

interface Printed {
  id: string;
  source: string;
  inputs: { height_m: number[]; apparent_alt: number[] };
  expected: { dip_arcmin: number[]; R_arcmin: number[] };
  tolerance: { arcmin: number };
}

function printed(id: string): Printed {
  const found = reference<{ cases: Printed[] }>('sky-published.json').cases.find((item) => item.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
}

test(`${printed('alm-dip').source}: the formula of the dip was seen, its values worked out independently`, () => {
  const { inputs, expected, tolerance } = printed('alm-dip');
  inputs.height_m.forEach((height, index) => assertClose(dipMinutes(height), expected.dip_arcmin[index] ?? NaN, tolerance.arcmin, `${height} m`));
});

test(`${printed('alm-refr').source}: the formula of refraction was seen, its values worked out independently`, () => {
  const { inputs, expected, tolerance } = printed('alm-refr');
  inputs.apparent_alt.forEach((altitude, index) => assertClose(refraction(altitude) * 60, expected.R_arcmin[index] ?? NaN, tolerance.arcmin, `${altitude}°`));
});

test('there is no dip at the level of the sea and no refraction in the zenith', () => {
  assert.equal(dip(0), 0);
  assert.equal(refraction(90), 0);
});

// Density: refraction is proportional to pressure over absolute temperature.
test('thick cold air bends more: 1040 hPa at −20 °C by the factor 0.28 P / (T + 273)', () => {
  const factor = refraction(5, { pressure: 1040, temperature: -20 }) / refraction(5, { pressure: 1000, temperature: 7 });
  assertClose(factor, (1040 / 253) / (1000 / 280), 1e-12);
});

test('refraction lessens all the way from the horizon to the zenith', () => {
  const altitude = fc.double({ min: -2, max: 89.9, noNaN: true });
  fc.assert(fc.property(altitude, altitude, (a, b) => Math.abs(a - b) < 1e-6 || a < b === refraction(a) > refraction(b)));
});

// Sun: SD 16.0′, HP 0.15′; eye 12.5 m: dip 6.2′ (Nautical Almanac); refraction 34′ by convention.
for (const [moment, minutes] of [
  ['celestial', 0],
  ['centre', -40.07],
  ['upper-limb', -56.07],
  ['lower-limb', -24.07],
] as const) {
  test(`Sun, ${moment}, eye 12.5 m: centre ${minutes}′`, () => {
    const found = horizonAltitude(moment, { heightOfEye: 12.5, horizontalParallax: 0.15 / 60, semidiameter: 16 / 60 });
    assertClose(found.altitude * 60, minutes, 0.02);
  });
}

// Trade rule (Pub. 9 ch. 17): with her centre on the celestial horizon the Moon's upper limb is about on the visible one.
test('the Moon’s upper limb on the visible horizon puts her centre within half a diameter of the celestial horizon', () => {
  const { altitude } = horizonAltitude('upper-limb', { heightOfEye: 12.5, horizontalParallax: 57 / 60, semidiameter: 15.5 / 60 });
  assertClose(altitude * 60, 0, 15.5);
});

// Meeus, Astronomical Algorithms, ch. 55, as the library astronomia has its figures: at one astronomical unit, radians.
test('planets are as large as the almanacs have them, Venus with her clouds', () => {
  for (const [body, radians] of [['Venus', VenusCloud], ['Mars', Mars], ['Jupiter', JupiterEquatorial], ['Saturn', SaturnEquatorial]] as const) {
    const seconds = (radians * 180 * 3600) / Math.PI;
    assertClose(apparentSize(body, 1).semidiameter * 3600, seconds, 0.005 * seconds, body);
    assertClose(apparentSize(body, 0.5).semidiameter * 3600, 2 * seconds, 0.01 * seconds, body);
  }
});

test('the parts add up to the altitude', () => {
  for (const [moment, limb] of [['centre', 0], ['upper-limb', -1], ['lower-limb', 1]] as const) {
    const found = horizonAltitude(moment, { heightOfEye: 20, horizontalParallax: 0.95, semidiameter: 0.26 });
    assertClose(found.altitude * 60, found.parallax - found.dip - found.refraction + limb * found.semidiameter, 1e-12);
    assertClose(found.refraction, 34, 1e-12);
  }
  assertClose(HORIZON_REFRACTION, 34 / 60, 1e-15);
});

// Altitude-correction tables of the Nautical Almanac (from memory): Sun, lower limb, 45° in April to September: +15.0′.
test('the Sun’s lower limb at an apparent 45° in summer is corrected by +15.0′', () => {
  const found = trueAltitude({ observedAltitude: 45, limb: 'lower', heightOfEye: 0, horizontalParallax: 0.144 / 60, semidiameter: 15.8 / 60 });
  assertClose((found.trueAltitude - 45) * 60, 14.9, 0.1);
});

test('a star is corrected by dip and refraction alone, and both limbs give one centre', () => {
  const star = trueAltitude({ observedAltitude: 20, limb: 'centre', heightOfEye: 9, horizontalParallax: 0, semidiameter: 0 });
  assertClose(star.trueAltitude, 20 - dip(9) - refraction(20 - dip(9)), 1e-12);
  const moon = { heightOfEye: 9, horizontalParallax: 0.95, semidiameter: 0.26 };
  const lower = trueAltitude({ ...moon, limb: 'lower', observedAltitude: 29.74 });
  const upper = trueAltitude({ ...moon, limb: 'upper', observedAltitude: 30.26 });
  // Refraction differs by 0.03′ between the limbs.
  assertClose(lower.trueAltitude, upper.trueAltitude, 0.04 / 60);
});

test('bad arguments are refused by name', () => {
  assert.throws(() => dip(-1), { name: 'RangeError', message: /^heightOfEye/ });
  assert.throws(() => refraction(-3), { name: 'RangeError', message: /^apparentAltitude/ });
  assert.throws(() => refraction(10, { pressure: 30 }), { name: 'RangeError', message: /^pressure/ });
  assert.throws(() => refraction(10, { temperature: 300 }), { name: 'RangeError', message: /^temperature/ });
  const place = { heightOfEye: 10, horizontalParallax: 0, semidiameter: 0 };
  assert.throws(() => horizonAltitude('toString' as HorizonMoment, place), { name: 'RangeError', message: /^moment/ });
  assert.throws(() => horizonAltitude('centre', { ...place, semidiameter: NaN }), { name: 'RangeError', message: /^semidiameter/ });
  assert.throws(() => trueAltitude({ ...place, limb: 'left' as 'upper', observedAltitude: 3 }), { name: 'RangeError', message: /^limb/ });
  assert.throws(() => trueAltitude({ ...place, limb: 'upper', observedAltitude: 91 }), { name: 'RangeError', message: /^observedAltitude/ });
});
