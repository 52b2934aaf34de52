import { nothing } from 'lit';
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from 'lit';

/** The longest that what is closed waits for the browser to be idle, milliseconds. */
const LONGEST = 200;

/**
 * Holds back what stands behind a closed summary until the answer is on the screen: a sixth of
 * the time a widget needs to start. Then it is there whether opened or not, for a search in the page.
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
  view(open: boolean, content: () => TemplateResult): TemplateResult | typeof nothing {
    if (open || this.#drawn) return content();
    this.#held = true;
    return nothing;
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
