import { deviationAt } from '../../../core/deviation/approximate-deviation.js';
import { exactDeviationByCompass } from '../../../core/deviation/exact-deviation.js';

/** A stream of chance from a seed: the same on every machine. */
export interface Chance {
  /** Even in [0, 1). */
  even(): number;
  /** Normal, mean 0, standard deviation 1. */
  normal(): number;
}

/** A 32-bit xorshift generator (Marsaglia, from memory), good enough for readings. */
export function chance(seed: number): Chance {
  let state = (seed * 2654435761) >>> 0 || 1;
  const even = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
  for (let i = 0; i < 20; i++) even();
  // Box and Muller's pair, of which one is used.
  return { even, normal: () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even()) };
}

export type Law = 'iron' | 'series';

/** Deviation by compass heading of a random ship whose largest lies between two bounds, degrees. */
export function randomShip(law: Law, { even, normal }: Chance, least: number, most: number): (heading: number) => number {
  for (;;) {
    const size = most / 60;
    const shape = {
      A: normal() * 0.01,
      B: normal() * size,
      C: normal() * size,
      D: (0.3 + even()) * size * 0.5,
      E: normal() * 0.01,
    };
    const degrees = Object.fromEntries(Object.entries(shape).map(([name, value]) => [name, value * 57.3])) as unknown as typeof shape;
    const at = (heading: number): number =>
      law === 'iron' ? (exactDeviationByCompass(shape, heading) ?? Infinity) : deviationAt(degrees, heading);
    const largest = Math.max(...Array.from({ length: 36 }, (_, i) => Math.abs(at(i * 10))));
    if (largest >= least && largest <= most) return at;
  }
}

/** Readings on equally spaced compass headings with normal noise, degrees. */
export function readSwing(
  at: (heading: number) => number,
  { normal }: Chance,
  count: number,
  sigma: number,
): { heading: number; deviation: number }[] {
  return Array.from({ length: count }, (_, i) => {
    const heading = (i * 360) / count;
    return { heading, deviation: at(heading) + sigma * normal() };
  });
}
