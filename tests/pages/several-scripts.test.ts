import assert from 'node:assert/strict';
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'puppeteer-core';
import { spanish } from '../../components/languages/es/es.js';
import { projectFolder } from '../install.js';
import { browserNames, openBrowser, openPage } from './browser.js';

const scripts = ['lubberline-sights.js', 'languages/es.js', 'lubberline-drill.js', 'lubberline-without-map.js', 'lubberline.js'];

for (const name of browserNames) {
  describe(`a page with several of the scripts, in ${name}`, () => {
    let browser: Browser;
    const folder = mkdtempSync(join(tmpdir(), 'lubberline-scripts-'));
    before(async () => {
      browser = await openBrowser(name);
      for (const script of scripts) copyFileSync(join(projectFolder, 'dist', script), join(folder, basename(script)));
    });
    after(async () => {
      await browser.close();
      rmSync(folder, { recursive: true });
    });

    const address = (file: string, asked: readonly string[]): string => {
      const body = ['amplitude', 'variation', 'swing'].map((widget) => `<lubber-${widget}></lubber-${widget}>`).join('');
      writeFileSync(join(folder, file), `<!doctype html><html lang="es-CL"><meta charset="utf-8"><title>.</title><body>${body}${asked.map((script) => `<script src="${basename(script)}"></script>`).join('')}`);
      return pathToFileURL(join(folder, file)).href;
    };

    const titles = ['amplitude', 'variation', 'swing'].map((widget) => spanish[`${widget}.title`]);

    for (const [what, asked] of [
      ['each brings what the others lack, and the language holds for all', scripts],
      ['a language may come last', ['lubberline.js', 'languages/es.js']],
      ['a language may come first', ['languages/es.js', 'lubberline.js']],
    ] as const) {
      it(what, async () => {
        const { page, complaints } = await openPage(browser, address(`${what.length}.html`, asked));
        const read = (): Promise<(string | undefined)[]> =>
          page.evaluate(async () => {
            const widgets = [...document.body.children].filter(({ localName }) => localName.startsWith('lubber-'));
            await Promise.all(widgets.map((widget) => (widget as HTMLElement & { updateComplete: Promise<unknown> }).updateComplete));
            return widgets.map((widget) => widget.shadowRoot?.querySelector('h2')?.textContent.trim());
          });
        assert.ok(titles.every(Boolean));
        assert.deepEqual(await read(), titles);
        assert.deepEqual(complaints.list, []);
        await page.close();
      });
    }
  });
}
