/** A linear problem: for each unknown a column of factors and beside them the values, one of each for every reading, already weighted. */
export interface Design {
  readonly columns: readonly (readonly number[])[];
  readonly values: readonly number[];
}

export interface Solution {
  /** One for each column; where a column is not determined its entry means nothing alone. */
  readonly estimate: readonly number[];
  /** For each column whether the readings fix it at all. */
  readonly fixed: readonly boolean[];
  readonly rank: number;
  /** The inverse of the normal matrix: times the variance of unit weight it is the covariance. */
  readonly cofactors: readonly (readonly number[])[];
  /** How far each reading draws the fit to itself, 0 to 1; their sum is the rank. */
  readonly leverages: readonly number[];
}
