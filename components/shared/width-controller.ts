import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Below this width of the widget itself its two columns become one, CSS pixels. */
const ONE_COLUMN = 640;

/** Paddings, and the gap and bounds of the left column, as the base styles have them, CSS pixels. */
const NARROW_PADDING = 32;
const PADDING = 48;
const GAP = 36;
const LEAST_LEFT = 264;
const MOST_LEFT = 304;
const LEFT_SHARE = 0.33;

/** Below this the column of the answer has no room for a table or picture of full size. */
const CLOSE = 480;

/** How large pictures are drawn: as there is room, for their figures stay as large as the text. */
export type PictureSize = 'wide' | 'middle' | 'narrow';

/** How much larger the page's letters are than the usual 16 pixels: twice as large leaves half the room. */
const enlargement = (): number => Math.max(1, parseFloat(getComputedStyle(document.documentElement).fontSize) / 16);

/** The room of the column in which the answer stands, CSS pixels. */
function roomOf(width: number): number {
  if (width < ONE_COLUMN) return width - NARROW_PADDING;
  const inner = width - PADDING;
  return inner - GAP - Math.min(MOST_LEFT, Math.max(LEAST_LEFT, LEFT_SHARE * inner));
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
    const width = this.#host.getBoundingClientRect().width / enlargement();
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
