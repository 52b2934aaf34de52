/** A linear problem: one row of factors and one value for each reading, already weighted. */
export interface Design {
  readonly rows: readonly (readonly number[])[];
  readonly values: readonly number[];
}

export interface Solution {
  /** One for each column; where a column is not determined its entry means nothing alone. */
  readonly estimate: readonly number[];
  /** For each column whether the rows fix it at all. */
  readonly fixed: readonly boolean[];
  readonly rank: number;
  /** The inverse of the normal matrix: times the variance of unit weight it is the covariance. */
  readonly cofactors: readonly (readonly number[])[];
  /** How far each reading draws the fit to itself, 0 to 1; their sum is the rank. */
  readonly leverages: readonly number[];
}
