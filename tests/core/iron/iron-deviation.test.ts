import assert from 'node:assert/strict';
import { test } from 'node:test';
import { heeledParameters } from '../../../core/iron/heeled-parameters.js';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import { ironDeviationByCompass } from '../../../core/iron/iron-by-compass.js';
import { noIron, type IronParameters } from '../../../core/iron/iron-parameters.js';
import { compassField } from '../../../core/iron/poisson.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

interface Ship {
  id: string;
  kind: string;
  params: IronParameters & { H: number; Z: number };
  heel_deg: number;
  effective_params_at_heel: (IronParameters & { H: number; Z: number }) | null;
  headings_deg: number[];
  dev_by_compass_heading_deg: number[];
  dev_by_magnetic_heading_deg: number[];
  field_8_magnetic_headings: { Hp: number[]; directive_to_mag_north_over_H: number[] };
  second_location?: { H: number; Z: number; dev_by_magnetic_8: number[] };
}

// Poisson's equations solved numerically, independent of this code: header of the file.
const { cases: ships } = reference<{ cases: Ship[] }>('iron-ships.json');
const fieldOf = (place: { H: number; Z: number }) => ({ h: place.H, z: place.Z });

for (const ship of ships) {
  const field = fieldOf(ship.params);
  test(`ship ${ship.id} (${ship.kind}, heel ${ship.heel_deg}°): deviation on 36 magnetic headings to a millionth`, () => {
    ship.headings_deg.forEach((heading, index) => {
      const found = ironDeviation(ship.params, field, heading, ship.heel_deg);
      const expected = ship.dev_by_magnetic_heading_deg[index] ?? NaN;
      assertClose(found.deviation ?? NaN, expected, 1e-6, `${heading}`);
      assertSameDirection(found.compassHeading ?? NaN, heading - expected, 1e-6, `${heading}`);
    });
  });

  test(`ship ${ship.id}: the one deviation on 36 compass headings to a millionth`, () => {
    ship.headings_deg.forEach((heading, index) => {
      const { kind, answers } = ironDeviationByCompass(ship.params, field, heading, ship.heel_deg);
      assert.equal(kind, 'one');
      assertClose(answers[0]?.deviation ?? NaN, ship.dev_by_compass_heading_deg[index] ?? NaN, 1e-6, `${heading}`);
    });
  });

  test(`ship ${ship.id}: directive force and its part to magnetic north on eight headings`, () => {
    ship.field_8_magnetic_headings.Hp.forEach((force, index) => {
      const found = ironDeviation(ship.params, field, 45 * index, ship.heel_deg);
      // The file gives hundredths of a nanotesla and six decimals.
      assertClose(found.directiveForce, force, 0.006);
      assertClose(found.northForce ?? NaN, ship.field_8_magnetic_headings.directive_to_mag_north_over_H[index] ?? NaN, 1e-6);
    });
  });
}

test('the rods that act when heeled are those of the rotated equations', () => {
  const heeled = ships.filter((ship) => ship.effective_params_at_heel !== null);
  assert.ok(heeled.length >= 6);
  for (const { params, heel_deg: heel, effective_params_at_heel: expected } of heeled) {
    for (const [name, value] of Object.entries(heeledParameters(params, heel))) {
      assertClose(value, expected?.[name as keyof IronParameters] ?? NaN, 1e-7, name);
    }
  }
});

test('the same ship at a second place has the deviations of that place', () => {
  const travelled = ships.filter((ship) => ship.second_location !== undefined);
  assert.ok(travelled.length >= 3);
  for (const { params, second_location: place } of travelled) {
    place?.dev_by_magnetic_8.forEach((expected, index) => {
      assertClose(ironDeviation(params, fieldOf(place), 45 * index).deviation ?? NaN, expected, 1e-6);
    });
  }
});

test('without iron the compass shows the magnetic heading, any turn of it: 725 gives 005', () => {
  const found = ironDeviation(noIron, { h: 20000, z: -40000 }, 725);
  assertClose(found.compassHeading ?? NaN, 5, 1e-12);
  assertClose(found.deviation ?? NaN, 0, 1e-12);
  assert.equal(found.lost, null);
});

// Common practice, no source: a permanent force to the bow draws the north end forward.
test('+P gives easterly deviation heading east, +Q easterly heading north', () => {
  const field = { h: 20000, z: 0 };
  assert.ok((ironDeviation({ ...noIron, P: 1000 }, field, 90).deviation ?? 0) > 0);
  assert.ok((ironDeviation({ ...noIron, Q: 1000 }, field, 0).deviation ?? 0) > 0);
});

test('where the ship cancels the field on 330 the needle has no direction there, and none is made up', () => {
  const h = 20000;
  // From Poisson's equations: X = H cos 330, Y = -H sin 330.
  const iron = { ...noIron, P: -h * Math.sqrt(0.75), Q: -h / 2 };
  assert.deepEqual(ironDeviation(iron, { h, z: 0 }, 330), {
    deviation: null,
    compassHeading: null,
    directiveForce: 0,
    northForce: 0,
    lost: 'no-directive-force',
  });
});

test('at a magnetic pole there is no deviation, though the ship holds the needle: P alone gives 000 by compass', () => {
  const found = ironDeviation({ ...noIron, P: 500 }, { h: 0, z: 60000 }, 77);
  assert.equal(found.lost, 'no-horizontal-field');
  assert.equal(found.deviation, null);
  assert.equal(found.compassHeading, 0);
  assert.equal(found.northForce, null);
});

test('a wrong argument is named', () => {
  const field = { h: 20000, z: 1 };
  assert.throws(() => ironDeviation({ ...noIron, f: NaN }, field, 0), /^RangeError: parameters\.f/);
  assert.throws(() => ironDeviation({ P: 1 } as IronParameters, field, 0), /^RangeError: parameters\.a/);
  assert.throws(() => ironDeviation(noIron, { h: -1, z: 0 }, 0), /^RangeError: field\.h/);
  assert.throws(() => ironDeviation(noIron, { h: 1, z: Infinity }, 0), /^RangeError: field\.z/);
  assert.throws(() => ironDeviation(noIron, field, NaN), /^RangeError: magneticHeading/);
  assert.throws(() => ironDeviation(noIron, field, 0, Infinity), /^RangeError: heel/);
  assert.throws(() => ironDeviationByCompass(noIron, field, NaN), /^RangeError: compassHeading/);
});

// Poisson's third equation by hand, on 060 with H 20,000 and Z −30,000: X = 10,000, Y = −17,320.508.
test('the vertical force at the compass is that of the third equation, each term with its sign', () => {
  const field = { h: 20000, z: -30000 };
  const east = -20000 * Math.sqrt(0.75);
  const cases = [
    [{}, -30000],
    [{ g: 0.1 }, -30000 + 1000],
    [{ h: 0.2 }, -30000 + 0.2 * east],
    [{ k: 0.05 }, -31500],
    [{ R: -700 }, -30700],
    [{ g: 0.1, h: 0.2, k: 0.05, R: -700 }, -31500 + 1000 + 0.2 * east - 700],
  ] as const;
  for (const [iron, expected] of cases) assertClose(compassField({ ...noIron, ...iron }, field, 60).z, expected, 1e-9);
});
