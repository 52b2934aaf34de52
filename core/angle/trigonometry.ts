/**
 * Trigonometry in degrees: the only file of the project that knows radians.
 *
 * The argument is reduced in degrees before it is turned into radians, so the
 * quadrants are exact: sin 180° is 0, cos 90° is 0, and tan 45° is 1.
 */

const DEGREES_PER_RADIAN = 180 / Math.PI;

/**
 * The nearest quadrant (0..3) of an angle ≥ 0 and what is left of it, in [-45, 45] degrees.
 * Callers put the sign back themselves, so that an angle and its opposite agree to the last bit.
 */
function reduce(size: number): { quadrant: number; rest: number } {
  const turn = size % 360;
  const quadrants = Math.round(turn / 90);
  return { quadrant: quadrants % 4, rest: turn - 90 * quadrants };
}

function sinOfRest(rest: number): number {
  const size = Math.abs(rest);
  // The series value of sin 30° misses a half by one unit in the last place, and those of
  // sin 45° and cos 45° differ from each other by one.
  if (size === 30) return rest / 60;
  if (size === 45) return Math.sign(rest) * Math.SQRT1_2;
  return Math.sin(rest / DEGREES_PER_RADIAN);
}

function cosOfRest(rest: number): number {
  return Math.abs(rest) === 45 ? Math.SQRT1_2 : Math.cos(rest / DEGREES_PER_RADIAN);
}

/** Sine of an angle in degrees, exact at every multiple of 90° and at ±30° from 0° and 180°; never -0. */
export function sinDegrees(degrees: number): number {
  const { quadrant, rest } = reduce(Math.abs(degrees));
  const along = quadrant % 2 === 0 ? sinOfRest(rest) : cosOfRest(rest);
  // Adding 0 turns -0 into 0.
  return (quadrant < 2 === degrees >= 0 ? along : -along) + 0;
}

/** Cosine of an angle in degrees, exact at every multiple of 60° and 90°; never -0. */
export function cosDegrees(degrees: number): number {
  const { quadrant, rest } = reduce(Math.abs(degrees));
  const along = quadrant % 2 === 0 ? cosOfRest(rest) : sinOfRest(rest);
  return (quadrant === 1 || quadrant === 2 ? -along : along) + 0;
}

/** Cosine of an angle in degrees without the exact quadrants, half as costly: for sums of hundreds of waves. */
export function cosOfWave(degrees: number): number {
  return Math.cos(degrees / DEGREES_PER_RADIAN);
}

/** Tangent of an angle in degrees, exact at every multiple of 45°; ±Infinity at odd multiples of 90°, never -0. */
export function tanDegrees(degrees: number): number {
  const sine = sinDegrees(degrees);
  const cosine = cosDegrees(degrees);
  return cosine === 0 ? sine * Infinity : sine / cosine + 0;
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
