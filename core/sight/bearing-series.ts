import { angleFromTo, wrap180 } from '../angle/wrap.js';
import { checkInstant } from '../time/check-instant.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { combineDoubt } from '../working/doubt.js';
import type { Doubt } from '../working/doubt.js';
import { quantity } from '../working/quantity.js';
import type { Step } from '../working/step.js';
import { azimuthBearing } from './azimuth-bearing.js';
import { azimuthCautions } from './azimuth-cautions.js';
import { azimuthDoubts, usualAzimuthDoubts } from './azimuth-doubts.js';
import type { AzimuthDoubts } from './azimuth-doubts.js';
import type { TimedSource } from './azimuth-source.js';
import type { CompassKind } from './compass-kind.js';
import { driftOf } from './drift.js';
import type { Drift } from './drift.js';
import { meanOf } from './series-mean.js';
import type { SeriesMean } from './series-mean.js';
import { seriesSteps } from './series-steps.js';
import { sourceAfter } from './source-after.js';
import { checkReading, deviationDoubtOf, splitWith } from './split-error.js';
import type { CompassReading } from './split-error.js';
import { strikeOutliers } from './strike-outliers.js';
import { variationSource } from './variation-source.js';
import type { VariationSource } from './variation-source.js';

/** One bearing of a series. */
export interface Shot {
  readonly instant: Date;
  /** Degrees [0, 360). */
  readonly compassBearing: number;
  /** Ship's head by the same compass at this shot, degrees. */
  readonly heading?: number | undefined;
  /** What the card says for that head, degrees, east positive. */
  readonly cardDeviation?: number;
}

export interface SeriesObservation extends Omit<CompassReading, 'compassBearing' | 'cardDeviation'> {
  readonly source: TimedSource;
  /** Degrees, north and east positive. */
  readonly latitude: number;
  readonly longitude: number;
  /** The time for which figures typed from an almanac hold; that of the first shot unless given. */
  readonly instant?: Date;
  readonly shots: readonly Shot[];
  readonly doubts?: Partial<AzimuthDoubts>;
}

/** One bearing reduced; degrees. */
export interface ReducedShot extends Shot {
  /** Null where the body has no bearing: `undetermined`. */
  readonly trueBearing: number | null;
  readonly error: number | null;
  readonly deviation: number | null;
  /** From the mean of those kept, after the card's deviation for each head where all are known. */
  readonly residual: number | null;
  /** Why it does not count; null where it does. */
  readonly struck: 'far-from-others' | 'undetermined' | null;
}

export interface BearingSeries extends SeriesMean {
  /** When the middle one of the bearings kept was taken. */
  readonly instant: Date;
  readonly compass: CompassKind;
  readonly variation: VariationSource;
  readonly shots: readonly ReducedShot[];
  readonly kept: number;
  readonly drift: Drift | null;
  /** Of the mean error. */
  readonly doubt: Doubt;
  /** One standard deviation of the mean deviation, degrees; null where there is none. */
  readonly deviationDoubt: number | null;
  /** The working of the mean and its standard error. */
  readonly steps: readonly Step[];
  readonly cautions: readonly Caution[];
}

/** The series has no bearing left to go by. */
export interface NoSeries {
  readonly determined: false;
  readonly shots: readonly ReducedShot[];
}

/** Heads so far apart have deviations of their own, degrees. Common practice, no source. */
const SAME_HEAD = 5;

const MINUTE = 60_000;

function reduce(observation: SeriesObservation, variation: VariationSource, from: Date): ReducedShot[] {
  return observation.shots.map((shot) => {
    const minutes = (shot.instant.getTime() - from.getTime()) / MINUTE;
    const bearing = azimuthBearing({ ...observation, source: sourceAfter(observation.source, minutes), instant: shot.instant });
    if (!bearing.determined) {
      return { ...shot, trueBearing: null, error: null, deviation: null, residual: null, struck: 'undetermined' };
    }
    const { error, deviation } = splitWith(variation, bearing.trueBearing, { ...observation, ...shot });
    return { ...shot, trueBearing: bearing.trueBearing, error, deviation, residual: null, struck: null };
  });
}

/** How far heads differ; 0 where fewer than two are known. */
function spreadOfHeads(shots: readonly Shot[]): number {
  const heads = shots.flatMap(({ heading }) => (heading === undefined ? [] : [heading]));
  const [first = 0] = heads;
  const turns = heads.map((head) => angleFromTo(first, head));
  return turns.length < 2 ? 0 : Math.max(...turns) - Math.min(...turns);
}

