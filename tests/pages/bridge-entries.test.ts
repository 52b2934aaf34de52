/** On the bridge figures are large, and a telephone is not: what is typed shows whole all the same, in every language. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { scene } from '../support/scenes.js';
import { openStage } from './open-stage.js';
import type { OpenStage } from './open-stage.js';

const widgets = ['lubber-amplitude', 'lubber-azimuth', 'lubber-transit', 'lubber-conversion', 'lubber-variation'];

describe('entries on the bridge, on a page 320 px wide', () => {
  let opened: OpenStage;

  before(async () => {
    opened = await openStage(320);
    await opened.stage.page.evaluate(async () => {
      document.documentElement.dataset['lubberDensity'] = 'bridge';
      // Between the margins of a page.
      (document.querySelector('#stage') as HTMLElement).style.inlineSize = '288px';
      await Promise.all(['de', 'es', 'fr', 'id', 'zh'].map((language) => import(new URL(`/dist/languages/${language}.js`, location.href).href)));
    });
  });

  after(() => opened.close());

  for (const language of ['en', 'de', 'es', 'fr', 'id', 'zh']) {
    it(`show whole what stands in them: ${language}`, async () => {
      const { stage } = opened;
      await stage.page.evaluate((code) => (document.documentElement.lang = code), language);
      for (const name of widgets) {
        await stage.show({ ...scene(name, 'answered'), press: [] });
        const { count, cut, large } = await stage.page.evaluate(() => {
          const root = document.querySelector('#stage > *')?.shadowRoot;
          const filled = [...(root?.querySelectorAll<HTMLInputElement>('.entry input') ?? [])].filter(({ value, clientWidth }) => value && clientWidth);
          return {
            count: filled.length,
            cut: filled.filter((each) => each.scrollWidth > each.clientWidth).map((each) => `${each.id} ${each.value}: ${each.scrollWidth - each.clientWidth} px`),
            large: parseFloat(getComputedStyle(filled[0] as Element).fontSize),
          };
        });
        assert.ok(count > 1 && large === 20, `${name}: ${count} entries of ${large} px`);
        assert.deepEqual(cut, [], name);
      }
    });
  }
});
