import { checkFinite } from './check-number.js';

/**
 * The same direction in [0, 360) degrees: the range of bearings, headings and hour angles.
 * Never -0. Throws `RangeError` unless the angle is finite, so that no NaN slips past.
 */
export function wrap360(degrees: number): number {
  checkFinite('degrees', degrees);
  const turn = degrees % 360;
  if (turn >= 0) return turn + 0;
  // A tiny negative angle plus 360 rounds to 360 itself, which is 0.
  const wrapped = turn + 360;
  return wrapped === 360 ? 0 : wrapped;
}

/**
 * The same direction in (-180, 180] degrees: the range of longitudes, errors and
 * differences. Never -0. Throws `RangeError` unless the angle is finite.
 */
export function wrap180(degrees: number): number {
  checkFinite('degrees', degrees);
  const turn = degrees % 360;
  if (turn > 180) return turn - 360;
  return turn <= -180 ? turn + 360 : turn + 0;
}

/** The turn from one direction to another, in (-180, 180] degrees, clockwise positive. Finite numbers only. */
export function angleFromTo(from: number, to: number): number {
  checkFinite('from', from);
  checkFinite('to', to);
  return wrap180(to - from);
}
