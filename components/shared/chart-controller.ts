import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type uPlot from 'uplot';
import { canvasData, canvasOptions } from './canvas-chart.js';
import type { ChartPaint } from './canvas-chart.js';
import type { ChartContent } from './deviation-chart.js';

type Library = typeof uPlot;

/** What the controller asks of its widget. */
export interface ChartHost extends ReactiveControllerHost, HTMLElement {}

export interface ChartSource {
  /** Where the canvas goes: an empty element of the widget's own that nothing else writes into. */
  container(): HTMLElement | null;
  /** What is drawn: a new object when it has changed; null where there is nothing. */
  content(): ChartContent | null;
  cursor(): number | null;
  onCursor(heading: number): void;
}

/** Light and contrast of the device, which no attribute tells. */
const queries = ['(forced-colors: active)', '(prefers-color-scheme: dark)', '(prefers-contrast: more)', '(prefers-contrast: less)'];

/**
 * The drawing library, fetched when there is something to draw. It throws at import where
 * the browser names no valid language (1.6.32): the vector drawing then stays.
 */
async function fetchLibrary(): Promise<Library | null> {
  try {
    return (await import('uplot')).default;
  } catch {
    return null;
  }
}

/**
 * A canvas over the vector drawing of a widget: fetched late, sized by its container, in the
 * colours of the moment. The only importer of the drawing library.
 */
export class ChartController implements ReactiveController {
  /** Whether the canvas stands: the vector drawing is then for print only. */
  ready = false;

  readonly #host: ChartHost;
  readonly #source: ChartSource;
  #library: Promise<Library | null> | undefined;
  #chart: uPlot | null = null;
  #drawn: { content: ChartContent; look: string } | null = null;
  #sizes: ResizeObserver | undefined;
  #lights: MediaQueryList[] = [];

  constructor(host: ChartHost, source: ChartSource) {
    this.#host = host;
    this.#source = source;
    host.addController(this);
  }

  hostConnected(): void {
    this.#lights = queries.map((query) => matchMedia(query));
    for (const light of this.#lights) light.addEventListener('change', this.#onLight);
  }

  hostDisconnected(): void {
    for (const light of this.#lights) light.removeEventListener('change', this.#onLight);
    this.#drop();
  }

  hostUpdated(): void {
    void this.#draw();
  }

  readonly #onLight = (): void => {
    void this.#draw();
  };

  async #draw(): Promise<void> {
    if (!this.#source.content() || !this.#source.container()) return this.#drop();
    this.#library ??= fetchLibrary();
    const library = await this.#library;
    // The widget may have changed or gone while the library came.
    const container = this.#source.container();
    const content = this.#source.content();
    if (!library || !content || !container || !this.#host.isConnected) return;
    const paint = this.#paint(container);
    const look = [paint.font, ...['--ink', '--accent', '--paper', '--soft'].map(paint.colour)].join(' ');
    if (this.#drawn?.content !== content || this.#drawn.look !== look || !container.contains(this.#chart?.root ?? null)) {
      this.#build(library, container, content, paint);
      this.#drawn = { content, look };
    }
    this.#showCursor();
  }

  #build(library: Library, container: HTMLElement, content: ChartContent, paint: ChartPaint): void {
    this.#drop(false);
    const size = this.#sizeOf(container);
    try {
      this.#chart = new library(canvasOptions(content, paint, size, this.#source.onCursor), canvasData(content), container);
    } catch {
      // A canvas that cannot be had leaves the vector drawing.
      return this.#drop();
    }
    this.#sizes = new ResizeObserver(() => requestAnimationFrame(() => this.#resize()));
    this.#sizes.observe(container);
    this.#show(true);
  }

  #drop(hide = true): void {
    this.#sizes?.disconnect();
    this.#chart?.destroy();
    this.#chart = null;
    this.#drawn = null;
    if (hide) this.#show(false);
  }

  #show(ready: boolean): void {
    if (ready === this.ready) return;
    this.ready = ready;
    this.#host.requestUpdate();
  }

  #sizeOf(container: HTMLElement): { width: number; height: number } {
    const width = Math.max(200, Math.floor(container.getBoundingClientRect().width));
    return { width, height: Math.round(Math.min(420, Math.max(240, width * 0.5))) };
  }

  #resize(): void {
    const container = this.#source.container();
    if (!this.#chart || !container || container.getBoundingClientRect().width === 0) return;
    const size = this.#sizeOf(container);
    if (Math.abs(size.width - this.#chart.width) >= 1) this.#chart.setSize(size);
    this.#showCursor();
  }

  #showCursor(): void {
    const heading = this.#source.cursor();
    if (!this.#chart || heading === null) return;
    this.#chart.setCursor({ left: this.#chart.valToPos(heading, 'x'), top: 0 }, false);
  }

  #paint(container: HTMLElement): ChartPaint {
    const style = getComputedStyle(container);
    const letter = 0.75 * parseFloat(style.fontSize);
    return {
      colour: (name) => style.getPropertyValue(name).trim() || 'currentColor',
      font: `${letter}px ${style.fontFamily}`,
      letter,
    };
  }
}
