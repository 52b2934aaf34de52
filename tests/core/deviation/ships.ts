import { reference } from '../../support/reference.js';
import { coefficientNames, type ApproximateCoefficients } from '../../../core/deviation/approximate-deviation.js';
import type { PerCoefficient } from '../../../core/deviation/per-coefficient.js';
import type { ExactCoefficients } from '../../../core/deviation/exact-deviation.js';
import { assertClose } from '../../support/assert-close.js';

type Count = '8' | '16' | '24' | '36';

export interface Ship {
  readonly id: string;
  readonly exact: ExactCoefficients;
  readonly byCompass: Readonly<Record<Count, { deviations: number[]; lsq: ApproximateCoefficients; rms: number }>>;
  readonly byMagnetic36: readonly number[];
  readonly eightPoint: ApproximateCoefficients;
}

/** Invented ships by Poisson's equations, solved numerically outside this project. */
export const ships = reference<{ cases: Ship[] }>('deviation-ships.json').cases;

export const counts: readonly Count[] = ['8', '16', '24', '36'];

/** The noise-free swing of a ship on equally spaced compass headings. */
export function swingOf(ship: Ship, count: Count): { heading: number; deviation: number }[] {
  return ship.byCompass[count].deviations.map((deviation, i) => ({ heading: (i * 360) / Number(count), deviation }));
}

/** Fails unless all five coefficients are there and lie within a tolerance. */
export function assertCoefficients(actual: PerCoefficient, expected: PerCoefficient, tolerance: number, what = ''): void {
  for (const name of coefficientNames) assertClose(actual[name] ?? NaN, expected[name] ?? NaN, tolerance, `${what} ${name}`);
}

/** The five coefficients of a fit that determines them. */
export function whole(coefficients: PerCoefficient): ApproximateCoefficients {
  const { A, B, C, D, E } = coefficients;
  if (A === null || B === null || C === null || D === null || E === null) throw new Error('not all coefficients are determined');
  return { A, B, C, D, E };
}
