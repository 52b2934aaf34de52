import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { evaluate } from '../../../core/working/evaluate.js';
import {
  arccos, arcsin, arctan, constant, cos, product, quotient, root, sin, square, sum, symbol, tan,
} from '../../../core/working/expression.js';
import type { Expression } from '../../../core/working/expression.js';
import { assertClose } from '../../support/assert-close.js';

const c = constant;

// Expected values: elementary arithmetic and the geometry of 30°, 45° and 60°.
const cases: readonly (readonly [name: string, expression: Expression, value: number])[] = [
  ['a constant', c(7), 7],
  ['a symbol', symbol('x'), 3],
  ['a sum', sum([c(1), c(2)]), 3],
  ['a sum with things taken away', sum([c(10), symbol('x')], [c(4), c(2)]), 7],
  ['a sum of nothing but things taken away', sum([], [c(4)]), -4],
  ['a product', product(c(2), symbol('x'), c(5)), 30],
  ['an empty product', product(), 1],
  ['a quotient', quotient(c(1), c(8)), 0.125],
  ['a root', root(c(9)), 3],
  ['a square', square(c(-4)), 16],
  ['sin 30°', sin(c(30)), 0.5],
  ['cos 60°', cos(c(60)), 0.5],
  ['tan 45°', tan(c(45)), 1],
  ['arcsin 1', arcsin(c(1)), 90],
  ['arccos of −1', arccos(c(-1)), 180],
  ['arctan 1', arctan(c(1)), 45],
  ['division by nothing', quotient(c(1), c(0)), Infinity],
  ['the tangent of 90°', tan(c(90)), Infinity],
];
for (const [name, expression, value] of cases) {
  test(`${name} is ${value}`, () => assert.equal(evaluate(expression, { x: 3 }), value));
}

test('an amplitude is worked out: sin d / cos L with d 22° 30.0′ N in latitude 45° N', () => {
  // sin 22.5° / cos 45° = √(2 − √2)/2 · √2 = √(1 − 1/√2), by the half-angle formula; its arcsine from its own half angle.
  const amplitude = arcsin(quotient(sin(symbol('d')), cos(symbol('L'))));
  const sine = Math.sqrt(1 - Math.SQRT1_2);
  assertClose(evaluate(amplitude, { d: 22.5, L: 45 }), (Math.asin(sine) * 180) / Math.PI, 1e-12);
});

test('a symbol without a value throws a RangeError that names it, also one every object inherits', () => {
  for (const name of ['L', 'constructor', 'toString', '__proto__']) {
    assert.throws(() => evaluate(sum([c(1), symbol(name)]), { d: 1 }), { name: 'RangeError', message: new RegExp(`no value for ${name}`) });
  }
  assert.throws(() => evaluate(symbol('d'), { d: NaN }), { name: 'RangeError', message: /no value for d/ });
});

test('what has no value throws and is never NaN', () => {
  for (const none of [root(c(-1)), quotient(c(0), c(0)), product(c(0), tan(c(90))), sum([tan(c(90))], [tan(c(90))])]) {
    assert.throws(() => evaluate(none, {}), { name: 'RangeError', message: /has no value/ });
  }
});

test('a sum written as plus and minus is the arithmetic of the numbers', () => {
  const numbers = fc.array(fc.integer({ min: -1000, max: 1000 }), { maxLength: 6 });
  fc.assert(fc.property(numbers, numbers, (plus, minus) => {
    let expected = 0;
    for (const number of plus) expected += number;
    for (const number of minus) expected -= number;
    assert.equal(evaluate(sum(plus.map(c), minus.map(c)), {}), expected);
  }));
});
