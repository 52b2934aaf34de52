import type { Expression } from './expression.js';
import type { Quantity } from './quantity.js';

/**
 * One line of the work book: a quantity, the formula it comes from and the numbers put in.
 * Core says what was done by `code`; the sentence belongs to the view.
 */
export interface Step {
  /** Names the sentence that introduces the line, e.g. `amplitude.celestial`. */
  readonly code: string;
  /** The symbol of what the line finds, e.g. `A`. */
  readonly symbol: string;
  /** The formula; null where the value is looked up, not worked out. */
  readonly expression: Expression | null;
  /** The numbers of the formula by symbol, in the units the line is written in. */
  readonly values: Readonly<Record<string, Quantity>>;
  readonly result: Quantity;
}

/** A line put together; the parts as in `Step`. */
export function step(code: string, symbol: string, expression: Expression | null, values: Step['values'], result: Quantity): Step {
  return { code, symbol, expression, values, result };
}
