/** Walks through a widget by the Tab key and notes every stop. */
import type { CDPSession, Page } from 'puppeteer-core';

export interface Stop {
  /** The place in the document's order among all that the keyboard can reach. */
  readonly place: number;
  readonly what: string;
  readonly box: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  /** The field a button belongs to: drawn at the end of the label, reached after the field. */
  readonly field: number;
  /** Contrast of what shows the focus with the ground around it; 0 where nothing does. */
  readonly contrast: number;
  /** Its thickness, CSS pixels. */
  readonly thickness: number;
  /** Whether it can be seen in the window. */
  readonly inSight: boolean;
}

/** What the keyboard should reach, in the order of the document: one of a group of radio buttons, no more. */
function reachable(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const root = document.querySelector('#stage > *')?.shadowRoot as ShadowRoot;
    const groups = new Set<string>();
    const found: string[] = [];
    let place = 0;
    for (const element of root.querySelectorAll<HTMLElement>('button, input, select, textarea, summary, a[href], [tabindex]')) {
      if (element.matches(':disabled, [tabindex="-1"]') || element.getClientRects().length === 0) continue;
      if (element.matches('[type="radio"]')) {
        const { name } = element as HTMLInputElement;
        const chosen = root.querySelector(`[name="${name}"]:checked`) ?? root.querySelector(`[name="${name}"]:not(:disabled)`);
        if (groups.has(name) || element !== chosen) continue;
        groups.add(name);
      }
      element.dataset['place'] = String(place);
      place += 1;
      found.push(`${element.localName} ${element.id || (element.getAttribute('aria-label') ?? element.textContent ?? '').trim().slice(0, 30)}`);
    }
    let field = 0;
    for (const each of root.querySelectorAll<HTMLElement>('.field')) each.dataset['field'] = String((field += 1));
    return found;
  });
}

/** The focused element of the widget; null outside it. */
function stopHere(page: Page): Promise<Stop | null> {
  return page.evaluate(() => {
    const widget = document.querySelector('#stage > *') as HTMLElement;
    const element = widget.shadowRoot?.activeElement as HTMLElement | null;
    if (document.activeElement !== widget || !element) return null;
    const parse = (text: string): number[] => (text.match(/[\d.]+/g) ?? []).map(Number);
    const luminance = (text: string): number => {
      const [r = 0, g = 0, b = 0] = parse(text).map((value) => {
        const share = value / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    };
    const ground = (from: Element | null): string => {
      for (let each = from; each; each = each.parentElement) {
        const { backgroundColor } = getComputedStyle(each);
        if (backgroundColor !== 'rgba(0, 0, 0, 0)') return backgroundColor;
      }
      return 'rgb(255, 255, 255)';
    };
    const contrast = (one: string, other: string): number => {
      const [high = 0, low = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
      return (high + 0.05) / (low + 0.05);
    };
    const own = getComputedStyle(element);
    const entry = element.closest('.entry');
    const shadow = entry ? getComputedStyle(entry).boxShadow : 'none';
    let [found, thickness] = [0, 0];
    if (own.outlineStyle !== 'none' && parseFloat(own.outlineWidth) > 0) {
      // An outline drawn within the element stands on the element's own ground.
      found = contrast(own.outlineColor, ground(parseFloat(own.outlineOffset) < 0 ? element : element.parentElement));
      thickness = parseFloat(own.outlineWidth);
    } else if (entry && shadow !== 'none') {
      found = contrast(/rgba?\([^)]*\)/.exec(shadow)?.[0] ?? '', ground(entry));
      thickness = parseFloat(/\) [-\d.]+px ([\d.]+)px/.exec(shadow)?.[1] ?? '0');
    }
    const { left, top, right, bottom } = element.getBoundingClientRect();
    const middle = document.elementFromPoint((left + right) / 2, (Math.max(0, top) + Math.min(innerHeight, bottom)) / 2);
    const field = Number((element.closest('.field') as HTMLElement | null)?.dataset['field'] ?? 0);
    return {
      place: Number(element.dataset['place'] ?? -1),
      what: `${element.localName} ${element.id || (element.getAttribute('aria-label') ?? element.textContent ?? '').trim().slice(0, 30)}`,
      box: { left: left + scrollX, top: top + scrollY, right: right + scrollX, bottom: bottom + scrollY },
      field,
      contrast: found,
      thickness,
      inSight: middle === widget,
    };
  });
}

export interface Walk {
  readonly reachable: readonly string[];
  readonly stops: readonly Stop[];
  /** Whether Tab led out again. */
  readonly left: boolean;
}

/** From before the widget through it and out. */
export async function walk(page: Page): Promise<Walk> {
  const expected = await reachable(page);
  await page.evaluate(() => {
    (document.getElementById('before') as HTMLElement).focus();
    scrollTo(0, 0);
  });
  const stops: Stop[] = [];
  for (let step = 0; step <= expected.length + 5; step += 1) {
    await page.keyboard.press('Tab');
    const stop = await stopHere(page);
    if (stop) stops.push(stop);
    else if (step > 0) return { reachable: expected, stops, left: true };
  }
  return { reachable: expected, stops, left: false };
}

export interface NamedNode {
  readonly role: string;
  readonly name: string;
  readonly value: string;
}

/** What assistive technology is told of all that can be used or is a landmark, a picture or a table. */
export async function accessibilityTree(page: Page): Promise<NamedNode[]> {
  const session: CDPSession = await page.createCDPSession();
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  return nodes
    .filter(({ ignored }) => !ignored)
    .map(({ role, name, value }) => ({ role: String(role?.value ?? ''), name: String(name?.value ?? ''), value: String(value?.value ?? '') }));
}
