/** The demo's adjuster: two compasses from as found to the new cards, on the screen and on paper. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'puppeteer-core';
import { openDemoPage } from './demo-page.js';
import type { DemoPage } from './demo-page.js';
import { keep, pageTexts, print } from './paper.js';
import { laidOut } from './until.js';

/** What the readings of the page were made from, with slips of a hand of some 0.2° and read to half degrees: standard and steering compass. */
const madeFrom = {
  found: { standard: [0.3, 7.1, -4.4, 3.2, 0.3], steering: [-0.4, -9.2, 5.1, 4.3, -0.3] },
  left: { standard: [0.3, 0.8, -0.6, 0.7, 0.3], steering: [-0.4, -1.4, 0.9, 0.9, -0.3] },
};
/** Five standard errors of a term of eight such readings, and of the variation that A hangs on. */
const NEAR = 0.5;

interface Card {
  readonly coefficients: Readonly<Record<string, number>>;
}

const ready = async (page: Page): Promise<void> => {
  await page.waitForFunction(() => document.querySelector('#steering-card')?.shadowRoot?.querySelector('.paper tbody'));
  await page.waitForFunction(() => document.querySelector('lubber-swing')?.shadowRoot?.querySelectorAll('table.coefficients').length === 2);
};

const round = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const swing = document.querySelector('lubber-swing');
    await swing?.updateComplete;
    return `${(swing?.shadowRoot?.querySelector('.headline')?.textContent ?? '').replace(/\s+/g, ' ')}`;
  });

/** What scrolls sideways by itself, or cuts off what was typed, in any widget of the page. */
const cut = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    for (const widget of document.querySelectorAll('lubber-swing, lubber-deviation-curve, lubber-deviation-card, lubber-conversion')) {
      const all = [...(widget.shadowRoot?.querySelectorAll<HTMLElement>('.scroll, input[type=text]') ?? [])].filter((element) => element.getClientRects().length > 0 && !element.matches('.folded'));
      for (const element of all) if (element.scrollWidth > element.clientWidth + 1) found.push(`${widget.localName} ${element.id || element.className} ${(element as HTMLInputElement).value ?? ''} ${element.scrollWidth} in ${element.clientWidth}`);
    }
    return found;
  });

/** How far apart the figures of a column end before their letter, in pixels: nothing where they stand below each other by the decimal. */
const decimalsApart = (page: Page, widget: string, cells: string): Promise<number> =>
  page.evaluate(
    (host, selector) => {
      const found = [...(document.querySelector(host)?.shadowRoot?.querySelectorAll(selector) ?? [])].map((cell) => {
        const range = document.createRange();
        range.selectNodeContents(cell);
        const letter = cell.querySelector('.letter');
        if (letter) range.setEndBefore(letter);
        return range.getBoundingClientRect().right;
      });
      return found.length < 2 ? Infinity : Math.max(...found) - Math.min(...found);
    },
    widget,
    cells,
  );

