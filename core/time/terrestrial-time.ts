import { checkInstant } from './check-instant.js';

/** TAI lies this far behind the dynamical time of the ephemerides, seconds (IAU 1991). */
const TT_MINUS_TAI = 32.184;

/**
 * TAI−UTC was ten seconds in 1972, and one second more from 0 h of the day that each of these
 * half-years after 1972 began with: 1 is 1 July 1972, 2 is 1 January 1973, 90 is 1 January 2017,
 * since when none has been added. Source: IERS Bulletin C, from memory.
 */
const leapSeconds: readonly number[] = [1, 2, 4, 6, 8, 10, 12, 14, 16, 19, 21, 23, 27, 32, 36, 38, 41, 43, 45, 48, 51, 54, 68, 74, 81, 87, 90];

/**
 * Before there was UTC as now: dynamical less universal time, seconds, at the beginning
 * of every fifth year from 1900. Source: the table ΔT of the Astronomical Almanac, from memory.
 */
const everyFiveYears: readonly number[] = [-2.72, 3.86, 10.46, 17.2, 21.16, 23.62, 24.02, 23.93, 24.33, 26.77, 29.15, 31.07, 33.15, 35.73, 40.18];
const START_OF_1972 = 42.184;

function beforeLeapSeconds(year: number): number {
  if (year >= 1970) return 40.18 + ((START_OF_1972 - 40.18) * (year - 1970)) / 2;
  const place = Math.max(0, (year - 1900) / 5);
  const whole = Math.min(Math.floor(place), everyFiveYears.length - 2);
  const [from = 0, to = 0] = everyFiveYears.slice(whole, whole + 2);
  return from + (to - from) * (place - whole);
}

/**
 * Terrestrial time less UTC at an instant, seconds. Exact from 1972 to now; kept at
 * 69.184 s after the last leap second, for the next ones are not known; before 1972 good
 * to about half a second from 1920 and to a second or so from 1900, before which it keeps the value of 1900.
 * Throws `RangeError` for an instant that is none.
 */
export function terrestrialMinusUtc(instant: Date): number {
  checkInstant('instant', instant);
  const [year, month] = [instant.getUTCFullYear(), instant.getUTCMonth()];
  if (year < 1972) return beforeLeapSeconds(year + (month + (instant.getUTCDate() - 1) / 31) / 12);
  const halfYears = 2 * (year - 1972) + (month < 6 ? 0 : 1);
  return TT_MINUS_TAI + 10 + leapSeconds.filter((begin) => begin <= halfYears).length;
}
