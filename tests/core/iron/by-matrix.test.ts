import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { addCorrectors } from '../../../core/iron/add-correctors.js';
import { hardIronPolarity, permanentFromSlip } from '../../../core/iron/building-slip.js';
import { coefficientSteps } from '../../../core/iron/coefficient-steps.js';
import { checkCorrector, magnetForce, type Corrector } from '../../../core/iron/correctors.js';
import { largestParts, partsOnHeading } from '../../../core/iron/deviation-parts.js';
import { deviationSteps } from '../../../core/iron/deviation-steps.js';
import { magneticDip, totalForce, type EarthField } from '../../../core/iron/earth-field.js';
import { exactCoefficients } from '../../../core/iron/exact-coefficients.js';
import { heelingCoefficient, heelingError, heelingErrorByCompass, linearHeelingError } from '../../../core/iron/heeling-error.js';
import { inducedPolarity, type Polarity } from '../../../core/iron/induced-polarity.js';
import { ironCautions } from '../../../core/iron/iron-cautions.js';
import { ironCurve } from '../../../core/iron/iron-curve.js';
import { ironDeviationByCompass } from '../../../core/iron/iron-by-compass.js';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import { ironFromExact } from '../../../core/iron/iron-from-exact.js';
import { noIron, type IronParameters } from '../../../core/iron/iron-parameters.js';
import { needle } from '../../../core/iron/needle.js';
import { compassField } from '../../../core/iron/poisson.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';

const RAD = Math.PI / 180;
const wrapped = (angle: number): number => ((((angle % 360) + 540) % 360) - 180);

type Vector = readonly [number, number, number];
type Matrix = readonly [Vector, Vector, Vector];
const times = (m: Matrix, v: Vector): Vector => m.map((row) => row[0] * v[0] + row[1] * v[1] + row[2] * v[2]) as unknown as Vector;

/** Poisson's equations (1824) as a matrix; the ship turned about her fore-and-aft line, starboard down, the compass level. */
function force({ a, b, c, d, e, f, g, h, k, P, Q, R }: IronParameters, field: EarthField, heading: number, heel: number): Vector {
  const [cos, sin] = [Math.cos(heel * RAD), Math.sin(heel * RAD)];
  const intoShip: Matrix = [[1, 0, 0], [0, cos, sin], [0, -sin, cos]];
  const backFromShip: Matrix = [[1, 0, 0], [0, cos, -sin], [0, sin, cos]];
  const earth = times(intoShip, [field.h * Math.cos(heading * RAD), -field.h * Math.sin(heading * RAD), field.z]);
  const induced = times([[1 + a, b, c], [d, 1 + e, f], [g, h, 1 + k]], earth);
  return times(backFromShip, [induced[0] + P, induced[1] + Q, induced[2] + R]);
}
const compassOf = ([x, y]: Vector): number => Math.atan2(-y, x) / RAD;

/** Numbers evenly spread; those of `fc.double` gather about 0. */
const evenly = (least: number, most: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: 999_983 }).map((part) => least + ((most - least) * (part + 0.377)) / 999_984);
const small = evenly(-0.5, 0.5);
const permanent = evenly(-30_000, 30_000);
const ironOf = (rods: fc.Arbitrary<number>, forces: fc.Arbitrary<number>): fc.Arbitrary<IronParameters> =>
  fc.record({ a: rods, b: small, c: small, d: small, e: rods, f: small, g: small, h: small, k: small, P: forces, Q: forces, R: forces });
/** Iron so strong that the needle may do anything: of all kinds, and such as turns the field about. */
const strongIron = fc.oneof(ironOf(evenly(-3.5, 1.5), permanent), ironOf(evenly(-3.4, -2.6), evenly(-3000, 3000)));
const mildIron = ironOf(small, permanent);
const fields = fc.record({ h: evenly(5000, 40_000), z: evenly(-60_000, 60_000) });
const heels = fc.oneof(fc.constant(0), evenly(-60, 60));
const headings = evenly(-720, 720);

