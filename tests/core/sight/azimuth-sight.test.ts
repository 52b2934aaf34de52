import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { AngleFromSun, Body } from 'astronomy-engine';
import fc from 'fast-check';
import { magneticField } from '../../../core/field/magnetic-field.js';
import { altitudeCautions } from '../../../core/sight/azimuth-cautions.js';
import { azimuthSight } from '../../../core/sight/azimuth-sight.js';
import type { AzimuthObservation, AzimuthSight } from '../../../core/sight/azimuth-sight.js';
import { bodyNames } from '../../../core/sky/body.js';
import { evaluate } from '../../../core/working/evaluate.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

interface Published {
  id: string;
  topic: string;
  source: string;
  seen: boolean;
  inputs: Record<string, number> & { utc?: string };
  expected: Record<string, number>;
  tolerance: { deg: number };
}

const published = reference<{ cases: Published[] }>('sky-published.json').cases;

function example(id: string): Published {
  const found = published.find((each) => each.id === id);
  assert.ok(found, id);
  return found;
}

function found(observation: AzimuthObservation): AzimuthSight {
  const sight = azimuthSight(observation);
  assert.ok(sight.determined, JSON.stringify(sight));
  return sight;
}

/** A sight by hour angle and declination, the observer on the meridian of Greenwich, so that GHA is LHA. */
function byHourAngle(latitude: number, declination: number, lha: number, compassBearing: number, more: Partial<AzimuthObservation> = {}): AzimuthSight {
  return found({
    source: { by: 'hour-angle', gha: ((lha % 360) + 360) % 360, declination },
    latitude,
    longitude: 0,
    instant: null,
    compassBearing,
    compass: 'magnetic',
    ...more,
  });
}

const bySun = ({ inputs }: Published, more: Partial<AzimuthObservation> = {}): AzimuthSight =>
  found({
    source: { by: 'body', body: 'Sun' },
    latitude: inputs['lat_deg'] ?? NaN,
    longitude: inputs['long_deg'] ?? NaN,
    instant: new Date(inputs.utc ?? ''),
    compassBearing: inputs['compass_bearing'] ?? inputs['observed_bearing'] ?? inputs['gyro_bearing'] ?? NaN,
    compass: 'magnetic',
    ...more,
  });

