import { checkRange } from '../angle/check-number.js';
import { checkField, type EarthField } from './earth-field.js';

/** What stays with a ship wherever she goes: λ and the coefficients without vertical iron or P and Q. */
const unchangingNames = ['lambda', 'A', 'D', 'E'] as const;

export type UnchangingName = (typeof unchangingNames)[number];

/** What a swing told at one place. */
export interface IronObservation {
  /**
   * Exact coefficients, pure numbers; null where the swing did not determine one. λ, A, D and E
   * do not change with place and may be left out.
   */
  readonly exact: {
    readonly B: number | null;
    readonly C: number | null;
    readonly A?: number | null;
    readonly D?: number | null;
    readonly E?: number | null;
    readonly lambda?: number | null;
  };
  readonly field: EarthField;
  /** Mean force over H, where it was measured; it prevails over `exact.lambda`. Deviations alone cannot tell it. */
  readonly lambda?: number | null | undefined;
  /** One standard deviation of each, pure numbers, 0 or more; null or left out where unknown. */
  readonly standardErrors?: SwingErrors | undefined;
}

export type SwingErrors = {
  readonly [name in 'B' | 'C' | UnchangingName]?: number | null | undefined;
};

/** No coefficient is near it; sums of such numbers stay finite. */
const LARGEST = 1e100;

/** Throws `RangeError` naming what is missing or out of range, by the place of the observation. */
export function checkObservation({ exact, field, lambda, standardErrors = {} }: IronObservation, index: number): void {
  const name = `observations[${index}]`;
  const check = (what: string, value: number): void => checkRange(`${name}.${what}`, value, -LARGEST, LARGEST);
  checkField(`${name}.field`, field);
  checkRange(`${name}.field.h`, field.h, Number.MIN_VALUE, LARGEST);
  for (const key of ['B', 'C'] as const) if (exact[key] !== null) check(`exact.${key}`, exact[key]);
  for (const key of unchangingNames) check(`exact.${key}`, exact[key] ?? 0);
  check('lambda', lambda ?? 1);
  for (const key of ['B', 'C', ...unchangingNames] as const) {
    checkRange(`${name}.standardErrors.${key}`, standardErrors[key] ?? 0, 0, LARGEST);
  }
}
