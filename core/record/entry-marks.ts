import { sameContent } from './chain.js';
import type { RecordEntry } from './entry.js';

/**
 * What is odd about an entry beside the one before it: `earlier`: observed before it, so
 * written late or with a clock set wrong; `clock-back`: the device's clock went back;
 * `ahead`: observed later than it was written; `duplicate`: the same content again.
 */
export type EntryMark = 'earlier' | 'clock-back' | 'ahead' | 'duplicate';

/** A clock may differ from the ship's by this much before it is said, milliseconds. */
export const CLOCK_TOLERANCE = 5 * 60_000;

export function entryMarks(entry: RecordEntry, before: RecordEntry | null): readonly EntryMark[] {
  const marks: EntryMark[] = [];
  // A correction speaks of an old time as a matter of course.
  if (before && entry.kind !== 'correction' && before.kind !== 'correction' && entry.instant < before.instant) marks.push('earlier');
  if (before && entry.written < before.written) marks.push('clock-back');
  if (new Date(entry.instant).getTime() - new Date(entry.written).getTime() > CLOCK_TOLERANCE) marks.push('ahead');
  if (before && sameContent(entry, before)) marks.push('duplicate');
  return marks;
}
