import { fitModel, type ModelFit } from './model-fit.js';
import { predictedDeviation, type FitModel } from './predict-deviation.js';
import type { WeighedReading } from './observations.js';
import { removalPath, type Removal } from './removal-path.js';
import { studentLimit } from './student.js';

export interface Judgement {
  /** Both models laid through all the readings; null where one comes near none. */
  readonly fits: Readonly<Record<FitModel, ModelFit | null>>;
  /** Readings that do not belong to the swing, by their place among the observations, worst first. */
  readonly suspects: readonly number[];
  /** Set where the exact model fits the rest clearly better than the approximate: the largest difference of the two, degrees, and where. */
  readonly exactBetter: { readonly difference: number; readonly heading: number } | null;
}

/** A reading out by less than this is no slip, whatever the scatter: degrees; common practice, no source. */
const SMALLEST_SLIP = 0.3;
/**
 * How often a clean swing may raise a false alarm: for the first reading, and for those looked
 * at behind it. Set so that of 16 readings of σ 0.3° a slip of 2.5° is found in 95 swings of a
 * hundred, ships of every size together, and fewer than two clean ones are doubted: measured,
 * see tests/bench. With the model given and σ to be found no test does much better: 95.4.
 */
const FALSE_ALARMS = { first: 0.0162, further: 0.0004 };
/** Readings that may be bad at once, and the freedom there must be to look for each. */
const MOST_SUSPECTS = 3;
const FREEDOM = { first: 2, further: 7 };
/**
 * Difference of n ln(sum of squares) beyond which one of two models with equally many
 * coefficients is clearly the better (Akaike's criterion; the limit from memory).
 */
const CLEARLY = 4;
/** Curves nearer than this are one for a navigator, and squares below this are rounding: degrees; common practice, no source. */
const WORTH_TELLING = 0.1;
const ROUNDING = 0.01;

/** A model's fits with none, one, two… of its worst readings taken out. */
interface Contender {
  readonly whole: ModelFit;
  readonly path: readonly Removal[];
}

function contend(whole: ModelFit | null, readings: readonly WeighedReading[]): Contender | null {
  if (whole === null) return null;
  const freedom = readings.length - whole.solution.rank;
  const further = freedom - FREEDOM.further + 1;
  const steps = freedom < FREEDOM.first ? 0 : Math.max(1, Math.min(MOST_SUSPECTS, further));
  return { whole, path: removalPath(whole, readings, steps) };
}

function fitAfter({ whole, path }: Contender, removals: number): ModelFit | null {
  return removals === 0 ? whole : (path[removals - 1]?.fit ?? null);
}

/** The contender that fits best with so many readings taken out. */
function best(contenders: readonly Contender[], removals: number): { contender: Contender; fit: ModelFit } | null {
  let found: { contender: Contender; fit: ModelFit } | null = null;
  for (const contender of contenders) {
    const fit = fitAfter(contender, removals);
    if (fit !== null && (found === null || fit.squares < found.fit.squares)) found = { contender, fit };
  }
  return found;
}

/** The largest difference of two fitted curves, looked for every 5°. */
function largestDifference(one: ModelFit, other: ModelFit): { difference: number; heading: number } {
  let found = { difference: 0, heading: 0 };
  for (let heading = 0; heading < 360; heading += 5) {
    const a = predictedDeviation(one.model, one.estimate, heading);
    const b = predictedDeviation(other.model, other.estimate, heading);
    if (a === null || b === null) continue;
    const difference = Math.abs(a - b);
    if (difference > found.difference) found = { difference, heading };
  }
  return found;
}

function exactBetter(series: ModelFit | null, law: ModelFit | null): Judgement['exactBetter'] {
  if (series === null || law === null) return null;
  const count = series.residuals.length;
  if (count <= series.solution.rank) return null;
  const rounding = count * ROUNDING ** 2;
  const advantage = count * Math.log((series.squares + rounding) / (law.squares + rounding));
  if (advantage <= CLEARLY) return null;
  const apart = largestDifference(series, law);
  return apart.difference >= WORTH_TELLING ? apart : null;
}

/**
 * Looks for bad readings: the worst is taken out, then the next worst; the last that lies
 * beyond the limit condemns all taken out before it, so that two cannot hide each other.
 * Before and after each removal the better of the two models counts, for a large clean
 * deviation bends in ways the five-term series cannot follow, and its best readings would look bad.
 *
 * Readings: at least one.
 *
 * Source: externally studentised residuals with Bonferroni's limit, and Rosner's generalised
 * test for many outliers (Technometrics 25, 1983); both from memory.
 */
export function judgeReadings(readings: readonly WeighedReading[]): Judgement {
  const fits = { approximate: fitModel('approximate', readings), exact: fitModel('exact', readings) };
  const series = contend(fits.approximate, readings);
  const law = contend(fits.exact, readings);
  const contenders = [series, law].filter((contender) => contender !== null);
  let condemned = 0;
  let suspects: readonly number[] = [];
  for (let removals = 0; removals < MOST_SUSPECTS; removals++) {
    const before = best(contenders, removals);
    const after = best(contenders, removals + 1);
    if (before === null || after === null) break;
    const left = readings.length - removals;
    const freedom = left - before.fit.solution.rank - 1;
    if (freedom < 1) break;
    const scatter = Math.max(after.fit.squares / freedom, Number.MIN_VALUE);
    const t = Math.sqrt(Math.max(0, before.fit.squares - after.fit.squares) / scatter);
    const alarms = removals === 0 ? FALSE_ALARMS.first : FALSE_ALARMS.further;
    const slip = after.contender.path[removals]?.slip ?? 0;
    if (slip < SMALLEST_SLIP || t <= studentLimit(1 - alarms / left, freedom)) continue;
    condemned = removals + 1;
    suspects = after.contender.path.slice(0, condemned).map(({ index }) => index);
  }
  return {
    fits,
    suspects,
    exactBetter: exactBetter(series && fitAfter(series, condemned), law && fitAfter(law, condemned)),
  };
}
