import {
  acosDegrees,
  asinDegrees,
  atanDegrees,
  cosDegrees,
  sinDegrees,
  tanDegrees,
} from '../angle/trigonometry.js';
import type { Expression, FunctionName } from './expression.js';

const functions: Record<FunctionName, (x: number) => number> = {
  sin: sinDegrees,
  cos: cosDegrees,
  tan: tanDegrees,
  arcsin: asinDegrees,
  arccos: acosDegrees,
  arctan: atanDegrees,
};

/**
 * The number an expression stands for, angles in degrees, with the given values in place
 * of its symbols. Division by nothing and the tangent of 90° are infinite; what has no
 * value at all, such as the root of a negative number, throws `RangeError`, and so does a
 * symbol without a value, which is named.
 */
export function evaluate(expression: Expression, values: Readonly<Record<string, number>>): number {
  const value = workOut(expression, values);
  if (Number.isNaN(value)) throw new RangeError(`expression: its ${expression.is} has no value`);
  return value;
}

function workOut(expression: Expression, values: Readonly<Record<string, number>>): number {
  const at = (inner: Expression): number => evaluate(inner, values);
  switch (expression.is) {
    case 'constant':
      return expression.value;
    case 'symbol': {
      // An own value only: every record inherits a `constructor`.
      const value = Object.hasOwn(values, expression.name) ? values[expression.name] : undefined;
      if (value === undefined || Number.isNaN(value)) throw new RangeError(`values: no value for ${expression.name}`);
      return value;
    }
    case 'function':
      return functions[expression.name](at(expression.of));
    case 'sum':
      return (
        expression.plus.reduce((total, term) => total + at(term), 0) -
        expression.minus.reduce((total, term) => total + at(term), 0)
      );
    case 'product':
      return expression.factors.reduce((total, factor) => total * at(factor), 1);
    case 'quotient':
      return at(expression.over) / at(expression.under);
    case 'root':
      return Math.sqrt(at(expression.of));
    case 'square':
      return at(expression.of) ** 2;
  }
}
