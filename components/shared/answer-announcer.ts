import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** How long the user must have paused before an answer is spoken, milliseconds. */
const PAUSE = 1000;

type Host = ReactiveControllerHost & { readonly renderRoot: HTMLElement | DocumentFragment; say(words: string): void };

/**
 * Speaks the answer once the user has paused. A live region around the answer itself would
 * speak every wrong answer on the way to the right one: 113.5 is typed by way of 1, 11 and 113.
 */
export class AnswerAnnouncer implements ReactiveController {
  readonly #host: Host;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #spoken = '';

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
  }

  /** The user has changed something: what then stands as the answer is to be spoken. */
  changed(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.#speak(), PAUSE);
  }

  /** The answer in the words written for speech, or as it is shown; else what is said in its place. */
  #speak(): void {
    const root = this.#host.renderRoot;
    const answer = root.querySelector('.answer .spoken') ?? root.querySelector('.answer') ?? root.querySelector('.headline .waiting');
    const words = (answer?.textContent ?? '').replace(/\s+/g, ' ').trim();
    if (words === '' || words === this.#spoken) return;
    this.#spoken = words;
    this.#host.say(words);
  }
}
