import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { Body, Equator, Horizon, Observer, SearchRiseSet } from 'astronomy-engine';
import fc from 'fast-check';
import { amplitudeBearing, amplitudeSight } from '../../../core/sight/amplitude-sight.js';
import type { AmplitudeSight } from '../../../core/sight/amplitude-result.js';
import type { AmplitudeObservation } from '../../../core/sight/amplitude-observation.js';
import { centreHeight } from '../../../core/sight/centre-height.js';
import { isFarFromMoment } from '../../../core/sight/far-from-moment.js';
import { horizonMoment } from '../../../core/sight/horizon-moment.js';
import { bodyNames } from '../../../core/sky/body.js';
import { horizonEvent } from '../../../core/sky/horizon-event.js';
import { evaluate } from '../../../core/working/evaluate.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

interface PublishedCase {
  id: string;
  source: string;
  seen: boolean;
  inputs: {
    utc: string;
    lat_deg: number;
    compass_bearing?: number;
    gyro_bearing?: number;
    variation: number;
    event: 'rise' | 'set';
    horizon?: string;
  };
  expected: { answer?: string; true_bearing?: number; deviation?: number };
  tolerance: { deg: number };
}

const published = reference<{ cases: PublishedCase[] }>('amplitude-published.json').cases;

const plain: AmplitudeObservation = {
  body: 'Sun',
  latitude: -48.2833,
  longitude: -71.7083,
  instant: new Date('2026-11-26T08:52:40Z'),
  moment: 'celestial',
  heightOfEye: 18,
  compassBearing: 113.5,
  compass: 'magnetic',
};

function found(observation: AmplitudeObservation): AmplitudeSight {
  const sight = amplitudeSight(observation);
  assert.ok(sight.determined);
  return sight;
}

/** The longitude is not printed with the questions: one that puts the Sun on the horizon at the printed time. */
function longitudeOnHorizon({ utc, lat_deg: latitude, event }: PublishedCase['inputs']): number {
  const heights = Array.from({ length: 721 }, (_, index) => index / 2 - 180).map((longitude) => {
    const seen = { ...plain, latitude, longitude, instant: new Date(utc), heightOfEye: 12.5 };
    const bearing = amplitudeBearing(seen);
    assert.ok(bearing.determined);
    return { longitude, height: Math.abs(bearing.altitudeByTime), side: bearing.side };
  });
  const best = heights.filter(({ side }) => side === (event === 'rise' ? 'rising' : 'setting')).sort((a, b) => a.height - b.height)[0];
  assert.ok(best);
  return best.longitude;
}

function observationOf({ inputs }: PublishedCase): AmplitudeObservation {
  return {
    body: 'Sun',
    latitude: inputs.lat_deg,
    longitude: longitudeOnHorizon(inputs),
    instant: new Date(inputs.utc),
    moment: inputs.horizon?.startsWith('visible') ? 'centre' : 'celestial',
    // The table behind these questions takes the centre at −0.7° of true altitude; this height gives that.
    heightOfEye: 21.5,
    compassBearing: inputs.compass_bearing ?? inputs.gyro_bearing ?? 0,
    compass: inputs.gyro_bearing === undefined ? 'magnetic' : 'gyro',
    variation: inputs.variation,
  };
}

describe('published amplitudes', () => {
  const byId = (id: string): PublishedCase => {
    const found = published.find((each) => each.id === id);
    assert.ok(found, id);
    return found;
  };

  it('11 January 1981, latitude 24-30N, 101.0 psc, variation 11.6E: deviation 1.4E (deck licence question bank, choices printed)', () => {
    const example = byId('amp-uscg-0111');
    assertClose(found(observationOf(example)).deviation ?? NaN, 1.4, example.tolerance.deg);
  });

  it('20 June 1981, latitude 52-38.9N, centre on the visible horizon, 311.0 pgc: gyro error 1.3E (deck licence question bank, choices printed)', () => {
    const example = byId('amp-uscg-0620-visible');
    assertClose(found(observationOf(example)).error, 1.3, example.tolerance.deg);
  });

  const calculated = published.filter(({ seen }) => !seen);
  assert.equal(calculated.length, 4);
  for (const example of calculated) {
    it(`${example.id}: printed question, independently calculated answer ${example.expected.true_bearing}`, () => {
      const sight = found(observationOf(example));
      assertSameDirection(sight.trueBearing, example.expected.true_bearing ?? NaN, example.tolerance.deg);
      assertClose(sight.deviation ?? NaN, example.expected.deviation ?? NaN, example.tolerance.deg);
    });
  }
});

