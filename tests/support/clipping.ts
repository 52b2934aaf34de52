/** What of a widget is cut off, hidden under something else, or moves the page sideways. */
import type { Page } from 'puppeteer-core';

/** In words, what has no room; empty where everything has. */
export function cramped(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const root = document.querySelector('#stage > *')?.shadowRoot as ShadowRoot;
    const room = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth > room) found.push(`the page is ${document.documentElement.scrollWidth} wide in ${room}`);
    const named = (element: Element): string => `${element.localName}${element.id ? `#${element.id}` : ''}.${element.getAttribute('class') ?? ''} “${(element.textContent ?? '').trim().slice(0, 40)}”`;
    // What scrolls by itself, and what is there to be heard only.
    const apart = (element: Element): boolean => element.closest('.scroll, .spoken, .folded, svg, math, textarea, option, [hidden]') !== null;
    // A link to be copied is as long as it is, and its field can be scrolled.
    const isLink = (input: HTMLInputElement): boolean => input.readOnly && input.value.length > 30;
    const spanOf = (element: Element): DOMRect => {
      const range = document.createRange();
      range.selectNodeContents(element);
      return range.getBoundingClientRect();
    };
    for (const region of root.querySelectorAll<HTMLElement>('.scroll')) {
      // Of a scroll bar that stands upright the region is a few pixels narrower inside than outside.
      if (region.offsetWidth > region.clientWidth) found.push(`${named(region)} scrolls upwards`);
      const { left, right } = region.getBoundingClientRect();
      for (const caption of region.querySelectorAll('caption:not(.spoken)')) {
        const box = spanOf(caption);
        if (box.width > 0 && (box.left < left - 1 || box.right > right + 1)) found.push(`${named(caption)} is out of sight`);
      }
    }
    for (const row of root.querySelectorAll('thead tr')) {
      const cells = [...row.children].map((cell) => ({ cell, box: spanOf(cell) })).filter(({ box }) => box.width > 0).sort((a, b) => a.box.left - b.box.left);
      for (const [place, { cell, box }] of cells.entries()) {
        const next = cells[place + 1];
        if (next && next.box.left - box.right < 3 && next.box.top < box.bottom && box.top < next.box.bottom) found.push(`${named(cell)} runs into ${named(next.cell)}`);
      }
    }
    const texts: { element: Element; box: DOMRect }[] = [];
    for (const element of root.querySelectorAll<HTMLElement>('*')) {
      if (apart(element) || element.getClientRects().length === 0) continue;
      const box = element.getBoundingClientRect();
      if (box.right > room + 1) found.push(`${named(element)} reaches ${Math.round(box.right)} of ${room}`);
      if (element instanceof HTMLInputElement && element.type === 'text' && !isLink(element) && element.scrollWidth > element.clientWidth + 1) found.push(`${named(element)} cuts off “${element.value}”`);
      if (!(element instanceof HTMLInputElement) && !(element instanceof HTMLSelectElement) && getComputedStyle(element).overflow !== 'visible' && element.scrollWidth > element.clientWidth + 1) found.push(`${named(element)} is cut off`);
      for (const node of element.childNodes) {
        if (node.nodeType !== Node.TEXT_NODE || !node.textContent?.trim()) continue;
        const range = document.createRange();
        range.selectNodeContents(node);
        for (const each of range.getClientRects()) if (each.width > 1) texts.push({ element, box: each });
      }
    }
    texts.sort((a, b) => a.box.top - b.box.top);
    for (const [place, one] of texts.entries()) {
      for (const other of texts.slice(place + 1)) {
        if (other.box.top >= one.box.bottom - 3) break;
        if (one.element.contains(other.element) || other.element.contains(one.element)) continue;
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        // Boxes of letters are taller than the letters.
        if (across > 2 && down > 0.45 * Math.min(one.box.height, other.box.height)) found.push(`${named(one.element)} lies over ${named(other.element)}`);
      }
    }
    return [...new Set(found)].slice(0, 12);
  });
}

/** Line height, and space between letters and words, as WCAG 1.4.12 wants them borne. */
export function spaceText(page: Page): Promise<void> {
  return page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-block-end: 2em !important; }');
    const root = document.querySelector('#stage > *')?.shadowRoot as ShadowRoot;
    root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
  });
}
