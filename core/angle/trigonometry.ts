/**
 * Trigonometry in degrees: the only file of the project that knows radians.
 *
 * The argument is reduced in degrees before it is turned into radians, so the
 * quadrants are exact: sin 180° is 0, cos 90° is 0, and tan 45° is 1.
 */

const DEGREES_PER_RADIAN = 180 / Math.PI;

/** The nearest quadrant (0..3) and what is left of the angle, in [-45, 45] degrees. */
function reduce(degrees: number): { quadrant: number; rest: number } {
  const turn = degrees % 360;
  const quadrants = Math.round(turn / 90);
  return { quadrant: ((quadrants % 4) + 4) % 4, rest: turn - 90 * quadrants };
}

function sinOfRest(rest: number): number {
  // The series value of sin 30° misses a half by one unit in the last place.
  return Math.abs(rest) === 30 ? rest / 60 : Math.sin(rest / DEGREES_PER_RADIAN);
}

function cosOfRest(rest: number): number {
  return Math.cos(rest / DEGREES_PER_RADIAN);
}

/** Sine of an angle in degrees, exact at every multiple of 30° and 90°. */
export function sinDegrees(degrees: number): number {
  const { quadrant, rest } = reduce(degrees);
  if (quadrant === 0) return sinOfRest(rest);
  if (quadrant === 1) return cosOfRest(rest);
  // Adding 0 turns -0 into 0.
  return quadrant === 2 ? 0 - sinOfRest(rest) : 0 - cosOfRest(rest);
}

/** Cosine of an angle in degrees, exact at every multiple of 60° and 90°. */
export function cosDegrees(degrees: number): number {
  const { quadrant, rest } = reduce(degrees);
  if (quadrant === 0) return cosOfRest(rest);
  if (quadrant === 1) return 0 - sinOfRest(rest);
  return quadrant === 2 ? 0 - cosOfRest(rest) : sinOfRest(rest) + 0;
}

/** Tangent of an angle in degrees; ±Infinity at odd multiples of 90°. */
export function tanDegrees(degrees: number): number {
  const { quadrant, rest } = reduce(degrees);
  if (Math.abs(rest) === 45) return (quadrant % 2 === 0 ? 1 : -1) * Math.sign(rest);
  const sine = sinDegrees(degrees);
  const cosine = cosDegrees(degrees);
  return cosine === 0 ? sine * Infinity : sine / cosine;
}

/** Angle in [-90, 90] degrees whose sine is given; the argument is held to [-1, 1]. */
export function asinDegrees(sine: number): number {
  return Math.asin(Math.max(-1, Math.min(1, sine))) * DEGREES_PER_RADIAN;
}

/** Angle in [0, 180] degrees whose cosine is given; the argument is held to [-1, 1]. */
export function acosDegrees(cosine: number): number {
  return Math.acos(Math.max(-1, Math.min(1, cosine))) * DEGREES_PER_RADIAN;
}

/** Angle in [-90, 90] degrees whose tangent is given. */
export function atanDegrees(tangent: number): number {
  return Math.atan(tangent) * DEGREES_PER_RADIAN;
}

/** Angle in [-180, 180] degrees of the point (x, y), counted from x towards y, exact on the axes. */
export function atan2Degrees(y: number, x: number): number {
  return Math.atan2(y, x) * DEGREES_PER_RADIAN;
}

/** The small change in degrees that belongs to a small pure number (an arc of unit radius). */
export function degreesOfArc(arc: number): number {
  return arc * DEGREES_PER_RADIAN;
}

/** The pure number (arc of unit radius) that belongs to an angle in degrees. */
export function arcOfDegrees(degrees: number): number {
  return degrees / DEGREES_PER_RADIAN;
}
