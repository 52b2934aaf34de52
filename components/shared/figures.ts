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

type Written = (value: number, decimals?: number) => string;

const marked =
  (write: (value: number, decimals: number | undefined, mark: string) => string): Written =>
  (value, decimals) =>
    write(value, decimals, mark);

export const formatAngle = /* @__PURE__ */ marked(angle);
export const formatBearing = /* @__PURE__ */ marked(bearing);
export const formatError = /* @__PURE__ */ marked(error);
export const formatLatitude = /* @__PURE__ */ marked(latitude);
export const formatLongitude = /* @__PURE__ */ marked(longitude);
export const formatNumber = /* @__PURE__ */ marked(number);

/** A rounded size with its decimals, padded with zeros to `width` figures before them. */
export const formatFixed = (size: number, decimals: number, width?: number): string => fixed(size, decimals, mark, width);

/** A number whose decimals are as they are: a constant of a formula, a limit. */
export const formatPlain = (value: number): string => String(value).replace('-', '−').replace('.', mark);
