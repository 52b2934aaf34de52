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
    this.#take(this.#host.getBoundingClientRect().width);
    this.#observer = new ResizeObserver(([entry]) => {
      // In the next frame: what a widget changes in its columns is itself a change of size.
      if (entry) requestAnimationFrame(() => this.#take(entry.contentRect.width));
    });
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  #take(width: number): void {
    const narrow = width > 0 && width < ONE_COLUMN;
    if (narrow === this.narrow) return;
    this.narrow = narrow;
    this.#host.requestUpdate();
  }
}
