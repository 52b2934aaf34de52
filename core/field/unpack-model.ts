import { once } from '../text/once.js';
import { packedNumbers, signed } from '../text/packed-numbers.js';
import { DEGREE } from './field-coefficients.js';
import type { FieldCoefficients } from './field-coefficients.js';

const COUNT = DEGREE * (DEGREE + 2);

/**
 * The coefficients of a model from the text that the build makes of them: how far its main field is
 * from that of the next newer model run back to its epoch, then how far its change is from the newer
 * one's. The newest stands alone.
 */
export function unpackModel(epoch: number, signs: string, newer?: FieldCoefficients): FieldCoefficients {
  const read = once(() => {
    const numbers = packedNumbers(signs).map(signed);
    return {
      main: numbers.slice(0, COUNT).map((number, at) => number + (newer ? (newer.main[at] as number) + (epoch - newer.epoch) * (newer.change[at] as number) : 0)),
      change: numbers.slice(COUNT).map((number, at) => number + (newer?.change[at] ?? 0)),
    };
  });
  return {
    epoch,
    get main() {
      return read().main;
    },
    get change() {
      return read().change;
    },
  };
}
