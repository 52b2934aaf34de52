import type { DeviationCard } from '../deviation/deviation-card.js';
import type { CompassZone } from '../field/zone.js';
import type { Caution } from '../working/caution.js';
import type { Chain, Direction } from './chain.js';
import type { Reckoning } from './chain-steps.js';

export type ConversionKind = 'course' | 'bearing';

/** A direction to convert and all that is known of the ship; errors in degrees, east positive, null where not known. */
export interface ConversionInput {
  readonly kind: ConversionKind;
  /** The course, or for a bearing the ship's head. */
  readonly heading: Direction;
  /** Undefined for a course. */
  readonly bearing: Direction | undefined;
  readonly variation: number | null;
  /** Of the ship's place, where it is known: how far a compass can be trusted there. */
  readonly zone?: CompassZone | null;
  /** What the model says at the ship's place, beside a variation typed; null where not known. */
  readonly modelledVariation?: { readonly value: number; readonly sigma: number } | null;
  readonly deviation: number | DeviationCard | null;
  /** A card that is there though another source of deviation is chosen. */
  readonly cardBeside: DeviationCard | null;
  readonly gyroError: number | null;
  /** For a course: degrees of leeway, 0 to 90, and where the wind comes from, true, any finite degrees. */
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
