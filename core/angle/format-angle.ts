import { checkFinite } from './check-number.js';
import { wrap180, wrap360 } from './wrap.js';

/**
 * Rounds half away from zero, to a whole number where no `decimals` are given, so that a value
 * and its opposite look alike; never -0. Throws `RangeError` unless the value is finite, and so
 * does every format here: no view ever prints NaN.
 */
export function roundTo(value: number, decimals = 0): number {
  checkFinite('value', value);
  const scaled = Math.abs(value) * 10 ** decimals;
  // Near a half the decimal text of the number decides, so that 1.005 rounds as it is printed. It costs ten times the rest.
  const near = Math.abs((scaled % 1) - 0.5) < 1e-6 || scaled > 1e6;
  const shifted = near ? Number(`${Math.abs(value)}e${decimals}`) : scaled;
  return (Math.sign(value) * Math.round(Number.isNaN(shifted) ? scaled : shifted)) / 10 ** decimals + 0;
}

/**
 * A rounded size with its decimals, padded with zeros to `width` figures before them. Which
 * mark stands before the decimals is an argument, here and in every format: core knows no language.
 */
export function fixed(size: number, decimals: number, mark = '.', width = 1): string {
  const figures = size.toFixed(decimals).padStart(width + (decimals && decimals + 1), '0');
  return figures.replace('.', mark);
}

/** A bearing, any finite degrees, with three figures: `045.0°`; the rounded 360 is written 000. Errors as `roundTo`. */
export function formatBearing(degrees: number, decimals = 1, mark = '.'): string {
  return `${fixed(wrap360(roundTo(wrap360(degrees), decimals)), decimals, mark, 3)}°`;
}

/** An error, variation or deviation, degrees, east positive, with its letter: `3.2° E`, `0.0°`. Errors as `roundTo`. */
export function formatError(degrees: number, decimals = 1, mark = '.'): string {
  const rounded = wrap180(roundTo(wrap180(degrees), decimals));
  const letter = rounded === 0 ? '' : rounded > 0 ? ' E' : ' W';
  return `${fixed(Math.abs(rounded), decimals, mark)}°${letter}`;
}

/** Degrees and minutes with a letter, minutes rounded before the degrees are told apart. */
function degreesAndMinutes(degrees: number, width: number, decimals: number, mark: string, letters: string): string {
  checkFinite('degrees', degrees);
  const minutes = roundTo(Math.abs(degrees) * 60, decimals);
  const whole = Math.floor(minutes / 60);
  const rest = fixed(minutes - whole * 60, decimals, mark, 2);
  const letter = degrees < 0 && minutes > 0 ? letters[1] : letters[0];
  return `${String(whole).padStart(width, '0')}° ${rest}′ ${letter}`;
}

/** A latitude, degrees, north positive, to `decimals` of a minute: `33° 24.0′ N`. Errors as `roundTo`. */
export function formatLatitude(degrees: number, decimals = 1, mark = '.'): string {
  return degreesAndMinutes(degrees, 2, decimals, mark, 'NS');
}

/**
 * A longitude, any finite degrees, east positive, to `decimals` of a minute: `071° 42.5′ W`; the
 * 180th meridian is written E, however it was come to. Errors as `roundTo`.
 */
export function formatLongitude(degrees: number, decimals = 1, mark = '.'): string {
  const longitude = wrap180(degrees);
  const onMeridian180 = roundTo(longitude * 60, decimals) === -180 * 60;
  return degreesAndMinutes(onMeridian180 ? 180 : longitude, 3, decimals, mark, 'EW');
}

/** An angle in degrees with its sign, a true minus: `−0.7°`. Errors as `roundTo`. */
export function formatAngle(degrees: number, decimals = 1, mark = '.'): string {
  checkFinite('degrees', degrees);
  return `${formatNumber(degrees, decimals, mark)}°`;
}

/** A number with fixed decimals and a true minus sign; never a negative zero. Errors as `roundTo`. */
export function formatNumber(value: number, decimals = 1, mark = '.'): string {
  const rounded = roundTo(value, decimals);
  return `${rounded < 0 ? '−' : ''}${fixed(Math.abs(rounded), decimals, mark)}`;
}
