import { coefficientNames } from '../deviation/approximate-deviation.js';
import type { CoefficientName } from '../deviation/approximate-deviation.js';
import type { DeviationCurve } from '../deviation/curve-of-card.js';
import { fitDeviation } from '../deviation/fit-deviation.js';
import type { DeviationFit } from '../deviation/fit-deviation.js';
import { studentLimit } from '../deviation/student.js';
import type { ObservedDeviation } from './observed-deviations.js';
import { swingFromRecord } from './swing-from-record.js';

export interface CoefficientChange {
  readonly name: CoefficientName;
  /** Degrees, east positive; null where the headings observed do not determine it. */
  readonly found: number | null;
  readonly doubt: number | null;
  /** The card's own; null without a card. */
  readonly card: number | null;
  readonly change: number | null;
  /** Whether chance would bring so large a change less than once in twenty times. */
  readonly significant: boolean;
}

export interface Refit {
  /** How many observations went in. */
  readonly count: number;
  readonly fit: DeviationFit;
  readonly coefficients: readonly CoefficientChange[];
}

/** The five coefficients of whatever a card says, by its deviations on every tenth degree. */
function coefficientsOf(curve: DeviationCurve): Readonly<Record<CoefficientName, number | null>> {
  const rows = Array.from({ length: 36 }, (_, place) => ({ heading: place * 10, deviation: curve.at(place * 10) }));
  return fitDeviation(rows.flatMap(({ heading, deviation }) => (deviation === null ? [] : [{ heading, deviation }]))).coefficients;
}

/**
 * The coefficients by the last observations, beside those of the card. Observations on
 * chance headings determine fewer than a swing does: what is not determined is null.
 */
export function refit(observed: readonly ObservedDeviation[], curve: DeviationCurve | null, last: number): Refit {
  if (!Number.isSafeInteger(last) || last < 1) throw new RangeError(`last: ${String(last)} is not a whole number of 1 or more`);
  const used = observed.slice(-last);
  const fit = fitDeviation(swingFromRecord(used));
  const card = curve ? coefficientsOf(curve) : null;
  const coefficients = coefficientNames.map((name): CoefficientChange => {
    const found = fit.coefficients[name];
    const doubt = fit.standardErrors[name];
    const ofCard = card?.[name] ?? null;
    const change = found === null || ofCard === null ? null : found - ofCard;
    const limit = fit.degreesOfFreedom > 0 ? studentLimit(0.95, fit.degreesOfFreedom) : 2;
    return { name, found, doubt, card: ofCard, change, significant: change !== null && doubt !== null && Math.abs(change) > limit * doubt };
  });
  return { count: used.length, fit, coefficients };
}
