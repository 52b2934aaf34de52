import assert from 'node:assert/strict';
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { it } from 'node:test';
import { pathToFileURL } from 'node:url';
import { projectFolder } from '../install.js';
import { newPage, openBrowser } from './browser.js';

// uPlot asks for number formats of navigator.language as soon as it is evaluated, and throws where that is none.
it('the script evaluates the chart library only when a chart is drawn', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lubberline-late-'));
  copyFileSync(join(projectFolder, 'dist/lubberline.js'), join(folder, 'lubberline.js'));
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>.</title><body><lubber-amplitude></lubber-amplitude><script src="lubberline.js"></script>');
  const browser = await openBrowser();
  const page = await newPage(browser);
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(String(error)));
  await page.evaluateOnNewDocument(`
    globalThis.timesAsked = 0;
    Object.defineProperty(navigator, 'language', { get: () => (globalThis.timesAsked += 1) && 'no language' });
  `);
  await page.goto(pathToFileURL(join(folder, 'index.html')).href);
  const seen = await page.evaluate(() => ({
    asked: (globalThis as unknown as { timesAsked: number }).timesAsked,
    drawn: document.querySelector('lubber-amplitude')?.shadowRoot?.querySelector('h2') !== null,
  }));
  await browser.close();
  rmSync(folder, { recursive: true });
  assert.deepEqual([seen, errors], [{ asked: 0, drawn: true }, []]);
});
