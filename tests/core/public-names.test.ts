import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import * as core from '../../core/index.js';
import { assertClose } from '../support/assert-close.js';

/*
 * The names, arguments and members others build on: as long as the major version stays, each is
 * called in this way and gives this. That the figures are right is held elsewhere, against sources;
 * here stand only those that follow from the definitions themselves.
 */

const instant = new Date('2026-03-20T12:00:00Z');
const elements = ['x', 'y', 'z', 'h', 'f', 'declination', 'inclination'];
const none = { a: 0, b: 0, c: 0, d: 0, e: 0, f: 0, g: 0, h: 0, k: 0, P: 0, Q: 0, R: 0 };

function hasMembers(value: object | null, ...names: string[]): void {
  assert.ok(value);
  for (const name of names) assert.ok(name in value, `${name} is missing`);
}

describe('the names others build on: sky', () => {
  it('place a body', () => {
    hasMembers(core.geographicalPosition('Sun', instant), 'gha', 'declination', 'horizontalParallax', 'semidiameter');
  });

  it('solve the triangle, and say where there is no azimuth', () => {
    const overhead = core.altitudeAzimuth({ latitude: 20, declination: 20, localHourAngle: 0 });
    assertClose(overhead.altitude, 90, 1e-6);
    assert.equal(overhead.azimuth, null);
    assertClose(core.altitudeAzimuth({ latitude: 0, declination: 0, localHourAngle: 270 }).azimuth ?? NaN, 90, 1e-9);
  });

  it('give the amplitude, or null', () => {
    assert.deepEqual(core.amplitude({ latitude: 40, declination: 0 }), { amplitude: 0, rising: 90, setting: 270 });
    hasMembers(core.amplitude({ latitude: 40, declination: 10, altitude: -0.8 }), 'amplitude', 'rising', 'setting');
    assert.equal(core.amplitude({ latitude: 80, declination: 20 }), null);
  });

  it('find the next rising and setting, or say why there is none', () => {
    for (const event of ['rising', 'setting'] as const) {
      for (const moment of ['celestial', 'centre', 'upper-limb', 'lower-limb'] as const) {
        const found = core.horizonEvent({ body: 'Sun', latitude: 10, longitude: 20, after: instant, event, moment, heightOfEye: 12 });
        assert.ok(found.occurs);
        hasMembers(found, 'instant', 'azimuth', 'azimuthRate');
      }
    }
    const summer = core.horizonEvent({ body: 'Sun', latitude: 80, longitude: 0, after: new Date('2026-06-21T00:00:00Z'), event: 'setting', moment: 'celestial' });
    assert.ok(!summer.occurs);
    assert.equal(typeof summer.reason, 'string');
  });
});

describe('the names others build on: field', () => {
  it('give the field of a place with its change, doubt and zone', () => {
    const field = core.magneticField({ latitude: 10, longitude: 20, heightKm: 1 }, instant);
    hasMembers(field, ...elements, 'zone', 'model');
    hasMembers(field.annualChange, ...elements);
    hasMembers(field.uncertainty, ...elements);
    assert.ok(['normal', 'caution', 'blackout'].includes(field.zone));
    hasMembers(core.magneticField({ latitude: 10, longitude: 20 }, instant), 'declination');
  });

  it('give the world at one date, row by row from the north', () => {
    const { declination } = core.magneticFieldGrid({ step: 30, instant });
    assert.ok(declination instanceof Float64Array);
    assert.equal(declination.length % 7, 0, 'seven parallels from pole to pole');
  });

  it('bring a rose up to date', () => {
    assertClose(core.chartedVariation({ variation: -10, year: 2020, annualChangeMinutes: 6 }, new Date('2030-01-01T00:00:00Z')), -9, 0.002);
  });
});

describe('the names others build on: error and deviation', () => {
  it('tell the error of a compass, and its deviation where the variation is known', () => {
    assert.equal(core.compassError({ trueBearing: 1, compassBearing: 359 }).error, 2);
    assert.equal(core.compassError({ trueBearing: 1, compassBearing: 359, variation: 5 }).deviation, -3);
  });

  it('reckon a deviation of either kind of coefficients', () => {
    assert.equal(core.deviationAt({ A: 1, B: 2, C: 3, D: 4, E: 5 }, 0), 9);
    const found = core.exactDeviation({ A: 0, B: 0, C: 0.1, D: 0, E: 0, lambda: 0.9 }, 0);
    assertClose(found ?? NaN, (Math.atan(0.1) * 180) / Math.PI, 1e-9);
    assert.equal(core.exactDeviation({ A: 0, B: 0.1, C: 0, D: 0, E: 0 }, 0), 0);
  });

  it('fit readings, with or without weights', () => {
    const readings = [0, 45, 90, 135, 180, 225, 270, 315].map((heading) => ({ heading, deviation: core.deviationAt({ A: 1, B: 2, C: 3, D: 1, E: 0.5 }, heading) }));
    const fit = core.fitDeviation(readings);
    hasMembers(fit, 'coefficients', 'standardErrors', 'residuals', 'rms', 'suspects', 'determined', 'warnings');
    assertClose(fit.coefficients.B ?? NaN, 2, 1e-9);
    for (const model of ['approximate', 'exact'] as const) hasMembers(core.fitDeviation(readings.map((each) => ({ ...each, weight: 2 })), { model }), 'coefficients');
    const eight = Object.fromEntries(readings.map(({ deviation }, index) => [['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'][index], deviation]));
    assertClose(core.eightPointAnalysis(eight as unknown as core.EightDeviations).D, 1, 1e-9);
  });

  it('read a table both ways', () => {
    const table = core.deviationTable([0, 90, 180, 270].map((heading) => ({ heading, deviation: 2 })));
    assertClose(table.at(45), 2, 1e-9);
    assertClose(Number(table.toMagnetic(359)), 1, 1e-9);
    assertClose(Number(table.toCompass(1)), 359, 1e-9);
  });
});

describe('the names others build on: iron', () => {
  it('give the deviation of iron, upright and heeled', () => {
    for (const heel of [undefined, 10]) {
      const found = core.ironDeviation({ ...none, P: 1000 }, { h: 20000, z: 40000 }, 90, heel);
      hasMembers(found, 'deviation', 'compassHeading', 'directiveForce');
      assertClose(found.deviation ?? NaN, (Math.atan(1000 / 20000) * 180) / Math.PI, 1e-9);
    }
  });

  it('give exact coefficients, and part them again by two latitudes', () => {
    const ship = { ...none, c: 0.05, f: -0.02, P: 1200, Q: -600 };
    const fields = [{ h: 20000, z: 40000 }, { h: 30000, z: -20000 }];
    const observations = fields.map((field) => ({ exact: core.exactCoefficients(ship, field), field, lambda: 1 }));
    hasMembers(observations[0]?.exact ?? null, 'lambda', 'A', 'B', 'C', 'D', 'E');
    const parted = core.separateIron(observations);
    assertClose(parted.P ?? NaN, 1200, 1e-6);
    assertClose(parted.c ?? NaN, 0.05, 1e-9);
    assertClose(parted.Q ?? NaN, -600, 1e-6);
    assertClose(parted.f ?? NaN, -0.02, 1e-9);
  });
});
