import { checkFinite } from '../angle/check-number.js';
import { wrap360 } from '../angle/wrap.js';
import { arctan, constant, cos, product, quotient, sin, sum, symbol, type Expression } from '../working/expression.js';
import { evaluate } from '../working/evaluate.js';
import { quantity, type Quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import type { KnownCoefficients } from './iron-from-exact.js';

const zeta = symbol('ζ');
const twice = product(constant(2), zeta);
const [A, B, C, D, E] = ['𝔄', '𝔅', 'ℭ', '𝔇', '𝔈'].map(symbol) as [Expression, Expression, Expression, Expression, Expression];

/** Force across magnetic north, towards east, over λH. */
const across = sum([A, product(B, sin(zeta)), product(C, cos(zeta)), product(D, sin(twice)), product(E, cos(twice))]);
/** Force towards magnetic north over λH. */
const along = sum(
  [constant(1), product(B, cos(zeta)), product(D, cos(twice))],
  [product(C, sin(zeta)), product(E, sin(twice))],
);

/**
 * The deviation on a magnetic heading from the exact coefficients: n and m, then tan δ = n/m
 * (trade formula, confirmed from Poisson's equations). Where the needle points more south than
 * north, the angle of that tangent is half a turn off, and the line says so by adding it.
 * Where n and m are both 0 there is no deviation, and no third line.
 * Throws `RangeError` naming a number that is missing or not finite.
 */
export function deviationSteps(exact: KnownCoefficients, magneticHeading: number): Step[] {
  checkFinite('magneticHeading', magneticHeading);
  for (const name of ['A', 'B', 'C', 'D', 'E'] as const) checkFinite(`exact.${name}`, exact[name]);
  checkFinite('exact.lambda', exact.lambda ?? 1);
  const values: Record<string, Quantity> = {
    ζ: quantity(wrap360(magneticHeading), 'bearing'),
    '𝔄': quantity(exact.A, 'number'),
    '𝔅': quantity(exact.B, 'number'),
    ℭ: quantity(exact.C, 'number'),
    '𝔇': quantity(exact.D, 'number'),
    '𝔈': quantity(exact.E, 'number'),
  };
  const line = (code: string, name: string, expression: Expression, put: Step['values'], unit: 'number' | 'error'): Step => {
    const numbers = Object.fromEntries(Object.entries(put).map(([key, { value }]) => [key, value]));
    return { code, symbol: name, expression, values: put, result: quantity(evaluate(expression, numbers), unit) };
  };
  const n = line('iron.across-north', 'n', across, values, 'number');
  const m = line('iron.along-north', 'm', along, values, 'number');
  if (n.result.value === 0 && m.result.value === 0) return [n, m];

  const put = { n: n.result, m: m.result };
  const angle = arctan(quotient(symbol('n'), symbol('m')));
  const south = (exact.lambda ?? 1) < 0 ? m.result.value >= 0 : m.result.value < 0;
  if (!south) return [n, m, line('iron.tan-deviation', 'δ', angle, put, 'error')];
  const east = evaluate(angle, { n: n.result.value, m: m.result.value }) > 0;
  const turned = east ? sum([angle], [constant(180)]) : sum([angle, constant(180)]);
  return [n, m, line('iron.tan-deviation-south', 'δ', turned, put, 'error')];
}
