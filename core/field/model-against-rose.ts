import { angleFromTo } from '../angle/wrap.js';
import { decimalYear } from '../time/decimal-year.js';
import { chartedVariation } from './charted-variation.js';
import type { ChartRose } from './charted-variation.js';
import type { FieldPlace } from './check-place.js';
import { magneticField } from './magnetic-field.js';
import type { MagneticFieldOptions } from './magnetic-field.js';

export interface ModelAgainstRose {
  /** Variation by the rose at the instant, degrees, east positive. */
  readonly charted: number;
  /** Variation by the model, and one standard deviation of it; null where there is none. */
  readonly modelled: number | null;
  readonly uncertainty: number | null;
  /** Model less chart, degrees, (-180, 180]. */
  readonly difference: number | null;
  /** Years from that of the rose; negative before it. */
  readonly years: number;
}

/**
 * The variation by the model beside that of the chart. Near a local anomaly the chart
 * prevails, as it was measured; the older the rose, the less its annual change holds.
 * Throws `RangeError` as `chartedVariation` and `magneticField` do.
 */
export function modelAgainstRose(
  rose: ChartRose,
  place: FieldPlace,
  instant: Date,
  options: MagneticFieldOptions = {},
): ModelAgainstRose {
  const charted = chartedVariation(rose, instant);
  const { variation, uncertainty } = magneticField(place, instant, options);
  return {
    charted,
    modelled: variation,
    uncertainty: uncertainty.variation,
    difference: variation === null ? null : angleFromTo(charted, variation),
    years: decimalYear(instant) - rose.year,
  };
}
