import { formatNumber, roundTo } from '../../core/angle/format-angle.js';
import type { ChartRose } from '../../core/field/charted-variation.js';

const letter = (value: number): string => (value === 0 ? '' : value > 0 ? ' E' : ' W');

/** A variation in degrees and minutes, as charts print it: `4° 15′ W`. */
export function degreesAndMinutes(degrees: number, decimals = 0): string {
  const minutes = roundTo(Math.abs(degrees) * 60, decimals);
  const whole = Math.floor(minutes / 60);
  const rest = (minutes - whole * 60).toFixed(decimals).padStart(decimals ? 3 + decimals : 2, '0');
  return `${whole}° ${rest}′${letter(minutes === 0 ? 0 : degrees)}`;
}

/** An annual change as charts print it: `8′ E`. */
export function changeText(minutes: number): string {
  const rounded = roundTo(minutes, 1);
  return `${formatNumber(Math.abs(rounded), Number.isInteger(rounded) ? 0 : 1)}′${letter(rounded)}`;
}

/** The same without spaces, for typing, and with tenths of a minute where it has them: `4°15′W`, `12°30.5′E`. */
export function typedVariation(degrees: number): string {
  const decimals = Number.isInteger(roundTo(Math.abs(degrees) * 60, 1)) ? 0 : 1;
  return degreesAndMinutes(degrees, decimals).replace(/ /g, '');
}

/** The whole rose on one line: `4°15′W 2015 (8′E)`. */
export function roseText(rose: ChartRose): string {
  return `${typedVariation(rose.variation)} ${roundTo(rose.year, 1)} (${changeText(rose.annualChangeMinutes).replace(' ', '')})`;
}
