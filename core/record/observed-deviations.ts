import { wrap180 } from '../angle/wrap.js';
import type { EventKind, MagneticCompass, RecordEntry } from './entry.js';
import { standingEntries } from './standing-entries.js';
import type { StandingEntry } from './standing-entries.js';

/** One deviation out of the book, degrees, east positive. */
export interface ObservedDeviation {
  readonly number: number;
  readonly instant: Date;
  /** Ship's head by that compass. */
  readonly heading: number;
  readonly deviation: number;
  /** One standard deviation, where the entry has one. */
  readonly sigma: number | null;
  /** What the card of the time said. */
  readonly cardDeviation: number | null;
}

/** The last event after which older observations no longer count; null where there was none. */
export interface Restart {
  readonly number: number;
  readonly instant: Date;
  readonly event: EventKind;
}

/** The deviation an entry gives of a compass; null where it gives none. */
function deviationOfEntry(entry: RecordEntry, compass: MagneticCompass): ObservedDeviation | null {
  const heading = compass === 'standard' ? entry.headingStandard : entry.headingSteering;
  if (heading === null) return null;
  const own = entry.deviationOf === compass;
  const error = compass === 'standard' ? entry.errorStandard : entry.errorSteering;
  const byError = error === null || entry.variation === null ? null : wrap180(error - entry.variation);
  const deviation = own && entry.deviation !== null ? entry.deviation : byError;
  if (deviation === null) return null;
  return {
    number: entry.number,
    instant: new Date(entry.instant),
    heading,
    deviation,
    sigma: own ? entry.doubt : null,
    cardDeviation: own ? entry.cardDeviation : null,
  };
}

/** The last event among entries in the order of what happened. */
export function lastRestart(standing: readonly StandingEntry[]): Restart | null {
  for (let place = standing.length - 1; place >= 0; place--) {
    const { entry, kind } = standing[place] as StandingEntry;
    if (kind === 'event' && entry.event !== null) return { number: entry.number, instant: new Date(entry.instant), event: entry.event };
  }
  return null;
}

/** Every deviation of a compass that stands, oldest first; from the last event on unless `all` is asked for. */
export function observedDeviations(
  entries: readonly RecordEntry[],
  compass: MagneticCompass,
  which: 'since-restart' | 'all' = 'since-restart',
): readonly ObservedDeviation[] {
  const standing = standingEntries(entries);
  const from = which === 'all' ? null : lastRestart(standing);
  return standing.flatMap(({ entry, kind }) => {
    if (kind !== 'observation' || (from && entry.instant < `${from.instant.toISOString().slice(0, 19)}Z`)) return [];
    const found = deviationOfEntry(entry, compass);
    return found ? [found] : [];
  });
}
