import { checkInstant } from '../time/check-instant.js';
import type { Caution } from '../working/caution.js';
import { quantity } from '../working/quantity.js';
import type { AdviceCode, AdviceSettings } from './advice-settings.js';
import { adviceSources } from './advice-settings.js';
import type { CardComparison } from './check-against-card.js';
import type { MagneticCompass } from './entry.js';
import { CLOCK_TOLERANCE } from './entry-marks.js';
import { lastRestart } from './observed-deviations.js';
import type { ObservedDeviation } from './observed-deviations.js';
import type { Refit } from './refit.js';
import type { StandingEntry } from './standing-entries.js';
import type { TimeTrend } from './trend.js';

/** A caution of the book with where the rule comes from, a code of `adviceSources`. */
export interface Advice extends Caution {
  readonly code: AdviceCode;
  readonly source: string;
}

/** What the book knows of one compass, all since the last event. */
export interface AdviceQuestion {
  readonly compass: MagneticCompass;
  readonly standing: readonly StandingEntry[];
  readonly observed: readonly ObservedDeviation[];
  /** Those of them that a card says something of. */
  readonly comparisons: readonly CardComparison[];
  readonly trend: TimeTrend | null;
  readonly refit: Refit;
  readonly now: Date;
  readonly settings: AdviceSettings;
}

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** A mean month. */
const MONTH = 30.44 * DAY;

function advice(code: AdviceCode, level: Caution['level'], values: Caution['values'] = {}): Advice {
  return { code, level, values, source: adviceSources[code] };
}

const time = ({ entry }: StandingEntry): number => new Date(entry.instant).getTime();

/** Whether an entry is an observation of the compass: a bearing by gyro tells its error only where her head was read by it too. */
function observes({ entry, kind }: StandingEntry, compass: MagneticCompass): boolean {
  return kind === 'observation' && (entry.deviationOf === compass || entry[compass === 'standard' ? 'errorStandard' : 'errorSteering'] !== null);
}

/** What is entered under a time still to come, as of a wrong year, has been observed by nobody yet. */
const isPast = (one: StandingEntry, now: Date): boolean => time(one) <= now.getTime() + CLOCK_TOLERANCE;

/**
 * The error of the standard compass is to be found once a watch, whatever other compasses there are (STCW Code A-VIII/2, from
 * memory). "No observation, overcast" is a check that was tried: it keeps the watch. A day or so of nothing else leaves the
 * error unknown all the same, and a mark or another compass may tell it (common practice, no source).
 */
function aboutWatch({ compass, standing, now, settings }: AdviceQuestion): Advice[] {
  const checks = standing.filter((one) => (one.kind === 'no-observation' || observes(one, compass)) && isPast(one, now));
  const last = checks[checks.length - 1];
  if (!last) return [advice('no-check-yet', 'note')];
  const hours = (now.getTime() - time(last)) / HOUR;
  if (hours <= settings.watchHours) {
    const observed = checks.filter(({ kind }) => kind === 'observation');
    const since = observed[observed.length - 1] ?? checks[0] ?? last;
    if (now.getTime() - time(since) <= settings.unobservedHours * HOUR) return [];
    return [advice('error-not-observed', 'note', { day: since.entry.instant.slice(0, 10) })];
  }
  return [advice('watch-check-overdue', 'warning', { hours: String(Math.floor(hours)), limit: String(settings.watchHours) })];
}

/** After two years a kept record may stand for a new adjustment; without one it may not. */
function aboutAdjustment({ compass, standing, now, settings }: AdviceQuestion): Advice[] {
  const adjustments = standing.filter(({ entry, kind }) => kind === 'event' && entry.event === 'adjustment');
  const last = adjustments[adjustments.length - 1];
  if (!last) return [advice('adjustment-unknown', 'note')];
  const months = (now.getTime() - time(last)) / MONTH;
  if (months <= settings.adjustmentMonths) return [];
  const since = now.getTime() - settings.kept.days * DAY;
  const kept = standing.filter((one) => observes(one, compass) && isPast(one, now) && time(one) >= since).length >= settings.kept.observations;
  const values = { day: last.entry.instant.slice(0, 10), months: String(settings.adjustmentMonths) };
  return [kept ? advice('adjustment-two-years', 'note', values) : advice('adjustment-overdue', 'warning', values)];
}

