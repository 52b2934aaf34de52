import { normalise } from '../text/normalise.js';
import { refused, understood } from '../text/reading.js';
import type { Reading } from '../text/reading.js';
import { parseDate } from './parse-date.js';
import type { CivilDate } from './parse-date.js';
import { parseTimeOfDay } from './parse-time-of-day.js';

/** The instant of a day and its second, UTC. */
export function instantOf(date: CivilDate, secondOfDay: number): Date {
  return new Date(Date.UTC(date.year, date.month - 1, date.day) + Math.round(secondOfDay * 1000));
}

/** Reads a whole instant, UTC: `2026-11-26T09:05:20Z` or the same with a space. */
export function parseInstant(text: string): Reading<Date> {
  const plain = normalise(text);
  if (plain === '') return refused('empty');
  const [, day = '', time = ''] = /^(.*\d{4}|\d{4}-\d{1,2}-\d{1,2})[T ]+(\d{1,2}[:H].*|\d{4,6}.*)$/.exec(plain) ?? [];
  const date = parseDate(day);
  if (!date.ok) return date.refusal === 'empty' ? refused('not-understood') : date;
  const second = parseTimeOfDay(time);
  if (!second.ok) return second.refusal === 'empty' ? refused('not-understood') : second;
  return understood(instantOf(date.value, second.value));
}

function figures(value: number, width: number): string {
  return String(value).padStart(width, '0');
}

/** The day of an instant, UTC: `2026-11-26`. */
export function formatDate(instant: Date): string {
  return `${figures(instant.getUTCFullYear(), 4)}-${figures(instant.getUTCMonth() + 1, 2)}-${figures(instant.getUTCDate(), 2)}`;
}

/** The time of day of an instant, UTC, to the second: `09:05:20`. */
export function formatTimeOfDay(instant: Date): string {
  return [instant.getUTCHours(), instant.getUTCMinutes(), instant.getUTCSeconds()].map((part) => figures(part, 2)).join(':');
}

/** An instant to the second as machines write it: `2026-11-26T09:05:20Z`. */
export function formatInstant(instant: Date): string {
  return `${formatDate(instant)}T${formatTimeOfDay(instant)}Z`;
}
