import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** What stands beside the picture in two columns, CSS pixels: paddings, the gap, and the bounds of the left column. */
const BESIDE = 24 + 36 + 24;
const LEFT = { share: 0.34, least: 264, most: 320 } as const;
const MARGINS = 32;
const LEAST = 240;
const MOST = 640;

type Host = ReactiveControllerHost & HTMLElement & { readonly width: { readonly narrow: boolean } };

/**
 * How wide the picture is to be drawn, so that a unit of the drawing is a pixel of the screen
 * and its figures stay as large as the text around, whatever room the widget has.
 */
export class PictureWidth implements ReactiveController {
  units = 520;

  readonly #host: Host;
  #observer: ResizeObserver | undefined;

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#take();
    // In the next frame: what is drawn anew is itself a change of size, and Firefox reports that as an error of the page.
    this.#observer = new ResizeObserver(() => requestAnimationFrame(() => this.#take()));
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  #take(): void {
    const { width } = this.#host.getBoundingClientRect();
    if (width === 0) return;
    const left = Math.min(LEFT.most, Math.max(LEFT.least, LEFT.share * (width - 48)));
    const room = width - (this.#host.width.narrow ? MARGINS : BESIDE + left);
    const units = Math.round(Math.min(MOST, Math.max(LEAST, room)));
    if (units === this.units) return;
    this.units = units;
    this.#host.requestUpdate();
  }
}
