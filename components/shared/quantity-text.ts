import { roundTo } from '../../core/angle/format-angle.js';
import type { Quantity, Unit } from '../../core/working/quantity.js';
import { formatAngle, formatBearing, formatError, formatLatitude, formatLongitude, formatNumber } from './figures.js';

const writers: Record<Unit, (value: number) => string> = {
  bearing: formatBearing,
  error: formatError,
  latitude: formatLatitude,
  declination: formatLatitude,
  longitude: formatLongitude,
  // What rounds to 360 is 0, as an almanac prints it.
  hourAngle: (value) => formatAngle(roundTo(value, 2) % 360, 2),
  angle: (value) => formatAngle(value, 2),
  arcminutes: (value) => `${formatNumber(value, 1)}′`,
  metres: (value) => `${formatNumber(value, 1)}\u00a0m`,
  nauticalMiles: (value) => `${formatNumber(value, 1)}\u00a0M`,
  nanotesla: (value) => `${formatNumber(value / 1000, 2)}\u00a0µT`,
  years: (value) => formatNumber(value, 1),
  seconds: (value) => `${formatNumber(value, 0)}\u00a0s`,
  minutes: (value) => `${formatNumber(value, 1)}\u00a0min`,
  knots: (value) => `${formatNumber(value, 1)}\u00a0kn`,
  perMinute: (value) => `${formatNumber(value, 2)}°/min`,
  number: (value) => formatNumber(value, 4),
};

/** A quantity as the trade writes it: no line ends between figure and unit. */
export function quantityText({ value, unit }: Quantity): string {
  return writers[unit](value);
}
