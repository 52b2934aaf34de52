import { exactFromApproximate } from '../../core/deviation/convert-coefficients.js';
import { deviationCurve } from '../../core/deviation/deviation-curve.js';
import type { EarthField } from '../../core/iron/earth-field.js';
import { exactCoefficients } from '../../core/iron/exact-coefficients.js';
import { ironDeviationByCompass } from '../../core/iron/iron-by-compass.js';
import type { IronObservation } from '../../core/iron/iron-observation.js';
import type { IronParameters } from '../../core/iron/iron-parameters.js';
import { predictAt } from '../../core/iron/predict-at.js';
import type { PredictedCoefficients } from '../../core/iron/predict-at.js';
import { separateIron } from '../../core/iron/separate-iron.js';
import type { SeparatedIron } from '../../core/iron/separate-iron.js';
import { approximateOf } from './bench-result.js';

/** B and C found by a swing, degrees; what was not typed is as the ship on the bench shows it. */
export interface Swing {
  readonly field: EarthField;
  readonly B?: number | undefined;
  readonly C?: number | undefined;
}

export interface PredictedRow {
  readonly compassHeading: number;
  /** Degrees; null where the card has none. */
  readonly predicted: number | null;
  /** What the ship on the bench really shows there, degrees; null where the heading is not shown once. */
  readonly ship: number | null;
}

export interface Separation {
  readonly separated: SeparatedIron;
  readonly predicted: PredictedCoefficients | null;
  readonly rows: readonly PredictedRow[];
}

function observation(iron: IronParameters, { field, B, C }: Swing, lambda: number | undefined): IronObservation | null {
  const { A, B: exactB, C: exactC, D, E, lambda: own } = exactCoefficients(iron, field);
  const shown = approximateOf({ lambda: own, A, B: exactB, C: exactC, D, E });
  if (B === undefined && C === undefined) return { exact: { A, B: exactB, C: exactC, D, E }, field, lambda };
  if (!shown) return null;
  return { exact: exactFromApproximate({ ...shown, B: B ?? shown.B, C: C ?? shown.C }), field, lambda };
}

/** From swings at two places what is permanent and what induced, and the card of a third; upright. */
export function separation(
  iron: IronParameters,
  swings: readonly Swing[],
  third: EarthField | null,
  lambda: number | undefined,
): Separation | null {
  if (swings.some(({ field }) => field.h === 0)) return null;
  const observations = swings.map((swing) => observation(iron, swing, lambda));
  if (!observations.every((each): each is IronObservation => each !== null)) return null;
  const separated = separateIron(observations);
  const predicted = third && predictAt(separated, third);
  const card = predicted?.card ? deviationCurve(predicted.card) : null;
  const rows = third && card ? Array.from({ length: 24 }, (_, index) => rowOf(15 * index, card.at(15 * index), iron, third)) : [];
  return { separated, predicted, rows };
}

function rowOf(compassHeading: number, predicted: number | null, iron: IronParameters, field: EarthField): PredictedRow {
  const { kind, answers } = ironDeviationByCompass(iron, field, compassHeading);
  return { compassHeading, predicted, ship: kind === 'one' ? (answers[0]?.deviation ?? null) : null };
}
