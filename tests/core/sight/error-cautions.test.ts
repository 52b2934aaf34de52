import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { CompassZone } from '../../../core/field/zone.js';
import { errorCautions } from '../../../core/sight/error-cautions.js';

/** What is said of a deviation found with a variation of the model, and its doubt; degrees, west negative. */
function said(deviation: number, zone: CompassZone, doubt = 0.6): string[] {
  const variation = { source: 'model', model: 'WMM2025', value: 0, sigma: 0.3, zone } as const;
  const split = { trueBearing: 90, compassBearing: 90 - deviation, compass: 'magnetic', error: deviation, variation, deviation, cardDeviation: null, difference: null } as const;
  return errorCautions(split, doubt).map(({ code }) => code);
}

// What holds the needle is H, and B and C go as 1/H (Handbook of Magnetic Compass Adjustment): the iron that deviates it
// by 5° where H is 18 µT does so by 15° at 6 µT. The figures of what is unusual are common practice.
describe('a large deviation', () => {
  it('is one above 7° where the needle has its force', () => assert.deepEqual([said(7, 'normal'), said(-8, 'normal')], [[], ['deviation-large']]));
  it('is one above 21° in the caution zone, where a compass errs three times as much', () =>
    assert.deepEqual([said(15, 'caution'), said(-25, 'caution')], [['caution-zone'], ['caution-zone', 'deviation-large']]));
  it('is no second alarm in the blackout zone', () => assert.deepEqual(said(-50, 'blackout'), ['blackout-zone']));
  it('is none within twice its doubt', () => assert.deepEqual([said(8, 'normal', 4.5), said(8, 'normal', 3.5)], [[], ['deviation-large']]));
});
