import { checkFinite } from '../angle/check-number.js';
import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { checkField, type EarthField } from './earth-field.js';
import { earthInShipAxes } from './poisson.js';

/**
 * Red is the north-seeking end, where the lines of force leave the iron; blue the end where
 * they enter (common practice). Null where the field runs across the piece.
 */
export type Polarity = 'red' | 'blue' | null;

/** The ends of each kind of iron, as the field on a heading magnetises them. */
export interface PolarityOfShip {
  readonly mast: { readonly top: Polarity; readonly foot: Polarity };
  readonly funnel: { readonly top: Polarity; readonly foot: Polarity };
  readonly deck: { readonly upper: Polarity; readonly lower: Polarity };
  readonly keel: {
    readonly bow: Polarity;
    readonly stern: Polarity;
    readonly upper: Polarity;
    readonly lower: Polarity;
  };
  readonly beam: { readonly port: Polarity; readonly starboard: Polarity };
}

/** A part of the field this small beside the whole lies across the piece. */
const ACROSS = 1e-9;

/** Colour of the end that lies towards the positive direction of a force, and of the other. */
function ends(force: number, whole: number): readonly [Polarity, Polarity] {
  if (Math.abs(force) <= ACROSS * whole) return [null, null];
  return force > 0 ? ['red', 'blue'] : ['blue', 'red'];
}

/**
 * The colours soft iron takes, by the earth's field alone: north of the magnetic equator
 * (Z down) the top of a mast is blue and its foot red, south of it the reverse; the end of
 * keel or beam that lies nearest north is red, and a beam heeled shares in the vertical field.
 *
 * Degrees; `heel` starboard side down positive. Throws `RangeError` naming an argument that is
 * not finite, or a negative `field.h`. Source: common practice, derived from the field's direction.
 */
export function inducedPolarity(field: EarthField, magneticHeading: number, heel = 0): PolarityOfShip {
  checkField('field', field);
  checkFinite('magneticHeading', magneticHeading);
  checkFinite('heel', heel);
  const whole = Math.hypot(field.h, field.z);
  const level = earthInShipAxes(field, magneticHeading);
  const [cos, sin] = [cosDegrees(heel), sinDegrees(heel)];
  const [bow, stern] = ends(level.x, whole);
  const [starboard, port] = ends(level.y * cos + level.z * sin, whole);
  const [lower, upper] = ends(level.z * cos - level.y * sin, whole);
  return {
    mast: { top: upper, foot: lower },
    funnel: { top: upper, foot: lower },
    deck: { upper, lower },
    keel: { bow, stern, upper, lower },
    beam: { port, starboard },
  };
}