test('forces, deviation and heeling error on any heading are those of the matrix, both hemispheres, both sides', () => {
  fc.assert(
    fc.property(fc.oneof(mildIron, strongIron), fields, headings, heels, (iron, field, heading, heel) => {
      const expected = force(iron, field, heading, heel);
      const found = compassField(iron, field, heading, heel);
      [found.x, found.y, found.z].forEach((part, i) => assertClose(part, expected[i] ?? NaN, 1e-6));
      const strength = Math.hypot(expected[0], expected[1]);
      fc.pre(strength > 500);
      const { deviation, compassHeading, directiveForce, northForce } = ironDeviation(iron, field, heading, heel);
      assertSameDirection(compassHeading ?? NaN, compassOf(expected), 1e-6);
      assertSameDirection(deviation ?? NaN, heading - compassOf(expected), 1e-6);
      assertClose(directiveForce, strength, 1e-6);
      assertClose(northForce ?? NaN, (expected[0] * Math.cos(heading * RAD) - expected[1] * Math.sin(heading * RAD)) / field.h, 1e-9);
      const upright = force(iron, field, heading, 0);
      fc.pre(Math.hypot(upright[0], upright[1]) > 500);
      const { error } = heelingError(iron, field, heading, heel);
      assertSameDirection(error ?? NaN, compassOf(upright) - compassOf(expected), 1e-6);
      assert.ok((error ?? NaN) > -180 && (error ?? NaN) <= 180);
    }),
  );
});

test('what the needle does in a turn: how often the compass goes round, λ the mean force to the north, the weakest force of all headings', () => {
  const seen = new Map<string, number>();
  fc.assert(
    fc.property(strongIron, fields, heels, (iron, field, heel) => {
      const forces = Array.from({ length: 720 }, (_, i) => force(iron, field, i / 2, heel));
      const strengths = forces.map(([x, y]) => Math.hypot(x, y));
      const least = Math.min(...strengths);
      fc.pre(least > 0.02 * field.h);
      const turn = forces.reduce((all, one, i) => all + wrapped(compassOf(one) - compassOf(forces[(i + 719) % 720] as Vector)), 0);
      const lambda = forces.reduce((all, [x, y], i) => all + (x * Math.cos((i / 2) * RAD) - y * Math.sin((i / 2) * RAD)) / field.h, 0) / 720;
      fc.pre(Math.abs(lambda) > 1e-6);
      const expected = { '360': lambda > 0 ? 'directs' : 'points-south', '-360': 'turns-backward', '0': 'follows-ship' }[String(Math.round(turn) + 0)];
      const found = needle(iron, field, heel);
      assert.equal(found.behaviour, expected, `${turn}°`);
      assertClose(found.lambda, lambda, 1e-9);
      assert.ok(found.weakest.directiveForce <= least + 1e-6);
      const there = force(iron, field, found.weakest.magneticHeading, heel);
      assertClose(found.weakest.directiveForce, Math.hypot(there[0], there[1]), 1e-5);
      assert.ok(found.weakest.magneticHeading >= 0 && found.weakest.magneticHeading < 360);
      assert.deepEqual(found.lostOn, []);
      seen.set(found.behaviour, (seen.get(found.behaviour) ?? 0) + 1);
      const told = ironCautions(iron, field, heel);
      assert.equal(told.some(({ code }) => code === 'iron.lambda-not-positive'), lambda <= 0);
      const behaviour = told.find(({ code }) => code.startsWith('iron.needle-'));
      assert.equal(behaviour?.code, found.behaviour === 'directs' ? undefined : `iron.needle-${found.behaviour}`);
      if (behaviour) {
        assert.deepEqual(behaviour.values, { heading: { value: found.weakest.magneticHeading, unit: 'bearing' }, force: { value: found.weakest.directiveForce, unit: 'nanotesla' } });
      }
    }),
    { numRuns: 150 },
  );
  for (const behaviour of ['directs', 'points-south', 'turns-backward', 'follows-ship']) assert.ok((seen.get(behaviour) ?? 0) > 0, `${behaviour} ${seen.get(behaviour)}`);
});

