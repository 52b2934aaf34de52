/** When the book gives advice. Every figure is a setting: the flag State and the company prevail. */
export interface AdviceSettings {
  /** Hours between two checks of the compass. */
  readonly watchHours: number;
  /** Hours that entries of no observation may stand for one. */
  readonly unobservedHours: number;
  /** Months between two adjustments. */
  readonly adjustmentMonths: number;
  /** A record counts as kept with so many observations in so many days. */
  readonly kept: { readonly observations: number; readonly days: number };
  /** The card no longer fits when the difference exceeds `degrees` on `times` of the last `of`. */
  readonly differing: { readonly degrees: number; readonly times: number; readonly of: number };
  /** Largest deviation allowed on any heading, degrees. */
  readonly largestDeviation: number;
  /** A change in a month that is worth saying, degrees. */
  readonly driftPerMonth: number;
  /** A change of a coefficient that is worth saying, degrees. */
  readonly coefficientChange: number;
  /** A gyro error worth saying, degrees. */
  readonly gyroError: number;
  /** How many of the last observations the coefficients are fitted to. */
  readonly refitLast: number;
  /** Observations after an event until the card is trusted again. */
  readonly checksAfterEvent: number;
  /** Age of the card, months; null where no rule names one. */
  readonly cardMonths: number | null;
}

export const usualAdviceSettings: AdviceSettings = {
  watchHours: 4,
  unobservedHours: 24,
  adjustmentMonths: 24,
  kept: { observations: 20, days: 30 },
  differing: { degrees: 2, times: 3, of: 5 },
  largestDeviation: 5,
  driftPerMonth: 1,
  coefficientChange: 1,
  gyroError: 3,
  refitLast: 24,
  checksAfterEvent: 8,
  cardMonths: null,
};

export type AdviceCode =
  | 'no-check-yet'
  | 'watch-check-overdue'
  | 'error-not-observed'
  | 'adjustment-overdue'
  | 'adjustment-two-years'
  | 'adjustment-unknown'
  | 'card-differs'
  | 'deviation-beyond-limit'
  | 'drifting'
  | 'coefficient-changed'
  | 'gyro-error-large'
  | 'checks-after-event'
  | 'card-old';

/**
 * Where each piece of advice comes from, by code: `stcw` is STCW Code A-VIII/2 (from memory);
 * `solas` the guidance to SOLAS V, annex 13 (summary), `solas-…` the same with figures of common
 * practice; `marshall` Republic of the Marshall Islands, Marine Notice 2-011-32 (6/09);
 * `panama-canal` Panama Canal OP Notice N-1-2022, 4.k (summary); `practice` common practice, no source.
 */
export const adviceSources: Readonly<Record<AdviceCode, string>> = {
  'no-check-yet': 'stcw',
  'watch-check-overdue': 'stcw',
  'error-not-observed': 'practice',
  'adjustment-overdue': 'solas',
  'adjustment-two-years': 'solas',
  'adjustment-unknown': 'solas',
  'card-differs': 'solas-figures',
  'deviation-beyond-limit': 'marshall',
  'drifting': 'practice',
  'coefficient-changed': 'practice',
  'gyro-error-large': 'practice',
  'checks-after-event': 'solas-checks',
  'card-old': 'panama-canal',
};
