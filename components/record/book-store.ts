import type { RecordEntry } from '../../core/record/entry.js';

/** How much of a book has been written to a file. */
export interface ExportMark {
  readonly count: number;
  /** ISO 8601 UTC. */
  readonly at: string;
}

/** Where a book is kept. Entries are only ever added, each behind the last. */
export interface BookStore {
  readonly keeps: 'database' | 'memory';
  count(): Promise<number>;
  /** Entries by number, both included. */
  read(from: number, to: number): Promise<RecordEntry[]>;
  /**
   * Adds what `make` returns for the last entry there is, with nothing coming between.
   * Resolves once it is written for good; what `make` throws comes back as it is.
   */
  append(make: (last: RecordEntry | null) => RecordEntry): Promise<RecordEntry>;
  /** Adds all or nothing; `false` if the book has moved on from `lastHash` in the meantime. */
  appendAll(entries: readonly RecordEntry[], lastHash: string | null): Promise<boolean>;
  exported(): Promise<ExportMark | null>;
  markExported(mark: ExportMark): Promise<void>;
  close(): void;
}
