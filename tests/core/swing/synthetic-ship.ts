/** A ship from closed formulas: nothing here uses the code under test. */
export interface Coefficients {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly D: number;
  readonly E: number;
}

const RAD = Math.PI / 180;

export const ship: Coefficients = { A: 0.7, B: -4.2, C: 2.6, D: 1.9, E: -0.4 };

/** δ = A + B sin ζ′ + C cos ζ′ + D sin 2ζ′ + E cos 2ζ′. */
export function deviationOf({ A, B, C, D, E }: Coefficients, heading: number): number {
  const h = heading * RAD;
  return A + B * Math.sin(h) + C * Math.cos(h) + D * Math.sin(2 * h) + E * Math.cos(2 * h);
}

export const turned = (angle: number): number => ((angle % 360) + 360) % 360;

export const evenly = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => (i * 360) / count);

/** What the compass shows of a magnetic bearing on a compass heading. */
export const shown = (magneticBearing: number, heading: number, of: Coefficients = ship): number => turned(magneticBearing - deviationOf(of, heading));
