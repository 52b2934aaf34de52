import { roundTo } from '../angle/format-angle.js';
import { magneticField } from '../field/magnetic-field.js';
import { predictAt } from '../iron/predict-at.js';
import { separateIron } from '../iron/separate-iron.js';
import { product, quotient, sum, symbol } from '../working/expression.js';
import type { Expression } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import { anyInstant, anyPlace } from './any-sight.js';
import type { Chance } from './chance.js';
import type { Draft, Given, Level } from './exercise.js';
import type { Distractor } from '../answer/question.js';
import { given } from './given.js';
import { numberQuestion } from '../answer/make-question.js';
import type { Tolerances } from '../answer/tolerances.js';

interface Field {
  readonly h: number;
  readonly z: number;
}

/** Where a compass is steady enough to be compared between places, nanotesla. */
const WEAKEST = 12_000;
/** B or C, degrees: enough to be seen, little enough for degrees to stand for the pure numbers. */
const LEAST = 1.5;
const MOST = 12;
/** How much the two swings' half degrees may grow on the way to the third place. */
const AMPLIFICATION = 4;

function anyField(chance: Chance): Field {
  const { h, z } = magneticField(anyPlace(chance, 0, 60), anyInstant(chance));
  return { h: roundTo(h / 100, 0) * 100, z: roundTo(z / 100, 0) * 100 };
}

const forces = (place: number, { h, z }: Field): Given[] => [given(`H${place}`, h, 'nanotesla'), given(`Z${place}`, z, 'nanotesla')];
const isSeen = (coefficient: number): boolean => Math.abs(coefficient) >= LEAST && Math.abs(coefficient) <= MOST;
const nanotesla = (value: number): Quantity => quantity(value, 'nanotesla');
const degrees = (value: number): Quantity => quantity(value, 'angle');

function draft(
  task: string,
  name: 'B' | 'C',
  answer: number,
  parts: { givens: readonly Given[]; mistakes: readonly Distractor<number>[]; steps: readonly Step[]; tolerances: Tolerances },
): Draft | null {
  if (!isSeen(answer)) return null;
  const question = numberQuestion({
    code: `coefficient${name}`,
    part: 'result',
    form: 'signed',
    tolerance: parts.tolerances.deviation,
    answer,
    mistakes: [...parts.mistakes, { code: 'coefficient-sign', value: -answer }],
  });
  return { task, givens: parts.givens, asked: [question], steps: parts.steps };
}

function step(code: string, name: string, expression: Expression, values: Record<string, Quantity>, result: number): Step {
  return { code: `drill.${code}`, symbol: name, expression, values, result: degrees(result) };
}

/** Permanent iron alone: the coefficient is as 1/H. */
function permanentOnly(chance: Chance, tolerances: Tolerances): Draft | null {
  const [from, to] = [anyField(chance), anyField(chance)];
  if (from.h < WEAKEST || to.h < WEAKEST) return null;
  const name = chance.pick(['B', 'C'] as const);
  const before = chance.either(3, 9, 2);
  const after = (before * from.h) / to.h;
  const [first, second] = [`${name}_1`, `${name}_2`];
  const values = { [first]: degrees(before), H_1: nanotesla(from.h), H_2: nanotesla(to.h) };
  const expression = quotient(product(symbol(first), symbol('H_1')), symbol('H_2'));
  return draft(`latitude.permanent-${name}`, name, after, {
    givens: [given('coefficient1', before, 'angle'), given('H1', from.h, 'nanotesla'), given('H2', to.h, 'nanotesla')],
    mistakes: [
      { code: 'ratio-inverted', value: (before * to.h) / from.h },
      { code: 'place-ignored', value: before },
    ],
    steps: [step('permanent', second, expression, values, after)],
    tolerances,
  });
}

