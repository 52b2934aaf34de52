import type { Caution } from '../working/caution.js';
import { finiteOrNull } from './finite-or-null.js';
import { checkObservation, type IronObservation } from './iron-observation.js';
import { fitSemicircularLine, type SemicircularIron, type SemicircularLine } from './semicircular-line.js';
import { separationCautions } from './separation-cautions.js';
import { unchangingOf, type Unchanging } from './unchanging-iron.js';

/** Below this part of λH a doubt is rounding; it keeps a swing without noise from weighing infinitely. */
const LEAST_SIGMA = 1e-9;

export interface SeparatedIron extends SemicircularIron {
  /** P/λ, c/λ, Q/λ, f/λ: all that deviations tell. P, c, Q and f themselves are null unless λ is given. */
  readonly overLambda: SemicircularIron;
  /** One standard deviation of P, c, Q, f; null where it cannot be known. */
  readonly standardErrors: SemicircularIron;
  readonly standardErrorsOverLambda: SemicircularIron;
  /** Which of the four the places tell, at least over λ. */
  readonly determined: readonly (keyof SemicircularIron)[];
  /** Means over the places of what does not change between them; null where never given. */
  readonly unchanging: Unchanging;
  /** 𝔅 and ℭ as lines over Z, for the prediction at another place. */
  readonly lines: { readonly B: SemicircularLine; readonly C: SemicircularLine };
  readonly warnings: readonly Caution[];
}

/**
 * Permanent and induced semicircular iron, separated by swings at two or more magnetic latitudes.
 *
 * P, Q, c and f stay with the ship while H and Z change: H𝔅 = P/λ + (c/λ) Z, and the same of
 * ℭ with Q and f, are straight lines over Z, fitted by weighted least squares (derived from
 * Poisson's equations). Readings without standard errors count alike as angles.
 * Standard errors come from those given for all places, or from the misfit of three or more.
 *
 * Throws `RangeError` naming what is missing or not finite, a `field.h` of 0, a negative sigma.
 */
export function separateIron(observations: readonly IronObservation[]): SeparatedIron {
  observations.forEach(checkObservation);
  const lines = { B: lineOf('B', observations), C: lineOf('C', observations) };
  const unchanging = unchangingOf(observations);
  const overLambda: SemicircularIron = {
    P: lines.B.permanent,
    c: lines.B.induced,
    Q: lines.C.permanent,
    f: lines.C.induced,
  };
  const standardErrorsOverLambda: SemicircularIron = {
    P: errorOf(lines.B, 'permanent'),
    c: errorOf(lines.B, 'induced'),
    Q: errorOf(lines.C, 'permanent'),
    f: errorOf(lines.C, 'induced'),
  };
  const { lambda } = unchanging;
  const names = ['P', 'c', 'Q', 'f'] as const;
  const each = (of: (name: keyof SemicircularIron) => number | null): SemicircularIron => ({
    P: of('P'),
    c: of('c'),
    Q: of('Q'),
    f: of('f'),
  });
  return {
    ...each((name) => {
      const over = overLambda[name];
      return over === null || lambda === null ? null : finiteOrNull(over * lambda);
    }),
    overLambda,
    standardErrors: each((name) => {
      const over = overLambda[name];
      const error = standardErrorsOverLambda[name];
      if (over === null || error === null || lambda === null) return null;
      return finiteOrNull(Math.hypot(error * lambda, over * (unchanging.standardErrors.lambda ?? 0)));
    }),
    standardErrorsOverLambda,
    determined: names.filter((name) => overLambda[name] !== null),
    unchanging,
    lines,
    warnings: separationCautions(observations, overLambda),
  };
}

function lineOf(name: 'B' | 'C', observations: readonly IronObservation[]): SemicircularLine {
  const swings = observations.filter(({ exact }) => exact[name] !== null);
  const sigmasKnown = swings.every(({ standardErrors }) => typeof standardErrors?.[name] === 'number');
  const readings = swings.map(({ exact, field, standardErrors }) => ({
    value: exact[name] as number,
    h: field.h,
    z: field.z,
    sigma: sigmasKnown ? Math.max(LEAST_SIGMA, standardErrors?.[name] as number) : 1,
  }));
  return fitSemicircularLine(readings, sigmasKnown);
}

function errorOf({ variance, ...line }: SemicircularLine, part: 'permanent' | 'induced'): number | null {
  return variance === null || line[part] === null ? null : Math.sqrt(variance[part]);
}
