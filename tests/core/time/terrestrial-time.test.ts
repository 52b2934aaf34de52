import assert from 'node:assert/strict';
import { test } from 'node:test';
import { DeltaT_EspenakMeeus } from 'astronomy-engine';
import { terrestrialMinusUtc } from '../../../core/time/terrestrial-time.js';
import { assertClose } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

const at = (text: string): number => terrestrialMinusUtc(new Date(text));

test('TT−UTC is that of the reference places, 1990 to 2035 (leap seconds as ERFA has them)', () => {
  const { cases } = reference<{ cases: { utc: string; tt_minus_utc_s: number }[] }>('sky-places.json');
  for (const { utc, tt_minus_utc_s } of cases) assertClose(at(utc), tt_minus_utc_s, 1e-9, utc);
});

// IERS Bulletin C 52: the leap second of 31 December 2016 makes UTC−TAI −37 s (from memory).
test('a leap second takes effect at midnight and not before', () => {
  assertClose(at('2016-12-31T23:59:59.999Z'), 68.184, 1e-9);
  assertClose(at('2017-01-01T00:00:00Z'), 69.184, 1e-9);
  assertClose(at('1972-06-30T23:59:59Z'), 42.184, 1e-9);
  assertClose(at('1972-07-01T00:00:00Z'), 43.184, 1e-9);
});

// The list of leap seconds of the IERS as the IANA time zone data give it (leap-seconds.list): TAI−UTC from 0 h of each day.
test('every leap second since 1972 comes at its own midnight, and no other half-year has one', () => {
  const januaries = [1973, 1974, 1975, 1976, 1977, 1978, 1979, 1980, 1988, 1990, 1991, 1996, 1999, 2006, 2009, 2017];
  const julies = [1972, 1981, 1982, 1983, 1985, 1992, 1993, 1994, 1997, 2012, 2015];
  let expected = 42.184;
  for (let year = 1972; year <= 2099; year += 1) {
    for (const [month, years] of [[0, januaries], [6, julies]] as const) {
      const midnight = Date.UTC(year, month, 1);
      if (year > 1972 || month > 0) assertClose(terrestrialMinusUtc(new Date(midnight - 1)), expected, 1e-9, `before ${year}-${month + 1}`);
      if (years.includes(year)) expected += 1;
      assertClose(terrestrialMinusUtc(new Date(midnight)), expected, 1e-9, `${year}-${month + 1}`);
    }
  }
  assertClose(expected, 69.184, 1e-9);
});

test('before 1900 it keeps the value of 1900', () => {
  assert.equal(at('1850-06-01T00:00:00Z'), at('1900-01-01T00:00:00Z'));
});

test('after the last leap second known it stays at 69.184 s', () => {
  assertClose(at('2099-12-31T00:00:00Z'), 69.184, 1e-9);
});

// Polynomials of Espenak and Meeus (2006), an expression independent of our table.
test('before 1972 it follows the published ΔT polynomials to half a second, before 1920 to six tenths', () => {
  for (let year = 1900; year < 1972; year += 1) {
    for (const month of [1, 6, 11]) {
      const instant = new Date(Date.UTC(year, month - 1, 15));
      const days = (instant.getTime() - Date.UTC(2000, 0, 1, 12)) / 86_400_000;
      assertClose(terrestrialMinusUtc(instant), DeltaT_EspenakMeeus(days), year < 1920 ? 0.6 : 0.5, `${year}-${month}`);
    }
  }
});

test('there is no step at the seams of the tables, 1970 and 1972', () => {
  for (const seam of ['1970-01-01T00:00:00Z', '1972-01-01T00:00:00Z']) {
    assertClose(terrestrialMinusUtc(new Date(Date.parse(seam) - 1000)), at(seam), 0.02, seam);
  }
});

test('an instant that is none is refused by name', () => {
  assert.throws(() => terrestrialMinusUtc(new Date(NaN)), { name: 'RangeError', message: /^instant/ });
});
