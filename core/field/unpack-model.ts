import { DEGREE } from './field-coefficients.js';
import type { FieldCoefficients } from './field-coefficients.js';

/**
 * The figures of a number: signs common in the code around, so that both pack short. A number is any
 * of those from `FIGURES` on, the greatest first, and ends in one before.
 */
export const SIGNS = 'etirna,os .l)(u=d:ch{}mpf-gb01v;2y>?[]w3<k6495/&x87*M!|+zATE#SCOBZND_PLHRUGWjIVFqYJKX^Q%@~';
export const FIGURES = 48;

const COUNT = DEGREE * (DEGREE + 2);

/** Whole numbers from their signs; odd ones stand for negative numbers, so that small ones of either sign are short. */
function numbersOf(signs: string): number[] {
  const numbers: number[] = [];
  let found = 0;
  for (const sign of signs) {
    const figure = SIGNS.indexOf(sign);
    if (figure >= FIGURES) found = found * (SIGNS.length - FIGURES) + figure - FIGURES;
    else {
      found = found * FIGURES + figure;
      numbers.push(found % 2 ? -(found + 1) / 2 : found / 2);
      found = 0;
    }
  }
  return numbers;
}

/**
 * The coefficients of a model from the text that the build makes of them: how far its main field is
 * from that of the next newer model run back to its epoch, then how far its change is from the newer
 * one's. The newest stands alone.
 */
export function unpackModel(epoch: number, signs: string, newer?: FieldCoefficients): FieldCoefficients {
  const numbers = numbersOf(signs);
  const change = numbers.slice(COUNT).map((number, at) => number + (newer?.change[at] ?? 0));
  const main = numbers.slice(0, COUNT).map((number, at) => number + (newer ? (newer.main[at] as number) + (epoch - newer.epoch) * (newer.change[at] as number) : 0));
  return { epoch, main, change };
}
