import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { serve, strictPolicy } from '../../demo/serve.js';
import { newPage, openBrowser, openPage } from './browser.js';
import { until } from './until.js';

/** Presses a button as soon as it is there. */
async function press(page: Page, tag: string, label: string): Promise<void> {
  await page.waitForFunction(
    (widget, text) => {
      const buttons = document.querySelector(widget)?.shadowRoot?.querySelectorAll('button') ?? [];
      const button = [...buttons].find(({ textContent }) => textContent === text);
      if (button) button.click();
      return button !== undefined;
    },
    {},
    tag,
    label,
  );
}

describe('a company page', () => {
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

  it('is served under a policy without inline script, inline style or connection', async () => {
    const page = await newPage(browser);
    const response = await page.goto(`${server.address}demo/intranet/`);
    assert.equal(response?.headers()['content-security-policy'], strictPolicy);
    assert.match(strictPolicy, /default-src 'none'/);
    assert.match(strictPolicy, /connect-src 'none'/);
    assert.doesNotMatch(strictPolicy, /unsafe/);
    await page.close();
  });

  // By a host name a plain page is no secure context: the poorer of the two.
  for (const host of ['127.0.0.1', 'shipnet']) {
    it(`hears what is offered and shows it, by ${host}`, async () => {
      const { page, complaints } = await openPage(browser, `${server.address.replace('127.0.0.1', host)}demo/intranet/`);
      assert.equal(await page.evaluate(() => globalThis.isSecureContext), host === '127.0.0.1');
      await press(page, 'lubber-amplitude', 'Enter in the record');
      const shown = await page.waitForFunction(() => document.getElementById('stored')?.textContent);
      const stored = JSON.parse(String(await shown.jsonValue())) as Record<string, unknown>;
      assert.equal(stored['method'], 'amplitude');
      assert.equal(stored['bearing'], 113.5);
      assert.deepEqual(complaints.list, []);
      await page.close();
    });
  }

  it('aboard a ship with a book the sight is entered in it', async () => {
    const { page, complaints } = await openPage(browser, `${server.address}demo/chart-room/`);
    await press(page, 'lubber-amplitude', 'Enter in the record');
    const said = async (): Promise<string> =>
      page.evaluate(() => (document.querySelector('lubber-record')?.shadowRoot?.textContent ?? '').replace(/\s+/g, ' '));
    await until('the entry is saved', async () => /Saved as No\. 1/.test(await said()));
    assert.match(await said(), /Saved as No\. 1/);
    assert.match(await said(), /One entry is not yet exported/);
    assert.deepEqual(complaints.list, []);
    await page.close();
  });
});