function seriesCautions(shots: readonly ReducedShot[], drift: Drift | null, byCard: boolean, compass: CompassKind): Caution[] {
  const cautions: Caution[] = [];
  const struck = shots.filter((shot) => shot.struck === 'far-from-others').length;
  if (struck > 0) cautions.push(warning('series-struck', { count: String(struck) }));
  if (drift?.significant) cautions.push(warning('series-drift', { rate: quantity(Math.abs(drift.perMinute), 'perMinute') }));
  const heads = spreadOfHeads(shots);
  if (compass === 'magnetic' && !byCard && heads > SAME_HEAD) cautions.push(warning('series-heads', { spread: quantity(heads, 'angle') }));
  if (shots.length < 3) cautions.push(note('series-short'));
  return cautions;
}

/**
 * A series of bearings of one body: each reduced to its own error, a bad one struck, the mean
 * of the rest with its standard error, and a drift with time flagged. Throws `RangeError`
 * as `azimuthBearing`, and naming a reading out of range; `shots` when there are none.
 */
export function bearingSeries(observation: SeriesObservation): BearingSeries | NoSeries {
  const { compass } = observation;
  const first = observation.shots[0];
  if (!first) throw new RangeError('shots: there are none');
  for (const shot of observation.shots) {
    checkInstant('shots: instant', shot.instant);
    checkReading({ ...observation, ...shot });
  }
  if (observation.instant) checkInstant('instant', observation.instant);
  const variation = variationSource(observation, first.instant, observation.variation);
  const reduced = reduce(observation, variation, observation.instant ?? first.instant);
  const usable = reduced.filter((shot) => shot.error !== null);
  if (usable.length === 0) return { determined: false, shots: reduced };
  const byCard = compass === 'magnetic' && usable.every((shot) => shot.cardDeviation !== undefined);
  // On different heads the errors differ by the deviation: what is left beside the card is comparable.
  const comparable = (shot: ReducedShot): number => (shot.error ?? 0) - (byCard ? (shot.cardDeviation ?? 0) : 0);
  const anchor = comparable(usable[0] ?? (reduced[0] as ReducedShot));
  const offset = (shot: ReducedShot): number => wrap180(comparable(shot) - anchor);
  const doubts = { ...usualAzimuthDoubts, ...observation.doubts };
  const out = strikeOutliers(usable.map(offset), doubts.reading);
  const kept = usable.filter((_, index) => !out[index]);
  const mean = meanOf(kept.map((shot) => ({ ...shot, trueBearing: shot.trueBearing ?? 0, offset: offset(shot) })), variation, compass, doubts.reading);
  const start = first.instant.getTime();
  const drift = driftOf(kept.map(({ instant }) => (instant.getTime() - start) / MINUTE), kept.map(offset));
  const shots = reduced.map((shot): ReducedShot => {
    if (shot.error === null) return shot;
    return { ...shot, residual: wrap180(offset(shot) - mean.meanOffset), struck: kept.includes(shot) ? null : 'far-from-others' };
  });
  const middle = kept[Math.floor(kept.length / 2)] as ReducedShot;
  const minutes = (middle.instant.getTime() - (observation.instant ?? first.instant).getTime()) / MINUTE;
  const source = sourceAfter(observation.source, minutes);
  const look = { ...observation, source, instant: middle.instant };
  const bearing = azimuthBearing(look);
  // What time, place and tilt do is common to all shots: only the reading is better for being repeated.
  const common = bearing.determined ? azimuthDoubts(source, bearing, doubts).filter(({ code }) => code !== 'reading') : [];
  // Of one bearing, by the scatter or, of few, as supposed: whichever the mean was reckoned with.
  const single = mean.standardError * Math.sqrt(kept.length);
  const doubt = combineDoubt([{ code: 'series', cause: quantity(single, 'angle'), effect: mean.standardError }, ...common]);
  const deviationDoubt = deviationDoubtOf({ deviation: mean.deviation, variation }, doubt);
  return {
    ...mean,
    instant: middle.instant,
    compass,
    variation,
    shots,
    kept: kept.length,
    drift,
    doubt,
    deviationDoubt,
    steps: seriesSteps({
      ...mean,
      compass,
      variation,
      kept: kept.map((shot) => ({ error: shot.error ?? 0, residual: wrap180(offset(shot) - mean.meanOffset) })),
      reading: doubts.reading,
    }),
    cautions: [
      // The mean is judged as one bearing would be, taken at the time of the middle one.
      ...(bearing.determined
        ? azimuthCautions(look, { ...mean, ...bearing, compass, variation, compassBearing: middle.compassBearing, tilt: doubts.tilt, doubtOfDeviation: deviationDoubt ?? doubt.total })
        : []),
      ...seriesCautions(shots, drift, byCard, compass),
    ],
  };
}