describe('published azimuths', () => {
  it('33-37.0N, declination 19-31.6S, LHA 51-53.4: Zn 231.0 (US Navy manual, chapter 9, by inspection tables)', () => {
    const { inputs, expected, tolerance } = example('az-qm-229');
    const sight = byHourAngle(inputs['lat_deg'] ?? NaN, inputs['dec_deg'] ?? NaN, inputs['lha_deg'] ?? NaN, 231);
    assertSameDirection(sight.trueBearing, expected['Zn_deg'] ?? NaN, tolerance.deg);
  });

  it('33-24N, declination 20-13.8N, LHA 316-41.2, 096.5 pgc: Zn 97.7, gyro error 1.2E (Pub. 9, 1995, art. 1701; inputs seen, answer recalled)', () => {
    const { inputs, expected, tolerance } = example('az-bow-1701');
    const sight = byHourAngle(inputs['lat_deg'] ?? NaN, inputs['dec_deg'] ?? NaN, inputs['lha_deg'] ?? NaN, 96.5, { compass: 'gyro' });
    assertSameDirection(sight.trueBearing, expected['Zn_deg'] ?? NaN, tolerance.deg);
    assertClose(sight.error, expected['gyro_error'] ?? NaN, tolerance.deg);
  });

  it('49N, declination 7S, 8h36m apparent time, 140.5 psc, variation 21W: error 14-56W, deviation 6-04E (Sun’s azimuth tables, p. IV)', () => {
    const { expected, tolerance } = example('az-suntab-ex');
    const sight = byHourAngle(49, -7, -51, 140.5, { variation: -21 });
    assertClose(sight.error, expected['total_error'] ?? NaN, tolerance.deg);
    assertClose(sight.deviation ?? NaN, expected['deviation'] ?? NaN, tolerance.deg);
  });

  it('4-55N, declination 10-39.5N, LHA 314-59.3, 92 psc, variation 10W: error 12W, deviation 2W (US Navy lectures, 1917, note-book)', () => {
    const { inputs, expected, tolerance } = example('az-lin-ce');
    const sight = byHourAngle(inputs['lat_deg'] ?? NaN, inputs['dec_deg'] ?? NaN, inputs['lha_deg'] ?? NaN, 92, { variation: -10 });
    assertClose(sight.error, expected['error'] ?? NaN, tolerance.deg);
    assertClose(sight.deviation ?? NaN, expected['deviation'] ?? NaN, tolerance.deg);
  });

  it('1 September 1981, 25-20N 28-24W, Sun 160.5 psc, variation 13.5W: deviation 2.1E (deck licence question bank, printed answer)', () => {
    const printed = example('az-uscg-0901');
    assertClose(bySun(printed, { variation: -13.5 }).deviation ?? NaN, 2.1, printed.tolerance.deg);
  });

  for (const [id, error] of [
    ['az-uscg-polaris-0205', -1.5],
    ['az-uscg-polaris-0723', 1.7],
  ] as const) {
    it(`${id}: Polaris by gyro, error ${error} (deck licence question bank, choices printed)`, () => {
      const printed = example(id);
      const sight = bySun(printed, { source: { by: 'body', body: 'Polaris' }, compass: 'gyro' });
      assertClose(sight.error, error, printed.tolerance.deg);
      assert.equal(sight.handForm, 'polaris');
      assertSameDirection(sight.handSteps.at(-1)?.result.value ?? NaN, sight.trueBearing, 0.05);
    });
  }

  for (const id of ['az-uscg-1106', 'az-uscg-0720', 'az-uscg-0916']) {
    it(`${id}: printed question, independently calculated gyro error ${example(id).expected['gyro_error']}`, () => {
      const printed = example(id);
      assertClose(bySun(printed, { compass: 'gyro' }).error, printed.expected['gyro_error'] ?? NaN, printed.tolerance.deg);
    });
  }
});

describe('hard places', () => {
  const at = (latitude: number, declination: number, lha: number) =>
    azimuthSight({ source: { by: 'hour-angle', gha: lha, declination }, latitude, longitude: 0, instant: null, compassBearing: 0, compass: 'gyro' });
  const cases: readonly [string, number, number, number, number | string][] = [
    ['in the zenith', 20, 20, 0, 'zenith'],
    ['in the nadir', 20, -20, 180, 'nadir'],
    ['at the north pole', 90, 10, 40, 'pole'],
    ['at the south pole', -90, 10, 40, 'pole'],
    ['equator and declination 0, forenoon', 0, 0, 300, 90],
    ['equator and declination 0, afternoon', 0, 0, 60, 270],
    ['upper transit south of the zenith', 50, 10, 0, 180],
    ['upper transit north of the zenith', -50, -10, 0, 0],
    ['lower transit of a circumpolar star', 60, 70, 180, 0],
    ['a star 0.6° north of the zenith', 40, 40.6, 0, 0],
    ['a star 0.6° south of the zenith', 40, 39.4, 0, 180],
    ['a body at the celestial pole', 45, 90, 123, 0],
  ];
  for (const [title, latitude, declination, lha, expected] of cases) {
    it(`${title}: ${expected}`, () => {
      const sight = at(latitude, declination, lha);
      if (typeof expected === 'string') assert.equal(sight.determined ? '' : sight.reason, expected);
      else assertSameDirection(sight.determined ? sight.trueBearing : NaN, expected, 1e-9);
    });
  }

  it('says a body near the zenith is no check', () => {
    assert.ok(byHourAngle(40, 40.6, 10, 0, { compass: 'gyro' }).cautions.some(({ code }) => code === 'near-zenith' || code === 'altitude-very-high'));
  });
});

