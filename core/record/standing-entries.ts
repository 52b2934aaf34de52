import type { EntryKind, RecordEntry } from './entry.js';

/** An entry that no later one strikes out, and what it counts as. */
export interface StandingEntry {
  readonly entry: RecordEntry;
  readonly kind: Exclude<EntryKind, 'correction'>;
}

/** The entries in whose place one puts its own fields: a correction corrected anew still stands for what the first struck out. */
function replacedBy({ corrects, replacement }: RecordEntry, byNumber: ReadonlyMap<number, RecordEntry>): number[] {
  const replaced: number[] = [];
  for (let number = corrects; number !== null && !replaced.includes(number); ) {
    replaced.push(number);
    number = replacement === null ? null : (byNumber.get(number)?.corrects ?? null);
  }
  return replaced;
}

/**
 * By the number of an entry: the number of the correction that struck it out. A correction that is
 * itself struck out, with nothing in its place, strikes nothing: what it struck out stands again.
 */
export function struckOut(entries: readonly RecordEntry[]): ReadonlyMap<number, number> {
  const struck = new Map<number, number>();
  const byNumber = new Map(entries.map((entry) => [entry.number, entry]));
  // From the newest back, so that it is known which corrections were struck out.
  for (let place = entries.length - 1; place >= 0; place--) {
    const entry = entries[place] as RecordEntry;
    if (entry.corrects === null || struck.has(entry.number)) continue;
    const replaced = replacedBy(entry, byNumber);
    const newer = replaced.map((number) => struck.get(number)).find((number) => number !== undefined);
    // Two corrections of one entry: the newer stands for both.
    if (newer !== undefined) struck.set(entry.number, newer);
    for (const number of replaced) if (!struck.has(number)) struck.set(number, newer ?? entry.number);
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