describe('the adjuster of the demo', () => {
  let demo: DemoPage;
  let page: Page;

  before(async () => {
    demo = await openDemoPage('demo/adjuster/');
    page = demo.page;
    await ready(page);
  });

  after(() => demo.close());

  it('finds in the readings what they were made from, and the ship’s cards are those of the swing', async () => {
    const cards = await page.evaluate(() => {
      const result = document.querySelector('lubber-swing')?.result;
      const ship = document.querySelector('lubber-ship');
      const shipCards = { standard: ship?.cardInUse, steering: JSON.parse(String(ship?.steeringCard)) as unknown };
      return { found: { standard: result?.found?.card, steering: result?.found?.steering?.card }, left: { standard: result?.card, steering: result?.steering?.card }, ship: shipCards };
    });
    for (const stage of ['found', 'left'] as const) {
      for (const compass of ['standard', 'steering'] as const) {
        const { coefficients } = cards[stage][compass] as unknown as Card;
        ['A', 'B', 'C', 'D', 'E'].forEach((name, place) => {
          const wanted = madeFrom[stage][compass][place] as number;
          assert.ok(Math.abs((coefficients[name] as number) - wanted) < NEAR, `${stage} ${compass} ${name}: ${coefficients[name]} for ${wanted}`);
        });
      }
    }
    for (const compass of ['standard', 'steering'] as const) {
      const [ship, swung] = [cards.ship[compass] as Card, cards.left[compass] as unknown as Card];
      for (const [name, value] of Object.entries(ship.coefficients)) assert.ok(Math.abs(value - (swung.coefficients[name] as number)) <= 0.0051, `${compass} ${name}`);
    }
  });

  it('shows the round that the list of the morning speaks of', async () => {
    assert.match(await round(page), /Within the limit of 3°.*Steering compass: 2\.\d° W.*Within the limit of 3°/);
    await page.click('a[data-round="found"]');
    assert.match(await round(page), /11\.\d° W.*Beyond the limit of 3°.*Steering compass: 1\d\.\d° W.*Beyond the limit of 3°/);
    await page.click('a[data-round="left"]');
    assert.match(await round(page), /Within the limit/);
  });

  it('has room at 320, 768 and 1280 pixels: nothing is cut, nothing scrolls sideways', async () => {
    for (const details of ['#correctors-standard', '#correctors-steering']) await page.evaluate((id) => document.querySelector('lubber-swing')!.shadowRoot!.querySelector(id)!.setAttribute('open', ''), details);
    for (const width of [320, 768, 1280]) {
      await page.setViewport({ width, height: 900 });
      await page.waitForFunction((narrow) => document.querySelector('lubber-swing')?.shadowRoot?.querySelector('.frame')?.classList.contains('narrow') === narrow, {}, width < 640);
      await laidOut(page);
      assert.deepEqual(await page.evaluate(() => document.documentElement.scrollWidth), width);
      assert.deepEqual(await cut(page), [], `${width} px`);
    }
  });

  it('is printed on A4: both rounds, both compasses, the correctors of each, where to sign, and no empty sheet', async (context) => {
    await page.setViewport({ width: 1280, height: 900 });
    await page.reload();
    await ready(page);
    const pdf = await print(page);
    keep('adjuster-a4', pdf);
    const pages = pageTexts(pdf);
    if (pages === null) return context.skip('the machine has no tool to read a PDF');
    const sheets = pages.filter((text, place) => place < pages.length - 1 || text.trim() !== '');
    assert.ok(sheets.length <= 7, `${sheets.length} sheets`);
    for (const text of sheets) assert.ok(text.length > 200, `a sheet with “${text}”`);
    const all = sheets.join(' ');
    const words = [
      ...['m.v. Halcyon Tern', 'Readings, as found', 'Readings, as left', '10.2° E WMM2025', '000 109 09:31:20 352 3.9° W 4.1° E', '135 086 11:16:21 0.6° E 0.1° E 138.5 2.9° W 0.1° W'],
      ...['Correctors: Standard compass, as found', 'Correctors: Steering compass, as found', 'Correctors: Standard compass, as left', 'Correctors: Steering compass, as left'],
      ...['Fore-and-aft magnets 2 of 20 cm red aft 29 cm', 'Fore-and-aft magnets 2 of 20 cm red aft 43 cm', 'Athwartship magnets 1 of 15 cm red to port 30 cm', 'Athwartship magnets 1 of 15 cm red to starboard 33 cm'],
      ...['What adjusting has done', 'largest 11.4° W 1.2° E', 'The rules of the flag State, the makers’ manuals and a licensed compass adjuster prevail', 'Compass adjuster, name and signature Swung at Date'],
    ];
    for (const each of words) assert.ok(all.includes(each), `${each} on paper`);
    for (const each of ['Undo', 'Clear', 'Give this card', 'undefined', 'NaN', 'swing.', 'card.']) assert.ok(!all.includes(each), `${each} on paper`);
    const cards = sheets.filter((text) => text.includes('Deviation card'));
    assert.equal(cards.length, 2);
    for (const [place, each] of [['standard', '1 of 20 cm red to port 36 cm'], ['steering compass', '2 of 15 cm red aft 24 cm']].entries()) {
      for (const said of [...each, 'Port Averil roads', '2026-11-26', '19.2 µT', '−20.7 µT', 'Every deviation is within the limit of 3°', 'Compass adjuster, name and signature Master Date', 'a licensed compass adjuster prevail']) {
        assert.ok(cards[place]?.includes(said), `${said} on card ${place + 1}`);
      }
    }
  });

  it('has its figures below each other by the decimal', async () => {
    const columns = [
      ['lubber-swing', '.of-compass:first-child table.change tbody td:nth-child(2)'],
      ['lubber-swing', '.of-compass:first-child table.change tbody td:nth-child(3)'],
      ['lubber-swing', 'table.grid tbody tr:not(.reason) td:nth-child(4)'],
      ['#standard-card', '.figures:first-child tbody td:nth-of-type(1)'],
    ] as const;
    for (const [widget, cells] of columns) assert.ok((await decimalsApart(page, widget, cells)) < 0.6, `${widget} ${cells}: ${await decimalsApart(page, widget, cells)} px`);
  });

  it('prints a card for the pocket of each compass', async (context) => {
    await page.evaluate(() => document.querySelectorAll('lubber-deviation-card').forEach((card) => card.setAttribute('format', 'pocket')));
    await page.waitForFunction(() => document.querySelector('#steering-card')?.shadowRoot?.querySelector('.paper.pocket'));
    const pdf = await print(page);
    keep('adjuster-pocket', pdf);
    const pages = pageTexts(pdf);
    if (pages === null) return context.skip('the machine has no tool to read a PDF');
    const cards = pages.filter((text) => text.includes('Deviation card')).join(' ');
    assert.equal(cards.split('Deviation card').length - 1, 2);
    for (const each of ['Port Averil roads 2026-11-26', 'm.v. Halcyon Tern standard', 'm.v. Halcyon Tern steering compass', '135° 2.8° W 132.2°', 'Compass adjuster, name and signature', 'Flag State, makers and adjuster prevail']) assert.ok(cards.includes(each), `${each} in the pocket`);
  });

  it('nothing of all this was complained of by the browser', () => {
    assert.deepEqual(demo.complaints, []);
  });
});
