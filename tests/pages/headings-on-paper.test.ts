/** Pages to read, printed: no heading stays behind at the foot of a sheet. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { projectFolder } from '../install.js';
import { browserNames, openBrowser, openPage } from './browser.js';
import { pageTexts, print, wordsOf } from './paper.js';

const guides = readdirSync(join(projectFolder, 'demo/guides')).filter((name) => name.endsWith('.html')).map((name) => `guides/${name}`);
// Of the reference those in which a heading or the name of the text box stood alone: all pages are made alike.
const names = [...guides, 'reference/lubber-azimuth.html', 'reference/lubber-record.html'];
const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

for (const browserName of browserNames) {
  describe(`headings on paper in ${browserName}`, () => {
    let browser: Browser;
    let server: Awaited<ReturnType<typeof serve>>;

    before(async () => {
      server = await serve();
      browser = await openBrowser(browserName);
    });

    after(async () => {
      await browser.close();
      server.server.close();
    });

    for (const name of names) {
      it(`${name}: each stands above what it heads, wherever the sheet ends`, async (context) => {
        const { page } = await openPage(browser, `${server.address}demo/${name}`);
        const headings = (await page.$$eval('h2, h3, label', (found) => found.map((each) => each.textContent ?? ''))).map(plain);
        // Where a sheet ends hangs on the letters of the machine: a few lines more at the top try every place.
        for (const lines of [0, 2, 6]) {
          await page.$eval('h1', (title, tall) => { (title as HTMLElement).style.paddingBlockStart = `${tall}rem`; }, lines * 1.5);
          const sheets = pageTexts(await print(page));
          if (!sheets) return context.skip('no pdftotext');
          for (const sheet of sheets) {
            const last = headings.find((heading) => plain(sheet).endsWith(heading));
            assert.equal(last, undefined, `${lines} lines more`);
          }
        }
        await page.close();
      });
    }

    // Firefox left "Ship’s position and" at the foot of one column and began the next with "time".
    it('a heading among the fields of a widget stands whole in its column', async (context) => {
      const { page } = await openPage(browser, `${server.address}demo/chart-room/`);
      for (const lines of [0, 1, 2, 3]) {
        await page.$eval('h1', (title, tall) => { (title as HTMLElement).style.paddingBlockStart = `${tall}rem`; }, lines * 1.5);
        const words = wordsOf(await print(page));
        if (!words) return context.skip('no pdftotext');
        const first = words.findIndex(({ text }, place) => text === 'Ship’s' && words[place + 1]?.text === 'position' && words[place + 2]?.text === 'and');
        const from = words[first];
        assert.ok(from, 'the heading is printed');
        // A column is a third of the sheet; a line of the heading less than 20 points high.
        const last = words.find(({ page: sheet, text, x, y }) => text === 'time' && sheet === from.page && x >= from.x - 1 && x < from.x + 170 && y >= from.y - 1 && y < from.y + 20);
        assert.ok(last, `${lines} lines more`);
      }
      await page.close();
    });
  });
}
