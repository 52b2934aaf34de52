import type { RecordEntry } from '../../core/record/entry.js';

/** What is remembered of a book outside its database. */
export interface Mirror {
  readonly count: number;
  readonly last: string;
}

/** How a database looks beside what is remembered of it. */
export type Loss = { readonly kind: 'lost'; readonly remembered: number; readonly found: number } | { readonly kind: 'replaced'; readonly number: number };

/**
 * Reads the hint. After a crash it lags a few seconds behind the database, and that is
 * no matter; a hint ahead of the database means that entries were lost.
 */
export function readMirror(name: string): Mirror | null {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(name) ?? 'null');
    const { count, last } = (value ?? {}) as Partial<Mirror>;
    return Number.isSafeInteger(count) && typeof last === 'string' ? { count: count as number, last } : null;
  } catch {
    return null;
  }
}

export function writeMirror(name: string, entry: RecordEntry | null): void {
  try {
    if (entry) localStorage.setItem(name, JSON.stringify({ count: entry.number, last: entry.hash }));
    else localStorage.removeItem(name);
  } catch {
    // Without local storage there is no hint; the book itself is kept all the same.
  }
}

/** Holds the book against the hint; `entryAt` is the entry the hint was written for. */
export function findLoss(mirror: Mirror | null, count: number, entryAt: RecordEntry | undefined): Loss | null {
  if (!mirror || mirror.count === 0) return null;
  if (mirror.count > count) return { kind: 'lost', remembered: mirror.count, found: count };
  return entryAt?.hash === mirror.last ? null : { kind: 'replaced', number: mirror.count };
}
