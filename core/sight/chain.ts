import { checkFinite, checkRange } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';
import type { DeviationCard } from '../deviation/deviation-card.js';
import { deviationCurve } from '../deviation/deviation-curve.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import { reckonings, symbolOf, walkChain, type ChainErrors, type ChainValues, type Reckoning } from './chain-steps.js';

/** A direction and the reckoning it is given in; degrees, any finite number. */
export interface Direction {
  readonly value: number;
  readonly by: Reckoning;
}

export interface ChainInput {
  /** The course or bearing to convert. */
  readonly direction: Direction;
  /**
   * The ship's head. Left out, the direction is itself the head: a course. For a bearing give
   * it: the deviation belongs to the head, never to the bearing.
   */
  readonly head?: Direction | undefined;
  /** Degrees, east positive; null or left out where not known. */
  readonly variation?: number | null | undefined;
  /** The deviation on this head, degrees, east positive, or the card that tells it. */
  readonly deviation?: number | DeviationCard | null | undefined;
  /** Degrees, east positive. */
  readonly gyroError?: number | null | undefined;
}

/** Why there is no deviation. Candidates are compass heads, degrees [0, 360), or magnetic where the head came by compass. */
export interface NoDeviation {
  readonly reason: 'not-given' | 'head-not-reached' | 'ambiguous' | 'none';
  readonly candidates: readonly number[];
}

export interface Chain {
  /** The direction by each reckoning, degrees [0, 360); null where an error on the way is not known. */
  readonly values: ChainValues;
  /** The ship's head the same way. */
  readonly head: ChainValues;
  /** Degrees (-180, 180], east positive; null where not known, and then `noDeviation` says why. */
  readonly deviation: number | null;
  readonly noDeviation: NoDeviation | null;
  /** Variation + deviation, degrees (-180, 180]; null where one is not known. */
  readonly compassError: number | null;
  readonly steps: readonly Step[];
}

interface DeviationFound {
  readonly deviation: number | null;
  readonly noDeviation: NoDeviation | null;
  readonly steps: readonly Step[];
}

function without(reason: NoDeviation['reason'], candidates: readonly number[] = []): DeviationFound {
  return { deviation: null, noDeviation: { reason, candidates }, steps: [] };
}

function lookup(code: string, from: Reckoning, head: number, deviation: number): DeviationFound {
  const values = { [symbolOf(from, true)]: quantity(head, 'bearing') };
  const step: Step = { code, symbol: 'δ', expression: null, values, result: quantity(deviation, 'error') };
  return { deviation, noDeviation: null, steps: [step] };
}

/** The deviation for a head known by compass, or by magnetic reckoning through the inverse of the card. */
function findDeviation(source: ChainInput['deviation'], head: ChainValues): DeviationFound {
  if (source === undefined || source === null) return without('not-given');
  if (typeof source === 'number') {
    const step: Step = { code: 'chain.deviation-given', symbol: 'δ', expression: null, values: {}, result: quantity(source, 'error') };
    return { deviation: source, noDeviation: null, steps: [step] };
  }
  const curve = deviationCurve(source);
  if (head.compass !== null) {
    const deviation = curve.at(head.compass);
    return deviation === null ? without('ambiguous') : lookup('chain.deviation-by-compass', 'compass', head.compass, deviation);
  }
  if (head.magnetic === null) return without('head-not-reached');
  const found = curve.toCompass(head.magnetic);
  if (!found.determined) return without(found.reason, found.headings);
  const deviation = wrap180(head.magnetic - found.heading);
  return lookup('chain.deviation-by-magnetic', 'magnetic', head.magnetic, deviation);
}

function checkDirection(name: string, direction: Direction): void {
  checkFinite(`${name}.value`, direction.value);
  if (!reckonings.includes(direction.by)) throw new RangeError(`${name}.by: ${String(direction.by)} is no reckoning`);
}

/**
 * A course or bearing by compass, magnetic, true and gyro reckoning, from any one of them,
 * with each line of the working: M = C + δ, T = M + V, T = G + GE.
 *
 * The deviation is found first, from the ship's head: the lines of the head come before those
 * of the bearing. Throws `RangeError` naming a number that is not finite, an error beyond
 * ±180°, an unknown reckoning, or as `deviationCurve`.
 */
export function convertDirection(input: ChainInput): Chain {
  const { direction, head = direction, variation = null, gyroError = null } = input;
  checkDirection('direction', direction);
  checkDirection('head', head);
  if (variation !== null) checkRange('variation', variation, -180, 180);
  if (gyroError !== null) checkRange('gyroError', gyroError, -180, 180);
  if (typeof input.deviation === 'number') checkRange('deviation', input.deviation, -180, 180);

  const before: ChainErrors = { deviation: null, variation, gyroError };
  const reached = walkChain(head.by, head.value, before, input.head !== undefined);
  const found = findDeviation(input.deviation, reached.values);
  const errors: ChainErrors = { ...before, deviation: found.deviation };
  const ofHead = walkChain(head.by, head.value, errors, true);
  const all = walkChain(direction.by, direction.value, errors, false);
  return {
    values: all.values,
    head: ofHead.values,
    deviation: found.deviation,
    noDeviation: found.noDeviation,
    compassError: variation === null || found.deviation === null ? null : wrap180(variation + found.deviation),
    steps: [...headSteps(input, reached.steps), ...found.steps, ...all.steps],
  };
}

/** The lines that bring the head to where a card is entered; none where no card needs them. */
function headSteps({ head, deviation }: ChainInput, steps: readonly Step[]): readonly Step[] {
  const byCard = typeof deviation === 'object' && deviation !== null;
  if (!byCard || head === undefined || head.by === 'compass' || head.by === 'magnetic') return [];
  return steps.filter(({ symbol }) => symbol === symbolOf('true', true) || symbol === symbolOf('magnetic', true));
}
