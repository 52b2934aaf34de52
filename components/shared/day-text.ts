import { instantOf } from '../../core/time/instant.js';
import type { CivilDate } from '../../core/time/parse-date.js';
import type { LubberElement } from './lubber-element.js';

/**
 * The day of the week and the day in words. They are in the catalogue: to make ready the
 * browser's own formats of dates takes longer than all else there is to do at the start.
 */
export function dayText(host: LubberElement, date: CivilDate): string {
  const word = (key: string, index: number): string => host.t(key).split(' ')[index] ?? '';
  return host.t('day', {
    weekday: word('day.weekdays', instantOf(date, 0).getUTCDay()),
    day: date.day,
    month: word('day.months', date.month - 1),
    year: date.year,
  });
}
