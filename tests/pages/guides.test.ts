import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { exerciseKinds } from '../../core/drill/exercise.js';
import { magneticModels } from '../../core/field/magnetic-models.js';
import { serve } from '../../demo/serve.js';
import { projectFolder } from '../install.js';
import { axeFindings } from '../support/axe-run.js';
import { openBrowser, openPage } from './browser.js';

const names = readdirSync(join(projectFolder, 'demo/guides')).filter((name) => name.endsWith('.html'));

describe('the guides', () => {
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

  it('are listed in their index', async () => {
    const { page } = await openPage(browser, `${server.address}demo/guides/`);
    const listed = await page.$$eval('main a', (ways) => ways.map((way) => way.getAttribute('href') ?? ''));
    for (const name of names) if (name !== 'index.html') assert.ok(listed.includes(name), name);
    await page.close();
  });

  for (const name of names) {
    it(`${name}: links that lead somewhere, no sideways scrolling, accessible by day and by night, no complaint`, async () => {
      const { page, complaints } = await openPage(browser, `${server.address}demo/guides/${name}`);
      const ways = await page.$$eval('main a', (found) => found.map((way) => (way as HTMLAnchorElement).href));
      for (const way of ways) assert.equal((await fetch(way)).status, 200, way);
      for (const light of ['day', 'night']) {
        await page.evaluate((theme) => (document.documentElement.dataset['lubberTheme'] = theme), light);
        assert.deepEqual(await axeFindings(page, 'all', 'html'), [], light);
      }
      for (const width of [320, 768, 1280]) {
        await page.setViewport({ width, height: 900 });
        assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= width, `${width} px`);
      }
      assert.deepEqual(complaints.list, []);
      await page.close();
    });
  }

  it('name every magnetic model and every kind of exercise that there is', async () => {
    const { page } = await openPage(browser, `${server.address}demo/guides/policy.html`);
    const policy = await page.$eval('main', (main) => main.textContent ?? '');
    for (const { name, until } of magneticModels) {
      assert.ok(policy.includes(name), name);
      assert.ok(policy.includes(`1 January ${until}`), String(until));
    }
    await page.goto(`${server.address}demo/guides/provider.html`);
    const provider = await page.$$eval('main code', (found) => found.map((each) => each.textContent));
    for (const kind of exerciseKinds) assert.ok(provider.includes(kind), kind);
    await page.close();
  });
});
