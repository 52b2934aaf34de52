import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { fixed, formatAngle, formatBearing, formatError, formatLatitude, formatLongitude, formatNumber } from '../../../core/angle/format-angle.js';
import { formatAmplitude, formatQuadrantal } from '../../../core/angle/quadrantal.js';

// Which languages write a comma: Unicode CLDR's number symbols. The figures are those of the formats' own tests.
describe('a format with another decimal mark', () => {
  const cases: readonly (readonly [string, string])[] = [
    [formatBearing(45, 1, ','), '045,0°'],
    [formatBearing(45, 0, ','), '045°'],
    [formatError(-3.25, 2, ','), '3,25° W'],
    [formatLatitude(-33.4, 1, ','), '33° 24,0′ S'],
    [formatLongitude(-71.7083333, 1, ','), '071° 42,5′ W'],
    [formatAngle(-0.7, 1, ','), '−0,7°'],
    [formatNumber(12.345, 2, ','), '12,35'],
    [formatQuadrantal(122.6, 1, ','), 'S 57,4° E'],
    [formatAmplitude(-32.6, 'rising', 1, ','), 'E 32,6° S'],
    [formatAmplitude(0, 'setting', 1, ','), 'W 0,0°'],
    [fixed(4.5, 1, ',', 2), '04,5'],
    [fixed(4, 0, ',', 2), '04'],
  ];
  for (const [written, expected] of cases) it(`writes ${expected}`, () => assert.equal(written, expected));
});
