import assert from 'node:assert/strict';
import { copyFileSync, cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer-core';
import { projectFolder } from '../install.js';
import { browserNames } from './browser.js';
import { laidOut } from './until.js';
import { typePrintedSight } from './hosts/printed-sight.js';
import { sharedBrowser, visit } from './hosts/try-host.js';

const headline = (page: Page): Promise<string> =>
  page.evaluate(() => (document.querySelector('lubber-amplitude')?.shadowRoot?.querySelector('.headline')?.textContent ?? '').replace(/\s+/g, ' '));

async function assertAnswers(page: Page, complaints: readonly string[]): Promise<void> {
  await typePrintedSight(page, page.mainFrame());
  assert.match(await headline(page), /13\.0° E.*1\.4° E/);
  // The book opens once the place is known to it, from a folder too.
  await page.waitForFunction(() => (document.querySelector('lubber-record') as unknown as { result: unknown }).result !== null);
  assert.deepEqual(complaints, []);
}

for (const name of browserNames) {
  describe(`the page without a network, in ${name}`, () => {
    const browser = sharedBrowser(name);

    it('answers where it lies, opened as a file', async () => {
      const { page, complaints } = await visit(await browser(), pathToFileURL(join(projectFolder, 'demo/offline.html')).href);
      await assertAnswers(page, complaints);
      for (const width of [320, 768, 1280]) {
        await page.setViewport({ width, height: 900 });
        await laidOut(page);
        assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= width, `${width} px`);
      }
      await page.close();
    });

    it('answers copied as it says itself, with one script, and the chart room beside it', async () => {
      const folder = mkdtempSync(join(tmpdir(), 'lubberline-offline-'));
      cpSync(join(projectFolder, 'demo'), join(folder, 'demo'), { recursive: true });
      mkdirSync(join(folder, 'dist'));
      copyFileSync(join(projectFolder, 'dist/lubberline.js'), join(folder, 'dist/lubberline.js'));
      for (const path of ['demo/offline.html', 'demo/chart-room/index.html']) {
        const { page, complaints } = await visit(await browser(), pathToFileURL(join(folder, path)).href);
        await assertAnswers(page, complaints);
        await page.click('[data-theme="night"]');
        assert.equal(await page.evaluate(() => document.documentElement.dataset['lubberTheme']), 'night');
        await page.close();
      }
      rmSync(folder, { recursive: true });
    });
  });
}
