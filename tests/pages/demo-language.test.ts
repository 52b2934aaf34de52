/** The language of the demo's widgets: chosen by keyboard, remembered, under the demo's own strict policy and from a folder. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { serve } from '../../demo/serve.js';
import { projectFolder } from '../install.js';
import { openBrowser, openPage } from './browser.js';

/** The label of the first field of the amplitude; the words are the Spanish catalogue's own. */
const labelled = (word: string) => `document.querySelector('lubber-amplitude')?.shadowRoot?.textContent.includes('${word}')`;

async function chooseSpanish(page: Page): Promise<void> {
  // English, Deutsch, Español: two down from the first.
  await page.focus('header select.language');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
}

describe('the language of the demo', () => {
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

  for (const [where, addressOf] of [
    ['under the strict policy', () => `${server.address}demo/chart-room/index.html`],
    ['from a folder', () => pathToFileURL(join(projectFolder, 'demo', 'chart-room', 'index.html')).href],
  ] as const) {
    it(`is chosen by keyboard and remembered, ${where}`, async () => {
      const { page, complaints } = await openPage(browser, addressOf());
      await page.waitForFunction(labelled('Latitude'));
      await chooseSpanish(page);
      await page.waitForFunction(labelled('Latitud'));
      await page.waitForFunction(`!${labelled('Latitude')}`);
      assert.equal(await page.evaluate(() => document.documentElement.lang), 'es');
      assert.equal(await page.evaluate(() => document.querySelector('h1')?.closest<HTMLElement>('[lang]')?.lang), 'en', 'the page’s own words');
      await page.reload({ waitUntil: 'load' });
      await page.waitForFunction(`!${labelled('Latitude')}`);
      assert.equal(await page.evaluate(() => document.querySelector<HTMLSelectElement>('select.language')?.value), 'es');
      assert.deepEqual(complaints.list, []);
      await page.evaluate(() => localStorage.clear());
      await page.close();
    });
  }
});
