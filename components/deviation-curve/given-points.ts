import { isBag, numberIn } from './plain-data.js';

/** A reading of a swing as a page hands it over. */
export interface CurvePoint {
  /** Ship's head by compass, degrees. */
  readonly heading: number;
  /** Degrees, east positive. */
  readonly deviation: number;
  /** Struck out: shown, not fitted. */
  readonly struck?: boolean;
  /** One standard deviation, degrees. */
  readonly sigma?: number;
}

/** Readings in order, or the place of the first that is none. */
export type PointsReading = { readonly points: readonly CurvePoint[]; readonly problem: null } | { readonly points: readonly []; readonly problem: string };

function parsed(given: unknown): unknown {
  if (typeof given !== 'string') return given;
  try {
    return JSON.parse(given) as unknown;
  } catch {
    return undefined;
  }
}

/** Reads readings from a property or, as JSON, from an attribute. */
export function readPoints(given: unknown): PointsReading {
  if (given === undefined || given === null || given === '' || given === 'undefined' || given === 'null') return { points: [], problem: null };
  const value = parsed(given);
  if (!Array.isArray(value)) return { points: [], problem: 'points' };
  const points: CurvePoint[] = [];
  for (const [index, item] of (value as readonly unknown[]).entries()) {
    const heading = isBag(item) ? numberIn(item, 'heading', 0, 360) : null;
    const deviation = isBag(item) ? numberIn(item, 'deviation', -180, 180) : null;
    if (!isBag(item) || heading === null || deviation === null) return { points: [], problem: `points[${index}]` };
    const sigma = numberIn(item, 'sigma', 1e-6, 180);
    points.push({ heading, deviation, ...(item['struck'] === true ? { struck: true } : {}), ...(sigma === null ? {} : { sigma }) });
  }
  return { points, problem: null };
}
