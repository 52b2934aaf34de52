import { noChange } from 'lit';
import { AsyncDirective, directive } from 'lit/async-directive.js';
import type { ElementPart } from 'lit/directive.js';

/**
 * Makes what scrolls sideways by itself a stop of the keyboard, and only while it does scroll:
 * where everything is in sight a stop would be one more key to press for nothing.
 */
class ScrollStop extends AsyncDirective {
  #element: Element | undefined;
  #observer: ResizeObserver | undefined;

  render(): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart): typeof noChange {
    if (this.#element !== element) {
      this.#element = element;
      this.#watch();
    } else {
      // The content has been drawn anew, and may have another width.
      requestAnimationFrame(() => this.#take());
    }
    return noChange;
  }

  protected override disconnected(): void {
    this.#observer?.disconnect();
    this.#element?.removeAttribute('tabindex');
  }

  protected override reconnected(): void {
    this.#watch();
  }

  #watch(): void {
    this.#observer?.disconnect();
    if (!this.#element) return;
    // In the next frame: a stop set is itself no change of size, but what it stands in may still be drawn.
    this.#observer = new ResizeObserver(() => requestAnimationFrame(() => this.#take()));
    this.#observer.observe(this.#element);
  }

  #take(): void {
    const element = this.#element;
    if (!element) return;
    if (element.scrollWidth > element.clientWidth) element.setAttribute('tabindex', '0');
    else element.removeAttribute('tabindex');
  }
}

/** For an element of class `scroll` with a role and a name. */
export const scrollStop = directive(ScrollStop);
