import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { openBrowser, openPage } from './browser.js';
import { pagesOf, print, textOf } from './paper.js';

const card = JSON.stringify({ kind: 'approximate', coefficients: { A: 0.4, B: -3.1, C: 2.2, D: 2.6, E: -0.5 } });

/** What stands on every card: particulars, a row, its limit, the correctors, the lines to sign on. */
const printed = ['m.v. Halcyon Tern', 'Standard', 'Port Averil', '2026-02-11', '21.4 µT', '045°', '047.4°', 'exceed the limit of 5°', 'Fore-and-aft magnets', 'red forward', 'Compass adjuster, name and signature'];

async function showCard(page: Page, format: 'a4' | 'pocket'): Promise<void> {
  await page.evaluate(
    (data, size) => {
      const element = document.createElement('lubber-deviation-card');
      const attributes = {
        card: data,
        format: size,
        vessel: 'm.v. Halcyon Tern',
        'compass-name': 'Standard',
        place: 'Port Averil',
        date: '2026-02-11',
        horizontal: '21.4',
        vertical: '-33.1',
        remarks: 'Upright, derricks stowed.',
        correctors: '{"foreAndAft":{"what":"2","end":"red-forward","distance":"31 cm"}}',
      };
      for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
      document.body.replaceChildren(element);
    },
    card,
    format,
  );
  await page.waitForFunction(() => document.querySelector('lubber-deviation-card')?.shadowRoot?.querySelector('.paper'));
}

/** What a reader of the paper sees, element by element, under the print rules of the style sheets. */
function visibleText(page: Page): Promise<string> {
  return page.evaluate(() => {
    const root = document.querySelector('lubber-deviation-card')?.shadowRoot;
    const shown = [...(root?.querySelectorAll('p, dt, dd, th, td, h2, h3, button, label') ?? [])].filter((element) => element.getClientRects().length > 0);
    return shown.map((element) => element.textContent).join(' ').replace(/\s+/g, ' ');
  });
}

