/** The degree of every model here: its finest waves are 3000 km long. */
export const DEGREE = 12;

/** The coefficients are kept in tenths of a nanotesla: printed to a tenth, they are whole numbers then. */
export const PER_NANOTESLA = 10;

/** Schmidt semi-normalised Gauss coefficients of one published model. */
export interface FieldCoefficients {
  /** Decimal year the main field holds for. */
  readonly epoch: number;
  /** Tenths of nT, a line for each degree n: g(n,0), g(n,1), h(n,1), g(n,2), h(n,2), … */
  readonly main: readonly number[];
  /** Tenths of nT per year, in the same order. */
  readonly change: readonly number[];
}

/** Place of g(n,m) in the lists; h(n,m) follows it, and h(n,0) does not exist. */
export function placeOfG(n: number, m: number): number {
  return n * n - 1 + Math.max(0, 2 * m - 1);
}
