import { checkRange } from '../angle/check-number.js';

/** Chance that a seed fixes: whole-number arithmetic only, so every engine draws alike. */
export interface Chance {
  /** A whole number from 0 to `count` − 1. */
  below(count: number): number;
  /** One of a list. */
  pick<T>(list: readonly T[]): T;
  /** A number of [least, most] on a grid of `perUnit` steps a unit: 10 for tenths. */
  between(least: number, most: number, perUnit?: number): number;
  /** The same with either sign. */
  either(least: number, most: number, perUnit?: number): number;
}

/** Drawn away first: the bits of a short seed need a few turns to spread. */
const WARMING = 8;

/** Fowler, Noll and Vo's hash FNV-1a of the code units of a text, [0, 2³²); the constants from memory. */
export function hash(text: string): number {
  let state = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) state = Math.imul(state ^ text.charCodeAt(i), 0x01000193);
  return state >>> 0;
}

/**
 * The number after another, [1, 2³²), by Marsaglia's generator of shifts 13, 17 and 5
 * (G. Marsaglia, Xorshift RNGs, Journal of Statistical Software 8, 2003; from memory).
 */
export function xorshift(number: number): number {
  let state = number;
  state ^= state << 13;
  state ^= state >>> 17;
  state ^= state << 5;
  return state >>> 0;
}

/** The chance of a seed, any text: plenty for exercises, no use for secrets. */
export function chanceFrom(seed: string): Chance {
  // 0 is the one number the generator would never leave.
  let state = hash(seed) || 1;
  const next = (): number => (state = xorshift(state));
  for (let i = 0; i < WARMING; i++) next();
  const below = (count: number): number => {
    checkRange('count', count, 1, 2 ** 32);
    // The upper bits, which are the better ones.
    return Math.floor((next() / 2 ** 32) * count);
  };
  const between = (least: number, most: number, perUnit = 1): number => {
    const first = Math.round(least * perUnit);
    return (first + below(Math.round(most * perUnit) - first + 1)) / perUnit;
  };
  return {
    below,
    between,
    pick: (list) => list[below(list.length)] as (typeof list)[number],
    // Adding 0 turns -0 into 0.
    either: (least, most, perUnit = 1) => (below(2) === 0 ? 1 : -1) * between(least, most, perUnit) + 0,
  };
}
