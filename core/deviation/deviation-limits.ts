/**
 * A limit on residual deviations as a setting: which rule it comes from is `source`, by code.
 * The codes: `marshall-amsa` is Republic of the Marshall Islands, Marine Notice 2-011-32 (6/09),
 * and AMSA Marine Notice 19/2016 (summary); `iso-adjusted` and `iso-service` are ISO 25862:2009
 * (secondary quotation); `panama-canal` is Panama Canal OP Notice N-1-2022, 4.k (summary).
 */
export interface DeviationLimit {
  readonly code: string;
  /** Largest deviation allowed on any heading, degrees. */
  readonly largest: number;
  /** Whether the largest itself is still allowed. */
  readonly inclusive: boolean;
  /** Age at which the card is to be renewed, months; null where the rule names none. */
  readonly months: number | null;
  readonly source: string;
}

/**
 * Limits in use, for the user to choose from; the flag State's rule prevails. The first is
 * the default.
 */
export const deviationLimits: readonly DeviationLimit[] = [
  {
    code: 'flag-five',
    largest: 5,
    inclusive: true,
    months: null,
    source: 'marshall-amsa',
  },
  {
    code: 'after-adjustment',
    largest: 3,
    inclusive: true,
    months: 24,
    source: 'iso-adjusted',
  },
  {
    code: 'in-service',
    largest: 5,
    inclusive: true,
    months: 24,
    source: 'iso-service',
  },
  {
    code: 'panama-canal',
    largest: 7,
    inclusive: false,
    months: 12,
    source: 'panama-canal',
  },
];
