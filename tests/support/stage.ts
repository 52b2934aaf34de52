/** One page on which scenes are set up one after another, in any light. */
import type { Browser, CDPSession, Page } from 'puppeteer-core';
import { openPage } from '../pages/browser.js';
import type { Scene } from './scenes.js';

/** How the device shows a page. */
export interface Light {
  readonly theme?: 'day' | 'dusk' | 'night' | 'auto';
  readonly bridge?: boolean;
  /** Media features by name: `forced-colors`, `prefers-contrast`, `prefers-reduced-motion`. */
  readonly media?: Readonly<Record<string, string>>;
  readonly print?: boolean;
}

export class Stage {
  readonly page: Page;
  readonly complaints: readonly string[];
  /** Only Chromium takes lights. */
  readonly #session: CDPSession | null;

  private constructor(page: Page, complaints: readonly string[], session: CDPSession | null) {
    this.page = page;
    this.complaints = complaints;
    this.#session = session;
  }

  static async open(browser: Browser, address: string, width = 1280, height = 900): Promise<Stage> {
    const { page, complaints } = await openPage(browser, 'about:blank', width, height);
    // A scene is written into the page as text, which the demo's policy refuses to anybody.
    const chromium = !/firefox/i.test(await browser.version());
    if (chromium) await page.setBypassCSP(true);
    // The loader of the tests names inner functions by a helper the page does not have.
    await page.evaluateOnNewDocument('globalThis.__name = (named) => named');
    await page.goto(`${address}tests/support/stage.html`);
    const session = chromium ? await page.createCDPSession() : null;
    // A page in the background gets no animation frame.
    await session?.send('Emulation.setFocusEmulationEnabled', { enabled: true });
    return new Stage(page, complaints.list, session);
  }

  async light({ theme = 'day', bridge = false, media = {}, print = false }: Light): Promise<void> {
    const features = Object.entries(media).map(([name, value]) => ({ name, value }));
    await this.#session?.send('Emulation.setEmulatedMedia', { media: print ? 'print' : '', features });
    await this.page.evaluate(
      (name, large) => {
        const { dataset } = document.documentElement;
        dataset['lubberTheme'] = name;
        if (large) dataset['lubberDensity'] = 'bridge';
        else delete dataset['lubberDensity'];
      },
      theme,
      bridge,
    );
    await this.settle(1);
  }

  /** Another window, and another size of the page's letters. */
  async resize(width: number, letters = ''): Promise<void> {
    await this.page.setViewport({ width, height: 900 });
    await this.page.evaluate((size) => {
      document.documentElement.style.fontSize = size;
    }, letters);
    await this.settle(2);
    if (!letters) return;
    // The letters of a page may change without a change of any width.
    await this.page.setViewport({ width: width - 1, height: 900 });
    await this.settle(2);
  }

  /** Sets a scene up: the widget alone on the page, its details open, its pictures drawn. */
  async show({ html, press, tag, state }: Scene, { open = true } = {}): Promise<void> {
    await this.page.evaluate((text) => {
      (document.getElementById('stage') as HTMLElement).innerHTML = text;
    }, html);
    await this.settle();
    if (tag === 'lubber-record') await this.#openRecord();
    if (tag === 'lubber-record' && state !== 'refused') await this.#fillRecord(state !== 'empty');
    for (const words of press) {
      await this.page.evaluate((name) => {
        const buttons = [...(document.querySelector('#stage > *')?.shadowRoot?.querySelectorAll('button') ?? [])];
        const found = buttons.find((button) => button.textContent?.trim() === name);
        if (!found) throw new Error(`no button ${name} among ${buttons.map((button) => button.textContent?.trim()).join(', ')}`);
        found.click();
      }, words);
      await this.settle();
    }
    if (!open) return;
    await this.page.evaluate(() => {
      for (const each of document.querySelector('#stage > *')?.shadowRoot?.querySelectorAll('details') ?? []) each.open = true;
    });
    await this.settle();
  }

  /** Its store opens in its own time, and the form comes with it. */
  async #openRecord(): Promise<void> {
    await this.page.waitForFunction(() => document.querySelector('lubber-record')?.shadowRoot?.querySelector('details'));
    await this.settle();
  }

  /** A month of invented entries, written once. */
  async #fillRecord(written: boolean): Promise<void> {
    if (!written) return;
    await this.page.evaluate(async () => {
      type Book = HTMLElement & { whole: Promise<void>; entries: readonly unknown[]; now: string; card: unknown; appendEntry(draft: unknown): Promise<unknown> };
      type Month = { card: unknown; now: string; drafts: readonly { instant: string }[] };
      const book = document.querySelector('lubber-record') as unknown as Book;
      const held = globalThis as unknown as { halcyonMonth?: Month };
      if (!held.halcyonMonth) {
        const script = document.createElement('script');
        script.src = '../../demo/record/month.js';
        document.head.append(script);
        await new Promise((resolve) => script.addEventListener('load', resolve));
      }
      const { card, now, drafts } = held.halcyonMonth as unknown as Month;
      book.card = card;
      await book.whole;
      if (book.entries.length === 0) {
        for (const draft of drafts.slice(0, 24)) {
          book.now = draft.instant;
          await book.appendEntry(draft);
        }
      }
      book.now = now;
      await book.whole;
    });
    await this.settle();
  }

  /** Until nothing more is drawn: updates done, two frames gone, a canvas where one comes. */
  async settle(rounds = 3): Promise<void> {
    await this.page.evaluate(async (times) => {
      const frame = (): Promise<unknown> => new Promise((resolve) => requestAnimationFrame(resolve));
      for (let round = 0; round < times; round += 1) {
        const widget = document.querySelector('#stage > *') as (HTMLElement & { updateComplete?: Promise<unknown> }) | null;
        await widget?.updateComplete;
        await frame();
        const live = widget?.shadowRoot?.querySelector('.live');
        for (let wait = 0; live && !live.querySelector('canvas') && wait < 20; wait += 1) await frame();
      }
    }, rounds);
  }

  /** The widget's own box as a picture. */
  async picture(): Promise<Uint8Array> {
    const element = await this.page.$('#stage > *');
    if (!element) throw new Error('nothing on the stage');
    return element.screenshot({ captureBeyondViewport: true });
  }

  async close(): Promise<void> {
    await this.page.close();
  }
}
