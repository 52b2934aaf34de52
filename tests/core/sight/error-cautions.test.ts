import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { wrap180 } from '../../../core/angle/wrap.js';
import type { CompassZone } from '../../../core/field/zone.js';
import { errorCautions } from '../../../core/sight/error-cautions.js';
import { expectedError } from '../../../core/sight/expected-error.js';
import { variationSource } from '../../../core/sight/variation-source.js';
import type { Caution } from '../../../core/working/caution.js';
import { assertClose } from '../../support/assert-close.js';

/** What is said of a deviation found with a variation of the model, and its doubt; degrees, west negative. */
function said(deviation: number, zone: CompassZone, doubt = 0.6): string[] {
  const variation = { source: 'model', model: 'WMM2025', value: 0, sigma: 0.3, zone } as const;
  const split = { trueBearing: 90, compassBearing: 90 - deviation, compass: 'magnetic', error: deviation, variation, deviation, cardDeviation: null, difference: null } as const;
  return errorCautions(split, doubt).map(({ code }) => code);
}

// The force that brings a gyro to the meridian goes with the cosine of the latitude (makers' manuals, from memory).
describe('a gyro in high latitude', () => {
  const said = (latitude: number | undefined, error: number): string[] => {
    const variation = { source: 'none', reason: 'no-date' } as const;
    const split = { trueBearing: 90, compassBearing: 90 - error, compass: 'gyro', error, variation, deviation: null, cardDeviation: null, difference: null } as const;
    return errorCautions(latitude === undefined ? split : { ...split, latitude }, 0.6).map(({ code }) => code);
  };
  it('is noted beyond 75°, north or south, after an error that is large', () =>
    assert.deepEqual([said(75, 1), said(-76, 1), said(80, 5), said(undefined, 1)], [[], ['gyro-high-latitude'], ['gyro-error-large', 'gyro-high-latitude'], []]));
});

describe('a variation typed where the needle is weak', () => {
  // WMM2025 report: √(0.26² + (5417/H)²)°. Off Resolute, 74-42N 094-50W, H is near 3.3 µT (any chart of the field): about 1.7°.
  it('is no surer than the model, and elsewhere as sure as a rose can be read', () => {
    const sigma = (latitude: number): number => {
      const source = variationSource({ latitude, longitude: -94.83 }, new Date('2026-01-01T00:00:00Z'), -15);
      return source.source === 'none' ? NaN : source.sigma;
    };
    assertClose(sigma(74.7), 1.66, 0.1);
    assert.equal(sigma(30), 0.25);
  });
});

// The classic slip of the chart room (common practice): off Cape Town the variation is some 26° W (any chart of the 2020s).
describe('a variation typed with the wrong name', () => {
  const said = (given: number, error: number): string[] => {
    const variation = variationSource({ latitude: -34, longitude: 18 }, new Date('2026-01-01T00:00:00Z'), given);
    const split = { trueBearing: 90, compassBearing: 90 - error, compass: 'magnetic', error, variation, deviation: error - given, cardDeviation: null, difference: null } as const;
    return errorCautions(split, 0.6).map(({ code }) => code);
  };
  it('is told by the model, once, and not the large deviation that comes of it', () => assert.deepEqual(said(26, -25), ['variation-unlike-model']));
  it('is not where chart and model agree to a degree or two', () => assert.deepEqual(said(-25, -25), []));
});

// South of 65° S the variation passes 70° E (any chart of the field): a clock half a day out points the needle the other way, and the error alone hides it.
describe('a needle the other way about where the variation is large', () => {
  const cautions = (error: number, zone: CompassZone = 'normal'): readonly Caution[] => {
    const variation = { source: 'model', model: 'WMM2025', value: 76, sigma: 0.5, zone } as const;
    const deviation = wrap180(error - 76);
    const split = { trueBearing: 90, compassBearing: 90 - error, compass: 'magnetic', error, variation, deviation, cardDeviation: 4, difference: wrap180(deviation - 4) } as const;
    return errorCautions(split, 0.6);
  };
  const said = (error: number, zone?: CompassZone): string[] => cautions(error, zone).map(({ code }) => code);
  it('is told as such by the deviation', () => assert.deepEqual([said(-84), said(100)], [['other-side'], ['far-from-card']]));
  it('is told with the figure that tells it', () => assert.deepEqual(cautions(-84)[0]?.values['error'], { value: -160, unit: 'error' }));
  it('is nothing to wonder at where no needle points anywhere', () => assert.deepEqual([said(-84, 'blackout')[0], said(-120, 'blackout')[1]], ['blackout-zone', 'blackout-zone']));
});

