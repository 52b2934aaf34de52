import { wrap360 } from '../angle/wrap.js';
import { sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';

/** The reckonings in the order of the chain: neighbours differ by deviation, variation and gyro error. */
export const reckonings = ['compass', 'magnetic', 'true', 'gyro'] as const;

export type Reckoning = (typeof reckonings)[number];

/** What lies between neighbours of the chain, degrees, east positive; null where not known. */
export interface ChainErrors {
  readonly deviation: number | null;
  readonly variation: number | null;
  readonly gyroError: number | null;
}

const letters: Record<Reckoning, string> = { compass: 'C', magnetic: 'M', true: 'T', gyro: 'G' };
const links = [
  { name: 'deviation', letter: 'δ', adds: true },
  { name: 'variation', letter: 'V', adds: true },
  // True = gyro + error: the last link is crossed the other way round.
  { name: 'gyroError', letter: 'GE', adds: false },
] as const;

export type ChainValues = Readonly<Record<Reckoning, number | null>>;

/** The symbol of a direction: `C`, or `C_head` where the ship's head is meant. */
export function symbolOf(reckoning: Reckoning, ofHead: boolean): string {
  return ofHead ? `${letters[reckoning]}_head` : letters[reckoning];
}

/**
 * Walks the chain from a known direction both ways as far as the errors are known, one line
 * of working for each link crossed towards a reckoning that is wanted.
 */
export function walkChain(
  from: Reckoning,
  value: number,
  errors: ChainErrors,
  ofHead: boolean,
): { values: ChainValues; steps: readonly Step[] } {
  const values: Record<Reckoning, number | null> = { compass: null, magnetic: null, true: null, gyro: null };
  values[from] = wrap360(value);
  const steps: Step[] = [];
  const start = reckonings.indexOf(from);
  for (const direction of [-1, 1]) {
    for (let at = start; ; at += direction) {
      const here = reckonings[at];
      const next = reckonings[at + direction];
      const link = links[direction > 0 ? at : at - 1];
      if (here === undefined || next === undefined || link === undefined) break;
      const known = values[here];
      const error = errors[link.name];
      if (known === null || error === null) break;
      const plus = link.adds === direction > 0;
      const result = wrap360(plus ? known + error : known - error);
      values[next] = result;
      const source = symbolOf(here, ofHead);
      steps.push({
        code: `chain.${next}-from-${here}`,
        symbol: symbolOf(next, ofHead),
        expression: plus ? sum([symbol(source), symbol(link.letter)]) : sum([symbol(source)], [symbol(link.letter)]),
        values: { [source]: quantity(known, 'bearing'), [link.letter]: quantity(error, 'error') },
        result: quantity(result, 'bearing'),
      });
    }
  }
  return { values, steps };
}
