import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Widths the map is drawn for, so that it is not drawn anew with every pixel of a window's edge. */
const STEP = 20;
const LEAST = 260;
const MOST = 1200;

/** Measures the room for the map: it is drawn for its width, so that its type keeps its size. */
export class MapWidth implements ReactiveController {
  /** CSS pixels. */
  value = 640;

  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #selector: string;
  #observer: ResizeObserver | undefined;
  #observed: Element | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement, selector: string) {
    this.#host = host;
    this.#selector = selector;
    host.addController(this);
  }

  hostConnected(): void {
    this.#take(this.#host.getBoundingClientRect().width - 32);
  }

  hostUpdated(): void {
    const frame = this.#host.shadowRoot?.querySelector(this.#selector);
    if (!frame || frame === this.#observed) return;
    this.#observed = frame;
    this.#observer?.disconnect();
    this.#observer = new ResizeObserver(([entry]) => {
      if (entry) this.#take(entry.contentRect.width);
    });
    this.#observer.observe(frame);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    this.#observed = undefined;
  }

  #take(width: number): void {
    if (width <= 0) return;
    const value = Math.max(LEAST, Math.min(MOST, Math.floor(width / STEP) * STEP));
    if (value === this.value) return;
    this.value = value;
    this.#host.requestUpdate();
  }
}
