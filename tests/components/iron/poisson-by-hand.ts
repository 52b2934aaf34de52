/**
 * Poisson's equations as they stand in trade.md 5 and every textbook, written out once more with
 * nothing taken from core, so that the numbers on the bench have a second opinion.
 */
const RADIANS = Math.PI / 180;

export type Iron = Partial<Record<'a' | 'b' | 'c' | 'd' | 'e' | 'f' | 'P' | 'Q', number>>;

/** Deviation, degrees, of an upright ship on a magnetic heading; forces in any one unit. */
export function deviationByHand(iron: Iron, h: number, z: number, heading: number): number {
  const { a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, P = 0, Q = 0 } = iron;
  const x = h * Math.cos(heading * RADIANS);
  const y = -h * Math.sin(heading * RADIANS);
  const forward = x + a * x + b * y + c * z + P;
  const starboard = y + d * x + e * y + f * z + Q;
  const compass = Math.atan2(-starboard, forward) / RADIANS;
  return ((((heading - compass) % 360) + 540) % 360) - 180;
}