// With 6° W of variation and 5° E by the card the compass shows 1° W, whatever it was read from (arithmetic; an officer's objection).
describe('an error that the card foretells', () => {
  const said = (error: number, variation: number, cardDeviation: number): string[] => {
    const given = { source: 'given', value: variation, sigma: 0.25, zone: 'normal' } as const;
    const deviation = error - variation;
    const split = { trueBearing: 90, compassBearing: 90 - error, compass: 'magnetic', error, variation: given, deviation, cardDeviation, difference: deviation - cardDeviation } as const;
    return errorCautions(split, 0.6).map(({ code, level }) => (level === 'note' ? `(${code})` : code));
  };
  it('is not suspected of being a gyro’s', () => assert.deepEqual(said(-1, -6, 5), ['(within-doubt-of-card)']));
  it('is what is to be expected of the compass, across 180° too', () => {
    const expected = (value: number, cardDeviation: number): number | undefined =>
      expectedError({ compass: 'magnetic', variation: { source: 'given', value, sigma: 0.25, zone: 'normal' }, deviation: null, cardDeviation, difference: null })?.error;
    assert.deepEqual([expected(-6, 5), expected(175, 10)], [-1, -175]);
  });
  it('nor of a variation turned', () => assert.deepEqual(said(5.5, -5, 10), ['(within-doubt-of-card)']));
  it('is, where the card says another thing: one warning, and what follows of it a note', () => assert.deepEqual(said(-1, -6, 0), ['looks-like-gyro', '(far-from-card)']));
});

// What holds the needle is H, and B and C go as 1/H (Handbook of Magnetic Compass Adjustment): the iron that deviates it
// by 5° where H is 18 µT does so by 15° at 6 µT. The figures of what is unusual are common practice.
describe('a large deviation', () => {
  it('is one above 7° where the needle has its force', () => assert.deepEqual([said(7, 'normal'), said(-8, 'normal')], [[], ['deviation-large']]));
  it('is one above 21° in the caution zone, where a compass errs three times as much', () =>
    assert.deepEqual([said(15, 'caution'), said(-25, 'caution')], [['caution-zone'], ['caution-zone', 'deviation-large']]));
  it('is no second alarm in the blackout zone', () => assert.deepEqual(said(-50, 'blackout'), ['blackout-zone']));
  // No card is made so, and beyond 29° of D alone a magnetic heading has more than one answer (trade practice): 60° was only called large.
  it('is hardly real above six times as much, beside a card too that does not foretell it; where the needle is weak it may be', () => {
    assert.deepEqual([said(42, 'normal'), said(-43, 'normal'), said(85, 'caution')], [['deviation-large'], ['deviation-unreal'], ['caution-zone', 'deviation-large']]);
    const variation = { source: 'model', model: 'WMM2025', value: 0, sigma: 0.3, zone: 'normal' } as const;
    const beside = (cardDeviation: number): string[] =>
      errorCautions({ trueBearing: 90, compassBearing: 30, compass: 'magnetic', error: 60, variation, deviation: 60, cardDeviation, difference: 60 - cardDeviation }, 0.6).map(({ code }) => code);
    assert.deepEqual([beside(3), beside(59.5), beside(30)], [['deviation-unreal'], ['within-doubt-of-card'], ['far-from-card']]);
  });
  it('is none within twice its doubt', () => assert.deepEqual([said(8, 'normal', 4.5), said(8, 'normal', 3.5)], [[], ['deviation-large']]));
});
