/** A value this many robust standard deviations from the median does not belong: Iglewicz and Hoaglin, 1993, from memory. */
const LIMIT = 3.5;
/** The median deviation of good readings is so small a part of their standard deviation (normal distribution). */
const MEDIAN_TO_SIGMA = 1.4826;
/** However well the rest agrees, a reading within so many of its usual doubts is no slip. */
const USUAL = 3;
/** Of two that disagree nobody knows which is bad. */
const FEWEST = 3;

/** The middle of a list of numbers; of an even count the mean of the middle two. */
function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  const [below = NaN, above = NaN] = [sorted[Math.ceil(half) - 1], sorted[Math.floor(half)]];
  return (below + above) / 2;
}

/**
 * Which of some readings of the same thing do not belong, by their distance from the median
 * in median deviations; `usual` is the standard deviation a good reading is known to have. At
 * least half are always kept, and of one or two all.
 */
export function strikeOutliers(values: readonly number[], usual: number): boolean[] {
  if (values.length < FEWEST) return values.map(() => false);
  const middle = median(values);
  const spread = MEDIAN_TO_SIGMA * median(values.map((value) => Math.abs(value - middle)));
  const limit = Math.max(LIMIT * spread, USUAL * usual);
  return values.map((value) => Math.abs(value - middle) > limit);
}
