import { atan2Degrees } from '../angle/trigonometry.js';
import { checkRange } from '../angle/check-number.js';

/**
 * The earth's field at a place as the ship's iron sees it: horizontal force (never
 * negative) and vertical force (down positive, so negative south of the magnetic equator).
 * Nanotesla; any unit will do where P, Q and R are in the same one.
 */
export interface EarthField {
  readonly h: number;
  readonly z: number;
}

/** More than any magnet; held, like the rods, so that products stay finite. */
const STRONGEST = 1e100;

/** Throws `RangeError` naming the argument unless it is a field with a horizontal force of 0 or more. */
export function checkField(name: string, field: EarthField): void {
  checkRange(`${name}.h`, field.h, 0, STRONGEST);
  checkRange(`${name}.z`, field.z, -STRONGEST, STRONGEST);
}

/** Total force √(H² + Z²), in the unit of the field. */
export function totalForce(field: EarthField): number {
  checkField('field', field);
  return Math.hypot(field.h, field.z);
}

/** Dip in degrees [-90, 90], tan dip = Z/H, down positive; null where there is no field at all. */
export function magneticDip(field: EarthField): number | null {
  checkField('field', field);
  return field.h === 0 && field.z === 0 ? null : atan2Degrees(field.z, field.h);
}
