import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import { reckonings } from '../../../core/sight/chain-steps.js';
import { convertDirection, type Chain, type ChainInput } from '../../../core/sight/chain.js';
import { compassError, gyroError } from '../../../core/sight/compass-error.js';
import { gyroSpeedError } from '../../../core/sight/gyro-speed-error.js';
import { courseMadeGood, courseToSteer, leewayAngle } from '../../../core/sight/leeway.js';
import { threeCompasses } from '../../../core/sight/three-compasses.js';
import { evaluate } from '../../../core/working/evaluate.js';
import { assertClose, assertSameDirection } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

type Inputs = Readonly<Record<string, number | string | undefined>>;

interface Case {
  readonly id: string;
  readonly source: string;
  readonly inputs: Inputs;
  readonly expected: Readonly<Record<string, number>>;
  readonly tolerance: { readonly deg: number };
}

const cases = reference<{ cases: Case[] }>('deviation-published.json').cases;

function number(inputs: Inputs, name: string): number {
  const value = inputs[name];
  assert.equal(typeof value, 'number', name);
  return value as number;
}

function optional(inputs: Inputs, name: string): number | null {
  return typeof inputs[name] === 'number' ? inputs[name] : null;
}

/** Winds named in the printed examples, by the 16 points of 22.5°. */
const winds: Readonly<Record<string, number>> = { NNE: 22.5, SSE: 157.5, WSW: 247.5, NNW: 337.5 };

/** Every line of the working must work out to its own result. */
function assertSteps({ steps }: Pick<Chain, 'steps'>): void {
  for (const { expression, values, result, code } of steps) {
    if (expression === null) continue;
    const numbers = Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value]));
    assertSameDirection(evaluate(expression, numbers), result.value, 1e-9, code);
  }
}

function courses({ inputs }: Case): Chain {
  const by = reckonings.find((reckoning) => reckoning !== 'gyro' && typeof inputs[reckoning] === 'number');
  const direction =
    typeof inputs['psc'] === 'number'
      ? { value: inputs['psc'], by: 'compass' as const }
      : typeof inputs['true_course'] === 'number'
        ? { value: courseToSteer(inputs['true_course'], leewayOf(inputs, inputs['true_course'])), by: 'true' as const }
        : { value: number(inputs, by ?? ''), by: by ?? 'compass' };
  const chain = convertDirection({
    direction,
    variation: optional(inputs, 'var'),
    deviation: optional(inputs, 'dev'),
    gyroError: optional(inputs, 'gyro_error'),
  });
  assertSteps(chain);
  return chain;
}

function leewayOf(inputs: Inputs, course: number): number {
  if (typeof inputs['leeway_pts'] === 'number') return inputs['leeway_pts'] * 11.25 * (inputs['tack'] === 'port' ? 1 : -1);
  if (typeof inputs['wind'] !== 'string') return 0;
  const leeway = leewayAngle({ amount: number(inputs, 'leeway'), windFrom: winds[inputs['wind']] as number, course });
  assert.ok(leeway !== null);
  return leeway;
}

for (const item of cases) {
  const { id, inputs, expected, tolerance, source } = item;
  const want = JSON.stringify(expected);
  if (/^cv-(lin-(\d|tr)|uscg|qa-[13])/.test(id)) {
    test(`${id}: ${JSON.stringify(inputs)} gives ${want} (${source})`, () => {
      const { values } = courses(item);
      if (expected['psc'] !== undefined) assertSameDirection(values.compass ?? NaN, expected['psc'], tolerance.deg);
      if (expected['pgc'] !== undefined) assertSameDirection(values.gyro ?? NaN, expected['pgc'], tolerance.deg);
      if (expected['compass'] !== undefined) assertSameDirection(values.compass ?? NaN, expected['compass'], tolerance.deg);
      const madeGood = expected['true'] ?? expected['true_made_good'];
      if (madeGood !== undefined) {
        const steered = values.true ?? NaN;
        assertSameDirection(courseMadeGood(steered, leewayOf(inputs, steered)), madeGood, tolerance.deg);
      }
      assert.ok(Object.keys(expected).every((name) => ['psc', 'pgc', 'compass', 'true', 'true_made_good'].includes(name)));
    });
  }
  if (/^cv-lin-ny/.test(id)) {
    test(`${id}: a pelorus bearing takes the deviation of the head: ${want} (${source})`, () => {
      const heading = number(inputs, 'heading_compass');
      // A card that says something else on the bearing itself.
      const card: DeviationCard = {
        kind: 'table',
        rows: [0, 90, 180].map((h) => ({ heading: heading + 90 + h, deviation: -20 })).concat({ heading, deviation: number(inputs, 'dev_on_heading') }),
      };
      const chain = convertDirection({
        direction: { value: number(inputs, 'compass_bearing'), by: 'compass' },
        head: { value: heading, by: 'compass' },
        variation: number(inputs, 'var'),
        deviation: card,
      });
      assertSteps(chain);
      assertSameDirection(chain.values.true ?? NaN, expected['true_bearing'] as number, tolerance.deg);
    });
  }
  if (/^cv-qm-[12]/.test(id)) {
    test(`${id}: one look, three compasses gives ${want} (${source})`, () => {
      const look = threeCompasses({
        gyro: number(inputs, 'gyro'),
        gyroError: number(inputs, 'gyro_error'),
        variation: number(inputs, 'var'),
        standard: number(inputs, 'std_compass'),
        steering: number(inputs, 'steering_compass'),
      });
      assertSteps(look);
      assertSameDirection(look.trueHead, expected['true'] as number, tolerance.deg);
      assertSameDirection(look.magneticHead, expected['magnetic'] as number, tolerance.deg);
      assertClose(look.standard?.deviation ?? NaN, expected['std_dev'] as number, tolerance.deg);
      assertClose(look.steering?.deviation ?? NaN, expected['steering_dev'] as number, tolerance.deg);
    });
  }
}