test('the magnetic headings of a compass heading are all those at which the compass shows it', () => {
  const kinds = new Map<string, number>();
  fc.assert(
    fc.property(strongIron, fields, fc.boolean(), evenly(0, 360), heels, (iron, field, shown, angle, heel) => {
      const count = 1440;
      // Any compass heading, and such as the compass comes to.
      const compass = (shown ? compassOf(force(iron, field, angle, heel)) + 360 : angle) % 360;
      const forces = Array.from({ length: count }, (_, i) => force(iron, field, (i * 360) / count, heel));
      fc.pre(Math.min(...forces.map(([x, y]) => Math.hypot(x, y))) > 0.05 * field.h);
      const off = forces.map((one) => wrapped(compassOf(one) - compass));
      const crossings: number[] = [];
      let grazing = false;
      off.forEach((here, i) => {
        const next = off[(i + 1) % count] as number;
        if (Math.abs(here) < 90 && Math.abs(next) < 90 && here < 0 !== next < 0) crossings.push(i);
        else if (Math.abs(here) < 2 && Math.abs(here) < Math.abs(next) && Math.abs(here) < Math.abs(off[(i + count - 1) % count] as number)) grazing ||= !(here < 0 !== (off[(i + count - 1) % count] as number) < 0);
      });
      fc.pre(!grazing);
      const { kind, answers } = ironDeviationByCompass(iron, field, compass, heel);
      assert.equal(answers.length, crossings.length);
      assert.equal(kind, ['none', 'one', 'two'][crossings.length]);
      for (const { magneticHeading, deviation } of answers) {
        assert.ok(magneticHeading >= 0 && magneticHeading < 360 && deviation > -180 && deviation <= 180);
        assertSameDirection(compassOf(force(iron, field, magneticHeading, heel)), compass, 1e-6);
        assertSameDirection(deviation, magneticHeading - compass, 1e-9);
        assert.ok(crossings.some((i) => Math.abs(wrapped(((i + 0.5) * 360) / count - magneticHeading)) < 0.2));
      }
      const error = heelingErrorByCompass(iron, field, compass, heel);
      assert.equal(error.heeled, kind === 'one' ? answers[0]?.deviation : null);
      kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
    }),
    { numRuns: 150 },
  );
  for (const kind of ['none', 'one', 'two']) assert.ok((kinds.get(kind) ?? 0) > 0, `${kind} ${kinds.get(kind)}`);
});

// The end of a piece that the field runs towards is red (common practice): the sign of the field along it, by unit vectors of the ship heeled.
test('the colours of every piece, on any heading, heeled, in both hemispheres', () => {
  fc.assert(
    fc.property(fields, headings, heels, (field, heading, heel) => {
      const earth: Vector = [field.h * Math.cos(heading * RAD), -field.h * Math.sin(heading * RAD), field.z];
      const [cos, sin] = [Math.cos(heel * RAD), Math.sin(heel * RAD)];
      const along = (v: Vector): number => earth[0] * v[0] + earth[1] * v[1] + earth[2] * v[2];
      const colour = (towards: Vector): Polarity => (along(towards) > 0 ? 'red' : 'blue');
      const [forward, starboard, down]: Matrix = [[1, 0, 0], [0, cos, sin], [0, -sin, cos]];
      fc.pre([forward, starboard, down].every((v) => Math.abs(along(v)) > 1e-3));
      const opposite = (v: Vector): Vector => [-v[0], -v[1], -v[2]];
      const [upper, lower] = [colour(opposite(down)), colour(down)];
      assert.deepEqual(inducedPolarity(field, heading, heel), {
        mast: { top: upper, foot: lower },
        funnel: { top: upper, foot: lower },
        deck: { upper, lower },
        keel: { bow: colour(forward), stern: colour(opposite(forward)), upper, lower },
        beam: { port: colour(opposite(starboard)), starboard: colour(starboard) },
      });
    }),
  );
  // Across the field, and where there is none, a piece has no colour.
  assert.deepEqual(inducedPolarity({ h: 20_000, z: 0 }, 90).keel, { bow: null, stern: null, upper: null, lower: null });
  assert.deepEqual(inducedPolarity({ h: 20_000, z: 0 }, 180).beam, { port: null, starboard: null });
  assert.deepEqual(inducedPolarity({ h: 0, z: 0 }, 10).mast, { top: null, foot: null });
  assert.deepEqual(inducedPolarity({ h: 1, z: 1e-5 }, 0).mast, { top: 'blue', foot: 'red' });
  assert.throws(() => inducedPolarity({ h: 1, z: 1 }, 0, NaN), /^RangeError: heel/);
});

