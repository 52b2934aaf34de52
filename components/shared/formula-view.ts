import { mathml, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Expression } from '../../core/working/expression.js';
import type { Quantity } from '../../core/working/quantity.js';
import type { Translate } from './catalogue.js';
import { formatPlain } from './figures.js';
import { quantityText } from './quantity-text.js';

/** How a symbol is set: by its name, or by its number. */
type Setting = (name: string) => TemplateResult<3>;

/** Symbols by their names; a word below one, such as `card`, is in the page's language. */
function naming(t: Translate): Setting {
  return (text) => {
    const [base = '', below] = text.split('_');
    if (below === undefined) return mathml`<mi>${base}</mi>`;
    const key = `symbol.${below}`;
    const word = t(key);
    return mathml`<msub><mi>${base}</mi><mtext>${word === key ? below : word}</mtext></msub>`;
  };
}

/** Whether an expression needs brackets inside a product or behind a function's name. */
const loose = (expression: Expression): boolean => expression.is === 'sum';

function bracketed(inner: TemplateResult<3>): TemplateResult<3> {
  return mathml`<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>`;
}

function set(expression: Expression, setting: Setting): TemplateResult<3> {
  const of = (inner: Expression): TemplateResult<3> => {
    const made = set(inner, setting);
    return loose(inner) ? bracketed(made) : made;
  };
  switch (expression.is) {
    case 'constant':
      return mathml`<mn>${formatPlain(expression.value)}</mn>`;
    case 'symbol':
      return setting(expression.name);
    case 'function':
      return mathml`<mrow><mi>${expression.name}</mi><mo>&#8289;</mo><mspace width="0.17em"></mspace>${of(expression.of)}</mrow>`;
    case 'sum': {
      const terms = [
        ...expression.plus.map((term) => ['+', term] as const),
        ...expression.minus.map((term) => ['−', term] as const),
      ];
      return mathml`<mrow>${terms.map(([sign, term], index) => {
        // A leading plus is not written; a term after a minus that is itself a sum is bracketed.
        const lead = index === 0 && sign === '+' ? nothing : mathml`<mo>${sign}</mo>`;
        return mathml`${lead}${sign === '−' ? of(term) : set(term, setting)}`;
      })}</mrow>`;
    }
    case 'product':
      return mathml`<mrow>${expression.factors.map(
        (factor, index) => mathml`${index === 0 ? nothing : mathml`<mo>·</mo>`}${of(factor)}`,
      )}</mrow>`;
    case 'quotient':
      return mathml`<mfrac><mrow>${set(expression.over, setting)}</mrow><mrow>${set(expression.under, setting)}</mrow></mfrac>`;
    case 'root':
      return mathml`<msqrt>${set(expression.of, setting)}</msqrt>`;
    case 'square':
      return mathml`<msup><mrow>${of(expression.of)}</mrow><mn>2</mn></msup>`;
  }
}

/** The symbol of a line as mathematics. */
export function symbolView(symbol: string, t: Translate): TemplateResult<3> {
  return naming(t)(symbol);
}

/** The formula with its symbols. */
export function formulaView(expression: Expression, t: Translate): TemplateResult<3> {
  return set(expression, naming(t));
}

/** The formula with the numbers in the symbols' places; negative ones in brackets. */
export function substitutionView(expression: Expression, values: Readonly<Record<string, Quantity>>, t: Translate): TemplateResult<3> {
  return set(expression, (symbol) => {
    const value = values[symbol];
    if (!value) return symbolView(symbol, t);
    const text = quantityText(value);
    return text.startsWith('−') ? mathml`<mrow><mo>(</mo><mn>${text}</mn><mo>)</mo></mrow>` : mathml`<mn>${text}</mn>`;
  });
}
