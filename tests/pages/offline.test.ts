import assert from 'node:assert/strict';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import type { Page } from 'puppeteer-core';
import { projectFolder } from '../install.js';
import { browserNames } from './browser.js';
import { typePrintedSight } from './hosts/printed-sight.js';
import { sharedBrowser, visit } from './hosts/try-host.js';

const headline = (page: Page): Promise<string> =>
  page.evaluate(() => (document.querySelector('lubber-amplitude')?.shadowRoot?.querySelector('.headline')?.textContent ?? '').replace(/\s+/g, ' '));

async function assertAnswers(page: Page, complaints: readonly string[]): Promise<void> {
  await typePrintedSight(page, page.mainFrame());
  assert.match(await headline(page), /13\.0° E.*1\.4° E/);
  // The book opens once the place is known to it, from a folder too.
  await page.waitForFunction(() => (document.querySelector('lubber-record') as unknown as { result: unknown }).result !== null, { timeout: 5000 });
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
        // A widget takes its new width in the frame after it is told of it.
        await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(resolve, 50)))));
        assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= width, `${width} px`);
      }
      await page.close();
    });

    it('answers copied as it says itself, with one script beside it', async () => {
      const folder = mkdtempSync(join(tmpdir(), 'lubberline-offline-'));
      const text = readFileSync(join(projectFolder, 'demo/offline.html'), 'utf8');
      writeFileSync(join(folder, 'offline.html'), text.replace('<script src="../dist/lubberline.js"', '<script src="lubberline.js"'));
      copyFileSync(join(projectFolder, 'dist/lubberline.js'), join(folder, 'lubberline.js'));
      const { page, complaints, requests } = await visit(await browser(), pathToFileURL(join(folder, 'offline.html')).href);
      await assertAnswers(page, complaints);
      // Firefox reports no requests for files of a folder.
      if (requests.length > 0) assert.deepEqual(requests, ['offline.html', 'lubberline.js']);
      await page.close();
      rmSync(folder, { recursive: true });
    });
  });
}
