import { nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';

/** The longest that what is closed waits for the browser to be idle, milliseconds. */
const LONGEST = 200;

/**
 * Holds back what is not wanted at once until the answer is on the screen: what stands behind a
 * closed summary, the lines of a picture, the far end of a list; a third of the time a widget
 * needs to start. Then it is there whether opened or not, for a search in the page.
 */
export class ClosedContent implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #drawn = false;
  #held = false;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** What is shown behind a summary: at once where it starts open. */
  view<Content extends TemplateResult | TemplateResult<2>>(open: boolean, content: () => Content): Content | typeof nothing {
    return open || this.drawn ? content() : nothing;
  }

  /** Whether it is time for what can wait; who asks is asked again once it is. */
  get drawn(): boolean {
    this.#held = true;
    return this.#drawn;
  }

  hostUpdated(): void {
    if (!this.#held || this.#drawn) return;
    if (typeof requestIdleCallback === 'function') requestIdleCallback(() => this.draw(), { timeout: LONGEST });
    else setTimeout(() => this.draw(), LONGEST);
  }

  /** Draws what was held back; whether there was any. */
  draw(): boolean {
    if (!this.#held || this.#drawn) return false;
    this.#drawn = true;
    this.#host.requestUpdate();
    return true;
  }
}