test('cv-lin-sum2, cv-lin-ce, cv-qa-5: error, deviation and variation from each other (Lectures in Navigation 1917; NAVEDTRA 14221)', () => {
  assert.equal(convertDirection({ direction: { value: 0, by: 'compass' }, variation: -10, deviation: 5 }).compassError, -5);
  assert.equal(compassError({ trueBearing: 350, compassBearing: 0, variation: 4 }).deviation, -14);
  // Variation from compass 180, true 176 and deviation 2: the error less the deviation.
  assert.equal(compassError({ trueBearing: 176, compassBearing: 180 }).error - 2, -6);
});

test('az-lin-ce and az-suntab-ex: error and deviation from the printed true bearing (sources in the file)', () => {
  const one = compassError({ trueBearing: 80, compassBearing: 92, variation: -10 });
  assert.deepEqual(one, { error: -12, deviation: -2 });
  const item = cases.find(({ id }) => id === 'az-suntab-ex') as Case;
  const sun = compassError({
    trueBearing: item.expected['true_bearing'] as number,
    compassBearing: number(item.inputs, 'compass_bearing'),
    variation: number(item.inputs, 'variation'),
  });
  assertClose(sun.error, item.expected['total_error'] as number, 0.001);
  assertClose(sun.deviation ?? NaN, item.expected['deviation'] as number, 0.001);
});

test('compass least, error east; compass best, error west, also across north (rule of the trade)', () => {
  assert.equal(compassError({ trueBearing: 2, compassBearing: 358 }).error, 4);
  assert.equal(compassError({ trueBearing: 358, compassBearing: 2 }).error, -4);
  assert.equal(gyroError({ trueBearing: 359.5, gyroBearing: 0.5 }), -1);
  assert.ok(!('deviation' in compassError({ trueBearing: 1, compassBearing: 1 })));
});

const card: DeviationCard = { kind: 'approximate', coefficients: { A: 1, B: -8, C: 6, D: 4, E: -1 } };
const heading = fc.double({ min: 0, max: 360, noNaN: true });
const small = fc.double({ min: -30, max: 30, noNaN: true });

test('a course goes from any reckoning to any other and back within 1e-9°', () => {
  fc.assert(
    fc.property(heading, small, small, fc.constantFrom(...reckonings), fc.constantFrom(...reckonings), (value, variation, error, from, to) => {
      const errors = { variation, gyroError: error, deviation: card };
      const there = convertDirection({ direction: { value, by: from }, ...errors });
      const back = convertDirection({ direction: { value: there.values[to] ?? NaN, by: to }, ...errors });
      assertSameDirection(back.values[from] ?? NaN, value, 1e-9);
      assertSteps(there);
    }),
  );
});

test('the deviation of a bearing is the same whichever reckoning the head is given in', () => {
  fc.assert(
    fc.property(heading, heading, small, (bearing, head, variation) => {
      const input = { direction: { value: bearing, by: 'compass' as const }, variation, gyroError: 1.5, deviation: card };
      const first = convertDirection({ ...input, head: { value: head, by: 'compass' } });
      for (const by of reckonings) {
        const other = convertDirection({ ...input, head: { value: first.head[by] ?? NaN, by } });
        assertClose(other.deviation ?? NaN, first.deviation ?? NaN, 1e-9, by);
        assertSameDirection(other.values.true ?? NaN, first.values.true ?? NaN, 1e-9, by);
        assertSteps(other);
      }
    }),
  );
});

