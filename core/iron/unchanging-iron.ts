import type { IronObservation } from './separate-iron.js';

/** What the iron of a ship keeps from place to place, pure numbers; null where no place gave it. */
export interface Unchanging {
  readonly lambda: number | null;
  /** One standard deviation of the mean λ; null where one of the places gave none. */
  readonly lambdaError: number | null;
  readonly A: number | null;
  readonly D: number | null;
  readonly E: number | null;
}

/** The values of one of them that were given at all. */
export function valuesGiven(
  observations: readonly IronObservation[],
  name: 'lambda' | 'A' | 'D' | 'E',
): readonly number[] {
  return observations
    .map((observation) => (name === 'lambda' ? (observation.lambda ?? observation.exact.lambda) : observation.exact[name]))
    .filter((value): value is number => typeof value === 'number');
}

function mean(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Plain means over the places. */
export function unchangingOf(observations: readonly IronObservation[]): Unchanging {
  const lambdas = valuesGiven(observations, 'lambda');
  const errors = observations
    .map(({ standardErrors }) => standardErrors?.lambda)
    .filter((error): error is number => error !== undefined);
  return {
    lambda: mean(lambdas),
    lambdaError: lambdas.length > 0 && errors.length === lambdas.length ? Math.hypot(...errors) / errors.length : null,
    A: mean(valuesGiven(observations, 'A')),
    D: mean(valuesGiven(observations, 'D')),
    E: mean(valuesGiven(observations, 'E')),
  };
}
