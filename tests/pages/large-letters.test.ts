/** Letters twice as large on a page 320 pixels wide: nothing goes out of it sideways but what scrolls by itself. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { scene } from '../support/scenes.js';
import type { Stage } from '../support/stage.js';
import { openStage } from './open-stage.js';

const widgets = ['lubber-amplitude', 'lubber-azimuth', 'lubber-transit', 'lubber-conversion', 'lubber-variation', 'lubber-record', 'lubber-drill', 'lubber-swing', 'lubber-deviation-card'];

describe('letters twice as large on a page 320 px wide', () => {
  let close: () => Promise<void>;
  let stage: Stage;

  before(async () => {
    ({ stage, close } = await openStage(320));
    await stage.page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
  });

  after(() => close());

  for (const name of widgets) {
    it(`leave ${name} with its answer inside the page`, async () => {
      await stage.show(scene(name, 'answered'));
      const out = await stage.page.evaluate(() => {
        const widget = document.querySelector('#stage > *') as HTMLElement;
        const edge = widget.getBoundingClientRect().right + 1;
        const inside = [...(widget.shadowRoot?.querySelectorAll('*') ?? [])].filter((each) => !each.closest('.scroll, .spoken') && each.getBoundingClientRect().width > 0);
        return { size: getComputedStyle(document.documentElement).fontSize, count: inside.length, out: inside.filter((each) => each.getBoundingClientRect().right > edge).map((each) => `${each.localName}.${each.className} ${(each.textContent ?? '').trim().slice(0, 30)}`) };
      });
      assert.equal(out.size, '32px');
      assert.ok(out.count > 20, String(out.count));
      assert.deepEqual(out.out, []);
      // Words go over the edge of what holds them without making it any wider; what a list or a page scrolls is cut on purpose.
      const over = await stage.page.evaluate(() => {
        const held = [...(document.querySelector('#stage > *')?.shadowRoot?.querySelectorAll('.choices, .correctors, .signatures') ?? [])];
        return held.filter((each) => each.scrollWidth > each.clientWidth + 1).map((each) => `${each.className} ${each.scrollWidth - each.clientWidth}`);
      });
      assert.deepEqual(over, []);
      // The answer has a line below it, on which the words of a swing stood.
      const below = await stage.page.evaluate(() => {
        const answer = document.querySelector('#stage > *')?.shadowRoot?.querySelector('.answer');
        const next = answer?.nextElementSibling;
        return answer && next ? next.getBoundingClientRect().top - answer.getBoundingClientRect().bottom : null;
      });
      if (!/record|drill|card/.test(name)) assert.ok((below ?? 0) >= 16, String(below));
    });
  }
});
