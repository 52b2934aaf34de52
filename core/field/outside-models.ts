import { decimalYear } from '../time/decimal-year.js';
import { modelAt, magneticModelYears, magneticModels } from './magnetic-models.js';
import type { MagneticModelName } from './magnetic-models.js';

/** The years that all models, or the one named, hold for. */
export interface OutsideModels {
  /** First and last decimal year, both included. */
  readonly from: number;
  readonly until: number;
  /** That of the two, 0 h UTC on 1 January, which is nearest. */
  readonly nearest: number;
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
  return { from, until, nearest: year < from ? from : until };
}
