import { checkFinite } from '../angle/check-number.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { sum, symbol } from '../working/expression.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';

/** Heads read at the same moment, degrees. */
export interface OneLook {
  readonly gyro: number;
  /** Degrees, east positive. */
  readonly gyroError: number;
  /** Degrees, east positive. */
  readonly variation: number;
  readonly standard?: number | undefined;
  readonly steering?: number | undefined;
}

export interface CompassFound {
  /** True less compass head, degrees (-180, 180], east positive. */
  readonly error: number;
  /** Magnetic less compass head, degrees (-180, 180], east positive: that of this head. */
  readonly deviation: number;
}

export interface ThreeCompasses {
  /** Degrees [0, 360). */
  readonly trueHead: number;
  readonly magneticHead: number;
  /** Null where the compass was not read. */
  readonly standard: CompassFound | null;
  readonly steering: CompassFound | null;
  readonly steps: readonly Step[];
}

/**
 * One look at gyro, standard and steering compass: the gyro and its error give the true
 * head, the variation the magnetic, and these the error and deviation of each compass.
 * Throws `RangeError` naming a number that is not finite.
 */
export function threeCompasses(look: OneLook): ThreeCompasses {
  const { gyro, gyroError, variation } = look;
  for (const [name, value] of Object.entries({ gyro, gyroError, variation })) checkFinite(name, value);
  const trueHead = wrap360(gyro + gyroError);
  const magneticHead = wrap360(trueHead - variation);
  const steps: Step[] = [
    {
      code: 'chain.true-from-gyro',
      symbol: 'T',
      expression: sum([symbol('G'), symbol('GE')]),
      values: { G: quantity(gyro, 'bearing'), GE: quantity(gyroError, 'error') },
      result: quantity(trueHead, 'bearing'),
    },
    {
      code: 'chain.magnetic-from-true',
      symbol: 'M',
      expression: sum([symbol('T')], [symbol('V')]),
      values: { T: quantity(trueHead, 'bearing'), V: quantity(variation, 'error') },
      result: quantity(magneticHead, 'bearing'),
    },
  ];
  const judge = (name: 'standard' | 'steering', head: number | undefined): CompassFound | null => {
    if (head === undefined) return null;
    checkFinite(name, head);
    const error = wrap180(trueHead - head);
    const deviation = wrap180(magneticHead - head);
    const values = { C: quantity(head, 'bearing') };
    steps.push(
      {
        code: `look.${name}-error`,
        symbol: 'CE',
        expression: sum([symbol('T')], [symbol('C')]),
        values: { T: quantity(trueHead, 'bearing'), ...values },
        result: quantity(error, 'error'),
      },
      {
        code: `look.${name}-deviation`,
        symbol: 'δ',
        expression: sum([symbol('M')], [symbol('C')]),
        values: { M: quantity(magneticHead, 'bearing'), ...values },
        result: quantity(deviation, 'error'),
      },
    );
    return { error, deviation };
  };
  const standard = judge('standard', look.standard);
  const steering = judge('steering', look.steering);
  return { trueHead, magneticHead, standard, steering, steps };
}
