import { roundTo } from '../angle/format-angle.js';
import { deviationAt } from '../deviation/approximate-deviation.js';
import type { CoefficientName } from '../deviation/approximate-deviation.js';
import { eightPointAnalysis, eightPointNames } from '../deviation/eight-point-analysis.js';
import type { EightDeviations } from '../deviation/eight-point-analysis.js';
import { constant, quotient, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import { anyCoefficients } from './any-ship.js';
import type { Chance } from './chance.js';
import type { Draft, Level } from './exercise.js';
import type { Distractor, NumberQuestion } from '../answer/question.js';
import { givenTable } from './given.js';
import { numberQuestion } from '../answer/make-question.js';
import type { Tolerances } from '../answer/tolerances.js';

type Point = keyof EightDeviations;

const headings = Object.fromEntries(eightPointNames.map((point, place) => [point, place * 45])) as Readonly<Record<Point, number>>;

/** What is added, what taken away, and what it is divided by: Handbook of Magnetic Compass Adjustment, article 501. */
const formulas: Readonly<Record<CoefficientName, { plus: readonly Point[]; minus: readonly Point[]; by: number }>> = {
  A: { plus: eightPointNames, minus: [], by: 8 },
  B: { plus: ['E'], minus: ['W'], by: 2 },
  C: { plus: ['N'], minus: ['S'], by: 2 },
  D: { plus: ['NE', 'SW'], minus: ['SE', 'NW'], by: 4 },
  E: { plus: ['N', 'S'], minus: ['E', 'W'], by: 4 },
};

const asked: Record<Level, readonly CoefficientName[]> = { 1: ['B', 'C'], 2: ['A', 'B', 'C', 'D', 'E'], 3: ['A', 'B', 'C', 'D', 'E'] };

function stepOf(name: CoefficientName, deviations: EightDeviations, result: number): Step {
  const { plus, minus, by } = formulas[name];
  const symbolOf = (point: Point) => symbol(`δ_${point}`);
  return {
    code: `drill.coefficient-${name}`,
    symbol: name,
    expression: quotient(sum(plus.map(symbolOf), minus.map(symbolOf)), constant(by)),
    values: Object.fromEntries([...plus, ...minus].map((point) => [`δ_${point}`, quantity(deviations[point], 'error')])),
    result: quantity(result, 'angle'),
  };
}

/** What comes of reversing, not halving, adding up, and taking the other pair. */
function mistakesOf(name: CoefficientName, deviations: EightDeviations, answer: number): Distractor<number>[] {
  const { plus, minus, by } = formulas[name];
  const total = (of: readonly Point[]): number => of.reduce((all, point) => all + deviations[point], 0);
  const other = eightPointAnalysis(deviations)[name === 'B' ? 'C' : name === 'C' ? 'B' : name === 'D' ? 'E' : 'D'];
  return [
    { code: 'coefficient-sign', value: -answer },
    ...(minus.length > 0 ? [{ code: 'signs-ignored', value: (total(plus) + total(minus)) / by }] : []),
    { code: name === 'A' || name === 'D' || name === 'E' ? 'divided-by-half' : 'not-halved', value: 2 * answer },
    ...(name === 'A' ? [] : [{ code: 'other-coefficient', value: other }]),
  ];
}

/** A question at level 3 after the coefficients: the deviation they give on a heading between the eight. */
function deviationQuestion(chance: Chance, deviations: EightDeviations, tolerances: Tolerances): { question: NumberQuestion; heading: number; step: Step } {
  const found = eightPointAnalysis(deviations);
  const heading = chance.below(8) * 45 + chance.pick([15, 20, 25, 30]);
  const answer = deviationAt(found, heading);
  const question = numberQuestion({
    code: 'deviation',
    part: 'result',
    form: 'error',
    tolerance: tolerances.deviation,
    answer,
    mistakes: [
      { code: 'sign', value: -answer },
      { code: 'opposite-heading', value: deviationAt(found, heading + 180) },
      { code: 'quadrantal-forgotten', value: deviationAt({ ...found, D: 0, E: 0 }, heading) },
      { code: 'sine-for-cosine', value: deviationAt({ A: found.A, B: found.C, C: found.B, D: found.E, E: found.D }, heading) },
    ],
  });
  const step: Step = {
    code: 'drill.deviation-from-coefficients',
    symbol: 'δ',
    expression: null,
    values: { C_head: quantity(heading, 'bearing') },
    result: quantity(answer, 'error'),
  };
  return { question, heading, step };
}

/** Coefficients from the deviations of a swing on the eight principal points, compass headings. */
export function coefficientsExercise(chance: Chance, level: Level, tolerances: Tolerances): Draft {
  const ship = anyCoefficients(chance, level);
  const deviations = { ...headings };
  // A swing is read with an eye and a hand: half a degree either way.
  for (const point of eightPointNames) deviations[point] = roundTo((deviationAt(ship, headings[point]) + chance.between(-0.5, 0.5, 10)) * 2, 0) / 2;
  const found = eightPointAnalysis(deviations);
  const questions: NumberQuestion[] = asked[level].map((name) =>
    numberQuestion({
      code: `coefficient${name}`,
      part: 'result',
      form: 'signed',
      tolerance: tolerances.arithmetic,
      answer: found[name],
      mistakes: mistakesOf(name, deviations, found[name]),
    }),
  );
  const steps = asked[level].map((name) => stepOf(name, deviations, found[name]));
  const swing = givenTable(
    'swing',
    [
      { code: 'headingByCompass', unit: 'bearing' },
      { code: 'deviation', unit: 'error' },
    ],
    eightPointNames.map((point) => [headings[point], deviations[point]]),
  );
  if (level < 3) return { task: level === 1 ? 'coefficients.two' : 'coefficients.five', givens: [swing], asked: questions, steps };
  const last = deviationQuestion(chance, deviations, tolerances);
  return {
    task: 'coefficients.deviation',
    givens: [swing, { code: 'headOfShip', value: { is: 'quantity', quantity: quantity(last.heading, 'bearing') } }],
    asked: [...questions, last.question],
    steps: [...steps, last.step],
  };
}