describe('the deviation card on paper', () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;

  before(async () => {
    server = await serve();
    browser = await openBrowser();
  });

  after(async () => {
    await browser.close();
    server.server.close();
  });

  it('stands whole on one page of A4, without fields or buttons, under a strict policy', async () => {
    const { page, complaints } = await openPage(browser, `${server.address}demo/chart-room/`);
    await showCard(page, 'a4');
    await page.emulateMediaType('print');
    const shown = await visibleText(page);
    for (const words of printed) assert.ok(shown.includes(words), words);
    assert.ok(!shown.includes('Paste from a spreadsheet'));
    assert.ok(!shown.includes('Print'));
    const pdf = await print(page);
    assert.equal(pagesOf(pdf), 1);
    const text = textOf(pdf);
    if (text !== null) for (const words of printed) assert.ok(text.includes(words), `${words} in the text of the PDF`);
    assert.deepEqual(complaints.list, []);
    await page.close();
  });

  // Beyond its limit the card said so twice, and inside a ship the lines to sign on went to a second page.
  it('stands whole on one page inside a ship, far beyond its limit too', async () => {
    const { page } = await openPage(browser, `${server.address}demo/chart-room/`);
    await page.evaluate(() => {
      const ship = document.createElement('lubber-ship');
      const card = document.createElement('lubber-deviation-card');
      const exact = { kind: 'exact', coefficients: { A: 0.01, B: 0.35, C: -0.2, D: 0.06, E: 0.01 } };
      for (const [name, value] of Object.entries({ name: 'm.v. Halcyon Tern', latitude: '48-17.0S', longitude: '071-42.5W', instant: '2026-11-26T11:40:00Z' })) ship.setAttribute(name, value);
      for (const [name, value] of Object.entries({ card: JSON.stringify(exact), limit: 'after-adjustment', place: 'Port Averil', date: '2026-11-26', today: '2026-11-26' })) card.setAttribute(name, value);
      ship.append(card);
      document.body.replaceChildren(ship);
    });
    await page.waitForFunction(() => document.querySelector('lubber-deviation-card')?.shadowRoot?.querySelector('.paper'));
    await page.emulateMediaType('print');
    const shown = await visibleText(page);
    assert.ok(shown.includes('exceed the limit of 3°') && !shown.includes('is beyond the limit'), shown);
    assert.equal(pagesOf(await print(page)), 1);
    await page.close();
  });

  it('as a pocket card is A6 on one page', async () => {
    const { page } = await openPage(browser, `${server.address}demo/chart-room/`);
    await showCard(page, 'pocket');
    await page.emulateMediaType('print');
    const size = await page.evaluate(() => {
      const paper = document.querySelector('lubber-deviation-card')?.shadowRoot?.querySelector('.paper');
      const { width, height } = paper?.getBoundingClientRect() ?? { width: 0, height: 0 };
      return { width, height };
    });
    // A6 is 105 by 148 mm (ISO 216); a CSS pixel is 25.4/96 mm.
    assert.ok(Math.abs((size.width * 25.4) / 96 - 105) < 0.5, `${size.width} px wide`);
    assert.ok(Math.abs((size.height * 25.4) / 96 - 148) < 0.5, `${size.height} px high`);
    assert.equal(pagesOf(await print(page)), 1);
    await page.close();
  });

  // On a pocket card of every 15° the sign of a deviation beyond the limit stood so close to the bold magnetic heading that it seemed to belong to it.
  it('keeps the sign of a deviation beyond the limit off the figure beside it, in every size', async () => {
    const { page } = await openPage(browser, `${server.address}demo/chart-room/`);
    await page.emulateMediaType('print');
    for (const [format, every] of [['pocket', '15'], ['pocket', '10'], ['a4', '10']] as const) {
      await showCard(page, format);
      const found = await page.evaluate(async (step) => {
        const element = document.querySelector('lubber-deviation-card') as HTMLElement & { updateComplete: Promise<unknown> };
        element.setAttribute('card', '{"kind":"exact","coefficients":{"A":0.01,"B":0.36,"C":-0.25,"D":0.12,"E":0.02}}');
        element.setAttribute('every', step);
        await element.updateComplete;
        const range = document.createRange();
        const gaps = [...(element.shadowRoot?.querySelectorAll('.figures .flag') ?? [])].map((flag) => {
          range.selectNodeContents(flag);
          const { right } = range.getBoundingClientRect();
          range.selectNodeContents((flag.closest('tr') as HTMLTableRowElement).cells[2] as HTMLElement);
          return range.getBoundingClientRect().left - right;
        });
        const paper = (element.shadowRoot?.querySelector('.paper') as HTMLElement).getBoundingClientRect();
        const over = [...(element.shadowRoot?.querySelectorAll('.figures') ?? [])].map((table) => table.getBoundingClientRect().right - paper.right);
        return { gaps, over: Math.max(...over) };
      }, every);
      assert.ok(found.gaps.length > 12, `${found.gaps.length} signs`);
      assert.ok(Math.min(...found.gaps) >= 3, `${format}, every ${every}°: ${Math.min(...found.gaps).toFixed(1)} px`);
      assert.ok(found.over <= 0, `${format}, every ${every}°: ${found.over} px over the edge`);
    }
    await page.close();
  });

  it('printed by night is black on white', async () => {
    const { page } = await openPage(browser, `${server.address}demo/chart-room/?theme=night`);
    await showCard(page, 'a4');
    await page.emulateMediaType('print');
    const colours = await page.evaluate(() => {
      const frame = document.querySelector('lubber-deviation-card')?.shadowRoot?.querySelector('.frame');
      const style = frame ? getComputedStyle(frame) : null;
      return [style?.color, style?.backgroundColor];
    });
    assert.deepEqual(colours, ['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
    await page.close();
  });
});
