import { decimalYear } from '../time/decimal-year.js';
import { modelAt, magneticModelYears, magneticModels } from './magnetic-models.js';
import type { MagneticModelName } from './magnetic-models.js';

/** An instant that no model, or not the one named, holds for, and the nearest that it does hold for. */
export interface OutsideModels {
  /** First and last decimal year, both included. */
  readonly from: number;
  readonly until: number;
  /** 1 January of one of them, 0 h UTC. */
  readonly nearest: Date;
}

/**
 * Null where a model holds for the instant, else what is nearest.
 * Throws `RangeError` for an instant that is none or an unknown model.
 */
export function outsideModels(instant: Date, model?: MagneticModelName): OutsideModels | null {
  const year = decimalYear(instant);
  const found = magneticModels.find(({ name }) => name === model);
  const { from, until } = model === undefined ? magneticModelYears : (found ?? modelAt(instant, model));
  if (year >= from && year <= until) return null;
  return { from, until, nearest: new Date(Date.UTC(year < from ? from : until, 0, 1)) };
}
