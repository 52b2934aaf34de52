import { checkFinite } from '../angle/check-number.js';
import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { checkedIron, type IronParameters } from './iron-parameters.js';

/**
 * The parameters of an upright ship that would act on the level compass exactly as this
 * ship does when heeled; `heel` in degrees, starboard side down positive.
 *
 * Derived: with R the turn about the fore-and-aft line, y of the ship = y cos i + z sin i
 * and z of the ship = -y sin i + z cos i. The iron heels and the compass, in gimbals, does
 * not; so the field goes into the ship's axes by R, induces there by the table S of the
 * nine rods, and comes back by the transpose: Rᵀ S R for the rods, Rᵀ (P, Q, R) for the
 * permanent part. Written out below.
 * Throws `RangeError` for a number that is missing or not finite.
 */
export function heeledParameters(parameters: IronParameters, heel: number): IronParameters {
  checkFinite('heel', heel);
  const upright = checkedIron(parameters);
  if (heel === 0) return upright;
  const { a, b, c, d, e, f, g, h, k, P, Q, R } = upright;
  const cos = cosDegrees(heel);
  const sin = sinDegrees(heel);
  return {
    a,
    b: b * cos - c * sin,
    c: b * sin + c * cos,
    d: d * cos - g * sin,
    e: e * cos * cos - (f + h) * sin * cos + k * sin * sin,
    f: f * cos * cos + (e - k) * sin * cos - h * sin * sin,
    g: d * sin + g * cos,
    h: h * cos * cos + (e - k) * sin * cos - f * sin * sin,
    k: k * cos * cos + (f + h) * sin * cos + e * sin * sin,
    P,
    Q: Q * cos - R * sin,
    R: Q * sin + R * cos,
  };
}
