import { checkFinite } from '../angle/check-number.js';
import { atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { angleFromTo, wrap180, wrap360 } from '../angle/wrap.js';
import { checkField, type EarthField } from './earth-field.js';
import { heeledParameters } from './heeled-parameters.js';
import type { IronParameters } from './iron-parameters.js';
import { earthInShipAxes, forceAtCompass, forcesInPlay, ROUNDING } from './poisson.js';

export interface IronByCompass {
  /**
   * `one` magnetic heading shows this compass heading; `two` do (the ship's head cannot be
   * told from the compass); `none` does (the card never comes there); `any` (where there is
   * no horizontal field, or the needle goes with the ship: the compass tells nothing).
   */
  readonly kind: 'one' | 'two' | 'none' | 'any';
  /** The headings found: magnetic, degrees [0, 360), with the deviation, degrees (-180, 180], east positive. */
  readonly answers: readonly { readonly magneticHeading: number; readonly deviation: number }[];
}

/**
 * The magnetic headings on which the compass shows a given heading, and the deviation there.
 *
 * Derived: the force across compass north, X′ sin ζ′ + Y′ cos ζ′, must vanish. With Poisson's
 * equations put in it is u cos ζ − v sin ζ + w = 0, which no more than two headings ζ
 * satisfy; of these the needle points north, not south, where X′ cos ζ′ − Y′ sin ζ′ is positive.
 * Arguments and errors as `ironDeviation`.
 */
export function ironDeviationByCompass(
  parameters: IronParameters,
  field: EarthField,
  compassHeading: number,
  heel = 0,
): IronByCompass {
  checkField('field', field);
  checkFinite('compassHeading', compassHeading);
  const iron = heeledParameters(parameters, heel);
  const cos = cosDegrees(compassHeading);
  const sin = sinDegrees(compassHeading);
  const u = field.h * ((1 + iron.a) * sin + iron.d * cos);
  const v = field.h * (iron.b * sin + (1 + iron.e) * cos);
  const w = (iron.c * field.z + iron.P) * sin + (iron.f * field.z + iron.Q) * cos;
  const reach = Math.hypot(u, v);
  const rounding = ROUNDING * forcesInPlay(iron, field);
  if (reach <= rounding) return { kind: Math.abs(w) <= rounding ? 'any' : 'none', answers: [] };
  if (Math.abs(w) > reach) return { kind: 'none', answers: [] };

  // sqrt of the factors, not acos of the ratio: acos is blunt where the two headings meet.
  const half = atan2Degrees(Math.sqrt(reach - w) * Math.sqrt(reach + w), -w);
  const middle = -atan2Degrees(v, u);
  const found = half === 0 || half === 180 ? [middle + half] : [middle + half, middle - half];
  const answers = found
    .filter((heading) => {
      const { x, y } = forceAtCompass(iron, earthInShipAxes(field, heading));
      return x * cos - y * sin > rounding;
    })
    .map((heading) => ({
      magneticHeading: wrap360(heading),
      deviation: wrap180(angleFromTo(compassHeading, heading)),
    }));
  const kind = answers.length === 0 ? 'none' : answers.length === 1 ? 'one' : 'two';
  return { kind, answers };
}