describe('the two horizons', () => {
  // Pub. 9, ch. 17: lower limb about two thirds of the diameter up, which table and text assume at about 41 ft
  // of eye and more; the three figures are worked by hand from dip 1.76′√h and refraction 28.9′ at an altitude of 29′.
  for (const [height, fraction] of [[12.5, 0.6], [20, 0.65], [40, 0.75]] as const) {
    it(`the Sun's lower limb stands ${fraction} of its diameter up at ${height} m when the centre is on the celestial horizon`, () => {
      assertClose(horizonMoment('Sun', 'celestial', height).lowerLimb, fraction, 0.011);
    });
  }

  it("the Moon's upper limb is then about on the visible horizon (Pub. 9, ch. 17)", () => {
    assertClose(horizonMoment('Moon', 'celestial', 12.5).upperLimb, 0, 0.3);
  });

  it('a star is then about one Sun’s diameter up (Pub. 9, ch. 17)', () => {
    assertClose(horizonMoment('Vega', 'celestial', 12.5).centre, 1, 0.15);
  });

  const visible = (observation: Partial<AmplitudeObservation>): AmplitudeSight => found({ ...plain, moment: 'centre', heightOfEye: 12.5, ...observation });
  const northward = (sight: AmplitudeSight): number => (sight.celestialAmplitude ?? NaN) - sight.amplitude;

  // Correction tables of Pub. 9 give 0.7° of depression: in latitude 50 at declination 0 about 0.8°, computed in the trade's own notes.
  it('corrects the Sun 0.83° in latitude 50 at declination 0, away from the elevated pole', () => {
    const correction = northward(visible({ latitude: 50, longitude: 0, instant: new Date('2026-09-23T05:50:00Z') }));
    assertClose(correction, -0.83, 0.06);
  });

  // By definition: on the horizon stand the centre, or a limb half a diameter from it; a star is a point.
  it('has the centre on the visible horizon, or half a diameter off it', () => {
    const height = (moment: AmplitudeObservation['moment'], semidiameter: number): number => centreHeight(moment, { dip: 0.1, horizontalParallax: 0, semidiameter });
    const sun = 16 / 60;
    assert.deepEqual([height('centre', sun), height('upper-limb', sun), height('lower-limb', sun), height('upper-limb', 0)], [0, -0.5, 0.5, 0]);
  });
  // Nothing to correct where the centre is on the celestial horizon (Pub. 9, ch. 17).
  it('has no hand correction for the celestial horizon', () => {
    assert.deepEqual(found(plain).handSteps, []);
    assert.equal(found({ ...plain, moment: 'centre' }).handSteps.length, 2);
  });
  it('corrects it southward in the north and northward in the south, rising and setting alike', () => {
    for (const time of ['06:00', '18:00']) {
      const instant = new Date(`2026-11-26T${time}:00Z`);
      assert.ok(northward(visible({ latitude: 40, longitude: 0, instant })) < 0);
      assert.ok(northward(visible({ latitude: -40, longitude: 0, instant })) > 0);
    }
  });

  it('corrects the Moon the other way and about half as much (Pub. 9, Table 23, from memory)', () => {
    const sun = northward(visible({ latitude: 50, longitude: 0 }));
    const moon = northward(visible({ body: 'Moon', latitude: 50, longitude: 0 }));
    assert.ok(sun * moon < 0);
    assertClose(Math.abs(moon / sun), 0.5, 0.25);
  });
});

describe('where there is no amplitude', () => {
  const at = (latitude: number, instant: string) => amplitudeSight({ ...plain, latitude, longitude: 0, instant: new Date(instant), compassBearing: 0 });
  for (const [latitude, instant, reason] of [
    [90, '2026-06-21T12:00:00Z', 'pole'],
    [-90, '2026-06-21T12:00:00Z', 'pole'],
    [75, '2026-06-21T12:00:00Z', 'stays above'],
    [75, '2026-12-21T12:00:00Z', 'stays below'],
    [-75, '2026-12-21T12:00:00Z', 'stays above'],
    [-75, '2026-06-21T12:00:00Z', 'stays below'],
  ] as const) {
    it(`latitude ${latitude} on ${instant.slice(0, 10)}: ${reason}`, () => {
      assert.deepEqual(at(latitude, instant), { determined: false, reason });
    });
  }
});

