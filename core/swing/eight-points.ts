import { angleFromTo } from '../angle/wrap.js';
import type { ApproximateCoefficients } from '../deviation/approximate-deviation.js';
import { eightPointAnalysis, eightPointNames } from '../deviation/eight-point-analysis.js';
import type { EightDeviations } from '../deviation/eight-point-analysis.js';

/** The adjuster's arithmetic over the readings nearest the eight points; or the points without one. */
export type EightPoints =
  | { readonly ok: true; readonly deviations: EightDeviations; readonly coefficients: ApproximateCoefficients }
  | { readonly ok: false; readonly missing: readonly (keyof EightDeviations)[] };

/** A head this near a point stands for it, degrees: common practice, no source. */
const NEAR = 2.5;

/** Several readings of a point give their mean. Headings by compass and deviations, degrees. */
export function eightPoints(readings: readonly { readonly heading: number; readonly deviation: number }[]): EightPoints {
  const found = eightPointNames.map((_, place) => {
    const near = readings.filter(({ heading }) => Math.abs(angleFromTo(place * 45, heading)) <= NEAR);
    return near.length === 0 ? null : near.reduce((total, { deviation }) => total + deviation, 0) / near.length;
  });
  const missing = eightPointNames.filter((_, place) => found[place] === null);
  if (missing.length > 0) return { ok: false, missing };
  const [N = 0, NE = 0, E = 0, SE = 0, S = 0, SW = 0, W = 0, NW = 0] = found.map((deviation) => deviation ?? 0);
  const deviations = { N, NE, E, SE, S, SW, W, NW };
  return { ok: true, deviations, coefficients: eightPointAnalysis(deviations) };
}
