import type { DeviationCurve } from '../../core/deviation/curve-of-card.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';

export interface CardRow {
  /** By compass, degrees. */
  readonly compass: number;
  /** Degrees, east positive; null where the card gives none or several. */
  readonly deviation: number | null;
  /** Magnetic, degrees; null as `deviation`. */
  readonly magnetic: number | null;
  readonly beyondLimit: boolean;
}

const INTERCARDINALS = [45, 135, 225, 315];

/** Compass headings of a printed card: every 10° or 15° with the intercardinals (flag forms). */
export function cardHeadings(every: 10 | 15): readonly number[] {
  const steps = Array.from({ length: 360 / every }, (_, place) => place * every);
  return [...new Set([...steps, ...INTERCARDINALS])].sort((a, b) => a - b);
}

/** The lines of a printed card. */
export function cardRows(curve: DeviationCurve, every: 10 | 15, limit: DeviationLimit): readonly CardRow[] {
  return cardHeadings(every).map((compass) => {
    const deviation = curve.at(compass);
    const size = Math.abs(deviation ?? 0);
    return { compass, deviation, magnetic: curve.toMagnetic(compass), beyondLimit: limit.inclusive ? size > limit.largest : size >= limit.largest };
  });
}
