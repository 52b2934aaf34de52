import type { DeviationCard } from '../deviation/deviation-card.js';
import type { DeviationLimit } from '../deviation/deviation-limits.js';
import type { Position } from '../sight/geodesic-line.js';
import type { TransitLine } from '../sight/transit-line.js';
import type { SwingMethod } from './swing-row.js';

/** The circle a ship turns in while she swings. */
export interface SwingCircle {
  /** Metres. */
  readonly radius: number;
  /** From its centre to the object, metres, more than twice the radius. */
  readonly distance: number;
  /** Which way she turns; it says where on the circle she is. Null or left out: not known. */
  readonly turning?: 'starboard' | 'port' | null | undefined;
}

/** What is common to all headings of a swing; every method says what it needs of it. */
export interface SwingSettings {
  /** Degrees, east positive; the magnetic model's at the place and date where it is not given. */
  readonly variation?: number | undefined;
  readonly place?: Position | undefined;
  /** For the model's variation; the first Sun's time will do instead. */
  readonly instant?: Date | undefined;
  /** Bearing of the distant object from the centre of the circle, degrees. */
  readonly object?: { readonly bearing: number; readonly by: 'true' | 'magnetic' } | undefined;
  readonly circle?: SwingCircle | undefined;
  readonly transit?: TransitLine | undefined;
  /** Degrees, east positive; null or left out where not known, and the swing by gyro then loses A. */
  readonly gyroError?: number | null | undefined;
  /** Error of the shore compass, magnetic less its bearing, degrees; 0 if left out. */
  readonly shoreError?: number | undefined;
  /** A known from elsewhere, degrees, where the methods lose it; 0 is what the plain mean of bearings takes. */
  readonly constant?: number | null | undefined;
  /** `auto` (if left out) takes the exact fit where it is clearly better. */
  readonly model?: 'auto' | 'approximate' | 'exact';
  /** Headings planned, spread evenly from north: which are missing is told. */
  readonly planned?: 8 | 16 | 24 | 36 | undefined;
  /** The card in use until now. */
  readonly oldCard?: DeviationCard | null | undefined;
  readonly limit?: DeviationLimit | undefined;
  /** One standard deviation of a row by its method, degrees. */
  readonly sigmas?: Partial<Readonly<Record<SwingMethod, number>>>;
}

/**
 * A bearing over the card to half a degree, a comparison of two heads a little better, two
 * compasses a little worse: common practice, no source.
 */
export const usualSigmas: Readonly<Record<SwingMethod, number>> = {
  deviation: 0.5,
  'known-object': 0.5,
  'unknown-object': 0.5,
  sun: 0.5,
  transit: 0.5,
  'shore-compass': 0.7,
  gyro: 0.4,
};
