/** A ship swung from the empty grid to the card on paper, by the keyboard and by the clipboard. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'puppeteer-core';
import { reference } from '../support/reference.js';
import { openDemoPage } from './demo-page.js';
import type { DemoPage } from './demo-page.js';
import { choose, pasteFromClipboard, tabTo, together } from './keyboard-hand.js';
import { keep, pageTexts, print } from './paper.js';

/** On the adjuster's page: a ship with an empty swing, whose draft is kept, and a card. */
function setTheTable(): void {
  document.addEventListener('DOMContentLoaded', () => {
    const ship = document.createElement('lubber-ship');
    ship.setAttribute('name', 'm.v. Halcyon Tern');
    ship.setAttribute('compass-name', 'Standard');
    const swing = document.createElement('lubber-swing');
    swing.setAttribute('draft', 'harbour');
    ship.append(swing, document.createElement('lubber-deviation-card'));
    document.querySelector('main')?.replaceChildren(ship);
  });
}

/** All that is told on the page of a swing. */
interface Told {
  readonly headings: readonly string[];
  readonly readings: readonly string[];
  readonly headline: string;
  readonly leastSquares: Readonly<Record<string, string>>;
  readonly eightPoints: Readonly<Record<string, string>>;
  /** Curves and readings drawn. */
  readonly curves: number;
  readonly points: number;
  readonly residuals: readonly string[];
  readonly draft: string;
}

async function told(page: Page): Promise<Told> {
  await page.evaluate(() => document.querySelector('lubber-swing')?.updateComplete);
  return page.evaluate(() => {
    const root = document.querySelector('lubber-swing')?.shadowRoot as ShadowRoot;
    const flat = (node: Element | null | undefined): string => (node?.textContent ?? '').replace(/\s+/g, ' ').trim();
    const values = (selector: string): string[] => [...root.querySelectorAll<HTMLInputElement>(selector)].map(({ value }) => value);
    const rows = [...root.querySelectorAll('table.coefficients tbody tr')];
    const column = (place: number): Record<string, string> => Object.fromEntries(rows.map((row) => [flat(row.querySelector('th b')), flat(row.querySelectorAll('td')[place])]));
    return {
      headings: values('td.heading input'),
      readings: values('td.reading input'),
      headline: flat(root.querySelector('.headline')),
      leastSquares: column(0),
      eightPoints: column(1),
      curves: root.querySelectorAll('svg.deviation-chart > polyline:not(.readings)').length,
      points: (root.querySelector('svg.deviation-chart > .readings') as SVGPolylineElement | null)?.points.numberOfItems ?? 0,
      residuals: [...root.querySelectorAll('table.grid tbody tr:not(.reason)')].map((row) => flat(row.querySelectorAll('td.figure')[1])),
      draft: flat(root.querySelector('#draft')),
    };
  });
}

/** The card on the screen: compass heading and deviation of each of its lines. */
async function cardLines(page: Page): Promise<Readonly<Record<string, string>>> {
  await page.evaluate(() => document.querySelector('lubber-deviation-card')?.updateComplete);
  return page.evaluate(() => {
    const lines = [...(document.querySelector('lubber-deviation-card')?.shadowRoot?.querySelectorAll('.paper tbody tr') ?? [])];
    return Object.fromEntries(lines.map((line) => [...line.children].slice(0, 2).map((cell) => (cell.textContent ?? '').replace(/▲.*/s, '').trim())));
  });
}

// Handbook of Magnetic Compass Adjustment, article 501, figure 501, and its answer by the eight points.
const printed = ['10.5E', '20.0E', '11.5E', '1.2W', '5.5W', '8.0W', '12.5W', '6.8W'];
const printedAnswer = { A: '+1.00°', B: '+12.00°', C: '+8.00°', D: '+5.00°', E: '+1.50°' };

interface Observed {
  readonly headings: readonly number[];
  readonly deviations: readonly number[];
  readonly lsq: { readonly A: number; readonly B: number; readonly C: number; readonly D: number; readonly E: number };
}

// Swings with noise and their least squares, worked out outside this project.
const observed = reference<{ cases: readonly Observed[] }>('deviation-observed.json').cases;

/** The coefficients without their standard errors. */
const plain = (told: Readonly<Record<string, string>>): Record<string, string> => Object.fromEntries(Object.entries(told).map(([name, value]) => [name, value.split(' ')[0] ?? '']));

