import { arctan, quotient, root, square, sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import { magneticDip, totalForce, type EarthField } from './earth-field.js';

/**
 * Dip and total force from their parts: tan I = Z/H, F = √(H² + Z²). Without any field there
 * is no dip and no line for it; where H is 0 the quotient has no bound and the dip is 90°.
 * Throws `RangeError` as `magneticDip`.
 */
export function fieldSteps(field: EarthField): Step[] {
  const inclination = magneticDip(field);
  const H = quantity(field.h, 'nanotesla');
  const Z = quantity(field.z, 'nanotesla');
  const total: Step = {
    code: 'iron.total',
    symbol: 'F',
    expression: root(sum([square(symbol('H')), square(symbol('Z'))])),
    values: { H, Z },
    result: quantity(totalForce(field), 'nanotesla'),
  };
  if (inclination === null) return [total];
  return [
    {
      code: 'iron.dip',
      symbol: 'I',
      expression: arctan(quotient(symbol('Z'), symbol('H'))),
      values: { H, Z },
      result: quantity(inclination, 'angle'),
    },
    total,
  ];
}
