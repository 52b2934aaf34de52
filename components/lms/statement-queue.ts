import type { RecordStore, Sent, Statement } from './record-store.js';

/** Statements on their way, in order: one call at a time, and what failed goes first next time. */
export class StatementQueue {
  readonly #store: RecordStore;
  readonly #told: (sent: Sent) => void;
  #waiting: Statement[] = [];
  #sending: Promise<void> | null = null;
  #held = false;

  constructor(store: RecordStore, told: (sent: Sent) => void) {
    this.#store = store;
    this.#told = told;
  }

  add(...statements: readonly Statement[]): void {
    this.#waiting.push(...statements);
    void this.flush();
  }

  /** From now on nothing leaves before `last`. */
  hold(): void {
    this.#held = true;
  }

  /** Sends what waits. Settled when it was taken or has failed. */
  flush(): Promise<void> {
    this.#sending ??= this.#run().finally(() => (this.#sending = null));
    return this.#sending;
  }

  async #run(): Promise<void> {
    while (this.#waiting.length > 0 && !this.#held) {
      const batch = this.#waiting.splice(0);
      const sent = await this.#store.send(batch);
      this.#told(sent);
      if (sent !== 'again') continue;
      this.#waiting.unshift(...batch);
      return;
    }
  }

  /** The page is going: everything that waits and the last statements leave in one call, now. */
  last(...statements: readonly Statement[]): void {
    const batch = [...this.#waiting.splice(0), ...statements];
    void this.#store.send(batch);
  }
}
