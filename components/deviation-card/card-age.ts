import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import { note, warning } from '../../core/working/caution.js';
import type { Caution } from '../../core/working/caution.js';
import { quantity } from '../../core/working/quantity.js';

/** After this many months a compass is readjusted where no record of deviations is kept (guidance to SOLAS V, summary). */
const WITHOUT_RECORD = 24;

/** Whole months from a day to today; negative for a day to come. */
export function ageInMonths(date: CivilDate, today: Date): number {
  const months = (today.getUTCFullYear() - date.year) * 12 + today.getUTCMonth() + 1 - date.month;
  return today.getUTCDate() < date.day ? months - 1 : months;
}

/** What the age of a card means under a limit. */
export function ageCautions(months: number | null, limit: DeviationLimit): readonly Caution[] {
  if (months === null) return [note('card-undated')];
  const values = { months: quantity(months, 'number') };
  if (months < 0) return [warning('card-from-tomorrow')];
  if (limit.months !== null && months >= limit.months) return [warning('card-too-old', { ...values, limit: quantity(limit.months, 'number') })];
  return months >= WITHOUT_RECORD ? [warning('card-old', values)] : [];
}
