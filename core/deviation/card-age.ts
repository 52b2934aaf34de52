import { checkFinite } from '../angle/check-number.js';
import type { DeviationLimit } from './deviation-limits.js';
import { checkInstant } from '../time/check-instant.js';
import type { CivilDate } from '../time/parse-date.js';
import { note, warning } from '../working/caution.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';

/** After this many months a compass is readjusted where no record of deviations is kept (guidance to SOLAS V, summary). */
const WITHOUT_RECORD = 24;

/** Whole months from a day to today, by the calendar of UTC; negative for a day to come. Throws `RangeError` naming `date` or `today`. */
export function ageInMonths(date: CivilDate, today: Date): number {
  checkInstant('today', today);
  const months = (today.getUTCFullYear() - date.year) * 12 + today.getUTCMonth() + 1 - date.month;
  checkFinite('date', months);
  return today.getUTCDate() < date.day ? months - 1 : months;
}

/** What the age of a card, months or null where it is not dated, means under a limit: `card-undated`, `card-from-tomorrow`, `card-too-old`, `card-old`. */
export function ageCautions(months: number | null, limit: DeviationLimit): readonly Caution[] {
  if (months === null) return [note('card-undated')];
  const values = { months: quantity(months, 'number') };
  if (months < 0) return [warning('card-from-tomorrow')];
  if (limit.months !== null && months >= limit.months) return [warning('card-too-old', { ...values, limit: quantity(limit.months, 'number') })];
  return months >= WITHOUT_RECORD ? [warning('card-old', values)] : [];
}
