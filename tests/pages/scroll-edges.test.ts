/** Whatever scrolls sideways by itself shows at its edge that there is more: scroll bars may be hidden until one scrolls. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import { scene } from '../support/scenes.js';
import type { Stage } from '../support/stage.js';
import { openStage } from './open-stage.js';

describe('what scrolls sideways', () => {
  let close: () => Promise<void>;
  let stage: Stage;

  before(async () => {
    ({ stage, close } = await openStage(320));
    await stage.show(scene('lubber-azimuth', 'answered'));
  });

  after(() => close());

  /** Regions by whether they scroll, with what is drawn at their edges. */
  const regions = (): Promise<{ scrolls: boolean; shade: boolean; border: string }[]> =>
    stage.page.evaluate(() =>
      [...(document.querySelector('#stage > *')?.shadowRoot?.querySelectorAll('.scroll[role]') ?? [])].map((each) => {
        const { backgroundImage, borderInlineEndColor, borderInlineEndWidth } = getComputedStyle(each);
        return { scrolls: each.scrollWidth > each.clientWidth, shade: /gradient/.test(backgroundImage), border: `${borderInlineEndWidth} ${borderInlineEndColor}` };
      }),
    );

  it('is shaded at its edges, and nothing else is', async () => {
    const found = await regions();
    assert.ok(found.some(({ scrolls }) => scrolls) && found.some(({ scrolls }) => !scrolls), JSON.stringify(found));
    for (const { scrolls, shade } of found) assert.equal(shade, scrolls);
  });

  it('has a border in the colours of the system where those are forced, which take shades away', async () => {
    await stage.light({ media: { 'forced-colors': 'active' } });
    for (const { scrolls, border } of await regions()) if (scrolls) assert.match(border, /^1px rgb\(\d+, \d+, \d+\)$/);
    await stage.light({});
  });

  it('shows the shade no more once it is scrolled to its end', async () => {
    const edge = (): Promise<string> =>
      stage.page.evaluate(() => {
        const region = document.querySelector('#stage > *')?.shadowRoot?.querySelector('.scroll[tabindex]') as HTMLElement;
        region.scrollIntoView({ block: 'center' });
        const { right, top } = region.getBoundingClientRect();
        return JSON.stringify({ x: Math.floor(right + scrollX) - 3, y: Math.floor(top + scrollY) + 1 });
      });
    const pixel = async (): Promise<string> => {
      const { x, y } = JSON.parse(await edge()) as { x: number; y: number };
      return stage.page.screenshot({ clip: { x, y, width: 1, height: 1 }, encoding: 'base64', captureBeyondViewport: false });
    };
    const before = await pixel();
    await stage.page.evaluate(() => {
      const region = document.querySelector('#stage > *')?.shadowRoot?.querySelector('.scroll[tabindex]') as HTMLElement;
      region.scrollLeft = region.scrollWidth;
    });
    await stage.settle(2);
    assert.notEqual(await pixel(), before);
  });
});
