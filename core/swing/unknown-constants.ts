import { circularMean } from '../angle/circular-mean.js';
import { asinDegrees } from '../angle/trigonometry.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import { harmonics } from '../deviation/approximate-deviation.js';
import { weightedSolution } from '../deviation/agreement.js';
import { room } from '../deviation/linear-problem.js';
import type { Solution } from '../deviation/linear-problem.js';
import type { Near } from '../deviation/exact-search.js';
import { fitModel } from '../deviation/model-fit.js';
import type { ModelFit } from '../deviation/model-fit.js';
import type { WeighedReading } from '../deviation/observations.js';
import { COEFFICIENTS } from '../deviation/predict-deviation.js';
import type { FitModel } from '../deviation/predict-deviation.js';
import type { RowReading, UnknownConstant } from './swing-reading.js';

type GoodReading = Extract<RowReading, { ok: true }>;

/** A reading with its place among the rows, and its head and deviation in full. */
export interface SettledReading {
  readonly reading: GoodReading;
  readonly index: number;
  readonly struck: boolean;
  /** By compass, degrees [0, 360). */
  readonly heading: number;
  readonly deviation: number;
}

export interface SettledConstants {
  readonly readings: readonly SettledReading[];
  /** Not one reading tells the constant part of the deviation: A is lost. */
  readonly constantLost: boolean;
  /** The fit that found A to E and the constants together; null where there were none to find. */
  readonly joint: { readonly solution: Solution; readonly fit: ModelFit; readonly columns: number } | null;
}

type Offsets = Map<UnknownConstant, number>;
type Taken = Omit<SettledReading, 'heading' | 'deviation'>;

const TURNS = 40;
const CLOSE = 1e-9;
/** As in the fit: a constant whose doubt is five times that of evenly spread readings is not told by them. */
const INFLATION = 25;

function settle({ reading, index, struck }: Taken, offsets: Offsets): SettledReading {
  const offset = reading.constant === null ? 0 : (offsets.get(reading.constant) ?? 0);
  const deviation = wrap180(reading.deviation + offset);
  const { value, by } = reading.head;
  return { reading, index, struck, deviation, heading: wrap360(by === 'compass' ? value : value - deviation) };
}

function weighted(settled: readonly SettledReading[]): WeighedReading[] {
  const list = settled.filter(({ struck }) => !struck);
  const mean = list.reduce((total, { reading }) => total + reading.sigma ** -2, 0) / list.length;
  return list.map(({ reading, heading, deviation }, index) => ({ index, heading, waves: harmonics(heading), deviation, weight: reading.sigma ** -2 / mean }));
}

/** A to E and the constants of the groups in one linear step from a fit. */
function jointStep(fit: ModelFit, list: readonly WeighedReading[], settled: readonly SettledReading[], groups: readonly UnknownConstant[]): Solution {
  const counted = settled.filter(({ struck }) => !struck);
  const width = COEFFICIENTS + groups.length;
  const factors = room(width * counted.length);
  counted.forEach(({ reading }, place) => {
    const row = width * place;
    for (let i = 0; i < COEFFICIENTS; i++) factors[row + i] = fit.changes[COEFFICIENTS * place + i] as number;
    groups.forEach((group, k) => (factors[row + COEFFICIENTS + k] = reading.constant === group ? -1 : 0));
  });
  return weightedSolution(list, { factors, width, values: fit.residuals });
}

/** How far all deviations have to be moved for A to be what it is taken for; 0 where the headings do not tell A. */
function shiftOfConstant(fit: ModelFit, count: number, taken: number): number {
  const cofactor = fit.solution.cofactors[0] ?? Infinity;
  const unit = fit.model === 'exact' ? (180 / Math.PI) ** 2 : 1;
  if (fit.solution.fixed[0] !== true || cofactor * unit * count > INFLATION) return 0;
  const A = fit.estimate[0] ?? 0;
  return taken - (fit.model === 'exact' ? asinDegrees(Math.max(-1, Math.min(1, A))) : A);
}

/**
 * Finds what readings of an object of unknown bearing, or of a gyro of unknown error, are short
 * of. Beside readings that lack nothing it follows from them, by one least squares over A to E
 * and the constants; alone, A is lost and taken for `constant` degrees.
 */
export function settleConstants(taken: readonly Taken[], model: FitModel, constant: number): SettledConstants {
  const counted = taken.filter(({ struck }) => !struck);
  const groups = [...new Set(taken.flatMap(({ reading }) => (reading.constant === null ? [] : [reading.constant])))];
  const constantLost = groups.length > 0 && counted.every(({ reading }) => reading.constant !== null);
  const free = constantLost ? groups.slice(1) : groups;
  const offsets: Offsets = new Map();
  for (const group of groups) {
    const raw = (counted.length > 0 ? counted : taken).filter(({ reading }) => reading.constant === group).map(({ reading }) => reading.deviation);
    offsets.set(group, 0 - wrap180(circularMean(raw) ?? 0));
  }
  const settleAll = (): SettledReading[] => taken.map((one) => settle(one, offsets));
  let joint: SettledConstants['joint'] = null;
  let near: Near | undefined;
  for (let turn = 0; turn < TURNS && groups.length > 0 && counted.length > 0; turn++) {
    const settled = settleAll();
    const list = weighted(settled);
    const fit = fitModel(model, list, near);
    if (!fit) break;
    near = { estimate: fit.estimate };
    let moved = 0;
    if (free.length > 0) {
      const solution = jointStep(fit, list, settled, free);
      joint = { solution, fit, columns: free.length };
      free.forEach((group, k) => {
        const step = solution.fixed[COEFFICIENTS + k] === true ? (solution.estimate[COEFFICIENTS + k] ?? 0) : 0;
        offsets.set(group, (offsets.get(group) ?? 0) + step);
        moved = Math.max(moved, Math.abs(step));
      });
    }
    if (constantLost) {
      const shift = shiftOfConstant(fit, list.length, constant);
      for (const group of groups) offsets.set(group, (offsets.get(group) ?? 0) + shift);
      moved = Math.max(moved, Math.abs(shift));
    }
    if (moved < CLOSE) break;
  }
  return { readings: settleAll(), constantLost, joint };
}
