/** Angles are in degrees, before the function or behind it. */
export type FunctionName = 'sin' | 'cos' | 'tan' | 'arcsin' | 'arccos' | 'arctan';

/**
 * A formula as a tree, so that a view can set it in mathematics with symbols, the same
 * view can set it again with numbers in their place, and a test can work it out.
 */
export type Expression =
  | { readonly is: 'symbol'; readonly name: string }
  | { readonly is: 'constant'; readonly value: number }
  | { readonly is: 'function'; readonly name: FunctionName; readonly of: Expression }
  | { readonly is: 'sum'; readonly plus: readonly Expression[]; readonly minus: readonly Expression[] }
  | { readonly is: 'product'; readonly factors: readonly Expression[] }
  | { readonly is: 'quotient'; readonly over: Expression; readonly under: Expression }
  | { readonly is: 'root'; readonly of: Expression }
  | { readonly is: 'square'; readonly of: Expression };

/** A named quantity; what follows an underscore is set as a subscript. */
export function symbol(name: string): Expression {
  return { is: 'symbol', name };
}

export function constant(value: number): Expression {
  return { is: 'constant', value };
}

function apply(name: FunctionName, of: Expression): Expression {
  return { is: 'function', name, of };
}

export const sin = (of: Expression): Expression => apply('sin', of);
export const cos = (of: Expression): Expression => apply('cos', of);
export const tan = (of: Expression): Expression => apply('tan', of);
export const arcsin = (of: Expression): Expression => apply('arcsin', of);
export const arccos = (of: Expression): Expression => apply('arccos', of);
export const arctan = (of: Expression): Expression => apply('arctan', of);

/** The sum of `plus`, less everything in `minus`; plus comes first on the page. */
export function sum(plus: readonly Expression[], minus: readonly Expression[] = []): Expression {
  return { is: 'sum', plus, minus };
}

export function product(...factors: readonly Expression[]): Expression {
  return { is: 'product', factors };
}

export function quotient(over: Expression, under: Expression): Expression {
  return { is: 'quotient', over, under };
}

export function root(of: Expression): Expression {
  return { is: 'root', of };
}

export function square(of: Expression): Expression {
  return { is: 'square', of };
}
