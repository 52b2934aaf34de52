import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { newPage, openBrowser } from './browser.js';
import { laidOut } from './until.js';

const card = JSON.stringify({ kind: 'approximate', coefficients: { A: 0, B: 4, C: 1, D: 2, E: 0 } });

/** `settled` tells in the page when the drawing library has come, or has failed. */
async function showCurve(page: Page, settled: () => unknown): Promise<{ canvases: number; drawn: boolean; vectors: string }> {
  await page.evaluate((data) => {
    const element = document.createElement('lubber-deviation-curve');
    element.setAttribute('card', data);
    document.body.replaceChildren(element);
  }, card);
  await page.waitForFunction(settled);
  await laidOut(page);
  return page.evaluate(() => {
    const root = document.querySelector('lubber-deviation-curve')?.shadowRoot;
    const vectors = root?.querySelector('.static');
    return {
      canvases: root?.querySelectorAll('canvas').length ?? 0,
      drawn: root?.querySelector('figure')?.classList.contains('drawn') ?? false,
      vectors: vectors ? getComputedStyle(vectors).display : '',
    };
  });
}

describe('a curve of deviations in a browser', () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;

  before(async () => {
    server = await serve();
    browser = await openBrowser();
  });

  after(async () => {
    await browser.close();
    server.server.close();
  });

  it('gets its canvas under a strict policy', async () => {
    const page = await newPage(browser);
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error') errors.push(message.text());
    });
    await page.goto(`${server.address}demo/chart-room/`);
    const isDrawn = (): unknown => document.querySelector('lubber-deviation-curve')?.shadowRoot?.querySelector('figure.drawn canvas');
    assert.deepEqual(await showCurve(page, isDrawn), { canvases: 1, drawn: true, vectors: 'none' });
    assert.deepEqual(errors, []);
    await page.close();
  });

  // The drawing library (1.6.32) throws at import where the browser names no valid language, as one started
  // without a locale does: seen on a real Chromium with en-US@posix.
  it('keeps its vectors, and every widget its life, where the language is none', async () => {
    const page = await newPage(browser);
    const errors: string[] = [];
    page.on('pageerror', (error) => errors.push(String(error)));
    // The library asks for the language as it is evaluated.
    await page.evaluateOnNewDocument("Object.defineProperty(Navigator.prototype, 'language', { get: () => ((globalThis.timesAsked = (globalThis.timesAsked ?? 0) + 1), 'en-US@posix') })");
    await page.goto(`${server.address}demo/chart-room/`);
    const isTried = (): unknown => (globalThis as unknown as { timesAsked?: number }).timesAsked;
    assert.deepEqual(await showCurve(page, isTried), { canvases: 0, drawn: false, vectors: 'block' });
    assert.deepEqual(errors, []);
    await page.close();
  });
});
