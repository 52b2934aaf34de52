import type { DeviationCard } from '../deviation/deviation-card.js';
import { deviationCurve } from '../deviation/deviation-curve.js';
import { giveAdvice } from './advice.js';
import type { Advice } from './advice.js';
import { usualAdviceSettings } from './advice-settings.js';
import type { AdviceSettings } from './advice-settings.js';
import { checkAgainstCard } from './check-against-card.js';
import type { CardComparison, UsualDoubts } from './check-against-card.js';
import type { MagneticCompass, RecordEntry } from './entry.js';
import { lastRestart, observedDeviations } from './observed-deviations.js';
import type { ObservedDeviation, Restart } from './observed-deviations.js';
import { refit } from './refit.js';
import type { Refit } from './refit.js';
import { standingEntries } from './standing-entries.js';
import { headingTrend, timeTrend } from './trend.js';
import type { SectorMean, TimeTrend } from './trend.js';

export interface RecordQuestion {
  readonly compass: MagneticCompass;
  /** The card in use; without one each entry's own is taken. */
  readonly card: DeviationCard | null;
  readonly now: Date;
  readonly settings?: Partial<AdviceSettings>;
  readonly doubts?: UsualDoubts;
}

/** What a book says of one compass, since the last event: plain data. */
export interface RecordJudgement {
  readonly compass: MagneticCompass;
  readonly restart: Restart | null;
  readonly observed: readonly ObservedDeviation[];
  readonly comparisons: readonly CardComparison[];
  readonly trend: TimeTrend | null;
  readonly byHeading: readonly SectorMean[];
  readonly refit: Refit;
  readonly advice: readonly Advice[];
}

/**
 * Reads a whole book for one compass: deviations against the card, trends, coefficients, advice.
 * Throws `RangeError` as `deviationCurve` for a bad card, or naming `now`.
 */
export function judgeRecord(entries: readonly RecordEntry[], question: RecordQuestion): RecordJudgement {
  const { compass, card, now } = question;
  const settings = { ...usualAdviceSettings, ...question.settings };
  const curve = card ? deviationCurve(card) : null;
  const standing = standingEntries(entries);
  const observed = observedDeviations(entries, compass);
  const comparisons = observed.flatMap((one) => checkAgainstCard(one, curve, question.doubts) ?? []);
  const trend = timeTrend(comparisons);
  const refitted = refit(observed, curve, settings.refitLast);
  return {
    compass,
    restart: lastRestart(standing),
    observed,
    comparisons,
    trend,
    byHeading: headingTrend(comparisons),
    refit: refitted,
    advice: giveAdvice({ compass, standing, observed, comparisons, trend, refit: refitted, now, settings }),
  };
}
