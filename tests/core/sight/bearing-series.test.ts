import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { bearingSeries } from '../../../core/sight/bearing-series.js';
import type { BearingSeries, SeriesObservation, Shot } from '../../../core/sight/bearing-series.js';
import { azimuthBearing } from '../../../core/sight/azimuth-bearing.js';
import { bodiesForBearing } from '../../../core/sight/bodies-for-bearing.js';
import { assertClose } from '../../support/assert-close.js';

const start = new Date('2026-03-01T19:50:00Z');
const plain: Omit<SeriesObservation, 'shots'> = {
  source: { by: 'body', body: 'Saturn' },
  latitude: 36,
  longitude: -20,
  compass: 'gyro',
};

/** A gyro that errs by the given degrees at each minute. */
function shots(errors: readonly number[]): Shot[] {
  return errors.map((error, minute) => {
    const instant = new Date(start.getTime() + minute * 60_000);
    const bearing = azimuthBearing({ ...plain, instant });
    assert.ok(bearing.determined);
    return { instant, compassBearing: (((bearing.trueBearing - error) % 360) + 360) % 360 };
  });
}

function reduced(errors: readonly number[], more: Partial<SeriesObservation> = {}): BearingSeries {
  const series = bearingSeries({ ...plain, shots: shots(errors), ...more });
  assert.ok(series.determined);
  return series;
}

const codes = (series: BearingSeries): string[] => series.cautions.map(({ code }) => code);

