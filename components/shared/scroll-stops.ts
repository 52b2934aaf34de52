import type { ReactiveController, ReactiveControllerHost } from 'lit';

type Host = ReactiveControllerHost & { readonly renderRoot: ParentNode };

/**
 * Makes what scrolls sideways by itself a stop of the keyboard, and only while it does scroll:
 * where everything is in sight a stop would be one more key to press for nothing.
 */
export class ScrollStops implements ReactiveController {
  readonly #host: Host;
  #observer: ResizeObserver | undefined;

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer = new ResizeObserver(this.#soon);
    this.hostUpdated();
  }

  hostUpdated(): void {
    for (const element of this.#scrolling()) this.#observer?.observe(element);
    this.#soon();
  }

  /** With the next frame, when the page is laid out anyway. */
  readonly #soon = (): void => {
    requestAnimationFrame(() => this.#take());
  };

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  /** What has a name to be told at the stop. */
  #scrolling(): Iterable<Element> {
    return this.#host.renderRoot?.querySelectorAll('.scroll[role]') ?? [];
  }

  #take(): void {
    for (const element of this.#scrolling()) {
      if (element.scrollWidth > element.clientWidth && !element.matches('.folded')) element.setAttribute('tabindex', '0');
      else element.removeAttribute('tabindex');
    }
  }
}
