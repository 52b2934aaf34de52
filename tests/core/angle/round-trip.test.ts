import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { formatBearing, formatError, formatLatitude, formatLongitude } from '../../../core/angle/format-angle.js';
import { parseBearing } from '../../../core/angle/parse-bearing.js';
import { parseDeclination, parseError, parseLatitude, parseLongitude } from '../../../core/angle/parse-position.js';
import { formatQuadrantal } from '../../../core/angle/quadrantal.js';
import type { Reading } from '../../../core/text/reading.js';
import { assertSameDirection } from '../../support/assert-close.js';
import { anyText } from '../text/any-text.js';

type Format = (degrees: number, decimals?: number) => string;
type Parse = (text: string) => Reading<number>;

/** Angles from -most to most, the seams and the halves of the print among them. */
function angles(most: number): fc.Arbitrary<number> {
  return fc.oneof(
    fc.double({ min: -most, max: most, noNaN: true }),
    fc.integer({ min: -most * 1200, max: most * 1200 }).map((twentieths) => twentieths / 1200),
    fc.tuple(fc.constantFrom(-180, -90, 0, 90, 180), fc.double({ min: -0.1, max: 0.1, noNaN: true }))
      .map(([seam, little]) => Math.max(-most, Math.min(most, seam + little))),
  );
}

const trips: readonly (readonly [name: string, format: Format, parse: Parse, most: number, perDegree: number])[] = [
  ['latitude', formatLatitude, parseLatitude, 90, 60],
  ['declination', formatLatitude, parseDeclination, 90, 60],
  ['longitude', formatLongitude, parseLongitude, 180, 60],
  ['bearing', formatBearing, parseBearing, 720, 1],
  ['quadrantal bearing', formatQuadrantal, parseBearing, 720, 1],
  ['error', formatError, parseError, 180, 1],
];

for (const [name, format, parse, most, perDegree] of trips) {
  test(`a ${name} printed and read again is the same to the printed precision, and prints the same`, () => {
    fc.assert(fc.property(angles(most), fc.integer({ min: 0, max: 4 }), (degrees, decimals) => {
      const text = format(degrees, decimals);
      const reading = parse(text);
      assert.ok(reading.ok, `${text}: ${JSON.stringify(reading)}`);
      assertSameDirection(reading.value, degrees, (0.5 * 10 ** -decimals) / perDegree + 1e-9, text);
      assert.equal(format(reading.value, decimals), text);
    }), { numRuns: 1500 });
  });
}

const ranges: readonly (readonly [name: string, parse: Parse, inRange: (value: number) => boolean])[] = [
  ['parseLatitude', parseLatitude, (value) => value >= -90 && value <= 90],
  ['parseDeclination', parseDeclination, (value) => value >= -90 && value <= 90],
  ['parseLongitude', parseLongitude, (value) => value > -180 && value <= 180],
  ['parseError', parseError, (value) => value > -180 && value <= 180],
  ['parseBearing', parseBearing, (value) => value >= 0 && value < 360],
];

for (const [name, parse, inRange] of ranges) {
  test(`${name} throws at no text whatever, and what it understands lies in its range and is not -0`, () => {
    fc.assert(fc.property(anyText, (text) => {
      const reading = parse(text);
      if (reading.ok) assert.ok(inRange(reading.value) && !Object.is(reading.value, -0), `${text}: ${reading.value}`);
      else assert.match(reading.refusal, /^[a-z0-9-]+$/);
    }), { numRuns: 3000 });
  });
}
