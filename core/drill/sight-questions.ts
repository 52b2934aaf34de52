import { wrap180 } from '../angle/wrap.js';
import type { Distractor, NumberQuestion } from '../answer/question.js';
import { numberQuestion } from '../answer/make-question.js';
import type { Tolerances } from '../answer/tolerances.js';
import type { CompassKind } from '../sight/compass-kind.js';

/** The end every sight has: a true bearing, what the compass showed, and the variation where the deviation is sought. */
export interface SightEnd {
  readonly compass: CompassKind;
  readonly trueBearing: number;
  readonly compassBearing: number;
  /** Null where only the error is asked. */
  readonly variation: number | null;
  /** True bearings that mistakes on the way lead to, the likeliest first. */
  readonly wrongBearings: readonly Distractor<number>[];
}

/** The mistakes of the last lines, where the true bearing was right. */
function lastMistakes(error: number, variation: number | null): Distractor<number>[] {
  if (variation === null) return [{ code: 'sign', value: -error }];
  return [
    { code: 'sign', value: variation - error },
    { code: 'variation-sign', value: error + variation },
    { code: 'error-for-deviation', value: error },
    { code: 'compass-less-true', value: -error - variation },
  ];
}

/** True bearing, error, and deviation, each with the mistakes that lead to other numbers. */
export function sightQuestions(end: SightEnd, tolerances: Tolerances): NumberQuestion[] {
  const { compass, trueBearing, compassBearing, variation, wrongBearings } = end;
  const error = wrap180(trueBearing - compassBearing);
  const errorMistakes = (less: number): Distractor<number>[] =>
    wrongBearings.map(({ code, value }) => ({ code, value: wrap180(value - compassBearing - less) }));
  const ofError = numberQuestion({
    code: compass === 'gyro' ? 'gyroError' : 'compassError',
    part: variation === null ? 'result' : 'step',
    form: 'error',
    tolerance: tolerances.error,
    answer: error,
    mistakes: [...lastMistakes(error, null), ...errorMistakes(0)],
  });
  const ofBearing = numberQuestion({
    code: 'trueBearing',
    part: 'step',
    form: 'bearing',
    tolerance: tolerances.azimuth,
    answer: trueBearing,
    mistakes: wrongBearings,
  });
  if (variation === null) return [ofBearing, ofError];
  const ofDeviation = numberQuestion({
    code: 'deviation',
    part: 'result',
    form: 'error',
    tolerance: tolerances.deviation,
    answer: error - variation,
    mistakes: [...lastMistakes(error, variation), ...errorMistakes(variation)],
  });
  return [ofBearing, ofError, ofDeviation];
}
