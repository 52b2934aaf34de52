import { checkFinite, checkRange } from '../angle/check-number.js';
import { checkField, type EarthField } from './earth-field.js';
import { inducedPolarity, type PolarityOfShip } from './induced-polarity.js';
import { noIron, type IronParameters } from './iron-parameters.js';
import { earthInShipAxes } from './poisson.js';

/** Where a ship was built: magnetic heading on the slip, degrees, and the field there. */
export interface BuildingSlip {
  readonly magneticHeading: number;
  readonly field: EarthField;
}

export interface SlipStrength {
  /** P and Q together over the horizontal force on the slip, 0 to 1. */
  readonly horizontal?: number;
  /** R over the vertical force on the slip, 0 to 1. */
  readonly vertical?: number;
}

/** For teaching: a new ship of the size that gives some ten degrees of B or C in the field she was built in. */
const TYPICAL = 0.15;

/**
 * The colours hammering and riveting left in the hard iron: those the field of the slip
 * induced, which stay when she turns or sails away. Vibration and pounding take part of it in her
 * first time at sea (Handbook of Magnetic Compass Adjustment, on the ship's magnetism); yard
 * work, long lying on one heading, blows and lightning change the rest (common practice, no
 * source). Errors as `inducedPolarity`.
 */
export function hardIronPolarity(slip: BuildingSlip): PolarityOfShip {
  return inducedPolarity(slip.field, slip.magneticHeading);
}

/**
 * P, Q and R of a ship by her building slip, the soft iron 0: a preset for teaching, never an
 * estimate for a real ship. Directions are derived, sizes supposed.
 *
 * The hull is magnetised along the field of the slip. A compass above it amidships lies
 * broadside on to the horizontal part, where a magnet's field runs against its moment, so P and
 * Q oppose that field: built north −B, east +C, south +B, west −C (common practice). It lies
 * end-on to the vertical part, and R goes with Z: built in the north, the upper hull is blue.
 * Forces in the unit of the field. Throws `RangeError` naming an argument that is not finite
 * or out of range.
 */
export function permanentFromSlip(slip: BuildingSlip, strength: SlipStrength = {}): IronParameters {
  const { horizontal = TYPICAL, vertical = TYPICAL } = strength;
  checkField('slip.field', slip.field);
  checkFinite('slip.magneticHeading', slip.magneticHeading);
  checkRange('strength.horizontal', horizontal, 0, 1);
  checkRange('strength.vertical', vertical, 0, 1);
  const { x, y, z } = earthInShipAxes(slip.field, slip.magneticHeading);
  return { ...noIron, P: 0 - horizontal * x, Q: 0 - horizontal * y, R: vertical * z };
}
