import { checkRange } from '../angle/check-number.js';
import { wrap180 } from '../angle/wrap.js';
import type { DeviationCurve } from '../deviation/curve-of-card.js';
import type { ObservedDeviation } from './observed-deviations.js';

export interface CardComparison {
  readonly observed: ObservedDeviation;
  /** What the card says on that heading, degrees, east positive. */
  readonly cardDeviation: number;
  /** Deviation found less the card's, degrees (-180, 180]. */
  readonly difference: number;
  /** One standard deviation of the difference, degrees. */
  readonly doubt: number;
  /**
   * `within` twice the doubt; `beyond` it; `far`: beyond it and more than 3°, a
   * mistake or a changed ship rather than chance. Common practice, no source.
   */
  readonly verdict: 'within' | 'beyond' | 'far';
}

/** Doubts used where an entry or a card brings none, degrees. */
export interface UsualDoubts {
  readonly observation: number;
  readonly card: number;
}

/** A single sight from a rolling ship, and a card rounded to half a degree: common practice, no source. */
const usualRecordDoubts: UsualDoubts = { observation: 0.7, card: 0.3 };

const FAR = 3;

/**
 * Holds one deviation against the card: the curve given, or without one what the entry
 * says its card was. Null where neither says anything on that heading.
 * Throws `RangeError` naming a doubt outside [0, 180].
 */
export function checkAgainstCard(
  observed: ObservedDeviation,
  curve: DeviationCurve | null,
  doubts: UsualDoubts = usualRecordDoubts,
): CardComparison | null {
  checkRange('doubts.observation', doubts.observation, 0, 180);
  checkRange('doubts.card', doubts.card, 0, 180);
  const cardDeviation = curve ? curve.at(observed.heading) : observed.cardDeviation;
  if (cardDeviation === null) return null;
  const difference = wrap180(observed.deviation - cardDeviation);
  const doubt = Math.hypot(observed.sigma ?? doubts.observation, doubts.card);
  const size = Math.abs(difference);
  return { observed, cardDeviation, difference, doubt, verdict: size <= 2 * doubt ? 'within' : size > FAR ? 'far' : 'beyond' };
}
