import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import type { RecordEntry } from '../../core/record/entry.js';
import type { BookStore, ExportMark } from './book-store.js';

interface BookSchema extends DBSchema {
  entries: { key: number; value: RecordEntry };
  marks: { key: string; value: ExportMark };
}

/** Version of the database; one more when its stores change. */
const VERSION = 1;

/** What may happen to an open book from outside. */
export interface StoreEvents {
  /** Another page holds an older version open: nothing goes on until it is closed. */
  blocked(): void;
  /** Another page wants a newer version; this one has let go of the book. */
  released(): void;
  /** The browser closed the database, as when the user clears his data. */
  terminated(): void;
}

/** Power may fail: `strict` waits for the disk. Browsers that do not know it ignore it. */
const strict = { durability: 'strict' } as const;

function storeOver(database: IDBPDatabase<BookSchema>): BookStore {
  return {
    keeps: 'database',
    count: () => database.count('entries'),
    read: (from, to) => (from > to ? Promise.resolve([]) : database.getAll('entries', IDBKeyRange.bound(from, to))),
    async append(make) {
      // Reading the last and adding the next in one transaction: two pages never write one number.
      const transaction = database.transaction('entries', 'readwrite', strict);
      try {
        const cursor = await transaction.store.openCursor(null, 'prev');
        const entry = make(cursor?.value ?? null);
        // Saved is what the transaction has completed, not what a request has succeeded in.
        await Promise.all([transaction.store.add(entry), transaction.done]);
        return entry;
      } catch (problem) {
        throw abandon(transaction, problem);
      }
    },
    async appendAll(entries, lastHash) {
      const transaction = database.transaction('entries', 'readwrite', strict);
      try {
        const cursor = await transaction.store.openCursor(null, 'prev');
        if ((cursor?.value.hash ?? null) !== lastHash) return false;
        await Promise.all([...entries.map((entry) => transaction.store.add(entry)), transaction.done]);
        return true;
      } catch (problem) {
        throw abandon(transaction, problem);
      }
    },
    exported: async () => (await database.get('marks', 'exported')) ?? null,
    async markExported(mark) {
      await database.put('marks', mark, 'exported');
    },
    close: () => database.close(),
  };
}

/** Takes everything of a failed transaction back; the error that says why. */
function abandon(transaction: { abort(): void; readonly done: Promise<void>; readonly error: DOMException | null }, problem: unknown): unknown {
  transaction.done.catch(() => undefined);
  const cause = transaction.error ?? problem;
  try {
    transaction.abort();
  } catch {
    // It has aborted by itself.
  }
  return cause;
}

/** Opens the database of a book; rejects where the browser refuses. `version` is for tests of the future. */
export async function openDatabaseStore(name: string, events: StoreEvents, version = VERSION): Promise<BookStore> {
  const database: IDBPDatabase<BookSchema> = await openDB<BookSchema>(name, version, {
    upgrade(upgraded, from) {
      if (from >= 1) return;
      upgraded.createObjectStore('entries', { keyPath: 'number' });
      upgraded.createObjectStore('marks');
    },
    blocked: () => events.blocked(),
    blocking() {
      database.close();
      events.released();
    },
    terminated: () => events.terminated(),
  });
  return storeOver(database);
}
