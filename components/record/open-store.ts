import type { BookStore } from './book-store.js';
import { openDatabaseStore } from './database-store.js';
import type { StoreEvents } from './database-store.js';
import { memoryStore } from './memory-store.js';

/** Why a book is only in memory: the browser keeps none, or a newer release has written it. */
export type MemoryReason = 'refused' | 'newer';

/** After a crash the processes of the old browser may hold the files a moment longer: when to try again, milliseconds. */
const AGAIN = [200, 600, 1500];

/** Opens the database; tries again while the browser says that it could not get at its own files. */
async function openPatiently(name: string, events: StoreEvents, pauses: readonly number[]): Promise<BookStore> {
  try {
    return await openDatabaseStore(name, events);
  } catch (problem) {
    const [pause, ...later] = pauses;
    if (pause === undefined || !(problem instanceof Error) || problem.name !== 'UnknownError') throw problem;
    await new Promise((resolve) => setTimeout(resolve, pause));
    return openPatiently(name, events, later);
  }
}

/** The store of a book in the browser's database; in memory, and why, where that cannot be had. */
export async function openStore(name: string, events: StoreEvents): Promise<{ store: BookStore; memoryReason: MemoryReason | null }> {
  try {
    return { store: await openPatiently(name, events, AGAIN), memoryReason: null };
  } catch (problem) {
    return { store: memoryStore(), memoryReason: problem instanceof Error && problem.name === 'VersionError' ? 'newer' : 'refused' };
  }
}
