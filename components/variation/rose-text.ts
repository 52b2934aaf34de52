import { fixed, roundTo } from '../../core/angle/format-angle.js';
import type { ChartRose } from '../../core/field/charted-variation.js';
import { formatFixed } from '../shared/figures.js';

/** How a size is written: for people with their language's mark, or for a field with a point. */
type Figures = (size: number, decimals: number, width?: number) => string;

const withPoint: Figures = (size, decimals, width) => fixed(size, decimals, '.', width);

const letter = (value: number): string => (value === 0 ? '' : value > 0 ? ' E' : ' W');

/** A variation in degrees and minutes, as charts print it: `4° 15′ W`. */
export function degreesAndMinutes(degrees: number, decimals = 0, figures: Figures = formatFixed): string {
  const minutes = roundTo(Math.abs(degrees) * 60, decimals);
  const whole = Math.floor(minutes / 60);
  const rest = figures(minutes - whole * 60, decimals, 2);
  return `${whole}° ${rest}′${letter(minutes === 0 ? 0 : degrees)}`;
}

/** An annual change as charts print it: `8′ E`. */
export function changeText(minutes: number, figures: Figures = formatFixed): string {
  const rounded = roundTo(minutes, 1);
  return `${figures(Math.abs(rounded), Number.isInteger(rounded) ? 0 : 1)}′${letter(rounded)}`;
}

/** The same without spaces, for typing, and with tenths of a minute where it has them: `4°15′W`, `12°30.5′E`. */
export function typedVariation(degrees: number): string {
  const decimals = Number.isInteger(roundTo(Math.abs(degrees) * 60, 1)) ? 0 : 1;
  return degreesAndMinutes(degrees, decimals, withPoint).replace(/ /g, '');
}

/** An annual change for typing: `8′E`, `8.5′E`. */
export function typedChange(minutes: number): string {
  return changeText(minutes, withPoint).replace(' ', '');
}

/** The whole rose on one line: `4°15′W 2015 (8′E)`. */
export function roseText(rose: ChartRose): string {
  return `${typedVariation(rose.variation)} ${roundTo(rose.year, 1)} (${typedChange(rose.annualChangeMinutes)})`;
}
