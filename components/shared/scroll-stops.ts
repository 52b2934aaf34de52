import type { ReactiveController, ReactiveControllerHost } from 'lit';

type Host = ReactiveControllerHost & { readonly renderRoot: ParentNode };

/**
 * Makes what scrolls sideways by itself a stop of the keyboard, and only while it does scroll:
 * where everything is in sight a stop would be one more key to press for nothing.
 */
export class ScrollStops implements ReactiveController {
  readonly #host: Host;
  #observer: ResizeObserver | undefined;
  #watched = new WeakSet<Element>();

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    // Told when the page is laid out anyway: to ask before would lay it out once more at each key typed.
    this.#observer = new ResizeObserver(() => this.#take());
    this.#watched = new WeakSet();
    this.hostUpdated();
  }

  /** Both change what is out of sight: the room there is, and what stands in it. */
  hostUpdated(): void {
    for (const element of this.#scrolling()) {
      for (const part of [element, element.firstElementChild]) {
        if (!part || this.#watched.has(part)) continue;
        this.#watched.add(part);
        this.#observer?.observe(part);
      }
    }
  }

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
