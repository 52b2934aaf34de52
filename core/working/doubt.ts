import { checkRange } from '../angle/check-number.js';
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

/**
 * Independent causes together: the root of the sum of their squares; no causes, no doubt.
 * Throws `RangeError` for an effect that is negative, infinite or no number.
 */
export function combineDoubt(items: readonly DoubtItem[]): Doubt {
  for (const item of items) checkRange(`items: effect of ${item.code}`, item.effect, 0, Number.MAX_VALUE);
  return { items, total: Math.hypot(...items.map((item) => item.effect)) };
}
