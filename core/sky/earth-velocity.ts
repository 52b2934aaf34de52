import { cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { length } from './vector.js';
import type { Vector } from './vector.js';

/** Mean motion of the Earth times half the axis of its orbit, over √(1 − e²), astronomical units a day: 20.496″ of aberration. */
const SPEED = 0.0172045;

/**
 * Velocity of the Earth, astronomical units a day, from its place, both from the Sun in the
 * ecliptic of J2000.0. On an ellipse it is square to the sum of the direction from the Sun and
 * the vector that points from it to perihelion, as long as the orbit is eccentric; what the
 * Moon and the planets do to it turns no direction by more than 0.02″.
 * Source: the hodograph of the two-body problem; eccentricity and perihelion after Simon and
 * others, Astronomy and Astrophysics 282, 1994 (all from memory; a test differentiates the series).
 */
export function earthVelocity(place: Vector, century: number): Vector {
  const distance = length(place);
  const eccentricity = 0.016709 - 0.000042 * century;
  const perihelion = 102.937 + 0.3226 * century;
  return [
    -SPEED * (place[1] / distance + eccentricity * sinDegrees(perihelion)),
    SPEED * (place[0] / distance + eccentricity * cosDegrees(perihelion)),
    0,
  ];
}
