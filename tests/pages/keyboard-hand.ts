/** A user of a page who has a keyboard and nothing else. */
import assert from 'node:assert/strict';
import type { Page } from 'puppeteer-core';

/** The widget in use and what in it has the focus: an id, else the name and value of a choice. */
async function place(page: Page): Promise<string> {
  return page.evaluate(() => {
    const widget = document.activeElement;
    const element = widget?.shadowRoot?.activeElement;
    if (!widget || !element) return '';
    const { name, value } = element as HTMLInputElement;
    const summary = element.localName === 'summary' ? (element.textContent ?? '').trim() : '';
    return `${widget.localName} ${element.id || summary || (name ? `${name}=${value}` : '')}`;
  });
}

/** Goes by Tab to a part of a widget: by its id, the words of what opens, or the name of a choice. */
export async function tabTo(page: Page, tag: string, part: string, back = false): Promise<void> {
  if (back) await page.keyboard.down('Shift');
  let here = await place(page);
  const there = (): boolean => here === `${tag} ${part}` || here.startsWith(`${tag} ${part}=`);
  for (let step = 0; step < 250 && !there(); step += 1) {
    await page.keyboard.press('Tab');
    here = await place(page);
  }
  if (back) await page.keyboard.up('Shift');
  assert.ok(there(), `Tab does not reach ${part} of ${tag}: it ended at ${here}`);
}

/** Takes one of a group of radio buttons by the arrow keys. */
export async function choose(page: Page, tag: string, name: string, value: string, back = false): Promise<void> {
  await tabTo(page, tag, name, back);
  for (let step = 0; step < 8 && (await place(page)) !== `${tag} ${name}=${value}`; step += 1) await page.keyboard.press('ArrowDown');
  assert.equal(await place(page), `${tag} ${name}=${value}`);
}

/** Presses a key while another is held. */
export async function together(page: Page, held: 'Control' | 'Shift', key: 'z' | 'y'): Promise<void> {
  await page.keyboard.down(held);
  await page.keyboard.press(key);
  await page.keyboard.up(held);
}

/** Pastes what lies on the clipboard of the browser, as Control V does. */
export async function pasteFromClipboard(page: Page, text: string): Promise<void> {
  await page.evaluate((what) => navigator.clipboard.writeText(what), text);
  await page.keyboard.down('Control');
  await page.keyboard.down('v', { commands: ['Paste'] });
  await page.keyboard.up('v');
  await page.keyboard.up('Control');
}
