import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { onTranslation } from './catalogue.js';

const themeNames = ['auto', 'day', 'dusk', 'night'] as const;
export type Theme = (typeof themeNames)[number];

type Host = ReactiveControllerHost & HTMLElement;

function themeNamed(text: string | null | undefined): Theme | null {
  return themeNames.find((name) => name === text) ?? null;
}

/** The nearest element around the host, across shadow roots, that matches a selector. */
export function closestAround(element: Element, selector: string): Element | null {
  let from: Element | null = element;
  while (from) {
    const found = from.closest(selector);
    if (found) return found;
    const root: Node = from.getRootNode();
    from = root instanceof ShadowRoot ? root.host : null;
  }
  return null;
}

/**
 * Follows what the page says of theme, density and language: `data-lubber-theme` and
 * `data-lubber-density` on an element around the widget, and `lang` and `dir`. Changes on
 * the page's root, its body and the widget itself are noticed, and languages added late; a widget's
 * own `theme` comes first.
 */
export class PageController implements ReactiveController {
  theme: Theme = 'auto';
  bridge = false;
  language = 'en';

  readonly #host: Host;
  #observer: MutationObserver | undefined;
  #stopListening: (() => void) | undefined;

  constructor(host: Host) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    // Moved about the page it may have come under another theme or language.
    this.#read();
    this.#stopListening = onTranslation(this.#read);
    this.#observer = new MutationObserver(this.#read);
    const attributeFilter = ['data-lubber-theme', 'data-lubber-density', 'lang', 'dir'];
    const { documentElement, body } = this.#host.ownerDocument;
    for (const node of [documentElement, body, this.#host]) {
      this.#observer.observe(node, { attributes: true, attributeFilter });
    }
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
    this.#stopListening?.();
  }

  readonly #read = (): void => {
    const said = (name: string): string | null | undefined => closestAround(this.#host, `[${name}]`)?.getAttribute(name);
    this.theme = themeNamed(said('data-lubber-theme')) ?? 'auto';
    this.bridge = said('data-lubber-density') === 'bridge';
    this.language = said('lang') || 'en';
    this.#host.requestUpdate();
  };
}

/** The theme an attribute asks for, or the page's. */
export function themeOf(own: string | undefined, page: Theme): Theme {
  return themeNamed(own) ?? page;
}
