import { asinDegrees, atan2Degrees, cosDegrees, sinDegrees } from '../angle/trigonometry.js';
import { wrap180 } from '../angle/wrap.js';
import type { SwingCircle } from './swing-settings.js';

/**
 * How much the bearing of an object differs at the ship from that at the centre of the circle
 * she turns in, degrees: turning to starboard she has the centre abeam to starboard, so that her
 * head says where on the circle she is. 0 where the turn is not known. Bearing and head by the
 * same north, degrees. Plane trigonometry.
 */
export function circleParallax(circle: SwingCircle | undefined, bearing: number, head: number): number {
  if (!circle?.turning) return 0;
  const { radius, distance, turning } = circle;
  // The ship as seen from the centre, counted from the object's direction.
  const angle = head + (turning === 'starboard' ? -90 : 90) - bearing;
  return wrap180(-atan2Degrees(radius * sinDegrees(angle), distance - radius * cosDegrees(angle)));
}

/** The most the bearing can differ round the circle, degrees. */
export function largestParallax({ radius, distance }: SwingCircle): number {
  return asinDegrees(radius / distance);
}

/**
 * One standard deviation of a bearing for the parallax that is not allowed for: a sine round
 * the circle has its largest value over √2.
 */
export function parallaxDoubt(circle: SwingCircle | undefined): number {
  return !circle || circle.turning ? 0 : largestParallax(circle) / Math.SQRT2;
}
