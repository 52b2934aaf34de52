import type { BookStore } from './book-store.js';
import { openDatabaseStore } from './database-store.js';
import type { StoreEvents } from './database-store.js';
import { memoryStore } from './memory-store.js';

/** Why a book is only in memory: the browser keeps none, or a newer release has written it. */
export type MemoryReason = 'refused' | 'newer';

/** The store of a book in the browser's database; in memory, and why, where that cannot be had. */
export async function openStore(name: string, events: StoreEvents): Promise<{ store: BookStore; memoryReason: MemoryReason | null }> {
  try {
    return { store: await openDatabaseStore(name, events), memoryReason: null };
  } catch (problem) {
    return { store: memoryStore(), memoryReason: problem instanceof Error && problem.name === 'VersionError' ? 'newer' : 'refused' };
  }
}
