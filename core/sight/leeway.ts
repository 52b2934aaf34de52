import { checkFinite, checkRange } from '../angle/check-number.js';
import { angleFromTo, wrap360 } from '../angle/wrap.js';

/** A wind nearer than this to right ahead or astern sets the ship to neither side, degrees. */
const NEITHER_SIDE = 0.5;

/**
 * Leeway with its sign, degrees, positive to starboard (wind on the port side), from its
 * amount (degrees, 0 to 90) and the direction the wind comes from, on the same reckoning as
 * the course. Null where the wind is right ahead or right astern.
 * Throws `RangeError` naming an argument that is not a number in range.
 */
export function leewayAngle(set: { readonly amount: number; readonly windFrom: number; readonly course: number }): number | null {
  checkRange('amount', set.amount, 0, 90);
  checkFinite('windFrom', set.windFrom);
  checkFinite('course', set.course);
  const side = angleFromTo(set.course, set.windFrom);
  if (Math.abs(side) < NEITHER_SIDE || Math.abs(side) > 180 - NEITHER_SIDE) return null;
  return side < 0 ? set.amount : 0 - set.amount;
}

/**
 * Course made good through the water, degrees [0, 360): the course steered plus the leeway
 * (degrees, starboard positive). Throws `RangeError` naming an argument that is not finite.
 */
export function courseMadeGood(courseSteered: number, leeway: number): number {
  checkFinite('courseSteered', courseSteered);
  checkFinite('leeway', leeway);
  return wrap360(courseSteered + leeway);
}

/**
 * Course to steer, degrees [0, 360), to make good a course through the water with a leeway
 * (degrees, starboard positive). Throws `RangeError` naming an argument that is not finite.
 */
export function courseToSteer(courseMadeGood: number, leeway: number): number {
  checkFinite('courseMadeGood', courseMadeGood);
  checkFinite('leeway', leeway);
  return wrap360(courseMadeGood - leeway);
}
