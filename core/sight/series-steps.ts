import { angleFromTo } from '../angle/wrap.js';
import { constant, quotient, root, square, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Quantity, Unit } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import type { CompassKind } from './compass-kind.js';
import { errorSteps } from './error-steps.js';
import { ENOUGH } from './series-mean.js';
import type { SeriesMean } from './series-mean.js';
import type { VariationSource } from './variation-source.js';

export interface WorkedSeries extends SeriesMean {
  readonly compass: CompassKind;
  readonly variation: VariationSource;
  /** Of each bearing that counts: its error, and what is left of it beside the mean; degrees. */
  readonly kept: readonly { readonly error: number; readonly residual: number }[];
  /** What is supposed of one reading, degrees. */
  readonly reading: number;
}

/** Values under the same letter with a number each: `e_1`, `e_2`. */
function numbered(letter: string, values: readonly number[], unit: Unit): Record<string, Quantity> {
  return Object.fromEntries(values.map((value, index) => [`${letter}_${index + 1}`, quantity(value, unit)]));
}

/** s / √n; with few bearings the doubt supposed of a reading takes the place of s where it is larger. */
function standardErrorStep({ scatter, standardError, kept, reading }: WorkedSeries): Step {
  const supposed = kept.length < ENOUGH && reading > scatter;
  const name = supposed ? 'σ' : 's';
  return {
    code: supposed ? 'series.standard-error.reading' : 'series.standard-error.scatter',
    symbol: 's_m',
    expression: quotient(symbol(name), root(constant(kept.length))),
    values: { [name]: quantity(supposed ? reading : scatter, 'angle') },
    result: quantity(standardError, 'angle'),
  };
}

/** The working of the mean of a series: mean error, scatter, standard error, then the split of the error. */
export function seriesSteps(series: WorkedSeries): Step[] {
  const { compass, kept, error, scatter } = series;
  const mean = compass === 'gyro' ? 'GE' : 'CE';
  const first = kept[0]?.error ?? 0;
  // Counted on from the first, so that a mean across 180° is one.
  const errors = numbered('e', kept.map((shot) => first + angleFromTo(first, shot.error)), 'error');
  const left = numbered('r', kept.map(({ residual }) => residual), 'angle');
  const squares = Object.keys(left).map((name) => square(symbol(name)));
  const steps: Step[] = [
    { code: 'series.mean', symbol: mean, expression: quotient(sum(Object.keys(errors).map(symbol)), constant(kept.length)), values: errors, result: quantity(error, 'error') },
  ];
  if (kept.length > 1) {
    steps.push({
      code: 'series.scatter',
      symbol: 's',
      expression: root(quotient(sum(squares), constant(kept.length - 1))),
      values: left,
      result: quantity(scatter, 'angle'),
    });
  }
  // The first line of a single sight, true less compass, has been worked for each bearing in the table.
  return [...steps, standardErrorStep(series), ...errorSteps({ ...series, compassBearing: 0 }).slice(1)];
}
