import { checkRange } from '../angle/check-number.js';
import { normalise } from '../text/normalise.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';
import { checkInstant } from './check-instant.js';
import { parseDate } from './parse-date.js';
import type { CivilDate } from './parse-date.js';
import { parseTimeOfDay } from './parse-time-of-day.js';

/**
 * The instant, to the millisecond, of a day and its second, UTC. Throws `RangeError` for
 * a day that is no calendar day of 1900 to 2100 or a second outside [0, 86400].
 */
export function instantOf(date: CivilDate, secondOfDay: number): Date {
  checkRange('secondOfDay', secondOfDay, 0, 86400);
  checkRange('date.year', date.year, 1900, 2100);
  const midnight = new Date(Date.UTC(date.year, date.month - 1, date.day));
  if (midnight.getUTCMonth() !== date.month - 1 || midnight.getUTCDate() !== date.day) {
    throw new RangeError(`date: ${date.year}-${date.month}-${date.day} is not a day`);
  }
  return new Date(midnight.getTime() + Math.round(secondOfDay * 1000));
}

/**
 * A day, figures first or year first, then T or a space, then the rest. Whether it is a
 * day and a time is for their own readers to say.
 */
const DAY_AND_TIME = /^(\d{4}[/-]\d{1,2}[/-]\d{1,2}|\d{8}|.{1,16}?[^\d]\d{4})(?: ?T ?| )(\d.*)$/;

/** Reads a whole instant of 1900 to 2100, UTC: `2026-11-26T09:05:20Z` or the same with a space. */
export function parseInstant(text: string): Reading<Date> {
  const plain = normalise(text);
  if (plain === '') return refused('empty');
  const [, day, time] = DAY_AND_TIME.exec(plain) ?? [];
  if (day === undefined || time === undefined) return refused('not-understood');
  const date = parseDate(day);
  if (!date.ok) return date;
  const second = parseTimeOfDay(time);
  return second.ok ? understood(instantOf(date.value, second.value)) : second;
}

/** With milliseconds, `2026-11-26T09:05:20.000Z`; years of more than four figures have more. */
function written(instant: Date): string {
  checkInstant('instant', instant);
  return instant.toISOString();
}

/** The day of an instant, UTC: `2026-11-26`. Throws `RangeError` for an instant that is none. */
export function formatDate(instant: Date): string {
  return written(instant).slice(0, -14);
}

/**
 * The time of day of an instant, UTC: `09:05:20`. It shows the second that runs, as a
 * clock does. Throws `RangeError` for an instant that is none.
 */
export function formatTimeOfDay(instant: Date): string {
  return written(instant).slice(-13, -5);
}

/**
 * An instant as machines write it, with the second that runs: `2026-11-26T09:05:20Z`.
 * Throws `RangeError` for an instant that is none.
 */
export function formatInstant(instant: Date): string {
  return `${written(instant).slice(0, -5)}Z`;
}
