type Term = readonly [d: number, m: number, moon: number, f: number, node: number, inLongitude: number, inObliquity: number];

/**
 * The terms of nutation above 0.005″: multiples of D, M, M′, F and Ω, then longitude and
 * obliquity in 0.0001″. Source: IAU 1980 theory of nutation, as in Meeus, Astronomical Algorithms, table 22.A.
 */
export const nutationTerms: readonly Term[] = [
  [0, 0, 0, 0, 1, -171996, 92025],
  [-2, 0, 0, 2, 2, -13187, 5736],
  [0, 0, 0, 2, 2, -2274, 977],
  [0, 0, 0, 0, 2, 2062, -895],
  [0, 1, 0, 0, 0, 1426, 54],
  [0, 0, 1, 0, 0, 712, -7],
  [-2, 1, 0, 2, 2, -517, 224],
  [0, 0, 0, 2, 1, -386, 200],
  [0, 0, 1, 2, 2, -301, 129],
  [-2, -1, 0, 2, 2, 217, -95],
  [-2, 0, 1, 0, 0, -158, 0],
  [-2, 0, 0, 2, 1, 129, -70],
  [0, 0, -1, 2, 2, 123, -53],
  [2, 0, 0, 0, 0, 63, 0],
  [0, 0, 1, 0, 1, 63, -33],
  [2, 0, -1, 2, 2, -59, 26],
  [0, 0, -1, 0, 1, -58, 32],
  [0, 0, 1, 2, 1, -51, 27],
];