/** The highest point of the curve as it is drawn, read off the chart's own scale, degrees east. */
function highestDrawn(page: Page): Promise<number> {
  return page.evaluate(() => {
    const chart = document.querySelector('lubber-swing')?.shadowRoot?.querySelector('svg.deviation-chart') as Element;
    const ticks = [...chart.querySelectorAll('text[text-anchor=end]')].map((text) => {
      const [, figures = '', letter = ''] = /^(\d+)° ?([EW]?)$/.exec((text.textContent ?? '').trim()) ?? [];
      return { deviation: letter === 'W' ? -Number(figures) : Number(figures), y: Number(text.getAttribute('y')) - 4 };
    });
    const [first, last] = [ticks[0], ticks[ticks.length - 1]] as [{ deviation: number; y: number }, { deviation: number; y: number }];
    const heights = [...(chart.querySelector('polyline:not(.readings)') as SVGPolylineElement).points].map(({ y }) => y);
    return first.deviation + ((Math.min(...heights) - first.y) / (last.y - first.y)) * (last.deviation - first.deviation);
  });
}

/** What the card of article 501 says, whatever its size; magnetic is compass and deviation. */
const onCard = ['m.v. Halcyon Tern', 'Standard', 'Port Averil roads', '2026-11-25', '045° 20.1° E ▲ 065.1°', '270° 12.4° W ▲ 257.6°'];

