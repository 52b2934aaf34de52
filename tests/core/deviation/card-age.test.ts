import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { ageCautions, ageInMonths } from '../../../core/deviation/card-age.js';
import { deviationLimits } from '../../../core/deviation/deviation-limits.js';
import type { DeviationLimit } from '../../../core/deviation/deviation-limits.js';

const day = (year: number, month: number, date: number): { year: number; month: number; day: number } => ({ year, month, day: date });

describe('the age of a card', () => {
  // By the calendar.
  for (const [from, to, months] of [
    [day(2026, 2, 11), '2026-11-25', 9],
    [day(2026, 2, 26), '2026-11-25', 8],
    [day(2025, 11, 25), '2026-11-25', 12],
    [day(2024, 2, 29), '2026-02-28', 23],
    [day(2027, 1, 1), '2026-11-25', -2],
  ] as const) {
    it(`from ${from.year}-${from.month}-${from.day} to ${to}: ${months} months`, () => assert.equal(ageInMonths(from, new Date(to)), months));
  }

  it('refuses a day that is no instant', () => assert.throws(() => ageInMonths(day(2026, 1, 1), new Date(NaN)), /RangeError: today/));
});

describe('what the age of a card means', () => {
  const limit = (code: string): DeviationLimit => deviationLimits.find((each) => each.code === code) as DeviationLimit;
  const told = (months: number | null, code: string): string[] => ageCautions(months, limit(code)).map((caution) => caution.code);

  it('nothing while it is young', () => assert.deepEqual(told(11, 'panama-canal'), []));
  it('too old after twelve months for the canal (Panama Canal OP Notice N-1-2022, 4.k)', () => assert.deepEqual(told(12, 'panama-canal'), ['card-too-old']));
  it('old after two years, unless deviations are recorded (guidance to SOLAS chapter V)', () => assert.deepEqual([told(23, 'flag-five'), told(24, 'flag-five')], [[], ['card-old']]));
  it('one of tomorrow, and one without a date', () => assert.deepEqual([told(-1, 'flag-five'), told(null, 'flag-five')], [['card-from-tomorrow'], ['card-undated']]));
});
