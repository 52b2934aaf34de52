import { angleFromTo, wrap180, wrap360 } from '../angle/wrap.js';
import type { CompassKind } from './compass-kind.js';
import { splitOf } from './split-error.js';
import type { VariationSource } from './variation-source.js';

/** A bearing of a series that counts; degrees. */
export interface KeptShot {
  readonly compassBearing: number;
  readonly heading?: number | undefined;
  readonly trueBearing: number;
  readonly error: number | null;
  readonly cardDeviation?: number;
  /** From the first shot, what is comparable between shots. */
  readonly offset: number;
}

/** The mean of the bearings kept; degrees, east positive. */
export interface SeriesMean {
  readonly determined: true;
  /** [0, 360). */
  readonly compassBearing: number;
  /** Ship's head, [0, 360); null unless it is known for all. */
  readonly heading: number | null;
  readonly trueBearing: number;
  readonly error: number;
  readonly deviation: number | null;
  /** Mean of what the card says for the heads of the shots; null unless it is known for all. */
  readonly cardDeviation: number | null;
  readonly difference: number | null;
  readonly meanOffset: number;
  /** Standard deviation of one bearing, from the scatter of those kept; 0 for one alone. */
  readonly scatter: number;
  /** Standard deviation of the mean. */
  readonly standardError: number;
}

/** With fewer bearings their scatter may be small by luck: the usual doubt of a reading then holds. Common practice, no source. */
export const ENOUGH = 5;

const meanOfNumbers = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0) / values.length;

/** The mean of directions that lie within half a turn of the first. */
function meanTurn(angles: readonly number[]): number {
  const first = angles[0] ?? 0;
  return first + meanOfNumbers(angles.map((angle) => angleFromTo(first, angle)));
}

/** Those that are known, where all are. */
function ofAll(values: readonly (number | undefined)[]): readonly number[] | null {
  const known = values.filter((value) => value !== undefined);
  return known.length === values.length ? known : null;
}

/** Error, split and standard error of the bearings kept; there must be at least one. */
export function meanOf(shots: readonly KeptShot[], variation: VariationSource, compass: CompassKind, reading: number): SeriesMean {
  const error = wrap180(meanTurn(shots.map((shot) => shot.error ?? 0)));
  const cards = ofAll(shots.map((shot) => shot.cardDeviation));
  const heads = ofAll(shots.map((shot) => shot.heading));
  const { deviation, cardDeviation, difference } = splitOf(error, variation, { compass, cardDeviation: cards ? meanOfNumbers(cards) : undefined });
  const meanOffset = meanOfNumbers(shots.map(({ offset }) => offset));
  const squares = shots.reduce((all, { offset }) => all + (offset - meanOffset) ** 2, 0);
  const scatter = shots.length > 1 ? Math.sqrt(squares / (shots.length - 1)) : 0;
  const single = shots.length < ENOUGH ? Math.max(scatter, reading) : scatter;
  return {
    determined: true,
    compassBearing: wrap360(meanTurn(shots.map((shot) => shot.compassBearing))),
    heading: heads && wrap360(meanTurn(heads)),
    trueBearing: wrap360(meanTurn(shots.map((shot) => shot.trueBearing))),
    error,
    deviation,
    cardDeviation,
    difference,
    meanOffset,
    scatter,
    standardError: single / Math.sqrt(shots.length),
  };
}