describe('a series of bearings', () => {
  it('1.0 1.2 0.8 1.1 0.9: mean 1.0, scatter 0.158, standard error 0.071 (by hand)', () => {
    const series = reduced([1, 1.2, 0.8, 1.1, 0.9]);
    assertClose(series.error, 1, 1e-6);
    assertClose(series.scatter, 0.1581, 1e-4);
    assertClose(series.standardError, 0.0707, 1e-4);
    assert.deepEqual(codes(series), []);
  });

  it('strikes a slip of 5° out, keeps it in the list and says so', () => {
    const series = reduced([1, 1.2, 6, 1.1, 0.9]);
    assert.deepEqual(series.shots.map(({ struck }) => struck), [null, null, 'far-from-others', null, null]);
    assertClose(series.error, 1.05, 1e-6);
    assert.ok(codes(series).includes('series-struck'));
  });

  it('strikes nothing of honest scatter', () => {
    assert.equal(reduced([1, 1.9, 0.3, 1.4, 0.6, 1.1]).kept, 6);
  });

  it('flags a drift of a tenth of a degree a minute', () => {
    const series = reduced([0, 0.12, 0.2, 0.29, 0.41, 0.5, 0.61, 0.7]);
    assert.ok(series.drift?.significant);
    assertClose(series.drift?.perMinute ?? NaN, 0.1, 0.01);
    assert.ok(codes(series).includes('series-drift'));
  });

  it('flags no drift in scatter', () => assert.equal(reduced([1, 1.2, 0.8, 1.1, 0.9]).drift?.significant, false));

  it('judges the mean as it would a single bearing: a gyro 4° out', () => assert.ok(codes(reduced([4, 4.1, 3.9])).includes('gyro-error-large')));

  // A series of a body far overhead, or out of sight, was given without a word (practitioner's review, common practice).
  it('and as it would a body too high, one below the horizon, and a star by day', () => {
    const taken = (body: 'Sun' | 'Capella', utc: string): string[] => {
      const from = new Date(utc);
      const look = { source: { by: 'body', body } as const, latitude: 20, longitude: 0 };
      const list = [0, 1, 2].map((minute) => {
        const instant = new Date(from.getTime() + minute * 60_000);
        const bearing = azimuthBearing({ ...look, instant });
        return { instant, compassBearing: bearing.determined ? bearing.trueBearing : 0 };
      });
      const series = bearingSeries({ ...look, compass: 'gyro', shots: list });
      assert.ok(series.determined);
      return codes(series);
    };
    assert.ok(taken('Sun', '2026-06-21T11:30:00Z').includes('altitude-very-high'));
    assert.ok(taken('Sun', '2026-06-21T00:30:00Z').includes('below-horizon'));
    // Capella, 5h17m of right ascension, is up with the Sun of June (about 6h).
    assert.ok(taken('Capella', '2026-06-21T09:00:00Z').includes('lost-in-daylight'));
    assert.ok(!taken('Capella', '2026-12-21T22:00:00Z').includes('lost-in-daylight'));
  });

  // Increments of the Nautical Almanac (from memory): in twenty minutes the Sun goes 5°00.0′, Aries 5°00.8′.
  it('goes on from the figures of one time as the almanac does, Sun and star', () => {
    const look = { latitude: 60, longitude: 0, instant: start };
    const later = new Date(start.getTime() + 20 * 60_000);
    const after = (source: SeriesObservation['source']): number => {
      const series = bearingSeries({ ...plain, ...look, source, shots: [start, later].map((instant) => ({ instant, compassBearing: 100 })) });
      return series.shots[1]?.trueBearing ?? NaN;
    };
    const straight = (gha: number): number => {
      const bearing = azimuthBearing({ ...look, source: { by: 'hour-angle', gha, declination: 20 } });
      return bearing.determined ? bearing.trueBearing : NaN;
    };
    assertClose(after({ by: 'hour-angle', gha: 300, declination: 20 }), straight(305), 1e-6);
    assertClose(after({ by: 'sidereal-hour-angle', ghaAries: 250, sha: 50, declination: 20 }), straight(305 + 0.8 / 60), 0.001);
  });

  // By hand: 357, 0 and 3 lie 6° apart, 358, 0 and 2 four; heads 5° apart and more have deviations of their own (common practice).
  it('minds how far the heads of a magnetic compass differ, across north', () => {
    const minds = (heads: readonly number[]): boolean => {
      const list = shots([1, 1, 1]).map((shot, index) => ({ ...shot, heading: heads[index] ?? 0 }));
      return codes(reduced([1, 1, 1], { compass: 'magnetic', variation: 1, shots: list })).includes('series-heads');
    };
    assert.deepEqual([minds([0, 357, 3]), minds([358, 0, 2]), minds([3, 0, 357])], [true, false, true]);
  });

  it('is of one mind across north', () => {
    const circumpolar = { ...plain, source: { by: 'body', body: 'Polaris' } as const };
    const list = [1, -1, 0.5].map((error, minute) => {
      const instant = new Date(start.getTime() + minute * 60_000);
      const bearing = azimuthBearing({ ...circumpolar, instant });
      assert.ok(bearing.determined);
      return { instant, compassBearing: (((bearing.trueBearing - error) % 360) + 360) % 360 };
    });
    const series = bearingSeries({ ...circumpolar, shots: list });
    assert.ok(series.determined);
    assertClose(series.error, 0.1667, 1e-3);
  });

  it('with two bearings doubts as much as readings usually do: 0.5/√2', () => assertClose(reduced([1, 1]).standardError, 0.3536, 1e-4));
  it('says that two bearings cannot tell a bad one', () => assert.ok(codes(reduced([1, 1.1])).includes('series-short')));
  it('throws naming shots when there are none', () => assert.throws(() => bearingSeries({ ...plain, shots: [] }), /shots/));

  it('takes the card for each head, so that errors on different heads agree', () => {
    const list = shots([4, -2, 4]).map((shot, index) => ({ ...shot, heading: [40, 220, 40][index] ?? 0, cardDeviation: [3, -3, 3][index] ?? 0 }));
    const series = bearingSeries({ ...plain, compass: 'magnetic', variation: 1, shots: list });
    assert.ok(series.determined);
    assertClose(series.scatter, 0, 1e-9);
    assertClose(series.difference ?? NaN, 0, 1e-9);
  });
});

describe('which body now', () => {
  const at = (latitude: number, longitude: number, instant: string) => bodiesForBearing(latitude, longitude, new Date(instant));

  it('at noon in the tropics takes the low Moon before the Sun overhead', () => {
    const { bodies } = at(10, 60, '2026-06-21T08:00:00Z');
    assert.deepEqual(bodies.map(({ body }) => body), ['Moon', 'Sun']);
    assert.deepEqual(bodies[1]?.reasons, ['too-high', 'fast']);
  });

  it('in the night ranks a low slow star first and none that is above 60° before it', () => {
    const { bodies } = at(60, 5, '2026-12-21T22:00:00Z');
    assert.equal(bodies[0]?.body, 'Vega');
    const high = bodies.findIndex(({ altitude }) => altitude > 60);
    assert.ok(high > 10);
  });

  it('by day shows no star', () => {
    assert.deepEqual(at(10, 60, '2026-06-21T08:00:00Z').bodies.filter(({ magnitude }) => magnitude > -3.5), []);
  });

  it('names nothing at a pole, where no body has a bearing', () => assert.deepEqual(at(90, 0, '2026-06-21T08:00:00Z').bodies, []));
});
