import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { openBrowser, openPage } from './browser.js';

const pages = ['chart-room/', 'adjuster/', 'record/', 'teaching/', 'course/', 'course/amplitude.html', 'course/earths-field.html', 'course/swinging-ship.html'];

/** What the focus stands on, in the words a reader sees. */
const focused = (page: Page): Promise<string> => page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');

describe('the pages of the demo', () => {
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

  it('have one header and one navigation, reached by the Tab key from the top, and links that lead somewhere', async () => {
    const { page, complaints } = await openPage(browser, `${server.address}demo/chart-room/`);
    const [first] = await page.$$eval('nav[aria-label="Pages"]', (found) => found.map((nav) => [...nav.querySelectorAll('a')].map((way) => way.textContent ?? '')));
    assert.ok(first && first.length >= 6);
    for (const name of pages) {
      await page.goto(`${server.address}demo/${name}`);
      const ways = await page.$$eval('nav[aria-label="Pages"] a', (found) => found.map((way) => ({ words: way.textContent ?? '', address: (way as HTMLAnchorElement).href, current: way.getAttribute('aria-current') })));
      assert.deepEqual(ways.map(({ words }) => words), first, name);
      assert.equal(ways.filter(({ current }) => current !== null).length, 1, name);
      const stops: string[] = [];
      for (let step = 0; step < 6 + first.length; step += 1) {
        await page.keyboard.press('Tab');
        stops.push(await focused(page));
      }
      assert.deepEqual(stops.slice(0, 5), ['To the page', 'Day', 'Dusk', 'Night', 'Large'], name);
      assert.deepEqual(stops.filter((stop) => first.includes(stop)), first, name);
    }
    for (const address of await page.$$eval('nav[aria-label="Pages"] a', (found) => found.map((way) => (way as HTMLAnchorElement).href))) {
      assert.equal((await page.goto(address))?.status(), 200, address);
    }
    assert.deepEqual(complaints.list, []);
    await page.close();
  });

  it('go past the header to the page by its first link', async () => {
    const { page } = await openPage(browser, `${server.address}demo/chart-room/`);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    assert.equal(await page.evaluate(() => document.activeElement?.id), 'main');
    await page.close();
  });

  it('keep the light chosen with a key on the next page', async () => {
    const { page } = await openPage(browser, `${server.address}demo/teaching/`);
    for (let step = 0; step < 4; step += 1) await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    assert.equal(await page.$eval('[data-theme="night"]', (button) => button.getAttribute('aria-pressed')), 'true');
    await page.goto(`${server.address}demo/adjuster/`);
    assert.equal(await page.evaluate(() => document.documentElement.dataset['lubberTheme']), 'night');
    await page.close();
  });

  it('print their words in black or dark grey on white, links too, in whatever light they are on the screen', async () => {
    const { page } = await openPage(browser, `${server.address}demo/guides/administrator.html`);
    await page.emulateMediaType('print');
    for (const light of ['day', 'dusk', 'night']) {
      await page.evaluate((theme) => (document.documentElement.dataset['lubberTheme'] = theme), light);
      const found = await page.evaluate(() => {
        const shown = [...document.querySelectorAll('body *')].filter((each) => each.getClientRects().length > 0 && each.textContent?.trim());
        return { inks: [...new Set(shown.map((each) => getComputedStyle(each).color))].sort(), ground: getComputedStyle(document.documentElement).backgroundColor };
      });
      assert.deepEqual(found, { inks: ['rgb(0, 0, 0)', 'rgb(51, 51, 51)'], ground: 'rgb(255, 255, 255)' }, light);
    }
    await page.close();
  });
});
