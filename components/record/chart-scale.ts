/** A scale from values to drawing units, with round values to label. */
export interface Scale {
  (value: number): number;
  readonly marks: readonly number[];
}

const STEPS = [0.5, 1, 2, 5, 10, 20, 30, 60];

/** A scale of deviations that holds every value and zero, with about four round marks. */
export function degreeScale(values: readonly number[], top: number, bottom: number): Scale {
  const most = Math.max(1, ...values);
  const least = Math.min(-1, ...values);
  const step = STEPS.find((size) => (most - least) / size <= 5) ?? 60;
  const high = Math.ceil(most / step) * step;
  const low = Math.floor(least / step) * step;
  const scale = (value: number): number => Number((bottom + ((value - low) / (high - low)) * (top - bottom)).toFixed(1));
  return Object.assign(scale, { marks: Array.from({ length: Math.round((high - low) / step) + 1 }, (_, place) => low + place * step) });
}

/** A scale of any span from left to right. */
export function spanScale(from: number, to: number, left: number, right: number): (value: number) => number {
  const span = to - from || 1;
  return (value) => Number((left + ((value - from) / span) * (right - left)).toFixed(1));
}
