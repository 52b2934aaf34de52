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
    // The letter of an error in a column is an element of its own.
    for (const letter of root.querySelectorAll('.letter')) {
      const before = letter.previousSibling;
      if (!before?.textContent?.trim() || !letter.textContent?.trim()) continue;
      const range = document.createRange();
      range.selectNode(before);
      const [box, own] = [range.getBoundingClientRect(), letter.getBoundingClientRect()];
      if (box.width === 0 || own.width === 0) continue;
      looked += 1;
      if (own.left < box.right - 2.5) turned.push(`${letter.textContent.trim()} stands before ${before.textContent.trim()}`);
    }
    return { turned: [...new Set(turned)], looked };
  });
}

/** What is not read from where it begins: a formula whose left end is scrolled out of sight, a slider moved away from the scale of its picture. */
export function displaced(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const root = document.querySelector('#stage > *')?.shadowRoot as ShadowRoot;
    const formulas = [...root.querySelectorAll('.working math')].filter((formula) => {
      const region = formula.closest('.scroll');
      return region && formula.getBoundingClientRect().left < region.getBoundingClientRect().left - 1;
    });
    // As in `curve-styles.ts`: the picture's scale begins fifty pixels from its left edge.
    const sliders = [...root.querySelectorAll<HTMLElement>('.slider > input[dir]')].filter((slider) => {
      const picture = slider.parentElement?.previousElementSibling?.getBoundingClientRect();
      return picture !== undefined && Math.abs(slider.getBoundingClientRect().left - picture.left - 50) > 1;
    });
    return [...formulas.map((formula) => `the beginning of ${(formula.textContent ?? '').trim()}`), ...sliders.map(({ id }) => `slider #${id}`)];
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
