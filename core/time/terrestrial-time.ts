import { checkInstant } from './check-instant.js';

/** TAI lies this far behind the dynamical time of the ephemerides, seconds (IAU 1991). */
const TT_MINUS_TAI = 32.184;

/**
 * TAI−UTC was ten seconds in 1972, and one second more from 0 h of the first day of each
 * of these years and half-years (`.5` is 1 July); none has been added since 2017.
 * Source: IERS Bulletin C, from memory.
 */
const leapSeconds: readonly number[] = [
  1972.5, 1973, 1974, 1975, 1976, 1977, 1978, 1979, 1980, 1981.5, 1982.5, 1983.5, 1985.5, 1988, 1990, 1991, 1992.5, 1993.5, 1994.5, 1996,
  1997.5, 1999, 2006, 2009, 2012.5, 2015.5, 2017,
];

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
  const month = instant.getUTCMonth();
  const halfYear = instant.getUTCFullYear() + (month < 6 ? 0 : 0.5);
  if (halfYear < 1972) return beforeLeapSeconds(instant.getUTCFullYear() + (month + (instant.getUTCDate() - 1) / 31) / 12);
  let added = 0;
  for (const begin of leapSeconds) if (begin <= halfYear) added += 1;
  return TT_MINUS_TAI + 10 + added;
}
