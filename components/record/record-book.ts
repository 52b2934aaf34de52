import { nextEntry, sameContent } from '../../core/record/chain.js';
import type { EntryFields, RecordEntry } from '../../core/record/entry.js';
import { mergeBooks } from '../../core/record/merge-books.js';
import { recordFromCsv, recordToCsv } from '../../core/record/record-csv.js';
import type { FileRefusal } from '../../core/record/record-file.js';
import { recordFromJson, recordToJson } from '../../core/record/record-json.js';
import { verifyChain } from '../../core/record/verify-chain.js';
import type { ChainBreak } from '../../core/record/verify-chain.js';
import { openChannel } from './book-channel.js';
import type { BookChannel } from './book-channel.js';
import { findLoss, readMirror, writeMirror } from './book-mirror.js';
import type { Loss } from './book-mirror.js';
import type { BookStore } from './book-store.js';
import { openDatabaseStore } from './database-store.js';
import { memoryStore } from './memory-store.js';
import { DuplicateEntry, saveProblemOf } from './save-problem.js';
import type { SaveProblem } from './save-problem.js';

export type SaveOutcome =
  | { readonly saved: true; readonly entry: RecordEntry; readonly keeps: BookStore['keeps'] }
  | { readonly saved: false; readonly reason: SaveProblem; readonly number: number | null };

export type ImportOutcome =
  | { readonly ok: true; readonly added: number }
  | FileRefusal
  | { readonly ok: false; readonly reason: 'another-book'; readonly number: null; readonly book: string }
  | { readonly ok: false; readonly reason: 'forked'; readonly number: number }
  | { readonly ok: false; readonly reason: 'own-book-broken'; readonly number: number }
  | { readonly ok: false; readonly reason: SaveProblem | 'busy'; readonly number: null };

/** What stands newest in the book is read first, so that it can be painted before the rest is. */
const FIRST_READ = 60;

/** Entries verified between two breaths of the page. */
const SLICE = 500;

/** So many of the last entries are looked through for the same content. */
const DUPLICATE_REACH = 500;

const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/**
 * One book as a page sees it: its entries, whether they are kept, whole and exported.
 * Knows nothing of views; `onChange` says that something is to be shown anew.
 */
export class RecordBook {
  readonly name: string;
  readonly databaseName: string;

  state: 'opening' | 'blocked' | 'open' | 'released' | 'terminated' = 'opening';
  /** Why the book is only in memory; null where it is in the database. */
  memoryReason: 'refused' | 'newer' | null = null;
  /** The entries read so far, without gaps, up to the last; all of them once `complete`. */
  entries: readonly RecordEntry[] = [];
  count = 0;
  complete = false;
  /** Where the chain is broken; null while it is not known to be. */
  broken: ChainBreak | null = null;
  verified = false;
  loss: Loss | null = null;
  exported = 0;

  /** Settles when the newest entries are there. */
  readonly opened: Promise<void>;
  /** Settles when all is read and verified. */
  readonly ready: Promise<void>;

  #store: BookStore = memoryStore();
  #channel: BookChannel | null = null;
  readonly #onChange: () => void;
  #closed = false;
  /** Reading what is new, one reader at a time. */
  #refreshing: Promise<void> = Promise.resolve();
  #checked = { number: 0, hash: '' };

  constructor(name: string, onChange: () => void) {
    this.name = name;
    // Pages opened from files share one store of databases: the book's name must be in it.
    this.databaseName = `lubberline-record:${name}`;
    this.#onChange = onChange;
    this.opened = this.#open();
    this.ready = this.opened.then(() => this.#readAll());
  }

  get keeps(): BookStore['keeps'] {
    return this.#store.keeps;
  }

  get last(): RecordEntry | null {
    return this.entries[this.entries.length - 1] ?? null;
  }

  get unexported(): number {
    return Math.max(0, this.count - this.exported);
  }

  async #open(): Promise<void> {
    try {
      this.#store = await openDatabaseStore(this.databaseName, {
        blocked: () => this.#become('blocked'),
        released: () => this.#become('released'),
        terminated: () => this.#become('terminated'),
      });
    } catch (problem) {
      this.memoryReason = problem instanceof Error && problem.name === 'VersionError' ? 'newer' : 'refused';
    }
    if (this.#closed) return this.#store.close();
    try {
      await this.#readNewest();
    } catch {
      // A database that opens and cannot be read is as good as refused.
      this.#store.close();
      this.#store = memoryStore();
      this.memoryReason = 'refused';
    }
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
    await this.#verify();
  }

  async #verify(): Promise<void> {
    while (!this.#closed && !this.broken && this.#checked.number < this.entries.length) {
      const slice = this.entries.slice(this.#checked.number, this.#checked.number + SLICE);
      const check = verifyChain(this.name, slice, this.#checked.number === 0 ? undefined : this.#checked);
      if (check.ok) this.#checked = { number: check.count, hash: check.last };
      else this.broken = { number: check.number, reason: check.reason };
      if (slice.length === SLICE) await breath();
    }
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
    if (this.keeps === 'database' && !this.loss) writeMirror(this.databaseName, this.last);
    this.#channel?.tell();
  }

  /** Takes over what a file adds to the book, all of it or nothing. */
  async importText(text: string): Promise<ImportOutcome> {
    await this.ready;
    await this.refresh();
    if (this.state !== 'open') return { ok: false, reason: 'closed', number: null };
    if (this.broken) return { ok: false, reason: 'own-book-broken', number: this.broken.number };
    const file = /^\ufeff?\s*[[{]/.test(text) ? recordFromJson(text) : recordFromCsv(text);
    if (!file.ok) return file;
    if (file.book !== this.name) return { ok: false, reason: 'another-book', number: null, book: file.book };
    const merge = mergeBooks(this.entries, file.entries);
    if (!merge.ok) return { ok: false, reason: 'forked', number: merge.number };
    try {
      if (merge.added.length > 0 && !(await this.#store.appendAll(merge.added, this.last?.hash ?? null))) {
        return { ok: false, reason: 'busy', number: null };
      }
    } catch (problem) {
      return { ok: false, reason: saveProblemOf(problem), number: null };
    }
    await this.refresh();
    // What the file holds is in a file.
    if (file.entries.length > this.exported) await this.markExported(file.entries.length);
    await this.#compareAnew();
    await this.#grown();
    return { ok: true, added: merge.added.length };
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
    this.#channel?.close();
    this.#store.close();
  }
}