describe('an azimuth by altitude', () => {
  // The same triangle both ways: from the printed example 33-24N, 20-13.8N, LHA 316-41.2 the altitude follows as
  // sin h = sin L sin d + cos L cos d cos LHA = 0.7604, by hand 49.50°.
  it('gives the printed bearing of 97.7 from the altitude of 49.5', () => {
    const sight = found({
      source: { by: 'altitude', body: null, declination: 20.23, altitude: 49.5, side: 'east' },
      latitude: 33.4,
      longitude: 0,
      instant: null,
      compassBearing: 96.5,
      compass: 'gyro',
    });
    assertSameDirection(sight.trueBearing, 97.7, 0.1);
  });

  it('knows the Sun, and her limbs, in any spelling', () => {
    const place = { latitude: 33.4, longitude: -71.7, instant: new Date('2026-11-26T12:00:00Z'), compassBearing: 110, compass: 'gyro' as const };
    const by = (body: string) =>
      found({ ...place, source: { by: 'altitude', body: body as 'Sun', altitude: 10, side: 'east', seen: { limb: 'lower', heightOfEye: 12 } } });
    assert.deepEqual(by('SUN'), by('Sun'));
    // Half a degree of disc: the centre stands a quarter of a degree above the limb (Nautical Almanac).
    assertClose(by('sun').corrections?.semidiameter ?? NaN, 16.2 / 60, 0.3 / 60);
  });

  // Without a time the disc is not known: a lower limb was once worked as the centre, a quarter of a degree too low,
  // and the centre of the Moon without her parallax of nearly a degree.
  it('asks for the time where disc or parallax count, though the declination is typed', () => {
    const seen = (body: 'Sun' | 'Moon' | 'Vega', limb: 'lower' | 'centre') => () =>
      azimuthSight({
        source: { by: 'altitude', body, declination: 10, altitude: 10, side: 'east', seen: { limb, heightOfEye: 12 } },
        latitude: 33.4, longitude: 0, instant: null, compassBearing: 80, compass: 'gyro',
      });
    for (const needsTime of [seen('Sun', 'lower'), seen('Moon', 'lower'), seen('Moon', 'centre')]) assert.throws(needsTime, /^RangeError: instant: /);
    for (const needsNone of [seen('Sun', 'centre'), seen('Vega', 'lower')]) assert.ok(needsNone().determined);
  });

  it('knows an altitude the body never reaches', () => {
    const sight = azimuthSight({
      source: { by: 'altitude', body: null, declination: -20, altitude: 60, side: 'west' },
      latitude: 50, longitude: 0, instant: null, compassBearing: 0, compass: 'gyro',
    });
    assert.equal(sight.determined ? '' : sight.reason, 'never-so-high');
  });

  const figures = { longitude: 0, instant: null, compassBearing: 0, compass: 'gyro' as const };
  const byFigures = (latitude: number, declination: number, altitude: number) =>
    azimuthSight({ ...figures, latitude, source: { by: 'altitude', body: null, declination, altitude, side: 'east' } });

  // By hand: at lower transit a body of 80° N stands 50 + 80 − 90 = 40° high in latitude 50; overhead it has no bearing.
  it('knows an altitude too low for a circumpolar body, and one overhead', () => {
    const reason = (sight: ReturnType<typeof azimuthSight>): string => (sight.determined ? '' : sight.reason);
    assert.equal(reason(byFigures(50, 80, 20)), 'never-so-low');
    assert.equal(reason(byFigures(20, 20, 90)), 'zenith');
  });

  it('has a body at the celestial pole in the north, at rest', () => {
    const sight = byFigures(45, 90, 45);
    assert.ok(sight.determined);
    assertSameDirection(sight.trueBearing, 0, 1e-6);
    assert.equal(sight.azimuthRate, 0);
    // There all hour angles are one.
    assert.equal(sight.localHourAngle, null);
  });

  it('doubts a declination that was typed, and none that the ephemeris gave', () => {
    const of = (declination?: number): AzimuthSight =>
      found({
        source: { by: 'altitude', body: 'Sun', ...(declination === undefined ? {} : { declination }), altitude: 10, side: 'east' },
        latitude: 33.4, longitude: -71.7, instant: new Date('2026-11-26T12:00:00Z'), compassBearing: 110, compass: 'gyro',
      });
    const doubted = (sight: AzimuthSight) => sight.doubt.items.find(({ code }) => code === 'declination')?.cause;
    // Two tenths of a minute of an almanac's figures: common practice, no source.
    assertClose(doubted(of(-21))?.value ?? NaN, 0.2, 1e-9);
    assert.equal(doubted(of()), undefined);
    assert.deepEqual([of(-21), of()].map(({ steps }) => steps[0]?.code), ['azimuth.declination.typed', 'azimuth.declination.body']);
  });
});

