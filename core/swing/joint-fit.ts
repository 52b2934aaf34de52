import type { CoefficientName } from '../deviation/approximate-deviation.js';
import { coefficientNames } from '../deviation/approximate-deviation.js';
import { fitJudged } from '../deviation/fit-deviation.js';
import type { DeviationFit } from '../deviation/fit-deviation.js';
import type { PerCoefficient } from '../deviation/per-coefficient.js';
import { judged } from '../deviation/judged-readings.js';
import { rowsOf } from '../deviation/linear-problem.js';
import type { JudgedReadings } from '../deviation/judged-readings.js';
import { COEFFICIENTS } from '../deviation/predict-deviation.js';
import type { FitModel } from '../deviation/predict-deviation.js';
import { settleConstants } from './unknown-constants.js';
import type { SettledConstants } from './unknown-constants.js';

export interface SwingFit extends SettledConstants {
  readonly fit: DeviationFit;
  readonly judged: JudgedReadings;
}

/** Standard errors that own up to the constants found from the same readings. */
function widened(fit: DeviationFit, { joint }: SettledConstants, count: number): DeviationFit {
  if (!joint) return fit;
  const freedom = count - joint.solution.rank;
  const spread = freedom > 0 ? joint.fit.squares / freedom : null;
  const covariance = spread === null ? null : rowsOf(joint.solution.cofactors.map((cofactor) => cofactor * spread), COEFFICIENTS + joint.columns).slice(0, COEFFICIENTS).map((row) => row.slice(0, COEFFICIENTS));
  const error = (name: CoefficientName): number | null => {
    const place = coefficientNames.indexOf(name);
    return covariance && fit.coefficients[name] !== null ? Math.sqrt(Math.max(0, covariance[place]?.[place] ?? 0)) : null;
  };
  const standardErrors: PerCoefficient = { A: error('A'), B: error('B'), C: error('C'), D: error('D'), E: error('E') };
  return {
    ...fit,
    standardErrors,
    scatter: spread === null ? null : Math.sqrt(spread),
    degreesOfFreedom: Math.max(0, freedom),
    basis: spread === null ? null : 'scatter',
    curve: { estimate: fit.curve.estimate, covariance },
  };
}

/**
 * Settles the unknown constants for a model and lays it through all readings. Where the other
 * model has been laid through them, and they lack nothing, they are not judged again.
 */
export function fitSwing(taken: Parameters<typeof settleConstants>[0], model: FitModel, constant: number, other?: SwingFit): SwingFit {
  if (other && !other.joint && !other.constantLost) return { ...other, fit: fitJudged(other.judged, { model }) };
  const settled = settleConstants(taken, model, constant);
  const readings = judged(settled.readings.map(({ heading, deviation, struck, reading }) => ({ heading, deviation, sigma: reading.sigma, weight: struck ? 0 : 1 })));
  const fit = fitJudged(readings, { model, constantUnknown: settled.constantLost });
  const counted = taken.filter(({ struck }) => !struck).length;
  return { ...settled, judged: readings, fit: widened(fit, settled, counted) };
}
