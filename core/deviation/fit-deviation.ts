import { arcOfDegrees } from '../angle/trigonometry.js';
import type { Caution } from '../working/caution.js';
import { coefficientNames, type CoefficientName } from './approximate-deviation.js';
import { fitCautions } from './fit-cautions.js';
import type { JudgedReadings } from './judged-readings.js';
import { judged } from './judged-readings.js';
import { rowsOf } from './linear-problem.js';
import type { ModelFit } from './model-fit.js';
import type { PerCoefficient } from './per-coefficient.js';
import { perCoefficient } from './per-coefficient.js';
import { COEFFICIENTS, predictedDeviation, type FitModel } from './predict-deviation.js';
import type { DeviationObservation, WeighedReadings } from './observations.js';

/** A curve laid through the readings of a swing: plain data. */
export interface DeviationFit {
  readonly model: FitModel;
  /** Degrees, east positive, for the approximate model; pure numbers for the exact. */
  readonly coefficients: PerCoefficient;
  /** One standard deviation of each, in the same unit; null also where nothing tells the scatter. */
  readonly standardErrors: PerCoefficient;
  /** Observed less fitted, degrees, one for each observation given, struck-out ones too; null where the model gives none. */
  readonly residuals: readonly (number | null)[];
  /** Root of the weighted mean square of the residuals, degrees; the denominator is the number of readings. Null without any. */
  readonly rms: number | null;
  /** The same over the degrees of freedom: one standard deviation of a reading of mean weight; null without freedom. */
  readonly scatter: number | null;
  /** Readings less the number of independent coefficients. */
  readonly degreesOfFreedom: number;
  /** What the standard errors rest on: the scatter, the doubts claimed where nothing is left over, or nothing. */
  readonly basis: 'scatter' | 'claimed' | null;
  /** Observations that do not belong to the swing, by place, worst first; they are still in the fit. */
  readonly suspects: readonly number[];
  /** The coefficients the headings taken determine. */
  readonly determined: readonly CoefficientName[];
  readonly warnings: readonly Caution[];
  /** A to E with the undetermined ones filled in, and their covariance: what a band is drawn from. */
  readonly curve: { readonly estimate: readonly number[]; readonly covariance: readonly (readonly number[])[] | null };
}

export interface FitOptions {
  /** `approximate` if left out. */
  readonly model?: FitModel;
  /**
   * The deviations share an unknown constant (an object of unknown bearing, a gyro of unknown
   * error): A is then not determined and left out of the result.
   */
  readonly constantUnknown?: boolean;
}

/**
 * A coefficient whose standard error is this many times that of as many readings spread
 * evenly round the compass is not determined: three quarters of the compass give 1.2, half
 * of it 6 to 8 for A and B or C (computed); the limit is common practice, no source.
 */
const INFLATION_LIMIT = 5;

function determinedBy(fit: ModelFit, count: number, constantUnknown: boolean): readonly CoefficientName[] {
  return coefficientNames.filter((name, i) => {
    if (constantUnknown && name === 'A') return false;
    if (fit.solution.fixed[i] !== true) return false;
    // Evenly spread readings give cofactors of 1/n for the constant and 2/n for a sine or cosine.
    const even = (i === 0 ? 1 : 2) / count;
    const unit = fit.model === 'exact' ? arcOfDegrees(1) ** 2 : 1;
    return Math.sqrt((fit.solution.cofactors[COEFFICIENTS * i + i] as number) / (even * unit)) <= INFLATION_LIMIT;
  });
}

/** Variance of a reading of mean weight, degrees², and what it rests on. */
function variance(fit: ModelFit, readings: WeighedReadings, freedom: number): { value: number; basis: 'scatter' | 'claimed' } | null {
  if (freedom > 0) return { value: fit.squares / freedom, basis: 'scatter' };
  return readings.claimed === null ? null : { value: readings.claimed ** 2, basis: 'claimed' };
}

function noFit(model: FitModel, observations: readonly DeviationObservation[], warnings: readonly Caution[]): DeviationFit {
  const nothing = perCoefficient(() => null);
  return {
    model,
    coefficients: nothing,
    standardErrors: nothing,
    residuals: observations.map(() => null),
    rms: null,
    scatter: null,
    degreesOfFreedom: 0,
    basis: null,
    suspects: [],
    determined: [],
    warnings,
    curve: { estimate: [], covariance: null },
  };
}

/**
 * Least squares of the five coefficients to deviations by compass heading, in any order and
 * number, with what they are worth: standard errors, residuals, bad readings, and which
 * coefficients the headings determine at all.
 *
 * Standard errors come from the scatter; for a 95 % interval take Student's t with
 * `degreesOfFreedom` (`studentLimit`). Bad readings are found by `judgeReadings`.
 * Throws `RangeError` naming an observation that has a number missing, not finite or out of range.
 */
export function fitDeviation(observations: readonly DeviationObservation[], options: FitOptions = {}): DeviationFit {
  return fitJudged(judged(observations), options);
}

/** The same from readings that have been judged already, so that a second model costs little. */
export function fitJudged({ observations, readings, judgement }: JudgedReadings, options: FitOptions = {}): DeviationFit {
  const { model = 'approximate', constantUnknown = false } = options;
  if (model !== 'approximate' && model !== 'exact') throw new RangeError(`options.model: ${String(model)} is no model`);
  const { list } = readings;
  const fit = judgement.fits[model];
  if (fit === null) return noFit(model, observations, fitCautions({ model, readings, fit: null, judgement }));

  const freedom = list.length - fit.solution.rank;
  const determined = determinedBy(fit, list.length, constantUnknown);
  const known = (name: CoefficientName): boolean => determined.includes(name);
  const spread = variance(fit, readings, freedom);
  const covariance = spread && rowsOf(fit.solution.cofactors.map((cofactor) => cofactor * spread.value), COEFFICIENTS);
  const standardErrors = perCoefficient((name, i) =>
    known(name) && covariance !== null ? Math.sqrt((covariance[i] as readonly number[])[i] as number) : null,
  );
  const coefficients = perCoefficient((name, i) => (known(name) ? (fit.estimate[i] as number) : null));
  return {
    model,
    coefficients,
    standardErrors,
    residuals: observations.map(({ heading, deviation }) => {
      const predicted = predictedDeviation(model, fit.estimate, heading);
      return predicted === null ? null : deviation - predicted;
    }),
    rms: Math.sqrt(fit.squares / list.length),
    scatter: freedom > 0 ? Math.sqrt(fit.squares / freedom) : null,
    degreesOfFreedom: freedom,
    basis: spread === null ? null : spread.basis,
    suspects: judgement.suspects,
    determined,
    warnings: fitCautions({ model, readings, fit, judgement, determined, coefficients, standardErrors }),
    curve: { estimate: fit.estimate, covariance },
  };
}
