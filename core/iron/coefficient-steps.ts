import { constant, product, quotient, sum, symbol, type Expression } from '../working/expression.js';
import { quantity, type Quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import type { EarthField } from './earth-field.js';
import { exactCoefficients, type IronCoefficients } from './exact-coefficients.js';
import { heeledParameters } from './heeled-parameters.js';
import type { IronParameters } from './iron-parameters.js';

const two = constant(2);
const lambda = symbol('λ');

/** How each coefficient is had from the rods, in the order of the work book. */
const formulas: Record<keyof IronCoefficients, { symbol: string; expression: Expression; of: readonly string[] }> = {
  lambda: {
    symbol: 'λ',
    expression: sum([constant(1), quotient(sum([symbol('a'), symbol('e')]), two)]),
    of: ['a', 'e'],
  },
  A: { symbol: '𝔄', expression: half(sum([symbol('d')], [symbol('b')])), of: ['d', 'b', 'λ'] },
  B: { symbol: '𝔅', expression: semicircular('P', 'c'), of: ['P', 'c', 'Z', 'λ', 'H'] },
  C: { symbol: 'ℭ', expression: semicircular('Q', 'f'), of: ['Q', 'f', 'Z', 'λ', 'H'] },
  D: { symbol: '𝔇', expression: half(sum([symbol('a')], [symbol('e')])), of: ['a', 'e', 'λ'] },
  E: { symbol: '𝔈', expression: half(sum([symbol('d'), symbol('b')])), of: ['d', 'b', 'λ'] },
};

function half(of: Expression): Expression {
  return quotient(of, product(two, lambda));
}

function semicircular(permanent: string, rod: string): Expression {
  return quotient(sum([symbol(permanent), product(symbol(rod), symbol('Z'))]), product(lambda, symbol('H')));
}

/**
 * λ and the exact coefficients from the rods, one line each (`iron.exact-lambda` to
 * `iron.exact-E`); a coefficient that is not determined has no line. Heeled, the rods put in
 * are those that act on the level compass. Arguments and errors as `exactCoefficients`.
 */
export function coefficientSteps(parameters: IronParameters, field: EarthField, heel = 0): Step[] {
  const exact = exactCoefficients(parameters, field, heel);
  const iron = heeledParameters(parameters, heel);
  const known: Record<string, Quantity> = {
    P: quantity(iron.P, 'nanotesla'),
    Q: quantity(iron.Q, 'nanotesla'),
    H: quantity(field.h, 'nanotesla'),
    Z: quantity(field.z, 'nanotesla'),
    λ: quantity(exact.lambda, 'number'),
  };
  for (const rod of ['a', 'b', 'c', 'd', 'e', 'f'] as const) known[rod] = quantity(iron[rod], 'number');
  return (Object.keys(formulas) as (keyof IronCoefficients)[]).flatMap((name) => {
    const value = exact[name];
    if (value === null) return [];
    const { symbol, expression, of } = formulas[name];
    const values: Record<string, Quantity> = {};
    for (const each of of) values[each] = known[each] as Quantity;
    return [{ code: `iron.exact-${name}`, symbol, expression, values, result: quantity(value, 'number') }];
  });
}
