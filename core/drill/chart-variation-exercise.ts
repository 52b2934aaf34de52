import { wrap180 } from '../angle/wrap.js';
import { chartedVariation } from '../field/charted-variation.js';
import { decimalYear } from '../time/decimal-year.js';
import { constant, product, quotient, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import type { Chance } from './chance.js';
import type { Draft, Level } from './exercise.js';
import { given, givenText, givenWord } from './given.js';
import { numberQuestion } from '../answer/make-question.js';
import type { Tolerances } from '../answer/tolerances.js';

/** V = V₀ + a/60 · (t − t₀): the rose's value and its annual change, east positive (common practice). */
function variationStep(rose: { variation: number; year: number; annualChangeMinutes: number }, now: number, result: number): Step {
  return {
    code: 'drill.chart-variation',
    symbol: 'V',
    expression: sum([symbol('V_0'), product(quotient(symbol('a'), constant(60)), sum([symbol('t')], [symbol('t_0')]))]),
    values: {
      V_0: quantity(rose.variation, 'error'),
      a: quantity(rose.annualChangeMinutes, 'arcminutes'),
      t: quantity(now, 'years'),
      t_0: quantity(rose.year, 'years'),
    },
    result: quantity(result, 'error'),
  };
}

/** How large the rose's value is by level, minutes: level 3 begins so near zero that the change may lead through it. */
const SIZES: Record<Level, readonly [number, number]> = { 1: [180, 1500], 2: [120, 2400], 3: [15, 150] };

/** The variation of a chart's rose brought up to date. */
export function chartVariationExercise(chance: Chance, level: Level, tolerances: Tolerances): Draft {
  const size = chance.between(SIZES[level][0] / 15, SIZES[level][1] / 15) / 4;
  const east = chance.below(2) === 0;
  const variation = east ? size : -size;
  const decreasing = level === 3 || chance.below(2) === 0;
  const perYear = chance.between(5, 13);
  const annualChangeMinutes = decreasing === east ? -perYear : perYear;
  const year = chance.between(2010, 2017);
  // Whole years at first, then any quarter of one.
  const month = level === 1 ? 0 : chance.below(4) * 3;
  const instant = new Date(Date.UTC(chance.between(2026, 2029), month, 1));
  const now = decimalYear(instant);
  const answer = chartedVariation({ variation, year, annualChangeMinutes }, instant);
  const change = answer - variation;
  return {
    task: 'chart-variation',
    givens: [
      given('roseVariation', variation, 'error'),
      givenText('roseYear', String(year)),
      given('annualChange', perYear, 'arcminutes'),
      givenWord('changeDirection', decreasing ? 'change.decreasing' : 'change.increasing'),
      givenText('date', instant.toISOString().slice(0, 10)),
    ],
    asked: [
      numberQuestion({
        code: 'change',
        part: 'step',
        form: 'error',
        tolerance: tolerances.variation,
        answer: change,
        mistakes: [
          { code: 'change-direction', value: -change },
          { code: 'minutes-as-degrees', value: wrap180((change * 60) / 10) },
        ],
      }),
      numberQuestion({
        code: 'variation',
        part: 'result',
        form: 'error',
        tolerance: tolerances.variation,
        answer,
        mistakes: [
          // Beyond zero the name has changed too.
          { code: answer * variation < 0 ? 'through-zero' : 'sign', value: -answer },
          { code: 'change-direction', value: variation - change },
          { code: 'change-forgotten', value: variation },
          { code: 'minutes-as-degrees', value: wrap180(variation + (change * 60) / 10) },
        ],
      }),
    ],
    steps: [variationStep({ variation, year, annualChangeMinutes }, now, answer)],
  };
}
