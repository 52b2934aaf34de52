import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Widths the map is drawn for, so that it is not drawn anew with every pixel of a window's edge. */
const STEP = 20;
const LEAST = 260;
const MOST = 1200;
/** The frame's own, on both sides; what it is is measured once it is drawn. */
const PADDING = 48;
/** About the width of an A4 page between its margins. */
const PAGE = 680;

/** Measures the room for the map: it is drawn for its width in letters of the usual 16 pixels, and grows with those of the page. */
export class MapWidth implements ReactiveController {
  /** CSS pixels where letters are 16 of them high. */
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

  readonly #toScreen = (): void => this.#take(this.#observed?.clientWidth ?? this.value);

  readonly #toPage = (): void => this.#take(Math.min(this.value, PAGE));

  hostConnected(): void {
    // Drawn anew for paper, lest its type shrink with it.
    addEventListener('beforeprint', this.#toPage);
    addEventListener('afterprint', this.#toScreen);
    this.#take(this.#host.getBoundingClientRect().width - PADDING);
  }

  hostUpdated(): void {
    const frame = this.#host.shadowRoot?.querySelector(this.#selector);
    if (!frame || frame === this.#observed) return;
    this.#observed = frame;
    this.#observer?.disconnect();
    // In the next frame: the map's new height is itself a change of size.
    this.#observer = new ResizeObserver(() => requestAnimationFrame(this.#toScreen));
    this.#observer.observe(frame);
  }

  hostDisconnected(): void {
    removeEventListener('beforeprint', this.#toPage);
    removeEventListener('afterprint', this.#toScreen);
    this.#observer?.disconnect();
    this.#observed = undefined;
  }

  #take(width: number): void {
    if (width <= 0) return;
    const letters = parseFloat(getComputedStyle(this.#observed ?? document.documentElement).fontSize);
    const value = Math.max(LEAST, Math.min(MOST, Math.floor((width * 16) / Math.max(16, letters) / STEP) * STEP));
    if (value === this.value) return;
    this.value = value;
    this.#host.requestUpdate();
  }
}
