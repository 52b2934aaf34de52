import { nextEntry, sameContent } from '../../core/record/chain.js';
import type { EntryFields, RecordEntry } from '../../core/record/entry.js';
import { recordToCsv } from '../../core/record/record-csv.js';
import { recordToJson } from '../../core/record/record-json.js';
import type { ChainBreak } from '../../core/record/verify-chain.js';
import { openChannel } from './book-channel.js';
import type { BookChannel } from './book-channel.js';
import { readBookFile } from './book-import.js';
import type { ImportOutcome } from './book-import.js';
import { findLoss, readMirror, writeMirror } from './book-mirror.js';
import type { Loss } from './book-mirror.js';
import type { BookStore } from './book-store.js';
import { breath, ChainVerifier } from './chain-verifier.js';
import { askToLast, lastingSoFar, onAnswer } from './lasting-storage.js';
import type { Lasting } from './lasting-storage.js';
import { memoryStore } from './memory-store.js';
import { openStore } from './open-store.js';
import type { MemoryReason } from './open-store.js';
import { DuplicateEntry, saveProblemOf } from './save-problem.js';
import type { SaveProblem } from './save-problem.js';

export type SaveOutcome =
  | { readonly saved: true; readonly entry: RecordEntry; readonly keeps: BookStore['keeps'] }
  | { readonly saved: false; readonly reason: SaveProblem; readonly number: number | null };

/** What stands newest in the book is read first, so that it can be painted before the rest is. */
const FIRST_READ = 60;

/** So many of the last entries are looked through for the same content. */
const DUPLICATE_REACH = 500;

/**
 * One book as a page sees it: its entries, whether they are kept, whole and exported.
 * Knows nothing of views; `onChange` says that something is to be shown anew.
 */
export class RecordBook {
  readonly name: string;
  readonly databaseName: string;

  state: 'opening' | 'blocked' | 'open' | 'released' | 'terminated' = 'opening';
  /** Why the book is only in memory; null where it is in the database. */
  memoryReason: MemoryReason | null = null;
  /** The entries read so far, without gaps, up to the last; all of them once `complete`. */
  entries: readonly RecordEntry[] = [];
  count = 0;
  complete = false;
  /** Whether the chain has been verified to the last entry. */
  verified = false;
  loss: Loss | null = null;
  exported = 0;
  /** Whether the browser has promised to keep the book; null while that is not known, or the book is not in the database. */
  lasting: Lasting = null;

  /** Settles when the newest entries are there. */
  readonly opened: Promise<void>;
  /** Settles when all is read and verified. */
  readonly ready: Promise<void>;

  #store: BookStore = memoryStore();
  #channel: BookChannel | null = null;
  readonly #onChange: () => void;
  readonly #chain: ChainVerifier;
  #closed = false;
  readonly #stopHearing = onAnswer(() => void this.#learnLasting());
  /** Reading what is new, one reader at a time. */
  #refreshing: Promise<void> = Promise.resolve();

