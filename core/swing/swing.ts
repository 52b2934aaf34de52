import { circularMean } from '../angle/circular-mean.js';
import { sinDegrees } from '../angle/trigonometry.js';
import { checkCard } from '../deviation/check-card.js';
import type { CardCheck } from '../deviation/check-card.js';
import { correctorAdvice } from '../deviation/corrector-advice.js';
import type { CorrectorAdvice } from '../deviation/corrector-advice.js';
import type { DeviationCard } from '../deviation/deviation-card.js';
import { deviationLimits } from '../deviation/deviation-limits.js';
import type { DeviationFit } from '../deviation/fit-deviation.js';
import type { Caution } from '../working/caution.js';
import { checkSwing } from './check-swing.js';
import { eightPoints } from './eight-points.js';
import type { EightPoints } from './eight-points.js';
import { fitSwing } from './joint-fit.js';
import type { SwingFit } from './joint-fit.js';
import { swingCautions } from './swing-cautions.js';
import { readRow, variationFor } from './swing-reading.js';
import type { NoReadingReason, SwingVariation, UnknownConstant } from './swing-reading.js';
import type { SwingRow } from './swing-row.js';
import type { SwingSettings } from './swing-settings.js';

/** What a row came to. */
export type SwungRow =
  | {
      readonly ok: true;
      /** By compass, degrees [0, 360). */
      readonly heading: number;
      /** Degrees (-180, 180], east positive. */
      readonly deviation: number;
      /** One standard deviation, degrees. */
      readonly sigma: number;
      /** Observed less fitted, degrees; null without a fit. */
      readonly residual: number | null;
      readonly suspect: boolean;
      readonly struck: boolean;
      /** What the row alone does not tell and was found from the others, or is lost. */
      readonly constant: UnknownConstant | null;
      /** Magnetic bearing the compass was compared with, degrees [0, 360). */
      readonly magneticBearing: number | null;
      /** Of the Sun, degrees. */
      readonly altitude: number | null;
    }
  | { readonly ok: false; readonly reason: NoReadingReason };

export interface Swing {
  /** One for each row given, in the same order. */
  readonly rows: readonly SwungRow[];
  /** The fit in use. */
  readonly fit: DeviationFit;
  /** The five-term series beside it, which the adjuster's figures are compared with. */
  readonly approximate: DeviationFit;
  readonly model: 'approximate' | 'exact';
  /** The exact fit is clearly better, whichever is in use. */
  readonly exactBetter: boolean;
  readonly eightPoints: EightPoints;
  /** Null unless all five coefficients are determined, or A alone is lost and taken from elsewhere. */
  readonly card: DeviationCard | null;
  readonly check: CardCheck | null;
  /** A is lost to the methods used. */
  readonly constantLost: boolean;
  /** One standard deviation of what all rows share, the variation, degrees: it is in A and not in its standard error; 0 where A is lost. */
  readonly commonDoubt: number;
  /** Advice to a licensed adjuster. */
  readonly advice: readonly CorrectorAdvice[];
  readonly cautions: readonly Caution[];
}

function meanBearing(rows: readonly SwingRow[]): number | null {
  const all = rows.filter((row) => row.method === 'unknown-object');
  const counted = all.filter(({ struck }) => struck !== true);
  const bearings = (counted.length > 0 ? counted : all).flatMap((row) => (row.method === 'unknown-object' ? [row.bearing] : []));
  return bearings.length === 0 ? null : circularMean(bearings);
}

/** The card of a fit; where A alone is lost, with the A known from elsewhere. */
function cardOf(fit: DeviationFit, constant: number | null): DeviationCard | null {
  const { B, C, D, E } = fit.coefficients;
  const known = constant === null ? null : fit.model === 'exact' ? sinDegrees(constant) : constant;
  const A = fit.coefficients.A ?? known;
  if (A === null || B === null || C === null || D === null || E === null) return null;
  return { kind: fit.model, coefficients: { A, B, C, D, E } };
}

function adviceOf(approximate: DeviationFit, constant: number | null): readonly CorrectorAdvice[] {
  const { A, B, C, D, E } = approximate.coefficients;
  if (B === null || C === null || D === null || E === null) return [];
  return correctorAdvice({ coefficients: { A: A ?? constant ?? 0, B, C, D, E } });
}

/** The variation is shared by every row that leans on it. */
function commonDoubtOf(rows: readonly SwingRow[], settings: SwingSettings, variation: SwingVariation | null): number {
  const leans = rows.some(
    ({ method, headingBy }) =>
      method === 'sun' || method === 'transit' || (method === 'gyro' && headingBy !== 'magnetic') || (method === 'known-object' && settings.object?.by === 'true'),
  );
  return leans ? (variation?.sigma ?? 0) : 0;
}

/**
 * A swing, whole: every row turned into a deviation by its method, heads by magnetic or gyro
 * turned into heads by compass, one least squares over all of them with weights by their
 * doubts, and what is to be said of it. Methods may be mixed.
 *
 * Deviation = magnetic bearing less compass bearing (Handbook of Magnetic Compass Adjustment).
 * Throws `RangeError` naming a row's or a setting's bad value.
 */
export function swing(rows: readonly SwingRow[], settings: SwingSettings = {}): Swing {
  checkSwing(rows, settings);
  const mean = meanBearing(rows);
  const readings = rows.map((row) => readRow(row, settings, mean));
  const taken = readings.flatMap((reading, index) => (reading.ok ? [{ reading, index, struck: rows[index]?.struck === true }] : []));
  const constant = settings.constant ?? null;
  const series = fitSwing(taken, 'approximate', constant ?? 0);
  const exactBetter = series.fit.warnings.some(({ code }) => code === 'exact-fit-better');
  const wanted = settings.model ?? 'auto';
  const exact = wanted === 'exact' || (wanted === 'auto' && exactBetter) ? fitSwing(taken, 'exact', constant ?? 0, series) : null;
  const chosen: SwingFit = exact && exact.fit.determined.length > 0 ? exact : series;
  const { fit, constantLost } = chosen;

  const swung = new Map<number, SwungRow>();
  chosen.readings.forEach(({ reading, index, struck, heading, deviation }, place) => {
    const { sigma, constant: lacks, magneticBearing, altitude } = reading;
    const residual = fit.residuals[place] ?? null;
    swung.set(index, { ok: true, heading, deviation, sigma, residual, suspect: fit.suspects.includes(place), struck, constant: lacks, magneticBearing, altitude });
  });
  const counted = chosen.readings.filter(({ struck }) => !struck);
  const card = cardOf(fit, constantLost ? constant : null);
  const sun = rows.find((row) => row.method === 'sun');
  const variation = variationFor(settings, sun?.instant);
  return {
    rows: readings.map((reading, index) => swung.get(index) ?? (reading as Extract<SwungRow, { ok: false }>)),
    fit,
    approximate: series.fit,
    model: fit.model,
    exactBetter,
    eightPoints: eightPoints(counted),
    card,
    check: card ? checkCard(card, settings.limit ?? deviationLimits[0]) : null,
    constantLost,
    commonDoubt: constantLost ? 0 : commonDoubtOf(rows, settings, variation),
    advice: adviceOf(series.fit, constant),
    cautions: swingCautions({ rows, settings, counted, fit, constantLost, zone: variation?.zone ?? null }),
  };
}
