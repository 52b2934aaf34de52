import { once } from '../text/once.js';
import { decimalYear } from '../time/decimal-year.js';
import type { FieldCoefficients } from './field-coefficients.js';
import { weigh } from './harmonic-weights.js';
import type { HarmonicWeights } from './harmonic-weights.js';
import { modelAt, modelByDate } from './magnetic-models.js';
import type { MagneticModelName } from './magnetic-models.js';

/** A model at one instant. */
export interface TimedModel {
  readonly name: MagneticModelName;
  readonly coefficients: FieldCoefficients;
  /** Years since the epoch. */
  readonly years: number;
  /** For the field, nT, and for its change in a year. */
  readonly main: HarmonicWeights;
  readonly change: HarmonicWeights;
}

// Callers ask for many places at one date, so the last few dates are kept. What is
// kept depends on nothing but its key; the models never change.
const KEPT = 4;
const kept: { time: number; asked: MagneticModelName | undefined; timed: TimedModel }[] = [];

function inTime(instant: Date, asked: MagneticModelName | undefined, find: typeof modelAt): TimedModel {
  const time = instant instanceof Date ? instant.getTime() : NaN;
  for (const entry of kept) if (entry.time === time && entry.asked === asked) return entry.timed;
  const { name, coefficients } = find(instant, asked);
  const { main, change } = coefficients;
  const years = decimalYear(instant) - coefficients.epoch;
  const weighedChange = once(() => weigh(change, change, 0));
  const timed = {
    name,
    coefficients,
    years,
    main: weigh(main, change, years),
    // A variation is found without it.
    get change() {
      return weighedChange();
    },
  };
  kept.unshift({ time, asked, timed });
  if (kept.length > KEPT) kept.pop();
  return timed;
}

/** The model at an instant; throws `RangeError` as `modelAt` does. */
export function timedModel(instant: Date, asked?: MagneticModelName): TimedModel {
  return inTime(instant, asked, modelAt);
}

/** The newest model at an instant, without those that must be asked for by name; throws `RangeError` as `modelByDate` does. */
export function timedModelByDate(instant: Date): TimedModel {
  return inTime(instant, undefined, modelByDate);
}