test('correctors add just the force or the rod they are', () => {
  const added = (corrector: Corrector): IronParameters => addCorrectors({ ...noIron, P: 100, c: 0.01 }, [corrector]);
  const base = { ...noIron, P: 100, c: 0.01 };
  // A magnet below the card acts against its red end, end-on with it (field of a dipole).
  for (const [redEnd, sign] of [['forward', -1], ['aft', 1]] as const) {
    assert.deepEqual(added({ kind: 'fore-and-aft-magnet', redEnd, place: 'below', force: 2500 }), { ...base, P: 100 + sign * 2500 });
    assert.deepEqual(added({ kind: 'fore-and-aft-magnet', redEnd, place: 'end-on', force: 2500 }), { ...base, P: 100 - sign * 2500 });
  }
  for (const [redEnd, sign] of [['starboard', -1], ['port', 1]] as const) {
    assert.deepEqual(added({ kind: 'athwartship-magnet', redEnd, place: 'below', force: 2500 }), { ...base, Q: sign * 2500 });
    assert.deepEqual(added({ kind: 'athwartship-magnet', redEnd, place: 'end-on', force: 2500 }), { ...base, Q: -sign * 2500 });
  }
  for (const bearing of [0, 30, 90, 135, 180, 270, -60]) {
    const { c, f } = added({ kind: 'flinders-bar', strength: 0.08, bearing });
    assertClose(c, 0.01 + 0.08 * Math.cos(bearing * RAD), 1e-12);
    assertClose(f, 0.08 * Math.sin(bearing * RAD), 1e-12);
  }
  assert.deepEqual(added({ kind: 'heeling-magnet', redEnd: 'up', force: 900 }), { ...base, R: -900 });
  // Two magnets of a pair: twice the force.
  const pair: Corrector = { kind: 'fore-and-aft-magnet', redEnd: 'aft', place: 'below', force: 700 };
  assert.equal(addCorrectors(noIron, [pair, pair]).P, 1400);
  // μ₀/4π m/r³: 1 A m² at 0.5 m is 800 nT broadside on, twice that end-on.
  assertClose(magnetForce(1, 0.5, 'below'), 800, 1e-9);
  assertClose(magnetForce(1, 0.5, 'end-on'), 1600, 1e-9);
  assert.equal(magnetForce(0, 0.5, 'below'), 0);
});

