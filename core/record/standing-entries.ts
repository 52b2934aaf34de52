import type { EntryKind, RecordEntry } from './entry.js';

/** An entry that no later one strikes out, and what it counts as. */
export interface StandingEntry {
  readonly entry: RecordEntry;
  readonly kind: Exclude<EntryKind, 'correction'>;
}

/** By the number of an entry: the number of the correction that struck it out. */
export function struckOut(entries: readonly RecordEntry[]): ReadonlyMap<number, number> {
  const struck = new Map<number, number>();
  // From the newest back, so that a correction that was itself struck out strikes nothing.
  for (let place = entries.length - 1; place >= 0; place--) {
    const entry = entries[place] as RecordEntry;
    if (entry.corrects === null || struck.has(entry.number)) continue;
    const newer = struck.get(entry.corrects);
    // Two corrections of one entry: the newer stands for both.
    if (newer === undefined) struck.set(entry.corrects, entry.number);
    else struck.set(entry.number, newer);
  }
  return struck;
}

/** What stands in the book after its corrections, in the order of what was observed, not of writing. */
export function standingEntries(entries: readonly RecordEntry[]): readonly StandingEntry[] {
  const struck = struckOut(entries);
  const standing: StandingEntry[] = [];
  for (const entry of entries) {
    if (struck.has(entry.number)) continue;
    const kind = entry.kind === 'correction' ? entry.replacement : entry.kind;
    if (kind !== null) standing.push({ entry, kind });
  }
  // ISO texts of one form sort as instants; equal ones keep the order of writing.
  return standing.sort((a, b) => (a.entry.instant < b.entry.instant ? -1 : a.entry.instant > b.entry.instant ? 1 : 0));
}
