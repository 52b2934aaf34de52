/** The degrees a chart of deviations shows: whole steps round everything in it, zero always inside. */
export interface DeviationScale {
  readonly low: number;
  readonly high: number;
  readonly step: number;
  /** From low to high. */
  readonly ticks: readonly number[];
}

const steps = [0.5, 1, 2, 5, 10, 15, 30, 45, 90];

/** Steps that leave room to write beside them. */
const MOST_STEPS = 8;

/** A scale for these deviations, degrees, null passed over; nothing, or nothing but zeros, is shown within ±1°. */
export function deviationScale(deviations: readonly (number | null)[]): DeviationScale {
  let least = -1;
  let most = 1;
  for (const deviation of deviations) {
    if (deviation === null) continue;
    if (deviation < least) least = deviation;
    if (deviation > most) most = deviation;
  }
  const step = steps.find((size) => Math.ceil(most / size) - Math.floor(least / size) <= MOST_STEPS) ?? 180;
  const low = Math.floor(least / step) * step;
  const high = Math.ceil(most / step) * step;
  const ticks = Array.from({ length: Math.round((high - low) / step) + 1 }, (_, place) => low + place * step);
  return { low, high, step, ticks };
}
