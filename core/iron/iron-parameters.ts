import { checkFinite } from '../angle/check-number.js';

/**
 * The iron of a ship as her compass feels it, in Poisson's terms.
 *
 * Ship's axes are x forward, y to starboard, z down to the keel. The nine soft-iron
 * parameters, the "rods" of the textbooks, are pure numbers: `b` is the force forward that
 * one unit of field to starboard induces. P, Q and R are the permanent forces on the
 * north-seeking end of the needle, forward, to starboard and down, in the unit of the field.
 */
export interface IronParameters {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
  readonly g: number;
  readonly h: number;
  readonly k: number;
  readonly P: number;
  readonly Q: number;
  readonly R: number;
}

export type IronParameterName = keyof IronParameters;

/** A ship without iron: the start of every bench. */
export const noIron: IronParameters = { a: 0, b: 0, c: 0, d: 0, e: 0, f: 0, g: 0, h: 0, k: 0, P: 0, Q: 0, R: 0 };

/** The nine rods, then P, Q and R. */
export const ironParameterNames = Object.keys(noIron) as readonly IronParameterName[];

/** Products of held numbers stay finite, so that no absurd rod turns a result into NaN. */
const HELD = 1e100;

/**
 * The twelve numbers alone, each held to ±1e100.
 * Throws `RangeError` naming the parameter that is missing or not finite.
 */
export function checkedIron(parameters: IronParameters): IronParameters {
  const held: Record<IronParameterName, number> = { ...noIron };
  for (const name of ironParameterNames) {
    checkFinite(`parameters.${name}`, parameters[name]);
    held[name] = Math.max(-HELD, Math.min(HELD, parameters[name]));
  }
  return held;
}
