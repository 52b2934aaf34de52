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
