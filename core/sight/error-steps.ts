import { sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import type { CompassKind } from './compass-kind.js';
import type { VariationSource } from './variation-source.js';

/** What the last lines of every sight's working need. */
export interface ErrorSplit {
  readonly trueBearing: number;
  readonly compassBearing: number;
  readonly compass: CompassKind;
  readonly error: number;
  readonly variation: VariationSource;
  readonly deviation: number | null;
  readonly cardDeviation: number | null;
  readonly difference: number | null;
  /** Degrees, where it is known: in high ones a gyro has little to hold it. */
  readonly latitude?: number;
}

/** From true and compass bearing to error, deviation and what is left beside the card. */
export function errorSteps(split: ErrorSplit): Step[] {
  const magnetic = split.compass === 'magnetic';
  const observed = magnetic ? 'C' : 'G';
  const error = magnetic ? 'CE' : 'GE';
  const steps: Step[] = [
    {
      code: magnetic ? 'error.compass' : 'error.gyro',
      symbol: error,
      expression: sum([symbol('T')], [symbol(observed)]),
      values: { T: quantity(split.trueBearing, 'bearing'), [observed]: quantity(split.compassBearing, 'bearing') },
      result: quantity(split.error, 'error'),
    },
  ];
  const { variation, deviation, cardDeviation, difference } = split;
  if (variation.source === 'none' || deviation === null) return steps;
  steps.push(
    { code: `variation.${variation.source}`, symbol: 'V', expression: null, values: {}, result: quantity(variation.value, 'error') },
    {
      code: 'error.deviation',
      symbol: 'δ',
      expression: sum([symbol(error)], [symbol('V')]),
      values: { [error]: quantity(split.error, 'error'), V: quantity(variation.value, 'error') },
      result: quantity(deviation, 'error'),
    },
  );
  if (cardDeviation === null || difference === null) return steps;
  steps.push({
    code: 'error.difference',
    symbol: 'Δ',
    expression: sum([symbol('δ')], [symbol('δ_card')]),
    values: { δ: quantity(deviation, 'error'), δ_card: quantity(cardDeviation, 'error') },
    result: quantity(difference, 'error'),
  });
  return steps;
}
