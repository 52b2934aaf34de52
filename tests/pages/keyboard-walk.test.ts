/** Every widget by the keyboard alone, and what a reader of the screen is told of it. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { accessibilityTree, walk } from '../support/keyboard-walk.js';
import type { Stop } from '../support/keyboard-walk.js';
import { scene, subjects } from '../support/scenes.js';
import { Stage } from '../support/stage.js';
import { openBrowser } from './browser.js';

/** What is used or found by its name. */
const named = new Set(['button', 'textbox', 'combobox', 'radio', 'radiogroup', 'checkbox', 'slider', 'spinbutton', 'tab', 'tabpanel', 'tablist', 'link', 'img', 'image', 'region', 'group', 'DisclosureTriangle']);

/** A field stepped by one, and what is said of the answer once the user has paused. */
const said: Readonly<Record<string, readonly [field: string, words: RegExp]>> = {
  'lubber-amplitude': ['latitude', /^Error \d+\.\d degrees (east|west), ± /],
  'lubber-azimuth': ['latitude', /^Error \d+\.\d degrees (east|west), ± /],
  'lubber-transit': ['bearing-0', /^Error \d+\.\d degrees (east|west), ± /],
  'lubber-variation': ['latitude', /^Variation \d+\.\d degrees (east|west)/],
  'lubber-conversion': ['bearing', /^True bearing \d{3}\.\d degrees$/],
  'lubber-swing': ['heading-0', /^\d+\.\d degrees (east|west), largest deviation, on /],
  'lubber-deviation-curve': ['heading', /^Largest \d+\.\d degrees (east|west) on /],
  'lubber-iron': ['latitude', /^Deviation \d+\.\d degrees (east|west)/],
  'lubber-field-map': ['latitude', /^Variation \d+\.\d degrees (east|west)/],
};

/** Whether a stop stands above the one before it, in the same column. */
function goesBack(from: Stop, to: Stop): boolean {
  const across = Math.min(from.box.right, to.box.right) - Math.max(from.box.left, to.box.left);
  return across > 0 && to.box.bottom <= from.box.top && !(from.field !== 0 && from.field === to.field);
}

describe('every widget by the keyboard', () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;
  let stage: Stage;
  let [stops, least] = [0, Infinity];

  before(async () => {
    server = await serve();
    browser = await openBrowser();
    stage = await Stage.open(browser, server.address);
  });

  after(async () => {
    console.log(`${stops} stops; least contrast of a focus ${least.toFixed(1)}`);
    await browser.close();
    server.server.close();
  });

  for (const tag of Object.keys(subjects)) {
    for (const [width, theme] of [[1280, 'day'], [320, 'night']] as const) {
      it(`${tag}, ${width} px, ${theme}: everything is reached in the order it is read, and seen`, async () => {
        await stage.resize(width);
        await stage.light({ theme });
        await stage.show(scene(tag, 'answered'));
        const found = await walk(stage.page);
        assert.ok(found.left, 'the keyboard is caught');
        assert.deepEqual(found.stops.map(({ what }) => what), found.reachable);
        stops += found.stops.length;
        for (const [place, stop] of found.stops.entries()) {
          least = Math.min(least, stop.contrast);
          assert.ok(stop.contrast >= 3 && stop.thickness >= 2, `${stop.what}: focus of ${stop.thickness} px, contrast ${stop.contrast.toFixed(2)}`);
          assert.ok(stop.inSight, `${stop.what} is out of sight or covered`);
          const last = found.stops[place - 1];
          assert.ok(!last || !goesBack(last, stop), `${stop.what} stands above ${last?.what}`);
        }
      });
    }

    const [field, words] = said[tag] ?? [];
    if (field && words) {
      it(`${tag}: a new answer is said in words`, async () => {
        await stage.resize(1280);
        await stage.light({});
        await stage.show(scene(tag, 'answered'));
        await stage.page.evaluate((id) => (document.querySelector('#stage > *')?.shadowRoot?.getElementById(id) as HTMLInputElement).focus(), field);
        await stage.page.keyboard.press('ArrowUp');
        if (tag === 'lubber-swing') await stage.page.keyboard.type('001');
        await stage.page.keyboard.press('Tab');
        const status = await stage.page.waitForFunction(() => document.querySelector('#stage > *')?.shadowRoot?.querySelector('[role=status]')?.textContent);
        assert.match(String(await status.jsonValue()), words);
      });
    }

    for (const state of ['answered', 'refused'] as const) {
      it(`${tag}, ${state}: all of it has a name in words, one of its own`, async () => {
        await stage.resize(1280);
        await stage.light({});
        await stage.show(scene(tag, state));
        const nodes = (await accessibilityTree(stage.page)).filter(({ role }) => named.has(role));
        assert.ok(nodes.length > 4);
        for (const { role, name } of nodes) {
          if (role === 'group' && name === '') continue;
          assert.match(name, /\p{L}{1,}|\d/u, `a ${role} has no name`);
          assert.doesNotMatch(name, /undefined|NaN|\[object|\w+\.\w+\.\w+/, `a ${role} is named ${name}`);
        }
        // A sign alone is not said: a picture is told in whole words.
        for (const { role, name } of nodes) if (/img|image/.test(role)) assert.match(name, /\p{L}{3,}/u, name);
        const regions = nodes.filter(({ role, name }) => (role === 'region' || role === 'group') && name !== '').map(({ name }) => name);
        assert.deepEqual(regions.filter((name, place) => regions.indexOf(name) !== place), [], 'two pieces of one name');
      });
    }
  }
});