/** Vertical soft iron alone: the coefficient is as tan dip, and changes its sign with it. */
function inducedOnly(chance: Chance, tolerances: Tolerances): Draft | null {
  const [from, to] = [anyField(chance), anyField(chance)];
  if (from.h < WEAKEST || to.h < WEAKEST || Math.abs(from.z) < 10_000) return null;
  const before = chance.either(3, 9, 2);
  const after = (before * (to.z / to.h)) / (from.z / from.h);
  const ratio = (place: number): Expression => quotient(symbol(`Z_${place}`), symbol(`H_${place}`));
  const expression = quotient(product(symbol('B_1'), ratio(2)), ratio(1));
  const values = { B_1: degrees(before), Z_1: nanotesla(from.z), H_1: nanotesla(from.h), Z_2: nanotesla(to.z), H_2: nanotesla(to.h) };
  return draft('latitude.induced-B', 'B', after, {
    givens: [given('coefficient1', before, 'angle'), ...forces(1, from), ...forces(2, to)],
    mistakes: [
      { code: 'hemisphere', value: -after },
      { code: 'as-if-permanent', value: (before * from.h) / to.h },
      { code: 'ratio-inverted', value: (before * (from.z / from.h)) / (to.z / to.h) },
      { code: 'vertical-only', value: (before * to.z) / from.z },
      { code: 'place-ignored', value: before },
    ],
    steps: [step('induced', 'B_2', expression, values, after)],
    tolerances,
  });
}

/** Both kinds, separated by two places and put together again at a third. */
function separated(chance: Chance, tolerances: Tolerances): Draft | null {
  const [one, two, three] = [anyField(chance), anyField(chance), anyField(chance)];
  if ([one, two, three].some(({ h }) => h < WEAKEST)) return null;
  const [first, second] = [chance.either(3, 9, 2), chance.either(3, 9, 2)];
  // Degrees in place of pure numbers: the lines are straight in either.
  const observe = (B: number, field: Field) => ({ exact: { B, C: null }, field });
  const iron = separateIron([observe(first, one), observe(second, two)]);
  const there = predictAt(iron, three);
  const c = iron.overLambda.c;
  if (there.exact.B === null || c === null || (there.amplification.B ?? Infinity) > AMPLIFICATION) return null;
  // No rod of a ship gives more.
  if (Math.abs(c) > 5) return null;
  const [H1B1, H2B2] = [product(symbol('H_1'), symbol('B_1')), product(symbol('H_2'), symbol('B_2'))];
  const known = { B_1: degrees(first), H_1: nanotesla(one.h), Z_1: nanotesla(one.z) };
  const slope = quotient(sum([H2B2], [H1B1]), sum([symbol('Z_2')], [symbol('Z_1')]));
  const last = quotient(sum([H1B1, product(symbol('c'), sum([symbol('Z_3')], [symbol('Z_1')]))]), symbol('H_3'));
  return draft('latitude.separated-B', 'B', there.exact.B, {
    givens: [given('coefficient1', first, 'angle'), ...forces(1, one), given('coefficient2', second, 'angle'), ...forces(2, two), ...forces(3, three)],
    mistakes: [
      { code: 'as-if-permanent', value: (first * one.h) / three.h },
      { code: 'as-if-induced', value: (first * (three.z / three.h)) / (one.z / one.h || Infinity) },
      { code: 'hemisphere', value: (first * one.h + c * (Math.abs(three.z) - one.z)) / three.h },
      { code: 'place-ignored', value: second },
    ],
    steps: [
      step('slope', 'c', slope, { ...known, B_2: degrees(second), H_2: nanotesla(two.h), Z_2: nanotesla(two.z) }, c),
      step('third-place', 'B_3', last, { ...known, c: degrees(c), H_3: nanotesla(three.h), Z_3: nanotesla(three.z) }, there.exact.B),
    ],
    tolerances,
  });
}

/** What becomes of B or C when she sails to another magnetic latitude; null where too little or too much does. */
export function latitudeExercise(chance: Chance, level: Level, tolerances: Tolerances): Draft | null {
  if (level === 1) return permanentOnly(chance, tolerances);
  return level === 2 ? inducedOnly(chance, tolerances) : separated(chance, tolerances);
}
