import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser } from 'puppeteer-core';
import type { LubberRecord } from '../../components/record/record.js';
import { serve } from '../../demo/serve.js';
import { openBrowser, openPage } from './browser.js';

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

test('the month of the invented ship: under the strict policy, with a drifting compass and the advice it leads to', { timeout: 300_000 }, async () => {
  for (const width of [320, 768, 1280]) {
    const { page, complaints } = await openPage(browser, `${site.address}demo/record/`, width);
    await page.waitForFunction(() => {
      const element = document.querySelector('lubber-record') as LubberRecord;
      return element.now === '2026-11-25T10:30:00Z' && element.entries.length === 61;
    });
    const { codes, text, wide } = await page.evaluate(async () => {
      const element = document.querySelector('lubber-record') as LubberRecord;
      await element.whole;
      await element.updateComplete;
      return {
        codes: element.result?.judgement?.advice.map(({ code }) => code) ?? [],
        text: element.shadowRoot?.textContent ?? '',
        wide: document.documentElement.scrollWidth,
      };
    });
    assert.deepEqual(codes, ['card-differs', 'drifting', 'coefficient-changed']);
    assert.match(text, /Entries not yet exported:\s61/);
    // A coefficient is written by its sign; that B is easterly on east and westerly on west is what it means (Handbook of Magnetic Compass Adjustment).
    assert.match(text, /Coefficient B is \+0\.4° by the last 24 observations; the card has −2\.1°\./);
    assert.doesNotMatch(text, /NaN|undefined|Invalid Date/);
    assert.ok(wide <= width, `${wide} px wide in a window of ${width}`);
    assert.deepEqual(complaints.list, []);
    await page.close();
  }
});
