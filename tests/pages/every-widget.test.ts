/**
 * Every widget in every state: accessible by WCAG 2.2 AA in every light, dim enough by night,
 * whole in every width and size of text, large enough for a finger. `LUBBERLINE_WHOLE=1` runs
 * each state in each light and width; without it each widget is taken in those that differ most.
 */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser } from 'puppeteer-core';
import { NIGHT_LIMIT } from '../../components/shared/theme-styles.js';
import { serve } from '../../demo/serve.js';
import { axeFindings, colourRules } from '../support/axe-run.js';
import { cramped, spaceText } from '../support/clipping.js';
import { brightnessOf } from '../support/night-light.js';
import { widgets } from '../support/package-entries.js';
import { scene, scenes, stateNames, subjects } from '../support/scenes.js';
import type { Scene } from '../support/scenes.js';
import { Stage } from '../support/stage.js';
import type { Light } from '../support/stage.js';
import { targets } from '../support/targets.js';
import { openBrowser } from './browser.js';

const whole = process.env['LUBBERLINE_WHOLE'] === '1';

/** Lights in which colours change and nothing else. */
const lights: Readonly<Record<string, Light>> = {
  dusk: { theme: 'dusk' },
  night: { theme: 'night' },
  'forced colours': { media: { 'forced-colors': 'active' } },
  'more contrast by day': { media: { 'prefers-contrast': 'more' } },
  'less contrast by day': { media: { 'prefers-contrast': 'less' } },
  'more contrast by night': { theme: 'night', media: { 'prefers-contrast': 'more' } },
  'less contrast at dusk': { theme: 'dusk', media: { 'prefers-contrast': 'less' } },
};
const usualLights = ['dusk', 'night', 'forced colours'];

/** 320 is a window of 1280 at 400 % (WCAG 1.4.10); between them the layouts change. */
const widths = whole ? [320, 480, 640, 700, 768, 1000, 1280] : [320, 768];

/** A4 between margins of a centimetre and a half, in pixels of the page. */
const PAPER = 680;

const inLights = (state: string): boolean => whole || ['empty', 'refused', 'answered'].includes(state);
/** An adjuster's swing, of two rounds and two compasses, is the widest there is. */
const inWidths = ({ tag, state }: Scene): boolean => whole || ['refused', 'answered'].includes(state) || (tag === 'lubber-swing' && state === 'warned');

