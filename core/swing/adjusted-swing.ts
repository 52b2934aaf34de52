import type { Correctors } from '../deviation/corrector-states.js';
import { warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import { steeringSwing } from './steering-swing.js';
import type { SteeringSwing } from './steering-swing.js';
import { swing } from './swing.js';
import type { Swing } from './swing.js';
import type { SwingRow } from './swing-row.js';
import type { SwingSettings } from './swing-settings.js';

/** The compasses of a ship that are swung together. */
export const swungCompasses = ['standard', 'steering'] as const;

export type SwungCompass = (typeof swungCompasses)[number];

/** The correctors of each compass. */
export type CorrectorsByCompass = Readonly<Record<SwungCompass, Correctors>>;

/** One round of readings, with what stood in the binnacles meanwhile: the standard compass's swing, the steering compass's in it. */
export interface SwungStage extends Swing {
  /** Null where no steering compass was read. */
  readonly steering: SteeringSwing | null;
  readonly correctors: CorrectorsByCompass;
}

/** A swing as an adjuster works it: what holds now, and beside it what was found. */
export interface AdjustedSwing extends SwungStage {
  /** Which round holds: the only one; as found, while nothing is read after adjusting; or as left. */
  readonly stage: 'single' | 'found' | 'left';
  /** The readings before anything was moved; null in a swing of one round. */
  readonly found: SwungStage | null;
}

/** Swings the ship once for both compasses. Throws `RangeError` as `swing`. */
export function swungStage(rows: readonly SwingRow[], correctors: CorrectorsByCompass, settings: SwingSettings = {}): SwungStage {
  const standard = swing(rows, settings);
  return { ...standard, steering: steeringSwing(rows, standard, settings), correctors };
}

/** Adjusting should leave less than there was. */
function growth(found: Swing, left: Swing): readonly Caution[] {
  const [before, after] = [found.check?.largest.deviation, left.check?.largest.deviation];
  if (before === undefined || after === undefined || Math.abs(after) <= Math.abs(before)) return [];
  return [warning('larger-than-found', { found: quantity(before, 'error'), left: quantity(after, 'error') })];
}

const grown = <Stage extends Swing>(found: Swing | null, left: Stage): Stage => ({ ...left, cautions: [...(found ? growth(found, left) : []), ...left.cautions] });

/**
 * Puts the rounds of a swing together, each null where nothing is read; null without any.
 * `two`: the swing is to have both. Adds the caution `larger-than-found`.
 */
export function adjustedSwing(found: SwungStage | null, left: SwungStage | null, two: boolean): AdjustedSwing | null {
  if (!two) return left && { ...left, stage: 'single', found: null };
  if (!left) return found && { ...found, stage: 'found', found };
  const steering = left.steering && grown(found?.steering ?? null, left.steering);
  return { ...grown(found, left), steering, stage: 'left', found };
}
