import { convertDirection } from './chain.js';
import type { Chain, Direction } from './chain.js';
import type { Reckoning } from './chain-steps.js';
import type { Conversion, ConversionInput } from './conversion.js';
import { courseMadeGood, courseToSteer, leewayAngle } from './leeway.js';
import type { Step } from '../working/step.js';
import { conversionCautions } from './conversion-cautions.js';
import { madeGoodStep, toSteerStep } from './leeway-steps.js';

/** What somebody wants who has a direction by one reckoning, best first. */
const wanted: Readonly<Record<Reckoning, readonly Reckoning[]>> = {
  compass: ['true', 'magnetic', 'gyro'],
  true: ['compass', 'magnetic', 'gyro'],
  magnetic: ['compass', 'true', 'gyro'],
  gyro: ['compass', 'true', 'magnetic'],
};

function reached({ values }: Chain, from: Reckoning): Reckoning {
  return wanted[from].find((reckoning) => values[reckoning] !== null) ?? (wanted[from][0] as Reckoning);
}

/** A true course is what is to be made good: the ship is steered to windward of it. */
function steered(input: ConversionInput): { heading: Direction; leeway: number | null; steps: readonly Step[] } {
  const { heading, wind } = input;
  if (!wind || heading.by !== 'true') return { heading, leeway: null, steps: [] };
  const leeway = leewayAngle({ amount: wind.amount, windFrom: wind.from, course: heading.value });
  if (leeway === null) return { heading, leeway, steps: [] };
  const value = courseToSteer(heading.value, leeway);
  return { heading: { value, by: 'true' }, leeway, steps: [toSteerStep(heading.value, leeway, value)] };
}

/** A course steered goes to leeward: known once its true course is. */
function drifted(input: ConversionInput, course: number | null): { leeway: number | null; madeGood: number | null; steps: readonly Step[] } {
  if (!input.wind || course === null) return { leeway: null, madeGood: null, steps: [] };
  const leeway = leewayAngle({ amount: input.wind.amount, windFrom: input.wind.from, course });
  if (leeway === null) return { leeway, madeGood: course, steps: [] };
  const madeGood = courseMadeGood(course, leeway);
  return { leeway, madeGood, steps: [madeGoodStep(course, leeway, madeGood)] };
}

/**
 * Converts a course or a bearing; the deviation is always that of the ship's head. With leeway a
 * true course is the one to make good. Throws `RangeError` as `convertDirection` and `leewayAngle`, and for a bearing that is none.
 */
export function convert(input: ConversionInput): Conversion {
  const { kind, variation, gyroError, deviation } = input;
  if (kind !== 'course' && kind !== 'bearing') throw new RangeError(`kind: ${String(kind)} is none`);
  const errors = { variation, gyroError, deviation };
  if (kind === 'bearing') {
    if (!input.bearing) throw new RangeError('bearing: none is given');
    const chain = convertDirection({ direction: input.bearing, head: input.heading, ...errors });
    const whole = { ...chain, kind, from: input.bearing.by, to: reached(chain, input.bearing.by), variation, gyroError, leeway: null, madeGood: null };
    return { ...whole, cautions: conversionCautions(input, chain) };
  }
  const before = steered(input);
  const chain = convertDirection({ direction: before.heading, ...errors });
  const after = before.leeway === null ? drifted(input, chain.values.true) : { leeway: before.leeway, madeGood: input.heading.value, steps: [] };
  return {
    ...chain,
    kind: 'course',
    from: input.heading.by,
    to: reached(chain, input.heading.by),
    variation,
    gyroError,
    leeway: after.leeway,
    madeGood: after.madeGood,
    steps: [...before.steps, ...chain.steps, ...after.steps],
    cautions: conversionCautions(input, chain),
  };
}
