import { sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';

/** The line that brings a course made good to the course steered; leeway in degrees, to starboard positive. */
export function toSteerStep(madeGood: number, leeway: number, result: number): Step {
  return {
    code: 'leeway.to-steer',
    symbol: 'T',
    expression: sum([symbol('T_good')], [symbol('l')]),
    values: { T_good: quantity(madeGood, 'bearing'), l: quantity(leeway, 'angle') },
    result: quantity(result, 'bearing'),
  };
}

/** The line that brings a course steered to the course made good. */
export function madeGoodStep(course: number, leeway: number, result: number): Step {
  return {
    code: 'leeway.made-good',
    symbol: 'T_good',
    expression: sum([symbol('T'), symbol('l')]),
    values: { T: quantity(course, 'bearing'), l: quantity(leeway, 'angle') },
    result: quantity(result, 'bearing'),
  };
}
