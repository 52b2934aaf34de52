/** Every widget, answered, on a page read from right to left: in a language of the page's own, and in English. */
import assert from 'node:assert/strict';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import type { Browser } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { cramped } from '../support/clipping.js';
import { mirroredScript } from '../support/mirrored-words.js';
import { displaced, picturePlaces, turnedFigures } from '../support/reading-order.js';
import { scene, stateNames, subjects } from '../support/scenes.js';
import { Stage } from '../support/stage.js';
import { browserNames, openBrowser } from './browser.js';

/** A folder to leave pictures in, for whoever looks at them. */
const album = process.env['LUBBERLINE_ALBUM'];

for (const name of browserNames) {
  describe(`every widget from right to left, in ${name}`, () => {
    let browser: Browser;
    let server: Awaited<ReturnType<typeof serve>>;
    let stage: Stage;

    const speak = async (language: string, direction: string): Promise<void> => {
      await stage.page.evaluate(
        (lang, dir) => {
          document.documentElement.lang = lang;
          document.documentElement.dir = dir;
        },
        language,
        direction,
      );
      await stage.settle();
    };

    const frame = (): Promise<{ dir: string; lang: string }> =>
      stage.page.evaluate(() => {
        const element = document.querySelector('#stage > *')?.shadowRoot?.querySelector('.frame') as HTMLElement;
        return { dir: getComputedStyle(element).direction, lang: element.lang };
      });

    const keep = async (what: string): Promise<void> => {
      if (!album) return;
      mkdirSync(album, { recursive: true });
      writeFileSync(join(album, `${what}-${name}.png`), await stage.picture());
    };

    before(async () => {
      server = await serve({ policy: '' });
      browser = await openBrowser(name);
      stage = await Stage.open(browser, server.address);
      await stage.page.addScriptTag({ content: await mirroredScript() });
    });

    after(async () => {
      await browser.close();
      server.server.close();
      server.server.closeAllConnections();
    });

    it('is looked at by a check that sees a sign behind its figure', async () => {
      await stage.page.evaluate(() => {
        const host = document.createElement('div');
        const root = host.attachShadow({ mode: 'open' });
        root.innerHTML = '<p dir="rtl">−3.4°</p><p dir="rtl">12° E</p><p dir="rtl"><bdi dir="ltr">−5.6°</bdi></p>';
        document.getElementById('stage')?.replaceChildren(host);
      });
      const { turned, looked } = await turnedFigures(stage.page);
      assert.deepEqual([turned.map((each) => each.split(' in ')[0]), looked], [['−3.4°', '12° E'], 3]);
    });

    for (const tag of Object.keys(subjects)) {
      it(tag, async () => {
        await stage.resize(1280);
        await speak('en', 'ltr');
        await stage.show(scene(tag, 'answered'));
        assert.deepEqual(await frame(), { dir: 'ltr', lang: 'en' });
        const pictures = await picturePlaces(stage.page);

        // The same words, laid out from right to left because the page says so of the widget itself.
        await stage.page.evaluate(() => document.querySelector('#stage > *')?.setAttribute('dir', 'rtl'));
        await stage.settle();
        assert.equal((await frame()).dir, 'rtl');
        assert.deepEqual(await picturePlaces(stage.page), pictures, 'no picture is mirrored');
        await stage.page.evaluate(() => document.querySelector('#stage > *')?.removeAttribute('dir'));

        // A page whose language has no words here: English, and read as English is.
        await speak('ar', 'rtl');
        assert.deepEqual(await frame(), { dir: 'ltr', lang: 'en' });

        await speak('qaa', 'rtl');
        assert.deepEqual(await frame(), { dir: 'rtl', lang: 'qaa' });
        const wrong: string[] = [];
        for (const width of [1280, 320]) {
          await stage.resize(width);
          await keep(`${tag}-${width}`);
          const { turned, looked } = await turnedFigures(stage.page);
          assert.ok(looked >= 3, `${looked} figures`);
          wrong.push(...turned, ...[...(await cramped(stage.page)), ...(await displaced(stage.page))].map((each) => `${each} at ${width}`));
        }
        for (const state of stateNames) {
          if (state === 'answered') continue;
          await speak('en', 'ltr');
          await stage.resize(1280);
          await stage.show(scene(tag, state));
          await speak('qaa', 'rtl');
          wrong.push(...(await turnedFigures(stage.page)).turned, ...(await cramped(stage.page)));
        }
        assert.deepEqual([...new Set(wrong)], []);
      });
    }
  });
}
