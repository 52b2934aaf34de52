import type { LubberElement } from '../shared/lubber-element.js';
import { printAlone } from '../shared/print-alone.js';

/** Whether a widget is being printed, by its own button or by the browser: paper shows all that a screen shows in pages. */
export class PaperMode {
  on = false;

  readonly #host: LubberElement;

  constructor(host: LubberElement) {
    this.#host = host;
    host.addController(this);
  }

  readonly #before = (): void => this.#turn(true);
  readonly #after = (): void => this.#turn(false);

  #turn(on: boolean): void {
    this.on = on;
    this.#host.requestUpdate();
  }

  hostConnected(): void {
    addEventListener('beforeprint', this.#before);
    addEventListener('afterprint', this.#after);
  }

  hostDisconnected(): void {
    removeEventListener('beforeprint', this.#before);
    removeEventListener('afterprint', this.#after);
  }

  /** Prints the widget by itself. */
  async print(): Promise<void> {
    this.#turn(true);
    await this.#host.updateComplete;
    printAlone(this.#host);
    this.#turn(false);
  }
}