describe('slips that explain an odd azimuth', () => {
  const sun = { source: { by: 'body' as const, body: 'Sun' as const }, latitude: 30, longitude: -40, compass: 'gyro' as const };
  const codes = (observation: AzimuthObservation): string[] => found(observation).cautions.map(({ code }) => code);
  const instant = new Date('2026-02-10T12:00:00Z');
  const right = found({ ...sun, instant, compassBearing: 0 }).trueBearing;

  it('has no slip to tell of a good one', () => assert.deepEqual(codes({ ...sun, instant, compassBearing: right }), ['bearing-fast']));
  it('says what half a minute of clock error does: half of what a minute does', () => {
    const values = found({ ...sun, instant, compassBearing: right }).cautions[0]?.values ?? {};
    const of = (name: string): number => (typeof values[name] === 'object' ? values[name].value : NaN);
    assertClose(of('half') * 2, of('rate'), 1e-12);
  });
  it('sees the longitude named wrongly', () => assert.ok(codes({ ...sun, longitude: 40, instant, compassBearing: right }).includes('longitude-turned')));
  // By compass the bearing expected turns with the variation, which is 14° W there, 5° E in the same longitude east and 22° W in the
  // same latitude south (any chart of the field): without that the slip was named for a gyro alone.
  it('sees east taken for west, and north for south, of a magnetic compass and a gyro', () => {
    const variation = magneticField({ latitude: 30, longitude: -40 }, instant).variation ?? NaN;
    for (const [compass, compassBearing] of [['gyro', right], ['magnetic', right - variation]] as const) {
      assert.ok(codes({ ...sun, longitude: 40, instant, compass, compassBearing }).includes('longitude-turned'), compass);
      assert.ok(codes({ ...sun, latitude: -30, instant, compass, compassBearing }).includes('latitude-turned'), compass);
      assert.deepEqual(codes({ ...sun, instant, compass, compassBearing }).filter((code) => code.endsWith('-turned')), []);
    }
  });
  // With no card at hand a compass may deviate by some degrees of itself (common flag notices allow 5°): slips were named to a degree only.
  it('sees them, and the clock of the ship’s own zone, though the compass deviates by 3° that no card tells', () => {
    const variation = magneticField({ latitude: 30, longitude: -40 }, instant).variation ?? NaN;
    const own = { ...sun, compass: 'magnetic' as const, compassBearing: right - variation - 3 };
    assert.ok(codes({ ...own, instant, longitude: 40 }).includes('longitude-turned'));
    assert.ok(codes({ ...own, instant, latitude: -30 }).includes('latitude-turned'));
    // In 40° W a clock of zone +3 shows 09:00 at 12:00 UTC.
    const byClock = found({ ...own, instant: new Date('2026-02-10T09:00:00Z') }).cautions.find(({ code }) => code === 'time-by-hours');
    assert.equal(byClock?.values['hours'], '+3');
    assert.deepEqual(codes({ ...own, instant }).filter((code) => code !== 'bearing-fast'), []);
  });
  it('sees a time three hours behind UTC', () => {
    const told = new Date(instant.getTime() - 3 * 3_600_000);
    const cautions = found({ ...sun, instant: told, compassBearing: right }).cautions;
    assert.equal(cautions.find(({ code }) => code === 'time-by-hours')?.values['hours'], '+3');
  });
  // In 45° E a clock of zone −3 shows 11:00 at 08:00 UTC.
  it('sees a time three hours ahead of UTC', () => {
    const east = { ...sun, longitude: 45 };
    const utc = new Date('2026-02-10T08:00:00Z');
    const seen = found({ ...east, instant: utc, compassBearing: 0 }).trueBearing;
    const { cautions } = found({ ...east, instant: new Date(utc.getTime() + 3 * 3_600_000), compassBearing: seen });
    assert.equal(cautions.find(({ code }) => code === 'time-by-hours')?.values['hours'], '−3');
  });
  it('sees a body by altitude put on the wrong side of the meridian, and speaks of no hemisphere then', () => {
    const evening = { source: { by: 'altitude', body: null, declination: 5, altitude: 20, side: 'west' } as const, latitude: 40, longitude: -40, instant: null, compass: 'gyro' as const };
    const seen = found({ ...evening, compassBearing: 0 }).trueBearing;
    assert.deepEqual(codes({ ...evening, source: { ...evening.source, side: 'east' }, compassBearing: seen }).filter((code) => code.endsWith('-turned')), ['side-turned']);
    assert.ok(!codes({ ...evening, compassBearing: seen }).includes('side-turned'));
  });
  it('blames no hemisphere for a bearing that neither explains', () => {
    assert.deepEqual(codes({ ...sun, instant, compassBearing: right + 25 }).filter((code) => code.endsWith('-turned')), []);
  });
  it('asks for a date where the variation wants one, and speaks of the models’ years outside of them', () => {
    const undated = { source: { by: 'hour-angle', gha: 320, declination: 10 } as const, latitude: 40, longitude: 0, compassBearing: 90, compass: 'magnetic' as const };
    const told = (at: Date | null): string[] => codes({ ...undated, instant: at }).filter((code) => code.startsWith('variation'));
    assert.deepEqual(told(null), ['variation-needs-date']);
    assert.deepEqual(told(new Date('1990-05-01T08:00:00Z')), ['variation-missing']);
  });
  // A day without a time left the deviation out, though a transit of the same day had it.
  // Source: the WMM2025 example of field-published.json (wmm-unc-lib), 37.03° N 7.91° W in the middle of January 2029: 0.174° W.
  it('takes the variation of a day where there is no instant, and nothing else', () => {
    const untimed = { source: { by: 'hour-angle', gha: 320, declination: 10 } as const, latitude: 37.03, longitude: -7.91, instant: null, compass: 'magnetic' as const };
    const day = new Date('2029-01-15T00:00:00Z');
    const sight = found({ ...untimed, day, compassBearing: 90 });
    assertClose((sight.deviation ?? NaN) - sight.error, 0.174, 0.01);
    assert.deepEqual(codes({ ...untimed, day, compassBearing: sight.trueBearing }).filter((code) => code.startsWith('variation')), []);
    // Which bodies stood where at 0 h explains nothing.
    for (let compassBearing = 0; compassBearing < 360; compassBearing += 5) assert.ok(!codes({ ...untimed, day, compassBearing }).includes('other-body'));
    assert.throws(() => found({ ...untimed, day: new Date(NaN), compassBearing: 90 }), { name: 'RangeError', message: /^day/ });
  });
  // A longitude named wrongly was told as three warnings of one weight: where the body would be, what fits, how large the error is.
  it('leads with the slip where the look cannot have been so, and keeps what follows of it as notes', () => {
    const levels = (observation: AzimuthObservation, level: string): string[] =>
      found(observation).cautions.flatMap((caution) => (caution.level === level ? [caution.code] : []));
    // By hour angle the Sun is under the horizon in 120° E at 12 h UTC.
    const turned = { ...sun, longitude: -90, instant: new Date('2026-02-10T16:00:00Z'), compass: 'magnetic' as const };
    const bearing = found({ ...turned, compassBearing: 0 });
    const named = { ...turned, longitude: 90, compassBearing: bearing.trueBearing };
    assert.deepEqual(levels(named, 'warning'), ['longitude-turned']);
    assert.ok(levels(named, 'note').includes('below-horizon'), levels(named, 'note').join());
    // No slip brings a bearing read 12° out right: the error leads. In a small error a slip is only what might be.
    assert.deepEqual(levels({ ...sun, instant, compassBearing: right - 12 }, 'warning'), ['gyro-error-large']);
    const west = { ...sun, latitude: 8, instant: new Date('2026-02-10T12:00:00Z') };
    const fitting = found({ ...west, latitude: -8, compassBearing: 0 }).trueBearing;
    assert.deepEqual([levels({ ...west, compassBearing: fitting }, 'warning'), levels({ ...west, compassBearing: fitting }, 'note').includes('latitude-turned')], [['gyro-error-large'], true]);
  });
  it('sees another bright body', () => {
    const night = { latitude: 36, longitude: -20, instant: new Date('2026-03-01T19:50:00Z'), compass: 'gyro' as const };
    const sirius = found({ ...night, source: { by: 'body', body: 'Sirius' }, compassBearing: 0 }).trueBearing;
    const named = found({ ...night, source: { by: 'body', body: 'Procyon' }, compassBearing: sirius }).cautions.find(({ code }) => code === 'other-body');
    assert.equal(named?.values['body'], 'Sirius');
  });
  // Zone time or the wrong star put a sight of Vega into the forenoon and nothing was said (practitioner's review, common practice).
  // Eclipse of the Sun at 12 h on 17 February 2026, full Moon on 3 March (any almanac).
  it('sees a Moon too near the Sun', () => {
    const moon = { ...sun, source: { by: 'body', body: 'Moon' } as const, compassBearing: 300 };
    assert.ok(codes({ ...moon, instant: new Date('2026-02-17T18:00:00Z') }).includes('lost-beside-sun'));
    assert.ok(!codes({ ...moon, instant: new Date('2026-03-03T12:00:00Z') }).includes('lost-beside-sun'));
  });
  // Venus was let be by day wherever she stood. No eye finds a planet within some 10° of the Sun (common practice, no source); the second ephemeris says how far she is.
  it('sees Venus taken beside the Sun by day, in twilight not, and Jupiter in twilight', () => {
    const seen = (body: 'Venus' | 'Jupiter', iso: string): string[] => {
      const look = { ...sun, source: { by: 'body', body }, latitude: 20, longitude: 0, instant: new Date(iso), compass: 'gyro', compassBearing: 230 } as const;
      return codes(look).filter((code) => code.startsWith('lost'));
    };
    for (const [body, iso, apart, told] of [
      ['Venus', '2026-01-06T14:30:00Z', 0.7, ['lost-beside-sun']],
      ['Venus', '2026-10-24T14:30:00Z', 6.5, ['lost-beside-sun']],
      ['Venus', '2026-09-20T14:30:00Z', 39, []],
      ['Venus', '2026-02-10T18:20:00Z', 8, []],
      ['Jupiter', '2026-07-22T18:50:00Z', 5, ['lost-beside-sun']],
    ] as const) {
      assertClose(AngleFromSun(Body[body], new Date(iso)), apart, 1, `${body} ${iso}`);
      assert.deepEqual(seen(body, iso), told, `${body} ${iso}`);
    }
  });
  it('sees a star taken in daylight, and lets Venus be', () => {
    const forenoon = { ...sun, source: { by: 'body', body: 'Vega' } as const, instant: new Date('2026-02-10T13:00:00Z') };
    assert.ok(codes({ ...forenoon, compassBearing: 300 }).includes('lost-in-daylight'));
    assert.ok(!codes({ ...forenoon, source: { by: 'body', body: 'Venus' }, compassBearing: 120 }).includes('lost-in-daylight'));
    // However she is spelled: `VENUS` was once taken for a planet that nobody sees by day.
    assert.ok(!codes({ ...forenoon, source: { by: 'body', body: 'VENUS' as 'Venus' }, compassBearing: 120 }).includes('lost-in-daylight'));
  });
  it('sees a body below the horizon', () => assert.ok(codes({ ...sun, instant: new Date('2026-02-10T04:00:00Z'), compassBearing: 60 }).includes('below-horizon')));
});

