import { parseDate } from '../time/parse-date.js';

/** `JAN. 2015`, `JANUARY 2015`, `01/2015`; a day before it, or a second stroke, makes it another thing. */
const MONTH_AND_YEAR = /(?<![\d.,°'"/-])(?:(?<name>[A-Z]{3,9})\.? ?|(?<number>\d{1,2})\/)(?<year>\d{4})(?![\d/])/g;

/**
 * A month and its year, in the text of a rose, as the year with decimals of the month's first
 * day, for a whole year is its 1 January. What names no month stays as it is.
 */
export function monthsAsYears(plain: string): string {
  return plain.replace(MONTH_AND_YEAR, (text, name: string | undefined, number: string | undefined, year: string) => {
    const date = parseDate(name ? `1 ${name} ${year}` : `${year}-${number ?? ''}-1`);
    return date.ok ? String(Number(year) + (date.value.month - 1) / 12) : text;
  });
}
