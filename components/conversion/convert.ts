import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { convertDirection } from '../../core/sight/chain.js';
import type { Chain, Direction } from '../../core/sight/chain.js';
import type { Reckoning } from '../../core/sight/chain-steps.js';
import { courseMadeGood, courseToSteer, leewayAngle } from '../../core/sight/leeway.js';
import type { Caution } from '../../core/working/caution.js';
import type { Step } from '../../core/working/step.js';
import { conversionCautions } from './conversion-cautions.js';
import { madeGoodStep, toSteerStep } from './leeway-steps.js';

export type ConversionKind = 'course' | 'bearing';

/** What the fields amount to. */
export interface ConversionInput {
  readonly kind: ConversionKind;
  /** The course, or for a bearing the ship's head. */
  readonly heading: Direction;
  /** Undefined for a course. */
  readonly bearing: Direction | undefined;
  readonly variation: number | null;
  readonly deviation: number | DeviationCard | null;
  /** A card that is there though another source of deviation is chosen. */
  readonly cardBeside: DeviationCard | null;
  readonly gyroError: number | null;
  /** For a course: degrees of leeway and where the wind comes from, true. */
  readonly wind: { readonly amount: number; readonly from: number } | null;
}

/** A course or bearing by every reckoning, as plain data. */
export interface Conversion extends Chain {
  readonly kind: ConversionKind;
  readonly from: Reckoning;
  /** The reckoning asked for: the one at the other end, as far as it is reached. */
  readonly to: Reckoning;
  readonly variation: number | null;
  readonly gyroError: number | null;
  /** Degrees, to starboard positive; null where none is entered or the wind is right ahead or astern. */
  readonly leeway: number | null;
  /** True course made good through the water, degrees; null without leeway. */
  readonly madeGood: number | null;
  readonly cautions: readonly Caution[];
}

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

/** Converts a course or a bearing; the deviation is always that of the ship's head. */
export function convert(input: ConversionInput): Conversion {
  const { variation, gyroError, deviation } = input;
  const errors = { variation, gyroError, deviation };
  if (input.kind === 'bearing' && input.bearing) {
    const chain = convertDirection({ direction: input.bearing, head: input.heading, ...errors });
    const whole = { ...chain, kind: input.kind, from: input.bearing.by, to: reached(chain, input.bearing.by), variation, gyroError, leeway: null, madeGood: null };
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
