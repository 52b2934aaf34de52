import type { Quantity } from './quantity.js';

/** One cause of doubt: what is supposed to be uncertain, by how much, and what that does. */
export interface DoubtItem {
  readonly code: string;
  /** One standard deviation of the cause, in its own unit. */
  readonly cause: Quantity;
  /** One standard deviation of the result, degrees, never negative. */
  readonly effect: number;
}

export interface Doubt {
  readonly items: readonly DoubtItem[];
  /** One standard deviation of the whole, degrees. */
  readonly total: number;
}

/** Independent causes together: the root of the sum of their squares. */
export function combineDoubt(items: readonly DoubtItem[]): Doubt {
  return { items, total: Math.hypot(...items.map((item) => item.effect)) };
}
