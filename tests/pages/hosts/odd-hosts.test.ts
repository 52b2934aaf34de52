import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import type { Frame } from 'puppeteer-core';
import { projectFolder } from '../../install.js';
import { browserNames } from '../browser.js';
import { siteOf } from './host-site.js';
import { assertGoodGuest, sharedBrowser, visit, whileServed } from './try-host.js';

/** The text of a widget as it is shown. */
const textOf = (frame: Frame, tag: string): Promise<string> =>
  frame.evaluate((name) => (document.querySelector(name)?.shadowRoot?.querySelector('.frame')?.textContent ?? '').replace(/\s+/g, ' '), tag);

for (const name of browserNames) {
  describe(`a page that is odd, in ${name}`, () => {
    const browser = sharedBrowser(name);

    it('a frame of a course that may run scripts and nothing else: no origin, no storage', async () => {
      const site = siteOf('framed');
      await whileServed(site.folder, '', async (address) => {
        const seen = await visit(await browser(), `${address}index.html`, 'inside.html');
        const refused = await seen.frame.evaluate(() => {
          try {
            return String(localStorage.length);
          } catch (error) {
            return (error as Error).name;
          }
        });
        assert.equal(refused, 'SecurityError');
        await assertGoodGuest(seen, { files: ['index.html', 'framed.css', 'inside.html', 'lubberline.js', 'hear.js'] });
        assert.match(await textOf(seen.frame, 'lubber-record'), /gone when this page closes/);
        await seen.page.close();
      });
      site.remove();
    });

    it('two releases of the script: the first stays, and one warning says so', async () => {
      const site = siteOf('twice');
      const script = readFileSync(join(projectFolder, 'dist', 'lubberline.js'), 'utf8');
      const { version } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as { version: string };
      assert.ok(script.includes(`"${version}"`));
      site.write('older.js', script.replaceAll(`"${version}"`, '"0.0.9"'));
      const seen = await visit(await browser(), pathToFileURL(`${site.folder}index.html`).href);
      await assertGoodGuest(seen, {
        files: ['index.html', 'older.js', 'lubberline.js', 'hear.js'],
        complaints: [new RegExp(`release 0\\.0\\.9.*release ${version.replaceAll('.', '\\.')}`)],
      });
      await seen.page.close();
      site.remove();
    });

    it('a class under a tag of its own, bundled by the page, beside the script', async () => {
      const site = siteOf('mixed');
      site.install();
      const own = `${site.folder}own.js`;
      await build({ entryPoints: [own], outfile: own, allowOverwrite: true, bundle: true, format: 'esm', minify: true, conditions: ['production'], logLevel: 'error' });
      await whileServed(site.folder, '', async (address) => {
        const seen = await visit(await browser(), `${address}index.html`);
        await assertGoodGuest(seen, { files: ['index.html', 'lubberline.js', 'own.js', 'hear.js'] });
        // The ship of one script is known to the class of the other.
        const latitude = await seen.frame.evaluate(() => document.querySelector('own-amplitude')?.shadowRoot?.querySelector<HTMLInputElement>('#latitude')?.value);
        assert.equal(latitude, '24-30.0N');
        await seen.page.close();
      });
      site.remove();
    });

    it('an old page that styles everything by force and hangs helpers on everything', async () => {
      const site = siteOf('old-intranet');
      const seen = await visit(await browser(), pathToFileURL(`${site.folder}index.html`).href);
      assert.equal(await seen.frame.evaluate(() => document.compatMode), 'BackCompat');
      await assertGoodGuest(seen, { files: ['index.html', 'house.css', 'helpers.js', 'lubberline.js', 'hear.js'] });
      for (const tag of ['lubber-amplitude', 'lubber-swing', 'lubber-deviation-curve', 'lubber-record']) {
        const look = await seen.frame.evaluate((each) => {
          const frame = document.querySelector(each)?.shadowRoot?.querySelector('.frame');
          const { fontSize, textTransform, textIndent, wordBreak, textShadow } = getComputedStyle(frame as Element);
          return { readable: parseFloat(fontSize) >= 14, textTransform, textIndent, wordBreak, textShadow };
        }, tag);
        assert.deepEqual(look, { readable: true, textTransform: 'none', textIndent: '0px', wordBreak: 'normal', textShadow: 'none' }, tag);
        assert.doesNotMatch(await textOf(seen.frame, tag), /NaN|undefined|function/);
      }
      await seen.page.close();
      site.remove();
    });

    it('a page read from right to left: English there is read as English is, unless the page says otherwise of the widget', async () => {
      const site = siteOf('arabic');
      const seen = await visit(await browser(), pathToFileURL(`${site.folder}index.html`).href);
      await assertGoodGuest(seen, { files: ['index.html', 'arabic.css', 'lubberline.js', 'hear.js'] });
      const sides = (): Promise<object> => seen.frame.evaluate(() => {
        const root = document.querySelector('lubber-amplitude')?.shadowRoot as ShadowRoot;
        const [fields, answer] = ['.fields', '.headline'].map((selector) => root.querySelector(selector)?.getBoundingClientRect().left ?? 0) as [number, number];
        return { fieldsRightOfAnswer: fields > answer, scrolls: document.documentElement.scrollWidth > innerWidth };
      });
      assert.deepEqual(await sides(), { fieldsRightOfAnswer: false, scrolls: false });
      // The page may say so of the widget itself.
      await seen.frame.evaluate(async () => {
        const amplitude = document.querySelector('lubber-amplitude') as HTMLElement & { updateComplete: Promise<unknown> };
        amplitude.dir = 'rtl';
        await new Promise((resolve) => setTimeout(resolve));
        await amplitude.updateComplete;
      });
      assert.deepEqual(await sides(), { fieldsRightOfAnswer: true, scrolls: false });
      await seen.page.close();
      site.remove();
    });
  });
}
