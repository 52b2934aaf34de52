import type { RecordEntry } from '../../core/record/entry.js';
import type { BookStore, ExportMark } from './book-store.js';

/** A book where the browser refuses storage: gone with the page, and the widget says so. */
export function memoryStore(): BookStore {
  const entries: RecordEntry[] = [];
  let mark: ExportMark | null = null;
  return {
    keeps: 'memory',
    count: async () => entries.length,
    read: async (from, to) => entries.slice(from - 1, to),
    async append(make) {
      const entry = make(entries[entries.length - 1] ?? null);
      entries.push(entry);
      return entry;
    },
    async appendAll(added, lastHash) {
      if ((entries[entries.length - 1]?.hash ?? null) !== lastHash) return false;
      entries.push(...added);
      return true;
    },
    exported: async () => mark,
    async markExported(next) {
      mark = next;
    },
    close() {},
  };
}
