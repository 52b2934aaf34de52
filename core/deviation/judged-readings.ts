import { judgeReadings, type Judgement } from './bad-readings.js';
import { checkedReadings, type DeviationObservation, type WeighedReadings } from './observations.js';

/** The readings of a swing, checked and judged, from which either model's fit is taken. */
export interface JudgedReadings {
  readonly observations: readonly DeviationObservation[];
  readonly readings: WeighedReadings;
  readonly judgement: Judgement;
}

const nothing: Judgement = { fits: { approximate: null, exact: null }, suspects: [], exactBetter: null };

/** Throws `RangeError` naming an observation that has a number missing, not finite or out of range. */
export function judged(observations: readonly DeviationObservation[]): JudgedReadings {
  const readings = checkedReadings(observations);
  return { observations, readings, judgement: readings.list.length === 0 ? nothing : judgeReadings(readings.list) };
}