test('a line of the working names the head as the head, and brings it no further than the card asks', () => {
  const card: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 3, C: 2, D: 1, E: 0 } };
  const symbols = (by: 'true' | 'magnetic' | 'compass'): string[] =>
    convertDirection({ direction: { value: 100, by: 'compass' }, head: { value: 45, by }, variation: -5, deviation: card }).steps.map(({ symbol }) => symbol);
  // True head, less variation, is the magnetic head, at which the card is asked; then the bearing (the chain of the trade).
  const typed = convertDirection({ direction: { value: 100, by: 'compass' }, head: { value: 45, by: 'true' }, variation: -5, deviation: 2 });
  assert.deepEqual(typed.steps.map(({ symbol }) => symbol), ['δ', 'M', 'T']);
  assert.deepEqual([symbols('true'), symbols('magnetic'), symbols('compass')], [['M_head', 'δ', 'M', 'T'], ['δ', 'M', 'T'], ['δ', 'M', 'T']]);
});

// By hand: 005 true, variation 10 W, is 015 magnetic; the standard at 358 errs 7 E and deviates 17 E, the steering at 012 7 W and 3 E.
test('three compasses are compared across north, and a direction beyond 360 is one within', () => {
  const look = threeCompasses({ gyro: 3, gyroError: 2, variation: -10, standard: 358, steering: 12 });
  assert.deepEqual([look.trueHead, look.magneticHead, look.standard, look.steering], [5, 15, { error: 7, deviation: 17 }, { error: -7, deviation: 3 }]);
  assert.equal(convertDirection({ direction: { value: 365, by: 'compass' } }).values.compass, 5);
});

test('what is not known is null with its reason, and the rest of the chain stands', () => {
  const input: ChainInput = { direction: { value: 100, by: 'compass' }, deviation: card };
  const chain = convertDirection(input);
  assert.equal(chain.values.true, null);
  assertSameDirection(chain.values.magnetic ?? NaN, 100 + (chain.deviation ?? NaN), 1e-12);
  assert.deepEqual(convertDirection({ direction: { value: 100, by: 'true' }, deviation: card }).noDeviation?.reason, 'head-not-reached');
  assert.deepEqual(convertDirection({ direction: { value: 100, by: 'true' } }).noDeviation?.reason, 'not-given');
  assert.equal(convertDirection({ direction: { value: 100, by: 'true' }, gyroError: -1 }).values.gyro, 101);
});

test('a card too steep for one compass course names every candidate', () => {
  // D of 35° falls faster than the ship turns on east: 90, and as far to either side.
  const steep: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 0, C: 0, D: 35, E: 0 } };
  const chain = convertDirection({ direction: { value: 90, by: 'magnetic' }, deviation: steep });
  assert.equal(chain.values.compass, null);
  assert.equal(chain.noDeviation?.reason, 'ambiguous');
  assert.equal(chain.noDeviation?.candidates.length, 3);
});

test('gyro speed error: 20 knots north in latitude 60 is 2.5° west, south 2.5° east, east nothing (rule from memory)', () => {
  assertClose(gyroSpeedError({ speed: 20, course: 0, latitude: 60 }) ?? NaN, -2.5, 0.05);
  assertClose(gyroSpeedError({ speed: 20, course: 180, latitude: -60 }) ?? NaN, 2.5, 0.05);
  assert.equal(gyroSpeedError({ speed: 20, course: 90, latitude: 60 }), 0);
  assert.equal(gyroSpeedError({ speed: 20, course: 0, latitude: 90 }), null);
});

test('leeway goes away from the wind; a wind right ahead sets to neither side', () => {
  assert.equal(leewayAngle({ amount: 5, windFrom: 350, course: 20 }), 5);
  assert.equal(leewayAngle({ amount: 5, windFrom: 20, course: 350 }), -5);
  assert.equal(leewayAngle({ amount: 5, windFrom: 360, course: 0 }), null);
  assert.equal(courseMadeGood(courseToSteer(2, 5), 5), 2);
});

test('bad numbers are refused by name', () => {
  const direction = { value: 10, by: 'true' as const };
  assert.throws(() => convertDirection({ direction: { value: NaN, by: 'true' } }), /RangeError: direction\.value/);
  assert.throws(() => convertDirection({ direction, head: { value: Infinity, by: 'gyro' } }), /RangeError: head\.value/);
  assert.throws(() => convertDirection({ direction, variation: 200 }), /RangeError: variation/);
  assert.throws(() => convertDirection({ direction, deviation: NaN }), /RangeError: deviation/);
  assert.throws(() => compassError({ trueBearing: NaN, compassBearing: 0 }), /RangeError: trueBearing/);
  assert.throws(() => gyroSpeedError({ speed: -1, course: 0, latitude: 0 }), /RangeError: speed/);
});
