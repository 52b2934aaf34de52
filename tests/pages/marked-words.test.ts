/**
 * No text is written into a widget: every word it shows or speaks comes from a catalogue. The
 * page is in a language of which every text stands in brackets; what stands outside them must be
 * a figure, a sign, a unit or a symbol of the trade, a proper name, or what the user typed.
 */
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, before, describe, it } from 'node:test';
import type { Browser } from 'puppeteer-core';
import { scenarioPlaces } from '../../components/iron/places.js';
import type { Catalogue } from '../../components/shared/catalogue.js';
import { compassPoints } from '../../core/angle/compass-points.js';
import { starNames } from '../../core/sky/star-catalogue.js';
import { serve } from '../../demo/serve.js';
import { projectFolder } from '../install.js';
import { markedCatalogue, textsOfStage } from '../support/marked-words.js';
import { scenes } from '../support/scenes.js';
import type { Scene } from '../support/scenes.js';
import { Stage } from '../support/stage.js';
import { openBrowser } from './browser.js';

/** What is written alike in every language here, and why. */
const allowed = new Set([
  // The points of the compass, as charts of all nations letter them.
  ...compassPoints,
  // Units and the time scale; M is the nautical mile.
  'm', 'cm', 's', 'min', 'kn', 'M', 'nT', 'µT', 'UTC',
  // Symbols: the coefficients, Poisson’s parameters, the parts of the earth’s field, the variation’s and heel’s letters.
  ...'ABCDEPQRabcdefghkHZFIλ',
  // The record book’s name where a page gives it none: it is the name in the store.
  'book',
  // Proper names: the stars of the almanac, the invented ports of the bench.
  ...[...starNames, ...scenarioPlaces.map(({ name }) => name)].flatMap((name) => name.split(' ')),
]);

/** A magnetic model by its name, and the digest at the end of a chain of entries. */
const codes = /WMM\d+(?:v\d+)?|\b[0-9a-f]{12,}\b/g;

/** What the observers of the invented month wrote into the book. */
const written = readFileSync(join(projectFolder, 'demo', 'record', 'month.js'), 'utf8');

describe('every widget in a language of marked words', () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;
  let stage: Stage;

  before(async () => {
    server = await serve();
    browser = await openBrowser();
    stage = await Stage.open(browser, server.address);
    const catalogue = await markedCatalogue();
    await stage.page.evaluate(async (words, address) => {
      const { addTranslation } = (await import(`${address}dist/components/shared/catalogue.js`)) as { addTranslation(language: string, words: Catalogue): void };
      addTranslation('qaa', words);
      document.documentElement.lang = 'qaa';
    }, catalogue, server.address);
  });

  after(async () => {
    await browser.close();
    server.server.close();
  });

  /** Words outside brackets that are neither allowed nor typed by the user. */
  const foreign = (text: string, typed: string): string[] =>
    (text.replace(/⟦[^⟧]*⟧/g, ' ').replace(codes, ' ').match(/\p{L}[\p{L}'.-]*/gu) ?? []).filter((word) => !allowed.has(word) && !typed.includes(word));

  for (const one of scenes) {
    it(`${one.tag}, ${one.state}`, async () => {
      const marked: Scene = { ...one, press: one.press.map((words) => `⟦${words}⟧`) };
      await stage.show(marked);
      const texts = await stage.page.evaluate(textsOfStage);
      assert.ok(texts.some((text) => text.includes('⟦')), 'nothing is in the language');
      assert.deepEqual(texts.filter((text) => foreign(text, one.html + written).length > 0), []);
      // What strings texts together is a text of the catalogue, too: a comma is not the same sign everywhere.
      assert.deepEqual(texts.filter((text) => /⟧[,;] ⟦/.test(text)), []);
    });
  }
});