describe('every widget', () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;
  let stage: Stage;
  const counted = { axe: 0, brightest: new Map<string, string>(), smallest: Infinity, smallestOnBridge: Infinity };

  const accessible = async (what: string, rules: Parameters<typeof axeFindings>[1] = 'all'): Promise<void> => {
    counted.axe += 1;
    assert.deepEqual(await axeFindings(stage.page, rules), [], what);
  };

  const dim = async ({ tag }: Scene): Promise<void> => {
    const { brightest, colour, red } = await brightnessOf(stage.page, await stage.picture());
    counted.brightest.set(tag, Math.max(Number(counted.brightest.get(tag) ?? 0), brightest).toFixed(3));
    assert.ok(brightest <= NIGHT_LIMIT, `${colour} has a luminance of ${brightest.toFixed(3)}`);
    assert.equal(red, 0);
  };

  const setUp = async (one: Scene, light: Light = {}, width = 1280): Promise<void> => {
    await stage.resize(width);
    await stage.light(light);
    await stage.show(one);
  };

  before(async () => {
    server = await serve();
    browser = await openBrowser();
    stage = await Stage.open(browser, server.address);
  });

  after(async () => {
    console.log(`axe ran ${counted.axe} times; smallest target ${counted.smallest} px, on a bridge ${counted.smallestOnBridge} px; brightest by night ${[...counted.brightest].map((pair) => pair.join(' ')).join(', ')}`);
    await browser.close();
    server.server.close();
  });

  it('that the package defines is in the table, and no other', async () => {
    const tags = widgets.map((name) => `lubber-${name}`).sort();
    assert.deepEqual(Object.keys(subjects).sort(), tags, 'tests/support/scenes.ts');
    assert.deepEqual(await stage.page.evaluate((names) => names.filter((tag) => !customElements.get(tag)), tags), []);
    assert.equal(scenes.length, tags.length * stateNames.length);
  });

  it('is looked at by an axe that sees into shadow roots, and at targets', async () => {
    await stage.light({});
    await stage.page.evaluate(() => {
      const host = document.createElement('div');
      const root = host.attachShadow({ mode: 'open' });
      root.innerHTML = '<p>pale</p><button>a</button><button>b</button>';
      const sheet = new CSSStyleSheet();
      sheet.replaceSync('p { color: #cccccc; background: #ffffff; } button { width: 12px; height: 12px; padding: 0; margin: 0; border: 0; }');
      root.adoptedStyleSheets = [sheet];
      document.getElementById('stage')?.replaceChildren(host);
    });
    assert.deepEqual((await axeFindings(stage.page)).map((finding) => finding.split(',')[0]).sort(), ['color-contrast', 'target-size']);
  });

  for (const one of scenes) {
    describe(`${one.tag}, ${one.state}`, () => {
      it('is accessible in every light, and dim at night', async () => {
        await setUp(one);
        await accessible('day');
        if (!inLights(one.state)) return;
        for (const [name, light] of Object.entries(lights)) {
          if (!whole && !usualLights.includes(name)) continue;
          await stage.light(light);
          await accessible(name, colourRules);
          if (name === 'night') await dim(one);
        }
      });

      if (inWidths(one)) {
        it('is whole in every width, density and size of text, and large enough for a finger', async () => {
          await setUp(one);
          counted.smallest = Math.min(counted.smallest, ...(await targets(stage.page)).map(({ width, height }) => Math.min(width, height)));
          assert.deepEqual((await targets(stage.page)).filter(({ width, height }) => width < 24 || height < 24), [], 'targets');
          await stage.light({ bridge: true });
          const large = await targets(stage.page);
          counted.smallestOnBridge = Math.min(counted.smallestOnBridge, ...large.map(({ width, height }) => Math.min(width, height)));
          assert.deepEqual(large.filter(({ width, height }) => width < 44 || height < 44), [], 'targets on a bridge');
          assert.deepEqual(await cramped(stage.page), [], 'on a bridge');
          if (one.state === 'answered') await accessible('on a bridge');
          await stage.light({});
          for (const width of widths) {
            await stage.resize(width);
            assert.deepEqual(await cramped(stage.page), [], `${width} px`);
          }
          await stage.resize(PAPER);
          await stage.light({ print: true });
          assert.deepEqual(await cramped(stage.page), [], 'on paper');
          await stage.light({});
          await stage.resize(1280, '200%');
          assert.deepEqual(await cramped(stage.page), [], 'text of 200 %');
          await stage.resize(320);
          await spaceText(stage.page);
          await stage.settle();
          assert.deepEqual(await cramped(stage.page), [], 'text spaced out');
        });
      }
    });
  }

  // The words beside it say the same: some readers spoke of a black up-pointing triangle before every warning.
  it('has its sign of a warning seen, not read aloud', async () => {
    for (const [tag, state] of [['amplitude', 'refused'], ['amplitude', 'warned'], ['conversion', 'warned'], ['swing', 'warned'], ['deviation-curve', 'refused'], ['deviation-card', 'warned']] as const) {
      await setUp(scene(`lubber-${tag}`, state));
      const signs = await stage.page.evaluate(() => [...(document.querySelector('#stage > *')?.shadowRoot?.querySelectorAll('*') ?? [])].filter((each) => getComputedStyle(each, '::before').content.includes('▲')).length);
      assert.ok(signs > 0, `no sign in ${tag}, ${state}`);
      const spoken = JSON.stringify(await stage.page.accessibility.snapshot({ interestingOnly: false }));
      assert.ok(spoken.length > 1000, tag);
      assert.deepEqual(spoken.match(/[^"]*▲[^"]*/g), null, `${tag}, ${state}`);
    }
  });

  it('keeps still: nothing moves by itself, whether a device asks for less motion or not', async () => {
    for (const tag of Object.keys(subjects)) {
      await setUp(scenes.find((one) => one.tag === tag && one.state === 'answered') as Scene, { media: { 'prefers-reduced-motion': 'reduce' } });
      const moving = await stage.page.evaluate(() => {
        const root = document.querySelector('#stage > *')?.shadowRoot as ShadowRoot;
        const timed = [...root.querySelectorAll('*')].filter((element) => {
          const { animationName, transitionDuration } = getComputedStyle(element);
          return animationName !== 'none' || transitionDuration !== '0s';
        });
        return document.getAnimations().length + timed.length;
      });
      assert.equal(moving, 0, tag);
    }
  });

  it('complained of nothing', () => {
    assert.deepEqual(stage.complaints, []);
  });
});
