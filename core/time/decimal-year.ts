import { checkFinite } from '../angle/check-number.js';
import { checkInstant } from './check-instant.js';

/** Milliseconds at which a year begins; unlike `Date.UTC` it takes the years 0 to 99 at their word. */
function startOfYear(year: number): number {
  return new Date(0).setUTCFullYear(year, 0, 1);
}

/**
 * An instant as a year with decimals, UTC. The fraction counts the true length of the
 * year, 365 or 366 days: 2 July 2028 at noon is not 2028.5, but 2 July 2028 at 00:00 is.
 * Throws `RangeError` for an instant that is none.
 */
export function decimalYear(instant: Date): number {
  checkInstant('instant', instant);
  const year = instant.getUTCFullYear();
  const start = startOfYear(year);
  return year + (instant.getTime() - start) / (startOfYear(year + 1) - start);
}

/**
 * The instant, to the millisecond, at a year with decimals: the inverse of `decimalYear`.
 * Throws `RangeError` naming `year` unless it is finite and within the calendar of `Date`.
 */
export function instantOfDecimalYear(year: number): Date {
  checkFinite('year', year);
  const whole = Math.floor(year);
  const start = startOfYear(whole);
  const instant = new Date(Math.round(start + (year - whole) * (startOfYear(whole + 1) - start)));
  if (Number.isNaN(instant.getTime())) throw new RangeError(`year: ${year} is beyond the calendar`);
  return instant;
}
