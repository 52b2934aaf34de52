import type { RecordEntry } from '../../core/record/entry.js';
import { verifyChain } from '../../core/record/verify-chain.js';
import type { ChainBreak } from '../../core/record/verify-chain.js';

/** Entries verified between two breaths of the page. */
const SLICE = 500;

/** Lets the page draw and answer. */
export const breath = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** Verifies the chain of a book in slices, each entry once. */
export class ChainVerifier {
  /** Where the chain is broken; null while it is not known to be. */
  broken: ChainBreak | null = null;

  readonly #book: string;
  #checked = { number: 0, hash: '' };

  constructor(book: string) {
    this.#book = book;
  }

  /** Goes on to the last entry, or to the first that does not fit; asks before each slice whether it is still wanted. */
  async run(entries: () => readonly RecordEntry[], isWanted: () => boolean): Promise<void> {
    while (isWanted() && !this.broken && this.#checked.number < entries().length) {
      const slice = entries().slice(this.#checked.number, this.#checked.number + SLICE);
      const check = verifyChain(this.#book, slice, this.#checked.number === 0 ? undefined : this.#checked);
      if (check.ok) this.#checked = { number: check.count, hash: check.last };
      else this.broken = { number: check.number, reason: check.reason };
      if (slice.length === SLICE) await breath();
    }
  }
}
