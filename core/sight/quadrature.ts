/** Nodes and weights of Gauss and Legendre for ten points (Abramowitz and Stegun, table 25.4). */
const gauss: readonly (readonly [node: number, weight: number])[] = [
  [0.1488743389816312, 0.2955242247147529],
  [0.4333953941292472, 0.2692667193099963],
  [0.6794095682990244, 0.219086362515982],
  [0.8650633666889845, 0.1494513491505806],
  [0.9739065285171717, 0.0666713443086881],
];

/** The mean of a smooth function over an interval, by quadrature: its integral over the interval's width. */
export function meanOver(from: number, width: number, f: (at: number) => number): number {
  const half = width / 2;
  const middle = from + half;
  return gauss.reduce((sum, [node, weight]) => sum + (weight / 2) * (f(middle - half * node) + f(middle + half * node)), 0);
}
