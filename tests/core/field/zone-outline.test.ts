import assert from 'node:assert/strict';
import { test } from 'node:test';
import { magneticElements } from '../../../core/field/magnetic-field.js';
import { magneticFieldGrid } from '../../../core/field/magnetic-field-grid.js';
import { zoneOutlines } from '../../../core/field/zone-outline.js';

const instants = [new Date('2015-01-01T00:00:00Z'), new Date('2020-01-01T00:00:00Z'), new Date('2029-12-31T00:00:00Z')];

type Ring = readonly (readonly [number, number])[];

/** Even-odd rule on a flat chart around the pole of a side: an independent way to tell inside from outside. */
function isInside(ring: Ring, latitude: number, longitude: number): boolean {
  const flat = ([east, north]: readonly [number, number]): [number, number] => {
    const distance = 90 - Math.abs(north);
    return [distance * Math.cos((east * Math.PI) / 180), distance * Math.sin((east * Math.PI) / 180)];
  };
  const [x, y] = flat([longitude, latitude]);
  let inside = false;
  for (let index = 1; index < ring.length; index++) {
    const [[ax, ay], [bx, by]] = [flat(ring[index - 1] as [number, number]), flat(ring[index] as [number, number])];
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  }
  return inside;
}

// The limits are those of the WMM2020 technical report, section 1.7; the field is the model's own, tested elsewhere.
for (const instant of instants) {
  for (const limit of [2000, 6000]) {
    test(`H is ${limit} nT all along both outlines on ${instant.toISOString().slice(0, 10)}`, () => {
      const { north, south } = zoneOutlines(limit, instant);
      for (const [longitude, latitude] of [...north, ...south]) {
        const { h } = magneticElements({ latitude, longitude }, instant);
        assert.ok(Math.abs(h - limit) < 5, `${latitude} ${longitude}: ${h}`);
      }
    });

    test(`every place of a world grid lies on the side of the ${limit} nT outline its H says, ${instant.toISOString().slice(0, 10)}`, () => {
      const { north, south } = zoneOutlines(limit, instant);
      const grid = magneticFieldGrid({ step: 2, instant });
      let inside = 0;
      grid.latitudes.forEach((latitude, row) =>
        grid.longitudes.forEach((longitude, column) => {
          const h = grid.h[row * grid.longitudes.length + column] as number;
          // Between the rays the ring is straight: close to the edge it says nothing.
          if (Math.abs(latitude) < 40 || Math.abs(h - limit) < 100) return;
          const expected = h < limit;
          if (expected) inside += 1;
          assert.equal(isInside(latitude > 0 ? north : south, latitude, longitude), expected, `${latitude} ${longitude} ${h}`);
        }),
      );
      assert.ok(inside > 20);
    });
  }
}

test('a ring is closed and its longitudes lie in (-180, 180]', () => {
  const { north, south } = zoneOutlines(6000, instants[1] as Date);
  for (const ring of [north, south]) {
    assert.deepEqual(ring[0], ring[ring.length - 1]);
    assert.ok(ring.every(([longitude]) => longitude > -180 && longitude <= 180));
  }
});

test('bad arguments are named', () => {
  assert.throws(() => zoneOutlines(50, instants[0] as Date), { name: 'RangeError', message: /^limit: / });
  assert.throws(() => zoneOutlines(2000, new Date('2031-01-01T00:00:00Z')), { name: 'RangeError', message: /^instant: / });
});