function aboutEvent({ standing, observed, settings }: AdviceQuestion): Advice[] {
  const restart = lastRestart(standing);
  if (!restart || observed.length >= settings.checksAfterEvent) return [];
  return [
    advice('checks-after-event', restart.event === 'cargo' || restart.event === 'adjustment' ? 'note' : 'warning', {
      event: restart.event,
      day: restart.instant.toISOString().slice(0, 10),
      count: String(observed.length),
      needed: String(settings.checksAfterEvent),
    }),
  ];
}

function aboutCard({ comparisons, settings, standing, now }: AdviceQuestion): Advice[] {
  const found: Advice[] = [];
  const { degrees, times, of } = settings.differing;
  const recent = comparisons.slice(-of);
  const beyond = recent.filter(({ difference }) => Math.abs(difference) > degrees).length;
  if (beyond >= times) {
    found.push(advice('card-differs', 'warning', { degrees: quantity(degrees, 'angle'), count: String(beyond), of: String(recent.length) }));
  }
  // An event may be entered without the card's date: the last that was named holds.
  const cardDate = standing.filter(({ entry }) => entry.cardDate !== '').pop()?.entry.cardDate ?? '';
  if (settings.cardMonths !== null && cardDate !== '') {
    const months = (now.getTime() - new Date(`${cardDate}T00:00:00Z`).getTime()) / MONTH;
    if (months > settings.cardMonths) found.push(advice('card-old', 'warning', { day: cardDate, months: String(settings.cardMonths) }));
  }
  return found;
}

function aboutSize({ observed, settings, standing }: AdviceQuestion): Advice[] {
  const found: Advice[] = [];
  // One sight may be wrong; two of the last five beyond the limit are worth saying, whatever a card says or without one.
  const large = observed.slice(-5).filter(({ deviation }) => Math.abs(deviation) > settings.largestDeviation);
  const worst = large[large.length - 1];
  if (large.length >= 2 && worst) {
    found.push(
      advice('deviation-beyond-limit', 'warning', {
        deviation: quantity(worst.deviation, 'error'),
        heading: quantity(worst.heading, 'bearing'),
        limit: quantity(settings.largestDeviation, 'angle'),
      }),
    );
  }
  const gyro = standing.filter(({ entry, kind }) => kind === 'observation' && entry.errorGyro !== null).pop()?.entry.errorGyro ?? 0;
  if (Math.abs(gyro) > settings.gyroError) found.push(advice('gyro-error-large', 'warning', { error: quantity(gyro, 'error') }));
  return found;
}

function aboutChange({ trend, refit, settings }: AdviceQuestion): Advice[] {
  const found: Advice[] = [];
  if (trend?.significant && trend.perMonth !== null && Math.abs(trend.perMonth) > settings.driftPerMonth) {
    found.push(
      advice('drifting', 'warning', { change: quantity(trend.perMonth, 'error'), doubt: quantity(trend.perMonthDoubt ?? 0, 'angle') }),
    );
  }
  for (const { name, found: value, card, change, significant } of refit.coefficients) {
    if (!significant || value === null || card === null || change === null || Math.abs(change) <= settings.coefficientChange) continue;
    found.push(
      advice('coefficient-changed', 'warning', { name, found: quantity(value, 'error'), card: quantity(card, 'error'), count: String(refit.count) }),
    );
  }
  return found;
}

/** What the book advises, most urgent kind first. Throws `RangeError` for a `now` that is no instant. */
export function giveAdvice(question: AdviceQuestion): readonly Advice[] {
  checkInstant('now', question.now);
  return [
    ...aboutCard(question),
    ...aboutSize(question),
    ...aboutChange(question),
    ...aboutEvent(question),
    ...aboutWatch(question),
    ...aboutAdjustment(question),
  ];
}
