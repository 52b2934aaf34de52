import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import geographicLib from 'geographiclib-geodesic';
import { alongGeodesic, geodesicLine } from '../../../core/sight/geodesic-line.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { at } from './transit-lines.js';

/** The reference: Karney's own library, series in the flattening to its sixth power, good to nanometres. */
const reference = geographicLib.Geodesic.WGS84;

/** Metres sideways that a bearing may be off at a line's end: a hundredth of a millimetre. */
const SIDEWAYS = 1e-5;

function assertLikeReference([fromLatitude, fromLongitude, toLatitude, toLongitude]: readonly [number, number, number, number]): void {
  const { azi1 = NaN, s12 = NaN, m12 = NaN } = reference.Inverse(fromLatitude, fromLongitude, toLatitude, toLongitude, geographicLib.Geodesic.ALL);
  const line = geodesicLine(at(fromLatitude, fromLongitude), at(toLatitude, toLongitude));
  assertClose(line.distance, s12, 1e-6);
  if (!line.determined) {
    assert.ok(s12 < 0.001 || Math.abs(fromLatitude) === 90 || fromLatitude === -toLatitude, line.reason);
    return;
  }
  // Within a tenth of a millimetre of opposite parallels the other way is as short: whichever is taken is right.
  if (Math.abs(fromLatitude + toLatitude) < 1e-9 && Math.abs(m12) < 1e5) return;
  // Nearly at the antipodes the reduced length m12 says how little sideways a bearing counts.
  assertSameDirection(line.bearing, azi1, Math.max(1e-9, (SIDEWAYS / Math.max(Math.abs(m12), 1e-3)) * (180 / Math.PI)));
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const latitudes = between(-90, 90);
const longitudes = between(-180, 180);

describe('geodesics like those of the reference library', () => {
  it('between any two places', () => {
    fc.assert(fc.property(fc.tuple(latitudes, longitudes, latitudes, longitudes), assertLikeReference), { numRuns: 2000 });
  });

  it('between places within sight of each other, to the metre', () => {
    const pairs = fc
      .tuple(between(-89, 89), longitudes, between(-1, 1), between(-1, 1), between(-5, 0))
      .map(([latitude, longitude, north, east, size]) => [latitude, longitude, latitude + north * 10 ** size, longitude + east * 10 ** size] as const);
    fc.assert(fc.property(pairs, assertLikeReference), { numRuns: 2000 });
  });

  it('nearly to the antipodes, where a bearing turns in no time', () => {
    const pairs = fc
      .tuple(latitudes, between(-0.8, 0.8), between(-0.8, 0.8))
      .map(([latitude, north, east]) => [latitude, 0, Math.max(-90, Math.min(90, -latitude + north)), 180 + east] as const);
    fc.assert(fc.property(pairs, assertLikeReference), { numRuns: 1000 });
  });

  for (const [what, line] of [
    ['along the equator', [0, -100, 0, 79]],
    ['along the equator as far as it is shortest', [0, 0, 0, 179.396]],
    ['opposite on the equator', [0, 0, 0, 180]],
    ['beyond: over a pole nearly', [0, 0, 1e-9, 179.6]],
    ['opposite on parallels', [30, 0, -30, 180]],
    ['from a pole to the other', [90, 0, -90, 30]],
    ['from the equator to a pole', [0, 12, 90, 0]],
    ['over the pole', [80, 10, 70, -170]],
    ['a meridian', [-40, 5, 55, 5]],
    ['the same place', [50, 180, 50, -180]],
    ['about a pole', [89.9999, 0, 89.9998, 120]],
  ] as const) {
    it(what, () => assertLikeReference(line));
  }

  it('and where they lead', () => {
    fc.assert(
      fc.property(between(-89, 89), longitudes, between(0, 360), between(0, 2e7), (latitude, longitude, bearing, metres) => {
        const { lat2 = NaN, lon2 = NaN, azi2 = NaN } = reference.Direct(latitude, longitude, bearing, metres);
        const end = alongGeodesic(at(latitude, longitude), bearing, metres);
        assertClose(end.latitude, lat2, 1e-10);
        const shrunk = 1e-10 / Math.max(1e-6, Math.cos((lat2 * Math.PI) / 180));
        assertSameDirection(end.longitude, lon2, shrunk);
        assertSameDirection(end.bearing, azi2, shrunk);
      }),
      { numRuns: 2000 },
    );
  });
});

// On opposite latitudes a line has an equal one beside it where its bearings at the ends, exchanged, lead to the same place.
it('two ways are told beside the antipodes too, whichever side of the 180° meridian the places are written on', () => {
  const found = { two: 0, one: 0 };
  for (const latitude of [0, 12.3, -30, 61.5, -89.5]) {
    for (const [from, to] of [[179.9, -0.3], [-179.9, 0.3], [180, 0.2], [-180, -0.2], [-0.1, 179.8], [0.1, -179.7], [350, 170.2], [180, 359.9], [179.7, -1.5], [-178.9, 0.4], [89.9, -90]] as const) {
      const { azi1 = NaN, azi2 = NaN, s12 = NaN } = reference.Inverse(latitude, from, -latitude, to);
      const { lat2 = NaN, lon2 = NaN } = reference.Direct(latitude, from, azi2, s12);
      const comesThere = Math.abs(lat2 + latitude) < 1e-7 && Math.abs(Math.sin(((lon2 - to) * Math.PI) / 180)) < 1e-7;
      const line = geodesicLine(at(latitude, from), at(-latitude, to));
      const isTwo = comesThere && Math.abs(azi1 - azi2) > 1e-4;
      assert.deepEqual(line.determined ? 'one' : line.reason, isTwo ? 'two-ways' : 'one', `${latitude}: ${from} to ${to}`);
      if (line.determined) assertSameDirection(line.bearing, azi1, 1e-6);
      found[isTwo ? 'two' : 'one'] += 1;
    }
  }
  assert.ok(found.two > 10 && found.one > 10, JSON.stringify(found));
});

it('there are two ways between places opposite each other, whatever their latitude', () => {
  for (const latitude of [0, 30, -61.5]) {
    const line = geodesicLine(at(latitude, 20), at(-latitude, -160));
    assert.deepEqual([line.determined, !line.determined && line.reason], [false, 'two-ways']);
  }
});
