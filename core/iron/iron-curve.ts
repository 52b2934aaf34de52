import { wrap180 } from '../angle/wrap.js';
import { checkRange } from '../angle/check-number.js';
import { largestParts, partsOnHeading, sumOfParts, type DeviationParts } from './deviation-parts.js';
import { checkField, type EarthField } from './earth-field.js';
import { heeledParameters } from './heeled-parameters.js';
import { deviationOfIron, type IronDeviation } from './iron-deviation.js';
import type { IronParameters } from './iron-parameters.js';

export interface IronCurvePoint extends IronDeviation {
  /** Degrees [0, 360). */
  readonly magneticHeading: number;
  /** What each cause gives on this compass heading, degrees; null where there is no deviation. */
  readonly parts: DeviationParts | null;
  /** The deviation less the sum of the parts, degrees (-180, 180]; null with them. */
  readonly rest: number | null;
}

/**
 * The whole curve: deviation, directive force and parts on `count` equally spaced magnetic
 * headings from north round by east. `heel` in degrees, starboard side down positive;
 * `count` from 1 to 3600, 72 by default. Throws `RangeError` as `ironDeviation`.
 */
export function ironCurve(parameters: IronParameters, field: EarthField, heel = 0, count = 72): IronCurvePoint[] {
  checkField('field', field);
  checkRange('count', count, 1, 3600);
  const iron = heeledParameters(parameters, heel);
  const largest = largestParts(parameters, field, heel);
  return Array.from({ length: Math.floor(count) }, (_, index) => {
    const magneticHeading = (360 * index) / Math.floor(count);
    const point = deviationOfIron(iron, field, magneticHeading);
    if (point.deviation === null || point.compassHeading === null || largest === null) {
      return { magneticHeading, ...point, parts: null, rest: null };
    }
    const parts = partsOnHeading(largest, point.compassHeading);
    const rest = wrap180(point.deviation - sumOfParts(parts));
    return { magneticHeading, ...point, parts, rest };
  });
}
