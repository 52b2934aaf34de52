/** How large what is pressed is. */
import type { Page } from 'puppeteer-core';

export interface Target {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** Everything of a widget a finger may aim at, with the label around it where that is pressed too. */
export function targets(page: Page): Promise<Target[]> {
  return page.evaluate(() => {
    const root = document.querySelector('#stage > *')?.shadowRoot as ShadowRoot;
    const found = [...root.querySelectorAll<HTMLElement>('button, summary, input, select, textarea, a[href], [tabindex="0"]')];
    return found
      .filter((element) => element.getClientRects().length > 0 && !element.matches(':disabled, .scroll, .folded'))
      .map((element) => {
        const pressed = element.matches('[type="radio"], [type="checkbox"]') ? (element.closest('label') ?? element) : element;
        const { width, height } = pressed.getBoundingClientRect();
        const name = `${element.localName}#${element.id} ${element.getAttribute('aria-label') ?? (element.textContent ?? '').trim().slice(0, 30)}`;
        return { name, width: Math.round(width * 10) / 10, height: Math.round(height * 10) / 10 };
      });
  });
}