describe('what a body shows above the horizon', () => {
  // By hand, degrees: upper limb = altitude − parallax + semidiameter + 0.57 of refraction + 0.2 of dip, above 0 while it can be seen.
  const cases: readonly (readonly [string, number, number, number, boolean])[] = [
    ['the Sun at −0.9°', -0.9, 0.002, 0.267, true],
    ['the Sun at −1.2°', -1.2, 0.002, 0.267, false],
    ['the Moon at +0.1°', 0.1, 0.95, 0.26, true],
    ['the Moon at −0.2°', -0.2, 0.95, 0.26, false],
    ['a star at −0.7°', -0.7, 0, 0, true],
    ['a star at −0.9°', -0.9, 0, 0, false],
  ];
  for (const [what, altitude, horizontalParallax, semidiameter, seen] of cases) {
    it(`${what}: ${seen ? 'a limb' : 'nothing'}`, () => {
      const codes = altitudeCautions({ altitude, horizontalParallax, semidiameter, tilt: 0.5 }).map(({ code }) => code);
      assert.deepEqual(codes, seen ? [] : ['below-horizon']);
    });
  }
});

describe('the doubt of an azimuth', () => {
  const effect = (sight: AzimuthSight, code: string): number => sight.doubt.items.find((item) => item.code === code)?.effect ?? NaN;

  // Common practice, no source: t · tan h; by hand 0.5° · tan 49.50° = 0.585°.
  it('counts half a degree of tilt at 49.5° as 0.585°', () => assertClose(effect(byHourAngle(33.4, 20.23, 316.6867, 96.5), 'tilt'), 0.585, 0.003));

  // dZ/dt of a body on the meridian is cos d / cos h · 15°/h: by hand for d 0, L 60, h 30: 1/0.866 · 0.25 = 0.2887° a minute, 0.0241° in 5 s.
  // There a mile west is 2′ of longitude and turns the bearing by as much over sin 60°; a mile north turns it by nothing.
  it('counts a mile on the meridian in latitude 60 as 0.0385°', () => assertClose(effect(byHourAngle(60, 0, 0, 180), 'position'), 2 / 60 / Math.sin(Math.PI / 3), 1e-5));

  it('counts five seconds on the meridian in latitude 60 as 0.0241°', () => assertClose(effect(byHourAngle(60, 0, 0, 180), 'time'), 0.02406, 0.0002));
});

