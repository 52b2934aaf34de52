import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { abcParts, abcSteps } from '../../../core/sight/abc-steps.js';
import { assertClose } from '../../support/assert-close.js';

describe('A, B and C', () => {
  // US Navy manual, chapter 9: 33-37.0N, 19-31.6S, LHA 51-53.4, Z N 129.0 W. A, B and C by a pocket calculator.
  it('33-37.0N 19-31.6S LHA 51-53.4: A 0.521 S, B 0.451 S, C 0.972 S; S 51.0 W', () => {
    const parts = abcParts(33 + 37 / 60, -(19 + 31.6 / 60), 51 + 53.4 / 60);
    assert.ok(parts);
    assertClose(parts.a.size, 0.5213, 2e-4);
    assertClose(parts.b.size, 0.4507, 2e-4);
    assertClose(parts.c.size, 0.972, 2e-4);
    assert.deepEqual([parts.a.name, parts.b.name, parts.c.name, parts.side], ['S', 'S', 'S', 'W']);
    assertClose(parts.azimuth, 51, 0.05);
  });

  it('A and B of different names subtract, the greater names C: 50 N, 10 N, LHA 320', () => {
    const parts = abcParts(50, 10, 320);
    assert.deepEqual([parts?.a.name, parts?.b.name, parts?.c.name, parts?.side], ['S', 'N', 'S', 'E']);
  });

  it('in the southern hemisphere the names turn round: 50 S, 10 S, LHA 320', () => {
    const parts = abcParts(-50, -10, 320);
    assert.deepEqual([parts?.a.name, parts?.b.name, parts?.c.name, parts?.side], ['N', 'S', 'N', 'E']);
  });

  it('on the equator A is nothing and takes the name of B', () => assert.deepEqual(abcParts(0, -10, 320)?.a, { size: 0, name: 'S' }));

  for (const [place, latitude, declination, hourAngle] of [
    ['on the meridian', 50, 10, 0],
    ['at lower transit', 50, 60, 180],
    ['at a pole', 90, 10, 30],
    ['for a body at the celestial pole', 50, 90, 30],
  ] as const) {
    it(`has no such form ${place}`, () => assert.deepEqual(abcSteps(latitude, declination, hourAngle, 0), []));
  }

  // A bug: the smallest hour angle above nothing made A infinite.
  it('has none a hair off the meridian either', () => assert.equal(abcParts(2, 0, 7e-323), null));
});
