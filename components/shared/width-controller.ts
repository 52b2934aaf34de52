import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Below this width of the widget itself its two columns become one, CSS pixels. */
const ONE_COLUMN = 640;

/**
 * Tells a widget whether it is narrow. It is the widget's own width that counts, not the
 * window's: it may stand in a sidebar or a frame of a course.
 */
export class WidthController implements ReactiveController {
  narrow = false;

  readonly #host: ReactiveControllerHost & HTMLElement;
  #observer: ResizeObserver | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    // Read once at once, so that the first paint is right already.
    this.#take();
    // In the next frame, and by the width it then has: what a widget changes in its columns is itself a change of size.
    this.#observer = new ResizeObserver(() => requestAnimationFrame(() => this.#take()));
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  #take(): void {
    const { width } = this.#host.getBoundingClientRect();
    const narrow = width > 0 && width < ONE_COLUMN;
    if (narrow === this.narrow) return;
    this.narrow = narrow;
    this.#host.requestUpdate();
  }
}
