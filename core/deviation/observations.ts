import { checkFinite, checkRange } from '../angle/check-number.js';
import { harmonics, type Harmonics } from './approximate-deviation.js';

/** One reading of a swing. */
export interface DeviationObservation {
  /** Ship's head by compass, degrees; any finite number. */
  readonly heading: number;
  /** Degrees [-180, 180], east positive. */
  readonly deviation: number;
  /** Relative weight, 0 or more, 1 if left out; 0 strikes the reading out and keeps its residual. */
  readonly weight?: number;
  /** One standard deviation, degrees, above 0; the weight is then divided by its square. */
  readonly sigma?: number;
}

/** A reading ready for the sums. */
export interface WeighedReading {
  /** Its place among the observations given. */
  readonly index: number;
  readonly heading: number;
  /** What `harmonics` gives for the heading: every fit asks for them anew. */
  readonly waves: Harmonics;
  readonly deviation: number;
  /** Mean 1 over the readings. */
  readonly weight: number;
}

export interface WeighedReadings {
  readonly list: readonly WeighedReading[];
  /** One standard deviation of a reading of weight 1, degrees, as claimed; null unless every reading claims one. */
  readonly claimed: number | null;
}

/** Readings without a doubt of their own take the usual one of those that have. */
function usualSigma(observations: readonly DeviationObservation[]): number {
  const given = observations.map(({ sigma }) => sigma).filter((sigma) => sigma !== undefined);
  return given.length === 0 ? 1 : Math.sqrt(given.reduce((total, sigma) => total + sigma * sigma, 0) / given.length);
}

/** Checked, weighted, the struck-out ones left out. Throws `RangeError` naming what is wrong. */
export function checkedReadings(observations: readonly DeviationObservation[]): WeighedReadings {
  observations.forEach((observation, index) => {
    const name = `observations[${index}]`;
    checkFinite(`${name}.heading`, observation.heading);
    checkRange(`${name}.deviation`, observation.deviation, -180, 180);
    if (observation.weight !== undefined) checkRange(`${name}.weight`, observation.weight, 0, 1e9);
    if (observation.sigma !== undefined) checkRange(`${name}.sigma`, observation.sigma, 1e-6, 180);
  });
  const usual = usualSigma(observations);
  const list = observations
    .map(({ heading, deviation, weight = 1, sigma = usual }, index) => {
      return { index, heading, waves: harmonics(heading), deviation, weight: weight / sigma ** 2 };
    })
    .filter((reading) => reading.weight > 0);
  const mean = list.reduce((total, { weight }) => total + weight, 0) / list.length;
  const claims = list.length > 0 && list.every(({ index }) => observations[index]?.sigma !== undefined);
  return {
    list: list.map((reading) => ({ ...reading, weight: reading.weight / mean })),
    claimed: claims ? 1 / Math.sqrt(mean) : null,
  };
}
