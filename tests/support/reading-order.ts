/** Whether figures read from left to right, and pictures stand as they are, on a page that does not. */
import type { Page } from 'puppeteer-core';

/** Figures whose letters do not follow each other from left to right, as `12.3° E: 0 40 8`; empty where all do. */
export function turnedFigures(page: Page): Promise<{ turned: string[]; looked: number }> {
  return page.evaluate(() => {
    const root = document.querySelector('#stage > *')?.shadowRoot as ShadowRoot;
    const figure = /[−+±]? ?\d[\d.,:°′″−-]*\d[°′″]*( ?[NSEW]\b)?|[−+±] ?\d[°′″]*( ?[NSEW]\b)?|\d[°′″]( ?[NSEW]\b)?/g;
    const turned: string[] = [];
    let looked = 0;
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent || parent.closest('.spoken, option, textarea, style, text[transform]')) continue;
      for (const match of (node.textContent ?? '').matchAll(figure)) {
        const boxes = [...match[0]].map((_, place) => {
          const range = document.createRange();
          range.setStart(node, match.index + place);
          range.setEnd(node, match.index + place + 1);
          return range.getClientRects()[0];
        });
        const seen = boxes.flatMap((box) => (box && box.width > 0.1 ? [box] : []));
        if (seen.length < 2) continue;
        looked += 1;
        // The next stands at the end of the one before, unless it begins a line.
        const parted = ({ top, left }: DOMRect, before = seen[0] as DOMRect): boolean => Math.abs(top - before.top) < 6 && Math.abs(left - before.right) > 2.5;
        if (seen.some((box, place) => place > 0 && parted(box, seen[place - 1]))) {
          turned.push(`${match[0]} in ${parent.localName}.${parent.getAttribute('class') ?? ''} “${(parent.textContent ?? '').trim().slice(0, 60)}”`);
        }
      }
    }
    return { turned: [...new Set(turned)], looked };
  });
}

/** Where everything drawn stands in its picture, by picture: what is no longer the same has been mirrored or moved. */
export function picturePlaces(page: Page): Promise<string[][]> {
  return page.evaluate(() => {
    const root = document.querySelector('#stage > *')?.shadowRoot as ShadowRoot;
    return [...root.querySelectorAll('svg')].flatMap((picture) => {
      const { left, top, width } = picture.getBoundingClientRect();
      if (width === 0) return [];
      const whole = 300 / width;
      return [
        [...picture.querySelectorAll('text, line, path, circle, rect')].flatMap((each) => {
          const box = each.getBoundingClientRect();
          if (box.width === 0 && box.height === 0) return [];
          return `${each.localName} ${(each.textContent ?? '').trim()} ${[box.left - left, box.top - top, box.width].map((at) => Math.round(at * whole)).join(' ')}`;
        }),
      ];
    });
  });
}
