import { checkFinite, checkRange } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';
import { decimalYear } from '../time/decimal-year.js';

/** What the compass rose of a chart says of the variation. */
export interface ChartRose {
  /** Degrees, [-180, 180], east positive. */
  readonly variation: number;
  /** The year it holds for, 1000 to 3000; a whole year means 1 January of it, 2015.5 the middle of it. */
  readonly year: number;
  /** Minutes of arc in a year, east positive. */
  readonly annualChangeMinutes: number;
}

/**
 * The variation of a chart's rose brought to an instant: its value and the annual change
 * times the years gone, counted with decimals and never in whole years only. Degrees,
 * (-180, 180], east positive. A change that decreases the variation goes on through zero.
 * Throws `RangeError` naming the bad argument. Source: common practice, no source; a test has a
 * textbook's example.
 */
export function chartedVariation({ variation, year, annualChangeMinutes }: ChartRose, instant: Date): number {
  checkRange('variation', variation, -180, 180);
  checkRange('year', year, 1000, 3000);
  checkFinite('annualChangeMinutes', annualChangeMinutes);
  return wrap180(variation + (annualChangeMinutes / 60) * (decimalYear(instant) - year));
}
