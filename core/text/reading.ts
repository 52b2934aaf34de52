/** Why a text was not understood, by code; the words belong to the view. */
export type Refusal =
  | 'empty'
  | 'not-understood'
  | 'out-of-range'
  | 'minutes-over-59'
  | 'seconds-over-59'
  | 'hours-over-23'
  | 'decimals-not-last'
  | 'two-decimal-marks'
  | 'sign-and-letter'
  | 'two-letters'
  | 'wrong-letter'
  | 'letter-o'
  | 'letter-missing'
  | 'no-such-day'
  | 'ambiguous-date'
  | 'not-utc'
  | 'unknown-name';

/**
 * What was made of a typed text. `assumed` names what the text left out and was taken for
 * granted, such as the hemisphere, so that it can be shown back.
 */
export type Reading<T> =
  | { readonly ok: true; readonly value: T; readonly assumed?: string }
  | { readonly ok: false; readonly refusal: Refusal };

export function understood<T>(value: T): Reading<T> {
  return { ok: true, value };
}

export function refused(refusal: Refusal): { readonly ok: false; readonly refusal: Refusal } {
  return { ok: false, refusal };
}

/** Understood only inside [least, most]. */
export function within(value: number, least: number, most: number): Reading<number> {
  // Adding 0 turns -0 into 0.
  return value >= least && value <= most ? understood(value + 0) : refused('out-of-range');
}
