/** A longer pause is no work, seconds: somebody has left the desk. */
const LONGEST_PAUSE = 600;

/** Seconds spent at a drill, from one action to the next, while it stands on the page. */
export class StopWatch {
  #since: number | null = null;

  start(): void {
    this.#since = performance.now();
  }

  stop(): void {
    this.#since = null;
  }

  /** Seconds since the last lap; 0 while stopped. */
  lap(): number {
    if (this.#since === null) return 0;
    const now = performance.now();
    const seconds = (now - this.#since) / 1000;
    this.#since = now;
    return Math.min(seconds, LONGEST_PAUSE);
  }
}
