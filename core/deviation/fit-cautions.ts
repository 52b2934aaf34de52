import { degreesOfArc } from '../angle/trigonometry.js';
import { note, warning, type Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import { coefficientNames, type CoefficientName } from './approximate-deviation.js';
import type { Judgement } from './bad-readings.js';
import type { PerCoefficient } from './per-coefficient.js';
import { repeatedReadings, widestGap } from './heading-gaps.js';
import type { ModelFit } from './model-fit.js';
import { predictedDeviation, type FitModel } from './predict-deviation.js';
import type { WeighedReadings } from './observations.js';
import { studentLimit } from './student.js';

export interface FitFindings {
  readonly model: FitModel;
  readonly readings: WeighedReadings;
  readonly fit: ModelFit | null;
  readonly judgement: Judgement;
  readonly determined?: readonly CoefficientName[];
  readonly coefficients?: PerCoefficient;
  readonly standardErrors?: PerCoefficient;
}

/** A swing is taken on eight headings at least: Handbook of Magnetic Compass Adjustment. */
const FEWEST_HEADINGS = 8;
/** Freedom that finds a slip of 6° among readings of 0.3° nearly always: 12 readings do, 8 do not (computed). */
const FREEDOM_FOR_SLIPS = 6;
/** Half the compass, and the gap over which a curve of two waves may hide one, degrees. */
const HALF = 180;
const WIDE = 90;
/** Beyond this the approximate coefficients fail by more than a degree: Elementary Manual for the Deviations of the Compass. */
const APPROXIMATE_LIMIT = 20;
/** A part of the curve smaller than this is none, a constant smaller than this is no finding: degrees; common practice, no source. */
const NOTHING = 0.1;
const WORTH_A_LOOK = 0.5;

function aboutHeadings({ list }: WeighedReadings): Caution[] {
  const headings = list.map(({ heading }) => heading);
  const cautions: Caution[] = repeatedReadings(list).map(({ heading, apart }) =>
    note('heading-twice', { heading: quantity(heading, 'bearing'), apart: quantity(apart, 'angle') }),
  );
  if (headings.length < FEWEST_HEADINGS) {
    cautions.push(warning('too-few-readings', { count: quantity(headings.length, 'number') }));
  }
  const gap = widestGap(headings);
  if (gap !== null && gap.width > WIDE) {
    const values = { from: quantity(gap.from, 'bearing'), to: quantity(gap.to, 'bearing') };
    cautions.push(gap.width >= HALF ? warning('half-of-compass', values) : note('wide-gap', values));
  }
  return cautions;
}

/** B to E drown in the scatter and A does not: the readings move with something that is not the iron. */
function isConstant({ coefficients, standardErrors, readings, fit }: FitFindings): boolean {
  const freedom = fit === null ? 0 : readings.list.length - fit.solution.rank;
  if (coefficients === undefined || standardErrors === undefined || freedom < 1) return false;
  const unit = fit?.model === 'exact' ? degreesOfArc(1) : 1;
  const limit = studentLimit(0.99, freedom);
  const size = (name: CoefficientName): number => Math.abs(coefficients[name] ?? Infinity) * unit;
  const doubt = (name: CoefficientName): number => limit * (standardErrors[name] ?? 0) * unit;
  const { A } = coefficients;
  if (A === null || size('A') < Math.max(WORTH_A_LOOK, doubt('A'))) return false;
  return coefficientNames.every((name) => name === 'A' || size(name) <= Math.max(NOTHING, doubt(name)));
}

/** The scatter says more than the doubts claimed: χ² beyond its 99 % point (Wilson and Hilferty's form, from memory). */
function exceedsClaim({ readings, fit }: FitFindings): boolean {
  if (fit === null || readings.claimed === null) return false;
  const freedom = readings.list.length - fit.solution.rank;
  if (freedom < 1) return false;
  const ninth = 2 / (9 * freedom);
  return fit.squares / freedom > readings.claimed ** 2 * (1 - ninth + 2.326 * Math.sqrt(ninth)) ** 3;
}

function aboutShape({ model, fit, readings, judgement, determined = [] }: FitFindings): Caution[] {
  if (fit === null) return [];
  const cautions: Caution[] = [];
  const { exactBetter } = judgement;
  if (model === 'approximate' && exactBetter !== null) {
    const { difference, heading } = exactBetter;
    const values = { difference: quantity(difference, 'angle'), heading: quantity(heading, 'bearing') };
    cautions.push(warning('exact-fit-better', values));
  }
  // Where its waves are not determined the curve may run anywhere between the readings, and has no size.
  if (coefficientNames.some((name) => name !== 'A' && !determined.includes(name))) return cautions;
  // A constant, as of a lubber line out of place, is added on every heading and strains no series.
  const constant = fit.estimate[0] ?? 0;
  const largest = Math.max(...readings.list.map(({ heading }) => Math.abs((predictedDeviation(model, fit.estimate, heading) ?? constant) - constant)));
  if (model === 'approximate' && largest > APPROXIMATE_LIMIT) {
    cautions.push(warning('beyond-approximate', { largest: quantity(largest, 'angle'), limit: quantity(APPROXIMATE_LIMIT, 'angle') }));
  }
  return cautions;
}

/**
 * What the user should know of a fit. Codes: `no-readings`, `too-few-readings`,
 * `too-few-to-find-slips`, `heading-twice`, `half-of-compass`, `wide-gap`, `no-fit`,
 * `not-determined`, `suspect-readings`, `exact-fit-better`, `beyond-approximate`,
 * `constant-curve`, `scatter-exceeds-doubt`.
 */
export function fitCautions(findings: FitFindings): readonly Caution[] {
  const { readings, fit, judgement, determined = [] } = findings;
  if (readings.list.length === 0) return [warning('no-readings')];
  const cautions = aboutHeadings(readings);
  if (fit === null) return [...cautions, warning('no-fit')];
  const freedom = readings.list.length - fit.solution.rank;
  if (freedom - 1 < FREEDOM_FOR_SLIPS) {
    cautions.push(note('too-few-to-find-slips', { count: quantity(readings.list.length, 'number') }));
  }
  const lost = coefficientNames.filter((name) => !determined.includes(name));
  if (lost.length > 0) cautions.push(warning('not-determined', { coefficients: lost.join(' ') }));
  if (judgement.suspects.length > 0) {
    cautions.push(warning('suspect-readings', { count: quantity(judgement.suspects.length, 'number') }));
  }
  cautions.push(...aboutShape(findings));
  if (isConstant(findings)) cautions.push(warning('constant-curve'));
  if (exceedsClaim(findings)) cautions.push(note('scatter-exceeds-doubt'));
  return cautions;
}