describe('a whole swing', () => {
  let demo: DemoPage;
  let page: Page;

  before(async () => {
    demo = await openDemoPage('demo/adjuster/', { prepare: setTheTable, granted: ['clipboard-read', 'clipboard-sanitized-write'] });
    page = demo.page;
    await page.waitForFunction(() => document.querySelector('lubber-swing')?.shadowRoot?.querySelector('#reading-0'));
  });

  after(() => demo.close());

  it('by the keyboard alone, from the empty grid to coefficients and curve (Handbook of Magnetic Compass Adjustment, art. 501)', async () => {
    assert.deepEqual((await told(page)).readings, Array(8).fill(''));
    await tabTo(page, 'lubber-swing', 'reading-0');
    for (const reading of printed) {
      await page.keyboard.type(reading);
      await page.keyboard.press('Enter');
    }
    const found = await told(page);
    assert.deepEqual(found.eightPoints, printedAnswer);
    // Least squares by hand: B = (24 + 33.6·√½)/4, C = (16 + 22.4·√½)/4; A, D and E as by the eight points.
    assert.deepEqual(plain(found.leastSquares), { A: '+1.00°', B: '+11.94°', C: '+7.96°', D: '+5.00°', E: '+1.50°' });
    // On 045: 1 + (11.94 + 7.96)·√½ + 5 = 20.07.
    assert.match(found.headline, /20\.1° E.*largest deviation, on 045°.*Beyond the limit of 5°\. Headings used: 8 of 8 planned/);
    assert.deepEqual([found.curves, found.points], [1, 8]);
    // As it is drawn, read off the chart's own scale.
    assert.ok(Math.abs((await highestDrawn(page)) - 20.07) < 0.1);
    // Readings less that curve, by hand: 10.5 − 10.46, 20.0 − 20.07, 11.5 − 11.44, then the same reversed.
    assert.deepEqual(found.residuals.slice(0, 8), ['0.0°', '0.1° W', '0.1° E', '0.0°', '0.0°', '0.1° E', '0.1° W', '0.0°']);
  });

  it('is taken back and done again by keys', async () => {
    await together(page, 'Control', 'z');
    assert.equal((await told(page)).readings[7], '');
    await together(page, 'Control', 'z');
    assert.equal((await told(page)).readings[6], '');
    await together(page, 'Control', 'y');
    await together(page, 'Control', 'y');
    assert.deepEqual((await told(page)).readings.slice(0, 8), printed);
    assert.deepEqual((await told(page)).eightPoints, printedAnswer);
  });

  it('is there again after the page has been lost', async () => {
    assert.match((await told(page)).draft, /Kept as a draft/);
    await page.reload();
    await page.waitForFunction(() => document.querySelector('lubber-swing')?.shadowRoot?.querySelector('table.coefficients'));
    const found = await told(page);
    assert.deepEqual(found.readings.slice(0, 8), printed);
    assert.deepEqual(found.eightPoints, printedAnswer);
  });

  it('makes the card of the ship, dated and placed by keys', async () => {
    await tabTo(page, 'lubber-swing', 'use-card');
    await page.keyboard.press('Enter');
    for (const [field, text] of [['place', 'Port Averil roads'], ['date', '2026-11-25']] as const) {
      await tabTo(page, 'lubber-deviation-card', field);
      await page.keyboard.type(text);
    }
    await page.keyboard.press('Tab');
    const lines = await cardLines(page);
    // A + C + E, A + B − E, A − C + E, A − B − E, and A + (B + C)·√½ + D.
    for (const [heading, deviation] of [['000°', '10.5° E'], ['090°', '11.4° E'], ['180°', '5.5° W'], ['270°', '12.4° W'], ['045°', '20.1° E']] as const) {
      assert.equal(lines[heading], deviation, heading);
    }
  });

  it('is printed with its card, on A4', async (context) => {
    const pdf = await print(page);
    keep('swing-a4', pdf);
    const pages = pageTexts(pdf);
    if (pages === null) return context.skip('the machine has no tool to read a PDF');
    const swing = ['Swing for deviation', '20.1° E', '+12.00°', '+11.94°', '315 6.8W 6.8° W', 'Beyond the limit of 5°'];
    const card = ['Deviation card', ...onCard, 'exceed the limit of 5°', 'A +1.0° B +11.9° C +8.0° D +5.0° E +1.5°', 'Compass adjuster, name and signature'];
    for (const words of swing) assert.ok(pages.join(' ').includes(words), `${words} on paper`);
    // The card is what is hung up: it stands whole on one sheet.
    const sheet = pages.find((text) => text.includes('Deviation card')) ?? '';
    for (const words of card) assert.ok(sheet.includes(words), `${words} on the card`);
    for (const words of ['Undo', 'Clear', 'Paste', 'Give this card', 'undefined', 'NaN']) assert.ok(!pages.join(' ').includes(words), `${words} on paper`);
  });

  it('is printed with a card for the pocket', async (context) => {
    await choose(page, 'lubber-deviation-card', 'format', 'pocket', true);
    const pdf = await print(page);
    keep('swing-pocket', pdf);
    const pages = pageTexts(pdf);
    if (pages === null) return context.skip('the machine has no tool to read a PDF');
    const sheet = pages.find((text) => text.includes('Deviation card')) ?? '';
    for (const words of [...onCard, 'Compass adjuster, name and signature']) assert.ok(sheet.includes(words), `${words} on the card`);
  });

  it('of 16 headings is pasted from a spreadsheet, with tabs, decimal commas and a line of titles', async () => {
    const swung = observed[0] as Observed;
    await tabTo(page, 'lubber-swing', 'clear', true);
    await page.keyboard.press('Enter');
    await choose(page, 'lubber-swing', 'headings', '16', true);
    await tabTo(page, 'lubber-swing', 'heading-0');
    const comma = (value: number): string => String(value).replace('.', ',');
    await pasteFromClipboard(page, ['Heading\tDeviation', ...swung.headings.map((heading, place) => `${comma(heading)}\t${comma(swung.deviations[place] ?? 0)}`)].join('\r\n'));
    const found = await told(page);
    assert.deepEqual([found.headings.length, found.headings[0], found.readings[0]], [16, comma(swung.headings[0] ?? NaN), comma(swung.deviations[0] ?? NaN)]);
    const asked = Object.fromEntries(Object.entries(swung.lsq).map(([name, value]) => [name, `${value > 0 ? '+' : '−'}${Math.abs(value).toFixed(2)}°`]));
    assert.deepEqual(plain(found.leastSquares), asked);
    // The card of the first swing, in use by now, is drawn behind the second.
    assert.deepEqual([found.curves, found.points], [2, 16]);
    assert.match(found.headline, /Headings used: 16 of 16 planned/);
    await tabTo(page, 'lubber-swing', 'use-card');
    await page.keyboard.press('Enter');
    const { A, B, C, E } = swung.lsq;
    const onEast = A + B - E;
    assert.equal((await cardLines(page))['090°'], `${onEast.toFixed(1)}° E`);
    const onNorth = A + C + E;
    assert.equal((await cardLines(page))['000°'], `${Math.abs(onNorth).toFixed(1)}° W`);
  });

  it('nothing of all this was complained of by the browser', () => {
    assert.deepEqual(demo.complaints, []);
  });
});
