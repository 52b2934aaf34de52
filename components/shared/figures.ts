import {
  fixed,
  formatAngle as angle,
  formatBearing as bearing,
  formatError as error,
  formatLatitude as latitude,
  formatLongitude as longitude,
  formatNumber as number,
} from '../../core/angle/format-angle.js';

/**
 * Figures for people, with the decimal mark of the page's language. What machines read is
 * written by core's own formats of the same names, always with a point: attributes, properties,
 * records, files.
 */
let mark = '.';

/**
 * Sets the mark. A widget does so when it begins to draw itself: its update runs from start
 * to end with no other widget's in between, so the views need not hand the mark about.
 */
export function writeDecimalsWith(languageMark: string): void {
  mark = languageMark;
}

/** The mark that holds now, for a format of core that is not listed here. */
export const decimalMark = (): string => mark;

export const formatAngle = (degrees: number, decimals?: number): string => angle(degrees, decimals, mark);
export const formatBearing = (degrees: number, decimals?: number): string => bearing(degrees, decimals, mark);
export const formatError = (degrees: number, decimals?: number): string => error(degrees, decimals, mark);
export const formatLatitude = (degrees: number, decimals?: number): string => latitude(degrees, decimals, mark);
export const formatLongitude = (degrees: number, decimals?: number): string => longitude(degrees, decimals, mark);
export const formatNumber = (value: number, decimals: number): string => number(value, decimals, mark);

/** A rounded size with its decimals, padded with zeros to `width` figures before them. */
export const formatFixed = (size: number, decimals: number, width?: number): string => fixed(size, decimals, mark, width);

/** A number whose decimals are as they are: a constant of a formula, a limit. */
export const formatPlain = (value: number): string => String(value).replace('-', '−').replace('.', mark);
