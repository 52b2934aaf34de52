import { checkFinite } from '../angle/check-number.js';
import { cosDegrees } from '../angle/trigonometry.js';
import { wrap180 } from '../angle/wrap.js';
import { checkField, type EarthField } from './earth-field.js';
import { lambdaOf } from './exact-coefficients.js';
import { finiteOrNull } from './finite-or-null.js';
import { ironDeviationByCompass } from './iron-by-compass.js';
import { ironDeviation } from './iron-deviation.js';
import { checkedIron, type IronParameters } from './iron-parameters.js';

export interface HeelingError {
  /** Deviations in degrees, east positive; null where undetermined. */
  readonly upright: number | null;
  readonly heeled: number | null;
  /** Heeled less upright, degrees (-180, 180]; null where either is. */
  readonly error: number | null;
}

function compare(upright: number | null, heeled: number | null): HeelingError {
  return { upright, heeled, error: upright === null || heeled === null ? null : wrap180(heeled - upright) };
}

/**
 * What a heel adds to the deviation on a magnetic heading. Degrees; `heel` starboard side
 * down positive. Throws `RangeError` as `ironDeviation`.
 */
export function heelingError(
  parameters: IronParameters,
  field: EarthField,
  magneticHeading: number,
  heel: number,
): HeelingError {
  return compare(
    ironDeviation(parameters, field, magneticHeading).deviation,
    ironDeviation(parameters, field, magneticHeading, heel).deviation,
  );
}

/** The same on a compass heading, as an observer finds it; null also where two magnetic headings would serve. */
export function heelingErrorByCompass(
  parameters: IronParameters,
  field: EarthField,
  compassHeading: number,
  heel: number,
): HeelingError {
  const only = (angle: number): number | null => {
    const { kind, answers } = ironDeviationByCompass(parameters, field, compassHeading, angle);
    return kind === 'one' ? (answers[0]?.deviation ?? null) : null;
  };
  return compare(only(0), only(heel));
}

/**
 * The heeling coefficient J = ((e − k)Z − R)/(λH): degrees of deviation for each degree of
 * heel to starboard, heading north by compass, east positive; null where λ or H is 0.
 *
 * Derived: the derivative with heel of λHℭ in the rotated equations. Of ℭ itself it leaves
 * out ℭ(f + h)/2λ, by which λ changes. The old books write the coefficient with the other
 * sign, (𝔇 + μ/λ − 1) tan I, and the error as −J i cos ζ′. In northern latitudes, e below k
 * (the common case) and R above 0, J is negative: north point drawn to the high side.
 * Throws `RangeError` as `ironDeviation`.
 */
export function heelingCoefficient(parameters: IronParameters, field: EarthField): number | null {
  checkField('field', field);
  const iron = checkedIron(parameters);
  return finiteOrNull(((iron.e - iron.k) * field.z - iron.R) / (lambdaOf(iron) * field.h));
}

/**
 * The textbook's estimate J × heel × cos ζ′, degrees; null as J is. Fit for small heels only:
 * it misses by up to 1.4° where the heeling error is 12°.
 */
export function linearHeelingError(
  parameters: IronParameters,
  field: EarthField,
  compassHeading: number,
  heel: number,
): number | null {
  checkFinite('heel', heel);
  checkFinite('compassHeading', compassHeading);
  const coefficient = heelingCoefficient(parameters, field);
  return coefficient === null ? null : finiteOrNull(coefficient * heel * cosDegrees(compassHeading));
}
