import type { TemplateResult } from 'lit';
import { roundTo } from '../../core/angle/format-angle.js';
import { errorInColumn } from '../shared/error-parts.js';
import { formatAngle, formatBearing, formatError, formatNumber } from '../shared/figures.js';

/** What stands where there is no number. */
export const NONE = '–';

/** Microtesla of a force in nanotesla, with its sign. */
export function microtesla(force: number, decimals = 1): string {
  return `${formatNumber(force / 1000, decimals)} µT`;
}

const plusOf = (value: number, decimals: number): string => (roundTo(value, decimals) > 0 ? '+' : '');

/** A coefficient, degrees, with the sign the trade gives it: `+5.0°`. */
export function coefficientText(degrees: number | null | undefined, decimals = 1): string {
  if (degrees === null || degrees === undefined || !Number.isFinite(degrees)) return NONE;
  return plusOf(degrees, decimals) + formatAngle(degrees, decimals);
}

/** A pure number with its sign: `+0.1000`. */
export function signedNumber(value: number | null | undefined, decimals = 4): string {
  if (value === null || value === undefined || !Number.isFinite(value)) return NONE;
  return plusOf(value, decimals) + formatNumber(value, decimals);
}

export function deviationText(deviation: number | null | undefined, decimals = 1): string {
  return deviation === null || deviation === undefined ? NONE : formatError(deviation, decimals);
}

/** A deviation in a column. */
export function deviationCell(deviation: number | null | undefined, decimals = 1): string | TemplateResult {
  return deviation === null || deviation === undefined ? NONE : errorInColumn(deviation, decimals);
}

export function headingText(heading: number | null | undefined): string {
  return heading === null || heading === undefined ? NONE : formatBearing(heading, 1);
}
