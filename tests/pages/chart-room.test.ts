import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { openBrowser, openPage } from './browser.js';
import { laidOut } from './until.js';

/** The text of an element inside the amplitude widget of the page. */
function inside(page: Page, selector: string): Promise<string> {
  return page.evaluate((sought) => {
    const found = document.querySelector('lubber-amplitude')?.shadowRoot?.querySelector(sought);
    return (found?.textContent ?? '').replace(/\s+/g, ' ').trim();
  }, selector);
}

/** Which field of the widget has the focus. */
function focused(page: Page): Promise<string> {
  return page.evaluate(() => document.querySelector('lubber-amplitude')?.shadowRoot?.activeElement?.id ?? '');
}

/** Goes to a field by the Tab key alone and writes over what stands there. */
async function typeInto(page: Page, name: string, text: string): Promise<void> {
  for (let step = 0; step < 40 && (await focused(page)) !== name; step += 1) await page.keyboard.press('Tab');
  assert.equal(await focused(page), name);
  await page.keyboard.down('Control');
  await page.keyboard.press('KeyA');
  await page.keyboard.up('Control');
  await page.keyboard.type(text);
}

describe('the chart room', () => {
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

  // Deck licence question bank (1981 almanac data): 11 January 1981, latitude 24-30.0N, Sun at 101.0 psc on the
  // celestial horizon at 14:55 UTC, variation 11.6E; the matching printed choice is deviation 1.4E. The longitude is
  // not printed with it: one that puts the Sun on the horizon at that time.
  it('gives the printed deviation of a Sun amplitude typed with real keys, under a strict policy, without a request', async () => {
    const { page, complaints } = await openPage(browser, `${server.address}demo/chart-room/`);
    // The browser asks for the page's mark when it likes; it is no doing of the widget.
    const requests: string[] = [];
    page.on('request', (request) => {
      if (!request.url().endsWith('mark.svg')) requests.push(request.url());
    });
    for (const [name, text] of [
      ['latitude', '24-30.0N'],
      ['longitude', '121-15W'],
      ['date', '1981-01-11'],
      ['time', '14:55'],
      ['bearing', '101.0'],
      ['heading', '180'],
      ['variation', '11.6E'],
    ] as const) {
      await typeInto(page, name, text);
    }
    await page.keyboard.press('Tab');
    const headline = await inside(page, '.headline');
    assert.match(headline, /Error 13\.0° E/);
    assert.match(headline, /deviation found 1\.4° E/);
    assert.deepEqual(complaints.list, []);
    assert.deepEqual(requests, []);
    await page.close();
  });

  // It took sixty presses of Tab from the top of the page to the record book.
  it('has ways to its parts: the record book is ten keys away', async () => {
    const { page } = await openPage(browser, `${server.address}demo/chart-room/`);
    await page.waitForFunction(() => document.querySelector('lubber-record')?.shadowRoot?.querySelector('summary'));
    for (const key of ['Tab', 'Enter', 'Tab', 'Tab', 'Tab', 'Tab', 'Tab', 'Enter', 'Tab'] as const) await page.keyboard.press(key);
    assert.equal(await page.evaluate(() => document.activeElement?.localName), 'lubber-record');
    await page.close();
  });

  // For most of a second an empty book without a ship's name stood there, and remained in the browser's database.
  it('opens the book of the ship and no other', async () => {
    const { page } = await openPage(browser, `${server.address}demo/chart-room/`);
    await page.waitForFunction(() => document.querySelector('lubber-record')?.shadowRoot?.querySelector('[part=transfer]'));
    const named = await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
    assert.deepEqual(named, ['lubberline-record:m.v. Halcyon Tern, standard']);
    await page.close();
  });

  // Answer and bearing lay more than a screen apart: who typed the bearing did not see the error.
  it('shows the bearing of an amplitude and its answer in one window of a bridge PC', async () => {
    const { page } = await openPage(browser, `${server.address}demo/chart-room/`, 1280, 800);
    const apart = await page.evaluate(() => {
      const root = document.querySelector('lubber-amplitude')?.shadowRoot;
      const [answer, bearing] = ['.answer', '#bearing'].map((part) => root?.querySelector(part)?.getBoundingClientRect());
      return answer && bearing ? bearing.bottom - answer.top : Infinity;
    });
    assert.ok(apart < 600, `${apart} px from the answer to the bearing`);
    await page.close();
  });

  for (const width of [320, 768, 1280]) {
    it(`does not scroll sideways at ${width} px`, async () => {
      const { page } = await openPage(browser, `${server.address}demo/chart-room/`, width);
      await page.waitForFunction(() => document.querySelector('lubber-record')?.shadowRoot?.querySelector('details'));
      await page.evaluate(() => {
        for (const element of document.querySelectorAll('*')) {
          for (const details of element.shadowRoot?.querySelectorAll('details') ?? []) details.open = true;
        }
      });
      await laidOut(page);
      assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= width);
      await page.close();
    });
  }
});
