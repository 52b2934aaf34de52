/**
 * Room for figures of the sums, to be filled. A list that begins with whole numbers changes its
 * kind when the first fraction comes, and what the engine has made fast for the one kind it then
 * throws away, while somebody types; these are lists of fractions from their beginning.
 */
export function room(length: number): number[] {
  const figures = new Array<number>(length);
  for (let place = 0; place < length; place++) figures[place] = NaN;
  return figures;
}

/** A linear problem: for each reading a row of factors, one for each unknown, and a value; already weighted. */
export interface Design {
  /** Row after row. */
  readonly factors: readonly number[];
  readonly width: number;
  readonly values: readonly number[];
}

export interface Solution {
  /** One for each unknown; where it is not determined its entry means nothing alone. */
  readonly estimate: readonly number[];
  /** For each unknown whether the readings fix it at all. */
  readonly fixed: readonly boolean[];
  readonly rank: number;
  /** The inverse of the normal matrix, row after row: times the variance of unit weight it is the covariance. */
  readonly cofactors: readonly number[];
  /** How far each reading draws the fit to itself, 0 to 1; their sum is the rank. */
  readonly leverages: readonly number[];
}

/** The rows of a square. */
export function rowsOf(square: readonly number[], width: number): number[][] {
  return Array.from({ length: width }, (_, i) => square.slice(i * width, (i + 1) * width));
}
