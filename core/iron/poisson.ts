import { checkFinite } from '../angle/check-number.js';
import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { checkField, type EarthField } from './earth-field.js';
import { heeledParameters } from './heeled-parameters.js';
import type { IronParameters } from './iron-parameters.js';

/** Forces forward, to starboard and down, in the unit of the field. */
export interface ShipForce {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** The earth's field along the axes of an upright ship on a magnetic heading. */
export function earthInShipAxes(field: EarthField, magneticHeading: number): ShipForce {
  return {
    x: field.h * cosDegrees(magneticHeading),
    // Subtracting from 0 keeps a heading of north from giving -0.
    y: 0 - field.h * sinDegrees(magneticHeading),
    z: field.z,
  };
}

/** Poisson's three equations: the earth's field, what it induces in soft iron, and the permanent part. */
export function forceAtCompass(iron: IronParameters, earth: ShipForce): ShipForce {
  const { x, y, z } = earth;
  return {
    x: (1 + iron.a) * x + iron.b * y + iron.c * z + iron.P,
    y: iron.d * x + (1 + iron.e) * y + iron.f * z + iron.Q,
    z: iron.g * x + iron.h * y + (1 + iron.k) * z + iron.R,
  };
}

/** A horizontal force this small beside the forces that cancel in it is rounding, and has no direction. */
export const ROUNDING = 1e-12;

/** The size of the horizontal forces that meet at the compass, whatever cancels. */
export function forcesInPlay(iron: IronParameters, field: EarthField): number {
  return (
    (2 + Math.abs(iron.a) + Math.abs(iron.b) + Math.abs(iron.d) + Math.abs(iron.e)) * field.h +
    (Math.abs(iron.c) + Math.abs(iron.f)) * Math.abs(field.z) +
    Math.abs(iron.P) +
    Math.abs(iron.Q)
  );
}

/**
 * The field at the level compass: forward, to starboard and down, in the unit of the field.
 * `magneticHeading` and `heel` (starboard side down positive) in degrees.
 * Throws `RangeError` naming an argument that is missing, not finite, or a negative `field.h`.
 */
export function compassField(
  parameters: IronParameters,
  field: EarthField,
  magneticHeading: number,
  heel = 0,
): ShipForce {
  checkField('field', field);
  checkFinite('magneticHeading', magneticHeading);
  return forceAtCompass(heeledParameters(parameters, heel), earthInShipAxes(field, magneticHeading));
}
