import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser } from 'puppeteer-core';
import type { LubberIron } from '../../components/iron/iron.js';
import { serve } from '../../demo/serve.js';
import { axeFindings } from '../support/axe-run.js';
import { openBrowser, openPage } from './browser.js';

describe('the lesson of the teaching bench', () => {
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

  it('names stations and ports of the bench, begins as it says, and is accessible', async () => {
    const { page, complaints } = await openPage(browser, `${server.address}demo/teaching/`);
    await page.waitForFunction(() => document.querySelector<LubberIron>('lubber-iron')?.shadowRoot?.querySelector('.answer'));
    await page.click('main summary');
    const told = await page.$$eval('main li strong', (names) => names.map((name) => name.textContent ?? ''));
    const there = await page.$eval('lubber-iron', (bench) =>
      [...(bench.shadowRoot?.querySelectorAll('[role=tab], option') ?? [])].map((each) => (each.textContent ?? '').trim()),
    );
    assert.equal(told.length, 5);
    for (const name of told) {
      const [, station = '', port = ''] = /^(Take her to…|\w+)(?: again)?(?: (.+))?\.$/.exec(name) ?? [];
      assert.ok(there.includes(station), name);
      if (port) assert.ok(there.includes(port), name);
    }
    const { iron, field, largest } = await page.$eval('lubber-iron', (bench) => {
      const result = (bench as LubberIron).result;
      return { iron: result?.iron, field: result?.field, largest: result?.largest };
    });
    assert.equal(iron?.P, 2000, 'nT');
    assert.equal(iron?.c, 0.08);
    assert.ok(field && field.z < 0, 'Z points up');
    assert.ok(largest && largest.permanentB > 0 && -largest.inducedB > largest.permanentB, 'the induced share is westerly and larger');
    assert.deepEqual(await axeFindings(page, 'all', 'html'), []);
    await page.setViewport({ width: 320, height: 900 });
    // The widgets take their new width a frame later.
    await page.waitForFunction(() => document.documentElement.scrollWidth <= 320);
    assert.deepEqual(complaints.list, []);
  });
});
