import { cosDegrees, degreesOfArc, sinDegrees } from '../angle/trigonometry.js';
import { checkFinite } from '../angle/check-number.js';
import type { DeviationCard } from '../deviation/deviation-card.js';
import { checkField, type EarthField } from './earth-field.js';
import { finiteOrNull } from './finite-or-null.js';
import { NO_INDUCTION, type LineVariance, type SemicircularLine } from './semicircular-line.js';
import type { SeparatedIron } from './separate-iron.js';
import type { Unchanging } from './unchanging-iron.js';

interface Semicircular {
  readonly B: number | null;
  readonly C: number | null;
}

export interface PredictedCoefficients {
  readonly field: EarthField;
  /** Exact coefficients at the place, pure numbers; null: the places observed do not tell, or H is 0. */
  readonly exact: Semicircular & {
    readonly lambda: number | null;
    readonly A: number | null;
    readonly D: number | null;
    readonly E: number | null;
  };
  /** The card to expect there; null where a coefficient is missing. */
  readonly card: DeviationCard | null;
  /** One standard deviation of each; null where it cannot be known. */
  readonly standardErrors: Semicircular & Unchanging['standardErrors'];
  /** That, over the standard deviation of the readings (their root mean square): what the distance costs. */
  readonly amplification: Semicircular;
}

/**
 * The exact coefficients to be expected where the field is another: 𝔅 = (P/λ + (c/λ) Z)/H and
 * ℭ likewise from the iron separated; 𝔄, 𝔇, 𝔈 and λ stay as they were.
 * Throws `RangeError` naming a force that is not finite or a negative `field.h`.
 */
export function predictAt(separated: SeparatedIron, field: EarthField): PredictedCoefficients {
  checkField('field', field);
  const { lines, unchanging } = separated;
  const { lambda, A, D, E } = unchanging;
  const [B, C] = [onLine(lines.B, field), onLine(lines.C, field)];
  const known = A !== null && B !== null && C !== null && D !== null && E !== null;
  return {
    field,
    exact: { lambda, A, B, C, D, E },
    card: known ? { kind: 'exact', coefficients: { A, B, C, D, E } } : null,
    standardErrors: {
      ...unchanging.standardErrors,
      B: errorAt(lines.B, lines.B.variance, field),
      C: errorAt(lines.C, lines.C.variance, field),
    },
    amplification: {
      B: errorAt(lines.B, lines.B.amplification, field),
      C: errorAt(lines.C, lines.C.amplification, field),
    },
  };
}

/**
 * One standard deviation, degrees, of the predicted deviation on a compass heading, to first
 * order; null where that of 𝔅 or ℭ is unknown. Unknown doubts of 𝔄, 𝔇, 𝔈 count as none.
 */
export function predictionError(predicted: PredictedCoefficients, compassHeading: number): number | null {
  checkFinite('compassHeading', compassHeading);
  const { A, B, C, D, E } = predicted.standardErrors;
  if (B === null || C === null) return null;
  const parts = [
    A ?? 0,
    B * sinDegrees(compassHeading),
    C * cosDegrees(compassHeading),
    (D ?? 0) * sinDegrees(2 * compassHeading),
    (E ?? 0) * cosDegrees(2 * compassHeading),
  ];
  return degreesOfArc(Math.hypot(...parts));
}

/** Where nothing was learnt of the induced part, only a place without it can be predicted. */
function tells(line: SemicircularLine, { h, z }: EarthField): boolean {
  return h > 0 && line.permanent !== null && (line.induced !== null || Math.abs(z) <= NO_INDUCTION * h);
}

function onLine(line: SemicircularLine, field: EarthField): number | null {
  if (!tells(line, field)) return null;
  return finiteOrNull(((line.permanent ?? 0) + (line.induced ?? 0) * field.z) / field.h);
}

function errorAt(line: SemicircularLine, variance: LineVariance | null, field: EarthField): number | null {
  if (variance === null || !tells(line, field)) return null;
  const { permanent, induced, both } = variance;
  return finiteOrNull(Math.sqrt(Math.max(0, permanent + 2 * field.z * both + field.z ** 2 * induced)) / field.h);
}
