import type { Design, Solution } from './linear-problem.js';
import { byNormalEquations } from './normal-equations.js';
import { bySingularValues } from './singular-values.js';

/** Least squares of full or deficient rank; at least one reading. */
export function leastSquares(design: Design): Solution {
  return byNormalEquations(design) ?? bySingularValues(design);
}