describe('what is odd about an amplitude', () => {
  const codes = (observation: Partial<AmplitudeObservation>): string[] => found({ ...plain, ...observation }).cautions.map(({ code }) => code);

  it('has nothing to say of a plain one', () => assert.deepEqual(codes({}), []));
  it('takes 04:52:40, ship’s time four hours behind UTC, for zone time', () => {
    assert.deepEqual(codes({ instant: new Date('2026-11-26T04:52:40Z') }).filter((code) => code === 'time-by-hours'), ['time-by-hours']);
  });
  // The second ephemeris says when the Sun sets; clocks of other zones would have it next year, where no sky is known.
  it('looks for zone time in the first and the last hour of the years known, among the instants known', () => {
    for (const [from, longitude, hours, expected] of [
      ['2099-12-31T12:00:00Z', -70, 2, 'time-by-hours'],
      ['2100-01-01T00:30:00Z', -160, -4, null],
      ['1900-01-01T00:30:00Z', -175, -4, 'time-by-hours'],
      ['1899-12-31T12:00:00Z', -70, 3, null],
    ] as const) {
      const sunset = SearchRiseSet(Body.Sun, new Observer(40, longitude, 0), -1, new Date(from), 1)?.date ?? new Date(NaN);
      const instant = new Date(sunset.getTime() + hours * 3_600_000);
      assert.ok(Math.abs(instant.getTime() - Date.UTC(instant.getUTCFullYear() < 2000 ? 1900 : 2100, 0)) < 4_500_000, instant.toISOString());
      const known = codes({ latitude: 40, longitude, moment: 'upper-limb', heightOfEye: 0, instant, compassBearing: 239 });
      assert.deepEqual(known.filter((code) => code === 'time-by-hours' || code === 'not-at-horizon'), [expected ?? 'not-at-horizon'], instant.toISOString());
    }
  });
  // Zones of the sea: −12 as far as 180° from the west, +12 from the east (Pub. 9, ch. 20, from memory); the second ephemeris says when
  // the Sun rises. Clocks 24 h apart both fit, and about the date line none was named.
  it('names the clock of the ship’s own side of the date line', () => {
    for (const [longitude, ahead] of [[179.9, 12], [-179.9, -12], [172.5, 12], [-172.5, -11]] as const) {
      const sunrise = SearchRiseSet(Body.Sun, new Observer(-40, longitude, 0), +1, new Date('2026-11-26T12:00:00Z'), 1)?.date ?? new Date(NaN);
      const instant = new Date(sunrise.getTime() + ahead * 3_600_000);
      const { cautions } = found({ ...plain, latitude: -40, longitude, moment: 'upper-limb', heightOfEye: 0, instant, compassBearing: 97 });
      const zones = cautions.filter(({ code }) => code === 'time-by-hours').map(({ values }) => values['hours']);
      // The zone description is what brings zone time to UTC.
      assert.deepEqual(zones, [ahead > 0 ? `−${ahead}` : `+${-ahead}`], String(longitude));
    }
  });
  // Half an hour after midnight by the Sun in 66° 10′ N it stands 0.3° below the celestial horizon and bears 355° (the second ephemeris),
  // where cos Z = sin d / cos L says 349.8°: near enough in altitude, and 5° in bearing passed without a word.
  it('hears of a bearing by time beyond twice the doubt where the Sun creeps along the horizon', () => {
    const [latitude, longitude] = [66 + 10 / 60, 10];
    const instant = new Date('2026-06-21T23:00:00Z');
    const equator = Equator(Body.Sun, instant, new Observer(latitude, longitude, 0), true, true);
    const byTime = Horizon(instant, new Observer(latitude, longitude, 0), equator.ra, equator.dec).azimuth;
    const sight = found({ ...plain, latitude, longitude, instant, compassBearing: 350, compass: 'gyro' });
    const off = sight.cautions.find(({ code }) => code === 'time-and-moment')?.values['effect'];
    assertClose((off as { value: number }).value, byTime - sight.trueBearing, 0.05);
    assert.ok(byTime - sight.trueBearing > 5 && Math.abs(sight.altitudeByTime) < 0.35);
  });
  it('takes 06:07:30, three hours ahead of UTC in 45° E, for zone time ahead', () => {
    // By hand: at the equinox it rises at 06:00 apparent time, 03:00 at Greenwich, and the equation of time adds 7½ minutes.
    const zone = { latitude: 0, longitude: 45, instant: new Date('2026-03-20T06:07:30Z'), compassBearing: 88 };
    assert.deepEqual(found({ ...plain, ...zone }).cautions.slice(0, 1).map(({ code, values }) => [code, values['hours']]), [['time-by-hours', '−3']]);
  });
  it('sees east taken for west, and north for south, in the place', () => {
    assert.ok(codes({ longitude: 71.7083 }).includes('longitude-turned'));
    assert.ok(codes({ latitude: 48.2833 }).includes('latitude-turned'));
    // With a card every figure of the wrong place is wrong beside it: one slip was told three times over.
    assert.deepEqual(codes({ longitude: 71.7083, cardDeviation: -1.5 }), ['longitude-turned']);
    assert.deepEqual(codes({ latitude: 48.2833, cardDeviation: -1.5 }), ['latitude-turned']);
    assert.ok(!codes({ longitude: 71.7083 }).some((code) => ['not-at-horizon', 'other-side', 'deviation-large'].includes(code)));
  });
  it('hears 15 minutes where they turn the bearing by degrees, and 4 where they do not', () => {
    // By hand, dZ/dt = 15° sin L an hour: 3.4° in 15 minutes in 66° N, 0.03° in 4 minutes in 2° N.
    const high = { latitude: 66, longitude: 0, instant: new Date('2026-05-10T02:40:00Z'), compassBearing: 40, compass: 'gyro' as const };
    assert.ok(codes(high).includes('time-and-moment'));
    assert.ok(!codes(high).includes('not-at-horizon'));
    const low = { latitude: 2, longitude: 0, instant: new Date('2026-03-20T06:11:30Z'), compassBearing: 90 };
    assert.ok(!codes(low).some((code) => code === 'time-and-moment' || code === 'not-at-horizon'));
  });
  describe('of a body that no eye can see', () => {
    /** A rising or setting that is timed right and read right: only the light is left to be odd. */
    const light = (body: AmplitudeObservation['body'], event: 'rising' | 'setting', after: string): string[] => {
      const place = { body, latitude: 30, longitude: 0 };
      const crossing = horizonEvent({ ...place, after: new Date(after), event, moment: 'celestial' });
      assert.ok(crossing.occurs && crossing.azimuth !== null);
      return codes({ ...place, instant: crossing.instant, compassBearing: crossing.azimuth, compass: 'gyro' });
    };
    // In 30° N Sirius is lost in the Sun's light from May to early August: the Nile calendar began with its first morning (common knowledge).
    it('tells a star that rises after the Sun, and not one that rises by night', () => {
      assert.deepEqual(light('Sirius', 'rising', '2026-06-21T00:00:00Z'), ['lost-in-daylight']);
      assert.deepEqual(light('Sirius', 'rising', '2026-10-01T00:00:00Z'), []);
    });
    // Venus was evening star in May 2026 (any almanac): up after the Sun and down after him.
    it('tells Venus on the horizon by day, and not in the dusk', () => {
      assert.deepEqual(light('Venus', 'rising', '2026-05-15T00:00:00Z'), ['lost-in-daylight']);
      assert.deepEqual(light('Venus', 'setting', '2026-05-15T12:00:00Z'), []);
    });
    // Eclipse of the Sun at 12 h on 17 February 2026 (any almanac); from there the Moon draws away by half a degree an hour.
    it('tells the Moon on the day she is new, and not on the next', () => {
      assert.deepEqual(light('Moon', 'rising', '2026-02-17T00:00:00Z'), ['lost-beside-sun']);
      assert.deepEqual(light('Moon', 'setting', '2026-02-17T12:00:00Z'), ['lost-beside-sun']);
      assert.deepEqual(light('Moon', 'setting', '2026-02-18T12:00:00Z'), []);
    });
    it('says nothing of the Sun, and nothing of the Moon on other days', () => {
      assert.deepEqual(light('Sun', 'rising', '2026-06-21T00:00:00Z'), []);
      assert.deepEqual(light('Moon', 'rising', '2026-05-20T00:00:00Z'), []);
    });
  });
  it('says once that a bearing lies on the other side, and not of a large variation', () => {
    assert.deepEqual(codes({ compassBearing: 293.5 }), ['other-side']);
    const arctic = { latitude: 82, longitude: 170, instant: new Date('2026-03-25T16:00:00Z') };
    assert.ok(!codes({ ...arctic, variation: -120, compassBearing: 210 }).includes('other-side'));
  });
  // A degree of altitude is four minutes and more: common practice, no source.
  it('calls none far that stands where its limb is seen', () =>
    assert.deepEqual([isFarFromMoment({ altitudeByTime: -0.9, altitude: -0.93 }), isFarFromMoment({ altitudeByTime: 0.5, altitude: -0.93 })], [false, true]));
  it('calls noon far from the horizon', () => assert.ok(codes({ instant: new Date('2026-11-26T16:20:00Z') }).includes('not-at-horizon')));
  it('sees a bearing on the other side', () => assert.ok(codes({ compassBearing: 293.5 }).includes('other-side')));
  it('takes a gyro bearing for what it is', () => assert.ok(codes({ compassBearing: 122.1 }).includes('looks-like-gyro')));
  it('takes a magnetic bearing called gyro for what it is', () => {
    assert.ok(codes({ compass: 'gyro', compassBearing: 112.5 }).includes('looks-like-magnetic'));
  });
  it('sees east taken for west', () => assert.ok(codes({ compassBearing: 132.5 }).includes('variation-turned')));
  it('alarms at a gyro error of 4°, not of 2°', () => {
    assert.ok(codes({ compass: 'gyro', compassBearing: 118.5 }).includes('gyro-error-large'));
    assert.deepEqual(codes({ compass: 'gyro', compassBearing: 120.5 }), []);
  });
  it('compares with the card', () => {
    assert.deepEqual(codes({ cardDeviation: -1.5 }), ['within-doubt-of-card']);
    assert.deepEqual(codes({ cardDeviation: 0.6 }), ['beyond-doubt-of-card']);
    assert.deepEqual(codes({ cardDeviation: 6 }), ['far-from-card']);
  });
  it('needs a variation outside the models’ years', () => {
    assert.ok(codes({ instant: new Date('1981-11-26T08:52:40Z') }).includes('variation-missing'));
    assert.ok(!codes({ instant: new Date('1981-11-26T08:52:40Z'), variation: 12 }).includes('variation-missing'));
  });
  it('grows loud where the Sun crosses the horizon at a slant', () => {
    const arctic = { latitude: 66, longitude: 0, instant: new Date('2026-06-10T01:20:00Z') };
    assert.ok(codes(arctic).includes('steep-horizon'));
  });
  it('warns in the blackout zone over the dip pole', () => {
    const overPole = { latitude: 85.5, longitude: 136, instant: new Date('2026-03-19T03:00:00Z'), compassBearing: 90 };
    assert.ok(codes(overPole).includes('blackout-zone'));
  });
});

