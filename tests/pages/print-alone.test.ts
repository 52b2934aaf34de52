import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { openBrowser, openPage } from './browser.js';
import { print, textOf } from './paper.js';

let browser: Browser;
let site: Awaited<ReturnType<typeof serve>>;
before(async () => {
  site = await serve();
  browser = await openBrowser();
});
after(async () => {
  await browser.close();
  site.server.close();
});

/** Whether each of these is to be seen, by their tags. */
function seen(page: Page, tags: readonly string[]): Promise<boolean[]> {
  return page.evaluate((names) => names.map((name) => (document.querySelector(name)?.getClientRects().length ?? 0) > 0), tags);
}

const around = ['lubber-amplitude', 'lubber-conversion', 'header', 'footer'];

/** Presses the button of the book that prints it; a page without one is an error, not a silence. */
const pressPrint = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const buttons = [...(document.querySelector('lubber-record')?.shadowRoot?.querySelectorAll('button') ?? [])];
    const button = buttons.find(({ textContent }) => textContent === 'Print the book');
    if (!button) throw new Error('the book has no button to print it');
    button.click();
  });

// Pressing the button of the book printed the whole chart room, five pages of it before the book.
test('the book is printed by itself, with the ship it belongs to, and the page is as before afterwards', { timeout: 300_000 }, async () => {
  const { page, complaints } = await openPage(browser, `${site.address}demo/chart-room/`);
  await page.waitForFunction(() => document.querySelector('lubber-record')?.shadowRoot?.querySelector('[part=transfer]'));
  // Without a printer the browser does nothing here; the paper is made by the next line.
  await page.evaluate(() => {
    window.print = () => document.documentElement.setAttribute('data-asked', '');
  });
  await pressPrint(page);
  await page.waitForSelector('[data-asked]');
  assert.deepEqual(await seen(page, around), [true, true, true, true], 'nothing vanishes from the screen');
  await page.emulateMediaType('print');
  assert.deepEqual(await seen(page, ['lubber-record', ...around]), [true, false, false, false, false]);
  const text = textOf(await print(page));
  if (text !== null) {
    assert.match(text, /Compass error record book/);
    assert.match(text, /m\.v\. Halcyon Tern/);
    assert.doesNotMatch(text, /by amplitude|by azimuth|Courses and bearings/);
  }
  // Making the paper ended the printing: the browser said so.
  assert.deepEqual(await seen(page, ['lubber-record', ...around]), [true, true, true, true, true]);
  assert.equal(await page.evaluate(() => document.querySelectorAll('[data-lubber-off-paper]').length), 0);
  assert.deepEqual(complaints.list, []);
  await page.close();
});