test('what is no corrector, field, heading or strength is refused by name', () => {
  const bad: readonly (readonly [Partial<Corrector> & { readonly kind: string }, RegExp])[] = [
    [{ kind: 'spheres', radius: -1, distance: 1, bearing: 90 }, /here\.radius/],
    [{ kind: 'spheres', radius: NaN, distance: 1, bearing: 90 }, /here\.radius/],
    [{ kind: 'spheres', radius: 0.1, distance: 0.05, bearing: 90 }, /here\.distance/],
    [{ kind: 'spheres', radius: 0, distance: 0, bearing: 90 }, /here\.distance/],
    [{ kind: 'spheres', radius: 0.1, distance: 0.5, bearing: NaN }, /here\.bearing/],
    [{ kind: 'flinders-bar', strength: -0.1, bearing: 0 }, /here\.strength/],
    [{ kind: 'flinders-bar', strength: 0.1, bearing: Infinity }, /here\.bearing/],
    [{ kind: 'athwartship-magnet', redEnd: 'starboard', place: 'below', force: -1 }, /here\.force/],
    [{ kind: 'heeling-magnet', redEnd: 'up', force: -1 }, /here\.force/],
    [{ kind: 'lodestone' as 'spheres' }, /here\.kind/],
  ];
  for (const [corrector, message] of bad) assert.throws(() => checkCorrector('here', corrector as Corrector), { name: 'RangeError', message }, JSON.stringify(corrector));
  for (const fine of [{ kind: 'heeling-magnet', redEnd: 'up', force: 0 }, { kind: 'spheres', radius: 0.1, distance: 0.1, bearing: 90 }, { kind: 'fore-and-aft-magnet', redEnd: 'aft', place: 'below', force: 0 }] as const) checkCorrector('here', fine);
  const field = { h: -1, z: 0 };
  const exact = { A: 0, B: 0, C: 0, D: 0, E: 0 };
  const good = { h: 20_000, z: 40_000 };
  const refused: readonly (readonly [() => unknown, RegExp])[] = [
    [() => totalForce(field), /field\.h/],
    [() => exactCoefficients(noIron, field), /field\.h/],
    [() => largestParts(noIron, field), /field\.h/],
    [() => partsOnHeading({ A: 0, permanentB: 0, inducedB: 0, permanentC: 0, inducedC: 0, D: 0, E: 0 }, NaN), /compassHeading/],
    [() => heelingCoefficient(noIron, field), /field\.h/],
    [() => linearHeelingError(noIron, good, NaN, 1), /compassHeading/],
    [() => linearHeelingError(noIron, good, 0, NaN), /heel/],
    [() => ironDeviationByCompass(noIron, field, 0), /field\.h/],
    [() => ironDeviationByCompass(noIron, good, NaN), /compassHeading/],
    [() => ironCurve(noIron, field), /field\.h/],
    [() => ironCurve(noIron, good, 0, 0), /count/],
    [() => needle(noIron, field), /field\.h/],
    [() => compassField(noIron, field, 0), /field\.h/],
    [() => compassField(noIron, good, NaN), /magneticHeading/],
    [() => ironCautions(noIron, good, NaN), /heel/],
    [() => ironFromExact({ ...exact, lambda: NaN }, good), /exact\.lambda/],
    [() => deviationSteps(exact, NaN), /magneticHeading/],
    [() => deviationSteps({ ...exact, lambda: Infinity }, 0), /exact\.lambda/],
    [() => permanentFromSlip({ magneticHeading: 0, field }), /slip\.field\.h/],
    [() => permanentFromSlip({ magneticHeading: NaN, field: good }), /slip\.magneticHeading/],
    [() => permanentFromSlip({ magneticHeading: 0, field: good }, { horizontal: 1.1 }), /strength\.horizontal/],
    [() => permanentFromSlip({ magneticHeading: 0, field: good }, { vertical: -0.1 }), /strength\.vertical/],
    [() => hardIronPolarity({ magneticHeading: NaN, field: good }), /magneticHeading/],
  ];
  for (const [call, message] of refused) assert.throws(call, { name: 'RangeError', message }, String(message));
});

// Built heading 090 in the north, magnetised along the field: red to port, blue above; the hull lies broadside under the compass.
test('a ship takes from her slip the field there turned about, in both hemispheres', () => {
  for (const z of [40_000, -40_000]) {
    for (const magneticHeading of [0, 45, 90, 200, 315]) {
      const { P, Q, R } = permanentFromSlip({ magneticHeading, field: { h: 18_000, z } }, { horizontal: 1, vertical: 0.5 });
      assertClose(P, -18_000 * Math.cos(magneticHeading * RAD), 1e-9);
      assertClose(Q, 18_000 * Math.sin(magneticHeading * RAD), 1e-9);
      assertClose(R, 0.5 * z, 1e-9);
    }
  }
});

test('dip and coefficients at the magnetic equator and the pole', () => {
  assert.equal(magneticDip({ h: 30_000, z: 0 }), 0);
  assert.equal(heelingCoefficient({ ...noIron, R: 100 }, { h: 0, z: 50_000 }), null);
  assert.equal(linearHeelingError({ ...noIron, R: 100 }, { h: 0, z: 50_000 }, 0, 5), null);
  // J = ((e − k) Z − R)/(λH), and its sign turns with the hemisphere where the rods make it.
  const iron = { ...noIron, e: -0.1, k: 0.06, a: 0.02 };
  assertClose(heelingCoefficient(iron, { h: 20_000, z: 40_000 }) ?? NaN, (-0.16 * 40_000) / (0.96 * 20_000), 1e-12);
  assertClose(heelingCoefficient(iron, { h: 20_000, z: -40_000 }) ?? NaN, (0.16 * 40_000) / (0.96 * 20_000), 1e-12);
  assertClose(linearHeelingError(iron, { h: 20_000, z: -40_000 }, 60, -4) ?? NaN, ((0.16 * 40_000) / (0.96 * 20_000)) * -4 * 0.5, 1e-12);
});

