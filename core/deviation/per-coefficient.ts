import { coefficientNames } from './approximate-deviation.js';
import type { CoefficientName } from './approximate-deviation.js';

/** One value for each coefficient, null where the headings taken cannot give it. */
export type PerCoefficient = Readonly<Record<CoefficientName, number | null>>;

export function perCoefficient(value: (name: CoefficientName, place: number) => number | null): PerCoefficient {
  const [A, B, C, D, E] = coefficientNames.map(value) as [number | null, number | null, number | null, number | null, number | null];
  return { A, B, C, D, E };
}
