import { wrap360 } from '../angle/wrap.js';
import { studentLimit } from '../deviation/student.js';
import type { CardComparison } from './check-against-card.js';

export interface TimeTrend {
  readonly count: number;
  /** Mean of the differences from the card, degrees, east positive. */
  readonly mean: number;
  /** Change in 30 days, degrees, by least squares; null with fewer than three or all at one time. */
  readonly perMonth: number | null;
  /** One standard deviation of it. */
  readonly perMonthDoubt: number | null;
  /** Whether chance would bring so large a change less than once in twenty times. */
  readonly significant: boolean;
  /** The line at the first and the last observation, degrees. */
  readonly line: { readonly from: number; readonly to: number } | null;
}

const MONTH = 30 * 86_400_000;

/** How the differences from the card move with time. Null without any. */
export function timeTrend(comparisons: readonly CardComparison[]): TimeTrend | null {
  const count = comparisons.length;
  if (count === 0) return null;
  const months = comparisons.map(({ observed }) => observed.instant.getTime() / MONTH);
  const mean = comparisons.reduce((total, { difference }) => total + difference, 0) / count;
  const middle = months.reduce((total, month) => total + month, 0) / count;
  const spread = months.reduce((total, month) => total + (month - middle) ** 2, 0);
  const flat: TimeTrend = { count, mean, perMonth: null, perMonthDoubt: null, significant: false, line: null };
  // Three sights within the hour tell nothing of a month.
  if (count < 3 || Math.sqrt(spread / count) < 1 / 720) return flat;
  const product = comparisons.reduce((total, { difference }, place) => total + ((months[place] as number) - middle) * (difference - mean), 0);
  const perMonth = product / spread;
  const at = (month: number): number => mean + perMonth * (month - middle);
  const squares = comparisons.reduce((total, { difference }, place) => total + (difference - at(months[place] as number)) ** 2, 0);
  const perMonthDoubt = Math.sqrt(squares / (count - 2) / spread);
  return {
    count,
    mean,
    perMonth,
    perMonthDoubt,
    significant: Math.abs(perMonth) > studentLimit(0.95, count - 2) * perMonthDoubt,
    line: { from: at(Math.min(...months)), to: at(Math.max(...months)) },
  };
}

export interface SectorMean {
  /** Middle of the sector, degrees by compass: 0, 45 … 315. */
  readonly heading: number;
  readonly count: number;
  /** Mean difference from the card, degrees; null without observations. */
  readonly mean: number | null;
}

/** How the differences lie round the compass, by eight sectors of 45°, the first about north. */
export function headingTrend(comparisons: readonly CardComparison[]): readonly SectorMean[] {
  return Array.from({ length: 8 }, (_, sector) => {
    const inside = comparisons.filter(({ observed }) => Math.floor(wrap360(observed.heading + 22.5) / 45) === sector);
    const total = inside.reduce((sum, { difference }) => sum + difference, 0);
    return { heading: sector * 45, count: inside.length, mean: inside.length === 0 ? null : total / inside.length };
  });
}
