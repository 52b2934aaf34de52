import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { bodiesForBearing } from '../../../core/sight/bodies-for-bearing.js';
import type { RankedBody } from '../../../core/sight/bodies-for-bearing.js';
import { faintestSeen, seenMagnitude } from '../../../core/sight/seen-magnitude.js';
import { surveySky } from '../../../core/sight/sky-survey.js';
import { assertClose } from '../../support/assert-close.js';

const at = (latitude: number, longitude: number, instant: string): readonly RankedBody[] =>
  bodiesForBearing(latitude, longitude, new Date(instant)).bodies;

const first = (bodies: readonly RankedBody[], count: number): string[] =>
  bodies.slice(0, count).map(({ body, reasons }) => `${body}: ${reasons.join(', ')}`);

// The order is ours, by common practice: low but not on the horizon, slow, bright, alone. No source.
describe('which body, at three places and times', () => {
  it('before sunrise in 48 S: Venus low and bright before a Moon and a Jupiter that move fast', () => {
    assert.deepEqual(first(at(-48.2833, -71.7083, '2026-11-26T08:05:00Z'), 3), ['Venus: bright, well-placed', 'Moon: fast', 'Jupiter: fast']);
  });

  it('in nautical twilight in 50 N: Capella, low and slow, before a Moon on the horizon; Deneb overhead last', () => {
    const bodies = at(50, -5, '2026-11-25T17:10:00Z');
    assert.deepEqual(first(bodies, 2), ['Capella: hard-to-see', 'Moon: too-low']);
    assert.deepEqual(first([...bodies].reverse(), 1), ['Deneb: too-high, fast, hard-to-see']);
  });

  it('at night in 12 N: low stars and planets, none too low, high, fast or near another among the first ten', () => {
    const bodies = at(12, 45, '2026-11-25T22:00:00Z');
    assert.equal(bodies[0]?.body, 'Achernar');
    for (const { body, altitude, azimuthRate } of bodies.slice(0, 10)) {
      assert.ok(altitude >= 5 && altitude < 30 && Math.abs(azimuthRate) <= 0.2, body);
    }
  });
});

describe('what can be seen', () => {
  it('a thin Moon 30° from the Sun is not offered by day', () => {
    assert.deepEqual(at(1, 80, '2026-03-21T06:40:00Z').map(({ body }) => body), ['Sun']);
  });

  // From memory: about 2 magnitudes are lost at 5°, a quarter of one straight up is already in the catalogue's.
  it('air dims a star at 5° by two magnitudes or so, and one overhead not at all', () => {
    assertClose(seenMagnitude(1, 5), 3.3, 0.4);
    assertClose(seenMagnitude(1, 90), 1, 0.01);
  });

  it('fainter stars show the lower the Sun is', () => {
    const limits = [10, 0, -2, -5, -8, -11, -20].map(faintestSeen);
    assert.deepEqual(limits, [...limits].sort((a, b) => a - b));
  });

  it('whatever stands beside a broad Moon within a month is said to stand in its glare', () => {
    const instants = Array.from({ length: 400 }, (_, hour) => new Date(Date.UTC(2026, 10, 20, 2 * hour)));
    let seen = 0;
    for (const instant of instants) {
      const moon = surveySky(20, 0, instant).bodies.find(({ body }) => body === 'Moon');
      if (!moon || moon.magnitude > -11) continue;
      for (const { body, azimuth, altitude, reasons } of bodiesForBearing(20, 0, instant).bodies) {
        if (body === 'Moon' || Math.abs(altitude - moon.altitude) > 2 || Math.abs(azimuth - moon.azimuth) > 2) continue;
        seen += 1;
        assert.ok(reasons.includes('in-glare'), `${body} ${instant.toISOString()}`);
      }
    }
    assert.ok(seen > 0);
  });

  // Limits by common practice, no source: 15° from the Sun, 8° from a Moon of half and more. Angles by the product of two vectors.
  it('glare reaches so many degrees of the sky, of high bodies too, whose bearings lie far apart', () => {
    const direction = ({ altitude, azimuth }: { altitude: number; azimuth: number | null }): readonly number[] => {
      const [h, z] = [(altitude * Math.PI) / 180, ((azimuth ?? 0) * Math.PI) / 180];
      return [Math.cos(h) * Math.cos(z), Math.cos(h) * Math.sin(z), Math.sin(h)];
    };
    const angle = (one: readonly number[], other: readonly number[]): number => (Math.acos(Math.min(1, one.reduce((all, part, i) => all + part * (other[i] ?? 0), 0))) * 180) / Math.PI;
    const found = { inGlare: 0, high: 0, byBearingAlone: 0, besideSun: 0 };
    // Three months of nights, and the days on which Venus, overhead at noon, draws near the Sun and away again.
    const nights = Array.from({ length: 300 }, (_, turn) => [20, Date.UTC(2026, 10, 20, 7 * turn)] as const);
    const days = [14, 15, 31, 32].flatMap((day) => [10, 12, 14].map((hour) => [10, Date.UTC(2025, 2, day, hour)] as const));
    for (const [latitude, time] of [...nights, ...days]) {
      const instant = new Date(time);
      const { bodies } = surveySky(latitude, 0, instant);
      const [sun, moon] = [bodies.find(({ body }) => body === 'Sun'), bodies.find(({ body }) => body === 'Moon')];
      for (const ranked of bodiesForBearing(latitude, 0, instant).bodies) {
        if (ranked.body === 'Sun' || ranked.body === 'Moon') {
          assert.ok(!ranked.reasons.includes('in-glare'));
          continue;
        }
        const ofSun = sun ? angle(direction(ranked), direction(sun)) : 180;
        const ofMoon = moon && moon.magnitude < -9 ? angle(direction(ranked), direction(moon)) : 180;
        const inGlare = ofSun < 15 || ofMoon < 8;
        assert.equal(ranked.reasons.includes('in-glare'), inGlare, `${ranked.body} ${instant.toISOString()}: ${ofSun}° and ${ofMoon}°`);
        if (!inGlare) continue;
        found.inGlare += 1;
        if (ofSun < 15) found.besideSun += 1;
        if (ranked.altitude > 60) found.high += 1;
        if (moon && ofMoon < 8 && Math.abs(Math.sin(((ranked.azimuth - (moon.azimuth ?? 0)) * Math.PI) / 360)) > Math.sin((8 * Math.PI) / 360)) found.byBearingAlone += 1;
      }
    }
    assert.ok(found.inGlare > 20 && found.high > 3 && found.byBearingAlone > 3 && found.besideSun > 1, JSON.stringify(found));
  });

  it('there is no place beyond a pole and no sky after 2100', () => {
    assert.throws(() => at(91, 0, '2026-01-01T00:00:00Z'), /latitude/);
    assert.throws(() => at(0, 0, '2101-01-01T00:00:00Z'), /instant/);
  });
});
