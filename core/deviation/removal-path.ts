import { estimateWithout, seriesWithout } from './leave-one-out.js';
import { fitModel, type ModelFit } from './model-fit.js';
import type { WeighedReading } from './observations.js';

/** A reading taken out of a swing because it lay furthest from the curve through the others. */
export interface Removal {
  /** Its place among the observations given. */
  readonly index: number;
  /** How far it lay from the curve of the others, degrees, never negative. */
  readonly slip: number;
  /** The fit to the readings that are left. */
  readonly fit: ModelFit;
}

/** A judgement rests on three figures of the squares; this part of them is far below its notice. */
const NEAR_ENOUGH = 1e-7;

/** A reading that alone fixes part of the curve always agrees with it. */
const LEVERAGE_LIMIT = 1 - 1e-6;

/** The reading whose removal lowers the sum of squares most; -1 where every one fixes the curve. */
function worstPlace(fit: ModelFit, readings: readonly WeighedReading[]): number {
  let worst = -1;
  let most = -1;
  fit.residuals.forEach((residual, place) => {
    const leverage = fit.solution.leverages[place] as number;
    const saved = ((readings[place] as WeighedReading).weight * residual * residual) / (1 - leverage);
    if (leverage > LEVERAGE_LIMIT || saved <= most) return;
    most = saved;
    worst = place;
  });
  return worst;
}

/** Takes out the worst readings under a model one after the other, each fit beginning from the one before. */
export function removalPath(whole: ModelFit, all: readonly WeighedReading[], steps: number): readonly Removal[] {
  const path: Removal[] = [];
  let fit = whole;
  let readings = all;
  while (path.length < steps) {
    const place = worstPlace(fit, readings);
    const bad = readings[place];
    if (bad === undefined) break;
    const slip = Math.abs(fit.residuals[place] as number) / (1 - (fit.solution.leverages[place] as number));
    const rest = readings.filter((reading) => reading !== bad);
    const next: ModelFit | null =
      fit.model === 'exact' ? fitModel('exact', rest, { estimate: estimateWithout(fit, place, bad.weight), gain: NEAR_ENOUGH }) : seriesWithout(fit, readings, place);
    readings = rest;
    if (next === null) break;
    fit = next;
    path.push({ index: bad.index, slip, fit });
  }
  return path;
}
