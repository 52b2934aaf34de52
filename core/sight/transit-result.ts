import type { Caution } from '../working/caution.js';
import type { Doubt } from '../working/doubt.js';
import type { Step } from '../working/step.js';
import type { CompassKind } from './compass-kind.js';
import type { NoDirection } from './geodesic-line.js';
import type { TransitLine, TrueLine } from './transit-line.js';
import type { VariationSource } from './variation-source.js';

/** What one line gave. Errors in degrees (-180, 180], east positive. */
export interface MarkError extends TrueLine {
  readonly kind: TransitLine['kind'];
  readonly compassBearing: number;
  readonly error: number;
  /** This error less the mean. */
  readonly residual: number;
}

export interface TransitSight {
  readonly determined: true;
  readonly marks: readonly MarkError[];
  /** Of the one line, degrees [0, 360); null where there are several. */
  readonly trueBearing: number | null;
  /** Compass or gyro error, degrees (-180, 180], east positive: the mean of all lines. */
  readonly error: number;
  /** Standard deviation of one line about the mean, degrees; null for one line. */
  readonly scatter: number | null;
  readonly compass: CompassKind;
  readonly variation: VariationSource;
  readonly deviation: number | null;
  readonly deviationDoubt: number | null;
  readonly cardDeviation: number | null;
  /** Deviation found less the card's, degrees, east positive. */
  readonly difference: number | null;
  readonly doubt: Doubt;
  readonly steps: readonly Step[];
  readonly cautions: readonly Caution[];
}

/** Why there is no error, and the line that has none, counted from 0. */
export interface NoTransit {
  readonly determined: false;
  readonly reason: NoDirection | 'errors-cancel';
  readonly index: number;
}
