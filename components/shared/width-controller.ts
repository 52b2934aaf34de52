import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Below this width of the widget itself its two columns become one, CSS pixels. */
const ONE_COLUMN = 640;

/** Paddings, and the gap and bounds of the left column, as the base styles have them, CSS pixels. */
const PADDING = { narrow: 32, wide: 48 } as const;
const GAP = 36;
const LEFT = { share: 0.33, least: 264, most: 304 } as const;

/** Below this the column of the answer has no room for a table or picture of full size. */
const CLOSE = 480;

/** How large pictures are drawn: as there is room, for their figures stay as large as the text. */
export type PictureSize = 'wide' | 'middle' | 'narrow';

/** Size of a letter for which the widths above are meant, CSS pixels. */
const USUAL_SIZE = 16;

/** How much larger the page's letters are than usual: twice as large leaves half the room. */
function enlargement(host: Element): number {
  const own = getComputedStyle(host).getPropertyValue('--lubber-size').trim();
  const size = parseFloat(/^[\d.]+px$/.test(own) ? own : getComputedStyle(document.documentElement).fontSize);
  return Math.max(1, size / USUAL_SIZE);
}

/** The room of the column in which the answer stands, CSS pixels. */
function roomOf(width: number): number {
  if (width < ONE_COLUMN) return width - PADDING.narrow;
  const inner = width - PADDING.wide;
  return inner - GAP - Math.min(LEFT.most, Math.max(LEFT.least, LEFT.share * inner));
}

/**
 * Tells a widget how much room it has. It is the widget's own width that counts, not the
 * window's: it may stand in a sidebar or a frame of a course.
 */
export class WidthController implements ReactiveController {
  /** One column: the answer, then the fields, then what explains it. */
  narrow = false;

  /** Two columns, but little room beside the fields. */
  close = false;

  picture: PictureSize = 'wide';

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
    const width = this.#host.getBoundingClientRect().width / enlargement(this.#host);
    if (!(width > 0)) return;
    const room = roomOf(width);
    const narrow = width < ONE_COLUMN;
    const close = !narrow && room < CLOSE;
    const picture = room >= 500 ? 'wide' : room >= 390 ? 'middle' : 'narrow';
    if (narrow === this.narrow && close === this.close && picture === this.picture) return;
    Object.assign(this, { narrow, close, picture });
    this.#host.requestUpdate();
  }
}
