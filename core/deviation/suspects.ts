import { fitModel, type FitModel, type ModelFit } from './model-fit.js';
import type { Reading } from './observations.js';
import { studentLimit } from './student.js';

/** A reading out by less than this is no slip, whatever the scatter: degrees; common practice, no source. */
const SMALLEST_SLIP = 0.3;
/** How often a clean swing may raise a false alarm: for the first reading, and for those looked at behind it. */
const FALSE_ALARMS = { first: 0.0155, further: 0.001 };
/** Readings that may be bad at once, and freedom that must be left after each: measured, see tests/bench. */
const MOST_SUSPECTS = 3;
const FREEDOM_FOR_FURTHER = 7;
/** A reading that alone fixes part of the curve always agrees with it. */
const LEVERAGE_LIMIT = 1 - 1e-6;

export interface SuspectSearch {
  /** Places in the observations given, worst first. */
  readonly suspects: readonly number[];
  /** The fit to the readings that are left. */
  readonly cleaned: ModelFit;
}

/** The reading furthest out against a curve laid through the others only, in its own doubts. */
function worst(fit: ModelFit, readings: readonly Reading[]): { place: number; t: number; slip: number } {
  const freedom = readings.length - fit.solution.rank;
  // Rounding of exactly fitting readings must not look like scatter.
  const floor = 1e-18;
  let found = { place: -1, t: 0, slip: 0 };
  fit.residuals.forEach((residual, place) => {
    const leverage = fit.solution.leverages[place] as number;
    if (leverage > LEVERAGE_LIMIT) return;
    const weight = (readings[place] as Reading).weight;
    const own = (weight * residual * residual) / (1 - leverage);
    const rest = Math.max((fit.squares - own) / (freedom - 1), floor);
    const t = Math.sqrt(own / rest);
    if (t > found.t) found = { place, t, slip: Math.abs(residual) / (1 - leverage) };
  });
  return found;
}

/**
 * Readings that do not belong to the swing under a model: the worst is taken out and the rest
 * judged again, several times over; the last that fails condemns all taken out before it, so
 * that two bad readings cannot hide each other.
 *
 * Source: externally studentised residuals with Bonferroni's limit, and Rosner's generalised
 * test for many outliers (Technometrics 25, 1983); both from memory.
 */
export function searchSuspects(model: FitModel, all: readonly Reading[]): SuspectSearch | null {
  const whole = fitModel(model, all);
  if (whole === null) return null;
  let fit = whole;
  let readings = all;
  let cleaned = whole;
  const taken: number[] = [];
  let condemned = 0;
  while (taken.length < MOST_SUSPECTS) {
    const freedom = readings.length - fit.solution.rank;
    if (freedom < (taken.length === 0 ? 2 : FREEDOM_FOR_FURTHER)) break;
    const { place, t, slip } = worst(fit, readings);
    const bad = readings[place];
    if (bad === undefined) break;
    const alarms = taken.length === 0 ? FALSE_ALARMS.first : FALSE_ALARMS.further;
    const limit = studentLimit(1 - alarms / readings.length, freedom - 1);
    readings = readings.filter((reading) => reading !== bad);
    taken.push(bad.index);
    const next = fitModel(model, readings, fit);
    if (next === null) break;
    fit = next;
    if (t > limit && slip >= SMALLEST_SLIP) {
      condemned = taken.length;
      cleaned = fit;
    }
  }
  return { suspects: taken.slice(0, condemned), cleaned };
}