describe('the working of an amplitude', () => {
  const anyObservation = fc.record({
    body: fc.constantFrom(...bodyNames),
    latitude: fc.double({ min: -90, max: 90, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    instant: fc.date({ min: new Date('2015-01-02T00:00:00Z'), max: new Date('2029-12-30T00:00:00Z'), noInvalidDate: true }),
    moment: fc.constantFrom('celestial' as const, 'upper-limb' as const, 'centre' as const, 'lower-limb' as const),
    heightOfEye: fc.double({ min: 0, max: 60, noNaN: true }),
    compassBearing: fc.double({ min: 0, max: 360, noNaN: true }),
    compass: fc.constantFrom('magnetic' as const, 'gyro' as const),
    cardDeviation: fc.double({ min: -20, max: 20, noNaN: true }),
  });

  it('comes to each step’s result when its formula is worked out with its numbers', () => {
    fc.assert(
      fc.property(anyObservation, (observation) => {
        const sight = amplitudeSight(observation);
        if (!sight.determined) return;
        for (const step of [...sight.steps, ...sight.handSteps]) {
          if (!step.expression) continue;
          const values = Object.fromEntries(Object.entries(step.values).map(([name, { value }]) => [name, value]));
          assertSameDirection(evaluate(step.expression, values), step.result.value, 1e-5, step.code);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('holds nothing that is no number', () => {
    fc.assert(
      fc.property(anyObservation, (observation) => {
        const text = JSON.stringify(amplitudeSight(observation), (_, value: unknown) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'NOT A NUMBER' : value,
        );
        assert.ok(!text.includes('NOT A NUMBER'), text);
      }),
      { numRuns: 300 },
    );
  });

  it('is the same on both names of the 180th meridian', () => {
    const east = found({ ...plain, longitude: 180 });
    const west = found({ ...plain, longitude: -180 });
    assert.deepEqual(west, east);
  });

  it('takes a longitude whichever way round it is counted', () => {
    const [west, east] = [found(plain), found({ ...plain, longitude: plain.longitude + 360 })];
    assertClose(east.error, west.error, 1e-9);
    assertClose(east.deviation ?? NaN, west.deviation ?? 0, 1e-9);
    assertClose(found({ ...plain, longitude: -200 }).deviation ?? NaN, found({ ...plain, longitude: 160 }).deviation ?? 0, 1e-9);
  });

  it('splits error = variation + deviation', () => {
    const sight = found(plain);
    assert.equal(sight.variation.source, 'model');
    if (sight.variation.source === 'model') assertClose(sight.variation.value + (sight.deviation ?? NaN), sight.error, 1e-12);
  });
});

describe('how fast the bearing moves on the horizon', () => {
  // At altitude 0 dZ/dt is sin L times the rate of the hour angle, by hand: sin 60° × 15°/h = 0.2165° a minute; on the equator nothing.
  it('by 0.2165° a minute in latitude 60, and not at all on the equator', () => {
    const at = (latitude: number): number => found({ ...plain, latitude, longitude: 0, instant: new Date('2026-09-23T05:50:00Z'), compassBearing: 90 }).perMinute;
    assertClose(at(60), 0.2165, 0.0005);
    assertClose(at(-60), 0.2165, 0.0005);
    assertClose(at(0), 0, 0.0005);
  });
});

describe('the doubt of an amplitude', () => {
  it('is that of the reading alone where nothing else counts: Sun at the equator', () => {
    const { doubt } = found({ ...plain, latitude: 0, longitude: 0, instant: new Date('2026-03-20T06:00:00Z'), compassBearing: 90 });
    assertClose(doubt.total, 0.5, 0.001);
  });

  // dZ/dh = (sin L − cos Z …) is tan L at declination 0 and altitude 0: by hand, a tenth of a degree moves the bearing 0.1° × tan 60° = 0.173°.
  it('counts a tenth of a degree of altitude as 0.173° in latitude 60 at declination 0', () => {
    const { doubt } = found({ ...plain, latitude: 60, longitude: 0, instant: new Date('2026-09-23T05:50:00Z'), compassBearing: 90 });
    assertClose(doubt.items.find(({ code }) => code === 'horizonAltitude')?.effect ?? NaN, 0.1732, 0.002);
  });
});

describe('the doubt of an amplitude in high latitude', () => {
  const supposed = (latitude: number, doubts = {}): number => {
    const { doubt } = found({ ...plain, latitude, longitude: 0, instant: new Date('2026-09-23T05:50:00Z'), compassBearing: 90, doubts });
    return doubt.items.find(({ code }) => code === 'horizonAltitude')?.cause.value ?? NaN;
  };

  // Cold air refracts more and a mirage more still (Pub. 9, on refraction, from memory); the figures are common practice, no source.
  it('supposes 0.1° of altitude to 60°, 0.2° in 70°, 0.3° in 80°, north or south, unless told otherwise', () => {
    assertClose(supposed(60), 0.1, 1e-12);
    assertClose(supposed(-70), 0.2, 1e-12);
    assertClose(supposed(80), 0.3, 1e-12);
    assertClose(supposed(80, { horizonAltitude: 0.05 }), 0.05, 1e-12);
  });
});

describe('bad arguments', () => {
  for (const [name, change] of [
    ['latitude', { latitude: 91 }],
    ['longitude', { longitude: NaN }],
    ['compassBearing', { compassBearing: -1 }],
    ['heightOfEye', { heightOfEye: -1 }],
    ['body', { body: 'Pluto' as 'Sun' }],
    ['instant', { instant: new Date(NaN) }],
    ['moment', { moment: 'noon' as 'centre' }],
    ['compass', { compass: 'sun' as 'gyro' }],
    ['variation', { variation: NaN }],
    ['cardDeviation', { cardDeviation: 181 }],
  ] as const) {
    it(`a bad ${name} is named`, () => {
      assert.throws(() => amplitudeSight({ ...plain, ...change }), (error) => error instanceof RangeError && error.message.startsWith(`${name}:`));
    });
  }
});
