import { wrap180 } from '../angle/wrap.js';
import { decimalYear } from '../time/decimal-year.js';
import { constant, product, quotient, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import { chartedVariation } from './charted-variation.js';
import type { ChartRose } from './charted-variation.js';

/**
 * The rose of a chart brought up to date as in a work book: the years gone, with decimals,
 * what the variation changed in them, and the variation, east positive.
 * Throws `RangeError` as `chartedVariation`.
 */
export function roseSteps(rose: ChartRose, instant: Date): Step[] {
  const charted = chartedVariation(rose, instant);
  const now = decimalYear(instant);
  const years = now - rose.year;
  const change = (rose.annualChangeMinutes * years) / 60;
  const whole = rose.variation + change;
  const steps: Step[] = [
    {
      code: 'rose.years',
      symbol: 'n',
      expression: sum([symbol('t')], [symbol('t_rose')]),
      values: { t: quantity(now, 'years'), t_rose: quantity(rose.year, 'years') },
      result: quantity(years, 'years'),
    },
    {
      code: 'rose.change',
      symbol: 'v',
      expression: quotient(product(symbol('c'), symbol('n')), constant(60)),
      values: { c: quantity(rose.annualChangeMinutes, 'arcminutes'), n: quantity(years, 'years') },
      result: quantity(change, 'angle'),
    },
    {
      code: 'rose.variation',
      symbol: 'V_chart',
      expression: sum([symbol('V_rose'), symbol('v')]),
      values: { V_rose: quantity(rose.variation, 'angle'), v: quantity(change, 'angle') },
      result: quantity(whole, 'angle'),
    },
  ];
  if (wrap180(whole) === whole) return steps;
  // A change that carried it across south: the same direction, counted the other way round.
  return [...steps, { code: 'rose.turned', symbol: 'V_chart', expression: null, values: {}, result: quantity(charted, 'error') }];
}
