import assert from 'node:assert/strict';
import type { Frame, Page } from 'puppeteer-core';
import { until } from '../until.js';

/**
 * Deck licence question bank (1981 almanac data): 11 January 1981, latitude 24-30.0N, Sun at 101.0 psc on the
 * celestial horizon at 14:55 UTC, variation 11.6E; the matching printed choice is deviation 1.4E. The longitude is
 * not printed with it: one that puts the Sun on the horizon at that time.
 */
const typed = [
  ['latitude', '24-30.0N'],
  ['longitude', '121-15W'],
  ['date', '1981-01-11'],
  ['time', '14:55'],
  ['bearing', '101.0'],
  ['heading', '180'],
  ['variation', '11.6E'],
] as const;

/** More presses of the Tab key than any host page has stops before the widget is done. */
const MOST_STOPS = 120;

/** Types the printed sight with real keys alone: from field to field by the Tab key. */
export async function typePrintedSight(page: Page, frame: Frame, tag = 'lubber-amplitude'): Promise<void> {
  const focused = (): Promise<string> => frame.evaluate((name) => document.querySelector(name)?.shadowRoot?.activeElement?.id ?? '', tag);
  for (const [name, text] of typed) {
    for (let stop = 0; stop < MOST_STOPS && (await focused()) !== name; stop += 1) await page.keyboard.press('Tab');
    assert.equal(await focused(), name, `the Tab key reaches ${name}`);
    await page.keyboard.down('Control');
    await page.keyboard.press('a');
    await page.keyboard.up('Control');
    await page.keyboard.type(text);
  }
  await page.keyboard.press('Tab');
}

/** What the widget then says, and what the page has heard. */
export async function assertPrintedAnswer(frame: Frame, tag = 'lubber-amplitude'): Promise<void> {
  const headline = (): Promise<string> =>
    frame.evaluate((name) => (document.querySelector(name)?.shadowRoot?.querySelector('.headline')?.textContent ?? '').replace(/\s+/g, ' ').trim(), tag);
  // Firefox tells that a key was taken before all that follows from it is done; the page hears of it last.
  await until('the answer', async () => /1\.4° E/.test(await headline()));
  await until('what the page hears', () => frame.evaluate(() => /"deviation":1\.[34]/.test(document.getElementById('heard')?.textContent ?? '')));
  assert.match(await headline(), /13\.0° E/);
  assert.match(await headline(), /1\.4° E/);
  const heard = JSON.parse(await frame.evaluate(() => document.getElementById('heard')?.textContent || 'null')) as {
    widget: string;
    inputs: Record<string, unknown>;
    result: { error: number; deviation: number };
  };
  assert.equal(heard.widget, tag);
  assert.equal(heard.inputs['bearing'], 101);
  assert.equal(heard.inputs['instant'], '1981-01-11T14:55:00Z');
  assert.ok(Math.abs(heard.result.deviation - 1.4) < 0.05, `deviation ${heard.result.deviation}`);
}