describe('the working of an azimuth', () => {
  const source = fc.oneof(
    fc.record({ by: fc.constant('body' as const), body: fc.constantFrom(...bodyNames) }),
    fc.record({ by: fc.constant('hour-angle' as const), gha: fc.double({ min: 0, max: 360, noNaN: true }), declination: fc.double({ min: -89, max: 89, noNaN: true }) }),
    fc.record({
      by: fc.constant('sidereal-hour-angle' as const),
      sha: fc.double({ min: 0, max: 360, noNaN: true }),
      ghaAries: fc.double({ min: 0, max: 360, noNaN: true }),
      declination: fc.double({ min: -89, max: 89, noNaN: true }),
    }),
    fc.record({
      by: fc.constant('altitude' as const),
      body: fc.constant(null),
      declination: fc.double({ min: -89, max: 89, noNaN: true }),
      altitude: fc.double({ min: -5, max: 85, noNaN: true }),
      side: fc.constantFrom('east' as const, 'west' as const),
    }),
  );
  const observation = fc.record({
    source,
    latitude: fc.double({ min: -89, max: 89, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    instant: fc.date({ min: new Date('2015-01-02T00:00:00Z'), max: new Date('2029-12-30T00:00:00Z'), noInvalidDate: true }),
    compassBearing: fc.double({ min: 0, max: 360, noNaN: true }),
    compass: fc.constantFrom('magnetic' as const, 'gyro' as const),
  });

  it('comes to each step’s result when its formula is worked out; A, B and C come to the bearing of the triangle', () => {
    fc.assert(
      fc.property(observation, (look) => {
        const sight = azimuthSight(look);
        if (!sight.determined || sight.altitude > 88) return;
        for (const step of [...sight.steps, ...sight.handSteps]) {
          if (!step.expression) continue;
          const values = Object.fromEntries(Object.entries(step.values).map(([name, { value }]) => [name, value]));
          const worked = evaluate(step.expression, values);
          const scale = Math.max(1, Math.abs(step.result.value));
          // An hour angle is brought into [0, 360) by the formula itself.
          if (step.result.unit === 'hourAngle') assertClose(worked, step.result.value, 1e-4, step.code);
          else if (step.result.unit === 'number') assertClose(worked / scale, step.result.value / scale, 1e-6, step.code);
          else assertSameDirection(worked, step.result.value, 1e-4, step.code);
        }
        if (sight.handForm === 'abc' && sight.handSteps.length > 0) {
          assertSameDirection(sight.handSteps.at(-1)?.result.value ?? NaN, sight.trueBearing, 1e-9);
        }
      }),
      { numRuns: 400 },
    );
  });

  // 350 + 30 − 360, 10 − 30 + 360; 200 + 300 − 360: by hand.
  it('takes whole turns off an hour angle, or adds one', () => {
    const worked = (source: AzimuthObservation['source'], longitude: number, name: string): number => {
      const { steps } = found({ source, latitude: 10, longitude, instant: null, compassBearing: 0, compass: 'gyro' });
      const step = steps.find(({ symbol }) => symbol === name);
      return step?.expression ? evaluate(step.expression, Object.fromEntries(Object.entries(step.values).map(([symbol, { value }]) => [symbol, value]))) : NaN;
    };
    assertClose(worked({ by: 'hour-angle', gha: 350, declination: 5 }, 30, 'LHA'), 20, 1e-9);
    assertClose(worked({ by: 'hour-angle', gha: 10, declination: 5 }, -30, 'LHA'), 340, 1e-9);
    assertClose(worked({ by: 'sidereal-hour-angle', ghaAries: 200, sha: 300, declination: 5 }, 0, 'GHA'), 140, 1e-9);
  });

  it('names the error after its compass', () => {
    const lastOf = (compass: 'gyro' | 'magnetic') => byHourAngle(33, 20, 316, 96, { compass }).steps.at(-1);
    const told = ({ code, symbol, values }: NonNullable<ReturnType<typeof lastOf>>) => [code, symbol, ...Object.keys(values)];
    assert.deepEqual(
      (['gyro', 'magnetic'] as const).map((compass) => told(lastOf(compass) as NonNullable<ReturnType<typeof lastOf>>)),
      [
        ['error.gyro', 'GE', 'T', 'G'],
        ['error.compass', 'CE', 'T', 'C'],
      ],
    );
  });

  it('holds nothing that is no number', () => {
    fc.assert(
      fc.property(observation, (look) => {
        JSON.stringify(azimuthSight(look), (key, value: unknown) => {
          assert.ok(typeof value !== 'number' || Number.isFinite(value), key);
          return value;
        });
      }),
      { numRuns: 300 },
    );
  });
});

describe('the names of A, B and C', () => {
  const names = (latitude: number, declination: number, lha: number): string[] =>
    byHourAngle(latitude, declination, lha, 0, { compass: 'gyro' }).handSteps.map(({ code }) => code.split('.').slice(2).join('.'));

  // Course notes: A opposite to the latitude unless LHA lies in 90..270, B as the declination.
  it('33-37N 19-31.6S LHA 51-53.4: A south, B south, so C south; the azimuth is south and west', () => {
    assert.deepEqual(names(33.6167, -19.5267, 51.89), ['p.W', 'a.S', 'b.S', 'c.S', 'azimuth.S.W', 'bearing']);
  });
  it('A keeps the latitude’s name between 90 and 270', () => assert.ok(names(50, 60, 120).includes('a.N')));
});
