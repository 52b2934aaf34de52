import { checkInstant } from '../time/check-instant.js';
import type { Caution } from '../working/caution.js';
import { combineDoubt } from '../working/doubt.js';
import type { Doubt } from '../working/doubt.js';
import type { Step } from '../working/step.js';
import { abcSteps } from './abc-steps.js';
import { azimuthBearing } from './azimuth-bearing.js';
import type { AzimuthBearing, AzimuthLook, NoAzimuth } from './azimuth-bearing.js';
import { azimuthCautions } from './azimuth-cautions.js';
import { azimuthDoubts, usualAzimuthDoubts } from './azimuth-doubts.js';
import type { AzimuthDoubts } from './azimuth-doubts.js';
import { bearingSteps } from './azimuth-steps.js';
import { errorSteps } from './error-steps.js';
import { isPoleStar, polarisSteps } from './polaris-steps.js';
import { checkReading, deviationDoubtOf, splitError } from './split-error.js';
import type { CompassReading, SplitError } from './split-error.js';

/** A body looked at over the compass at any instant; angles in degrees. */
export interface AzimuthObservation extends AzimuthLook, CompassReading {
  readonly doubts?: Partial<AzimuthDoubts>;
}

export interface AzimuthSight extends AzimuthBearing, SplitError {
  /** One standard deviation of the deviation, degrees: that of the error and that of the variation; null with them. */
  readonly deviationDoubt: number | null;
  /** Of the error. */
  readonly doubt: Doubt;
  readonly steps: readonly Step[];
  /** The form of the hand tables: A, B and C, or the short form of Polaris; empty where neither applies. */
  readonly handForm: 'abc' | 'polaris';
  readonly handSteps: readonly Step[];
  readonly cautions: readonly Caution[];
}

function handSteps({ latitude, declination, localHourAngle, trueBearing }: AzimuthBearing, form: AzimuthSight['handForm']): Step[] {
  if (localHourAngle === null) return [];
  return form === 'polaris' ? polarisSteps(latitude, declination, localHourAngle) : abcSteps(latitude, declination, localHourAngle, trueBearing);
}

/**
 * The whole sight: true bearing, error, its split, how far to trust it, and the working.
 * Throws `RangeError` as `azimuthBearing`, and naming a reading that is out of range.
 */
export function azimuthSight(observation: AzimuthObservation): AzimuthSight | NoAzimuth {
  const { source, longitude, compassBearing } = observation;
  checkReading(observation);
  if (observation.day) checkInstant('day', observation.day);
  const bearing = azimuthBearing(observation);
  if (!bearing.determined) return bearing;
  const doubts = { ...usualAzimuthDoubts, ...observation.doubts };
  const split = splitError(bearing.trueBearing, observation, { ...observation, instant: observation.instant ?? observation.day ?? null });
  const doubt = combineDoubt(azimuthDoubts(source, bearing, doubts));
  const deviationDoubt = deviationDoubtOf(split, doubt);
  const handForm = isPoleStar(bearing.latitude, bearing.declination) ? 'polaris' : 'abc';
  const found = { ...bearing, ...split, deviationDoubt, doubt };
  return {
    ...found,
    steps: [...bearingSteps(source, bearing, longitude), ...errorSteps({ ...found, compassBearing })],
    handForm,
    handSteps: source.by === 'altitude' ? [] : handSteps(bearing, handForm),
    cautions: azimuthCautions(observation, { ...found, compassBearing, tilt: doubts.tilt, doubtOfDeviation: deviationDoubt ?? doubt.total }),
  };
}
