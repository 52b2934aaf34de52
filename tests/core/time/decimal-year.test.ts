import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { decimalYear, instantOfDecimalYear } from '../../../core/time/decimal-year.js';
import { assertClose } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

test('a year of 365 days is half over on 2 July at noon, one of 366 at 0 o’clock (calendar)', () => {
  assert.equal(decimalYear(new Date('2027-07-02T12:00:00Z')), 2027.5);
  assert.equal(decimalYear(new Date('2028-07-02T00:00:00Z')), 2028.5);
});

test('the first instant of a year is the whole year, leap or not', () => {
  for (const year of [2015, 2016, 2024, 2025, 2028, 2030, 99]) {
    assert.equal(decimalYear(instantOfDecimalYear(year)), year);
  }
  assert.equal(decimalYear(new Date('2028-12-31T23:59:59.999Z')) < 2029, true);
});

test('150 instants of an independent evaluation, leap years among them, to nine decimals', () => {
  const { random_wmm2025 } = reference<{ random_wmm2025: { utc: string; decimal_year: number }[] }>('field.json');
  assert.ok(random_wmm2025.some(({ utc }) => utc.startsWith('2028')));
  for (const { utc, decimal_year } of random_wmm2025) assertClose(decimalYear(new Date(utc)), decimal_year, 5.1e-10, utc);
});

test('instant to decimal year and back is the same, to a millisecond', () => {
  fc.assert(
    fc.property(fc.date({ min: new Date('1900-01-01'), max: new Date('2100-01-01'), noInvalidDate: true }), (instant) => {
      assertClose(instantOfDecimalYear(decimalYear(instant)).getTime(), instant.getTime(), 1.1);
    }),
  );
});

test('what is no instant or no year throws a RangeError that names it', () => {
  assert.throws(() => decimalYear(new Date(NaN)), /^RangeError: instant: /);
  assert.throws(() => instantOfDecimalYear(NaN), /^RangeError: year: /);
  assert.throws(() => instantOfDecimalYear(1e9), /^RangeError: year: /);
});
