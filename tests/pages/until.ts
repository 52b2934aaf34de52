import assert from 'node:assert/strict';
import type { Frame, Page } from 'puppeteer-core';
import { PATIENCE } from './browser.js';

/** Waits until something holds, however long a slow machine takes; asks outside the page, for what a browser does between two pages. */
export async function until(what: string, holds: () => boolean | Promise<boolean>): Promise<void> {
  const end = performance.now() + PATIENCE;
  while (!(await holds())) {
    assert.ok(performance.now() < end, `never came: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

/** Until every widget of a page has been told of the width it has now and has drawn itself: they hear of it in the frame after. */
export const laidOut = (page: Page | Frame): Promise<void> =>
  page.evaluate(async () => {
    const widgets = [...document.querySelectorAll<HTMLElement & { updateComplete?: Promise<unknown> }>('*')].filter(({ localName, shadowRoot }) => localName.startsWith('lubber-') && shadowRoot);
    // What has drawn itself in another width may have other parts to be told of theirs.
    for (let round = 0; round < 2; round += 1) {
      for (let frame = 0; frame < 2; frame += 1) await new Promise((resolve) => requestAnimationFrame(resolve));
      await Promise.all(widgets.map(({ updateComplete }) => updateComplete));
    }
  });