// Archibald Smith's exact expression: tan δ = n/m.
test('the working of a deviation: n and m by the five exact coefficients, on any heading, λ of either sign', () => {
  const number = evenly(-0.6, 0.6);
  fc.assert(
    fc.property(fc.record({ A: number, B: number, C: number, D: number, E: number, lambda: fc.constantFrom(undefined, 0.9, -0.9) }), headings, (exact, heading) => {
      const z = heading * RAD;
      const { A, B, C, D, E, lambda } = exact;
      const n = A + B * Math.sin(z) + C * Math.cos(z) + D * Math.sin(2 * z) + E * Math.cos(2 * z);
      const m = 1 + B * Math.cos(z) - C * Math.sin(z) + D * Math.cos(2 * z) - E * Math.sin(2 * z);
      const steps = deviationSteps(exact, heading);
      assert.deepEqual(steps.map(({ code, symbol }) => `${code} ${symbol}`).slice(0, 2), ['iron.across-north n', 'iron.along-north m']);
      assertClose(steps[0]?.result.value ?? NaN, n, 1e-9);
      assertClose(steps[1]?.result.value ?? NaN, m, 1e-9);
      const turned = (lambda ?? 1) < 0 ? -1 : 1;
      const expected = Math.atan2(turned * n, turned * m) / RAD;
      assertSameDirection(steps[2]?.result.value ?? NaN, expected, 1e-6);
      assert.equal(steps[2]?.code, Math.abs(expected) > 90 ? 'iron.tan-deviation-south' : 'iron.tan-deviation');
      const bearing = steps[0]?.values['ζ']?.value ?? NaN;
      assert.ok(bearing >= 0 && bearing < 360);
    }),
  );
  // Forces across alone: the needle lies due east of north, a quarter turn, and no division is undone.
  assert.equal(deviationSteps({ A: 0.5, B: -1, C: 0, D: 0, E: 0 }, 0)[2]?.result.value, 90);
  assert.deepEqual(coefficientSteps(noIron, { h: 1, z: 0 }).map(({ symbol }) => symbol), ['λ', '𝔄', '𝔅', 'ℭ', '𝔇', '𝔈']);
});

test('a curve has as many headings as asked for, whole; where the needle is lost it has no parts', () => {
  assert.equal(ironCurve(noIron, { h: 20_000, z: 0 }, 0, 7.9).length, 7);
  assert.deepEqual(ironCurve(noIron, { h: 20_000, z: 0 }, 0, 4).map(({ magneticHeading }) => magneticHeading), [0, 90, 180, 270]);
  assert.equal(ironCurve(noIron, { h: 20_000, z: 0 }, 0, 3600).length, 3600);
  assert.throws(() => ironCurve(noIron, { h: 20_000, z: 0 }, 0, 3601), /^RangeError: count/);
  for (const point of ironCurve({ ...noIron, P: 500 }, { h: 0, z: 50_000 }, 0, 4)) assert.deepEqual([point.deviation, point.parts, point.rest], [null, null, null]);
  // P of three times H against her head: half a turn of deviation on north, of which the parts tell nothing near it.
  const [north] = ironCurve({ ...noIron, P: -60_000 }, { h: 20_000, z: 0 }, 0, 4);
  assert.equal(north?.deviation, 180);
  for (const { deviation, parts, rest } of ironCurve({ ...noIron, P: -60_000, Q: 20_000 }, { h: 20_000, z: 0 }, 0, 32)) {
    const sum = Object.values(parts ?? {}).reduce((all: number, part: number) => all + part, 0);
    assertSameDirection(rest ?? NaN, (deviation ?? NaN) - sum, 1e-9);
    assert.ok((rest ?? NaN) > -180 && (rest ?? NaN) <= 180);
  }
  assert.deepEqual(ironCautions(noIron, { h: 20_000, z: 0 }, -31).map(({ code, values }) => [code, values['heel']]), [['iron.heel-large', { value: -31, unit: 'angle' }]]);
  assert.deepEqual(ironCautions({ ...noIron, P: -20_000 }, { h: 20_000, z: 0 }).map(({ code }) => code), ['iron.needle-vanishes']);
});