  constructor(name: string, onChange: () => void) {
    this.name = name;
    // Pages opened from files share one store of databases: the book's name must be in it.
    this.databaseName = `lubberline-record:${name}`;
    this.#onChange = onChange;
    this.#chain = new ChainVerifier(name);
    this.opened = this.#open();
    this.ready = this.opened.then(() => this.#readAll());
  }

  get keeps(): BookStore['keeps'] {
    return this.#store.keeps;
  }

  /** Where the chain is broken; null while it is not known to be. */
  get broken(): ChainBreak | null {
    return this.#chain.broken;
  }

  get last(): RecordEntry | null {
    return this.entries[this.entries.length - 1] ?? null;
  }

  get unexported(): number {
    return Math.max(0, this.count - this.exported);
  }

  async #open(): Promise<void> {
    ({ store: this.#store, memoryReason: this.memoryReason } = await openStore(this.databaseName, {
      blocked: () => this.#become('blocked'),
      released: () => this.#become('released'),
      terminated: () => this.#become('terminated'),
    }));
    if (this.#closed) return this.#store.close();
    try {
      await this.#readNewest();
    } catch {
      // A database that opens and cannot be read is as good as refused.
      this.#store.close();
      this.#store = memoryStore();
      this.memoryReason = 'refused';
    }
    // Left in the meantime, as when the widget is moved about the page: nobody would shut the channel.
    if (this.#closed) return;
    this.#channel = this.keeps === 'database' ? openChannel(this.databaseName, () => void this.refresh()) : null;
    this.#become('open');
  }

  async #readNewest(): Promise<void> {
    // The hint first: an entry written by another page meanwhile must not look lost.
    const mirror = this.keeps === 'database' ? readMirror(this.databaseName) : null;
    this.count = await this.#store.count();
    this.entries = await this.#store.read(Math.max(1, this.count - FIRST_READ + 1), this.count);
    this.exported = (await this.#store.exported())?.count ?? 0;
    this.loss = findLoss(mirror, this.count, mirror ? (await this.#store.read(mirror.count, mirror.count))[0] : undefined);
  }

  #become(state: RecordBook['state']): void {
    this.state = state;
    this.#onChange();
  }

  /** Once the newest entries are painted: the rest, then the chain, in slices. */
  async #readAll(): Promise<void> {
    if (this.#closed) return;
    await breath();
    const before = this.entries[0]?.number ?? 1;
    const older = before > 1 ? await this.#store.read(1, before - 1).catch((): RecordEntry[] => []) : [];
    this.entries = [...older, ...this.entries];
    this.complete = true;
    this.#onChange();
    void this.#learnLasting();
    await this.#verify();
  }

  async #learnLasting(): Promise<void> {
    if (this.keeps !== 'database') return;
    this.lasting = await lastingSoFar();
    if (!this.#closed) this.#onChange();
  }

  /** Asks the browser to keep the book, now that the user has something in it; nothing waits for the answer. */
  askToLast(): void {
    void askToLast();
  }

  async #verify(): Promise<void> {
    await this.#chain.run(() => this.entries, () => !this.#closed);
    this.verified = true;
    this.#onChange();
  }

  /** Reads what other pages have added. */
  refresh(): Promise<void> {
    this.#refreshing = this.#refreshing.then(async () => {
      if (this.#closed || this.state !== 'open') return;
      const known = this.last?.number ?? 0;
      const added = await this.#store.read(known + 1, Number.MAX_SAFE_INTEGER);
      this.exported = (await this.#store.exported())?.count ?? this.exported;
      this.entries = [...this.entries, ...added];
      this.count = this.last?.number ?? 0;
      if (this.complete && this.verified) await this.#verify();
      this.#onChange();
    }).catch(() => undefined);
    return this.#refreshing;
  }

  /** Saves one entry; the fields come from `prepareEntry`. Resolves when it is kept, or says why it is not. */
  async append(fields: EntryFields, now: Date): Promise<SaveOutcome> {
    await this.opened;
    if (this.state !== 'open') return { saved: false, reason: 'closed', number: null };
    const same = this.entries.slice(-DUPLICATE_REACH).find((entry) => sameContent(entry, fields));
    if (same) return { saved: false, reason: 'duplicate', number: same.number };
    try {
      const entry = await this.#store.append((last) => {
        if (last && sameContent(last, fields)) throw new DuplicateEntry(last.number);
        return nextEntry(this.name, last, fields, now);
      });
      await this.#grown();
      return { saved: true, entry, keeps: this.keeps };
    } catch (problem) {
      return { saved: false, reason: saveProblemOf(problem), number: problem instanceof DuplicateEntry ? problem.number : null };
    }
  }

  async #grown(): Promise<void> {
    await this.refresh();
    // Left while it was written: it is kept all the same, and what is read here says nothing of it.
    if (this.#closed) return;
    if (this.keeps === 'database' && !this.loss) writeMirror(this.databaseName, this.last);
    this.#channel?.tell();
  }

  /** Takes over what a file adds to the book, all of it or nothing. */
  async importText(text: string): Promise<ImportOutcome> {
    await this.ready;
    await this.refresh();
    if (this.state !== 'open') return { ok: false, reason: 'closed', number: null };
    if (this.broken) return { ok: false, reason: 'own-book-broken', number: this.broken.number };
    const file = readBookFile(text, this.name, this.entries);
    if (!file.ok) return file;
    try {
      if (file.added.length > 0 && !(await this.#store.appendAll(file.added, this.last?.hash ?? null))) return { ok: false, reason: 'busy', number: null };
    } catch (problem) {
      return { ok: false, reason: saveProblemOf(problem), number: null };
    }
    await this.refresh();
    // What the file holds is in a file.
    if (file.held > this.exported) await this.markExported(file.held);
    await this.#compareAnew();
    await this.#grown();
    return { ok: true, added: file.added.length };
  }

  /** An import may have brought back what was lost. */
  async #compareAnew(): Promise<void> {
    const mirror = readMirror(this.databaseName);
    if (this.loss) this.loss = findLoss(mirror, this.count, mirror ? this.entries[mirror.count - 1] : undefined);
  }

  /** The whole book as a file's text. */
  async exportText(format: 'json' | 'csv'): Promise<string> {
    await this.ready;
    await this.refresh();
    return format === 'json' ? recordToJson(this.name, this.entries) : recordToCsv(this.name, this.entries);
  }

  async markExported(count: number): Promise<void> {
    this.exported = count;
    try {
      await this.#store.markExported({ count, at: new Date().toISOString() });
    } catch {
      // A full disk keeps no mark; the entries were exported all the same.
    }
    this.#channel?.tell();
    this.#onChange();
  }

  /** The officer has seen the loss: from here on the book as it is counts. */
  acknowledgeLoss(): void {
    this.loss = null;
    writeMirror(this.databaseName, this.last);
    this.#onChange();
  }

  close(): void {
    this.#closed = true;
    this.#stopHearing();
    this.#channel?.close();
    this.#channel = null;
    this.#store.close();
  }
}
