import puppeteer from 'puppeteer-core';
import type { Browser, Page } from 'puppeteer-core';
import { askedBrowsers, findChromium, findFirefox } from '../install.js';

export type BrowserName = 'chromium' | 'firefox';

/** The browsers a page that must work in both is tried in. */
export const browserNames: readonly BrowserName[] = askedBrowsers();

/** How long a slow or busy machine may take for one step, milliseconds: only what hangs comes to its end. */
export const PATIENCE = 120_000;

/** `LUBBERLINE_SLOWER=6` has the pages of Chromium run six times slower, as on a poor machine; Firefox knows no such thing. */
const slower = Number(process.env['LUBBERLINE_SLOWER'] ?? 1);

/** A real Firefox without window, which takes the same made-up host name for this machine and does not turn it to https. */
function openFirefox(): Promise<Browser> {
  const executablePath = findFirefox();
  if (!executablePath) throw new Error('no Firefox: see npm test');
  return puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: true,
    timeout: PATIENCE,
    extraPrefsFirefox: { 'network.dns.localDomains': 'shipnet', 'dom.security.https_first': false },
  });
}

/** A real Chromium without window; the flags keep it off a network that is not there. */
export function openBrowser(name: BrowserName = 'chromium'): Promise<Browser> {
  if (name === 'firefox') return openFirefox();
  const executablePath = findChromium();
  if (!executablePath) throw new Error('no Chromium: see npm test');
  return puppeteer.launch({
    executablePath,
    headless: true,
    timeout: PATIENCE,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--host-resolver-rules=MAP shipnet 127.0.0.1',
    ],
  });
}

/** An empty page that waits for whatever a slow machine does late. */
export async function newPage(browser: Browser): Promise<Page> {
  const page = await browser.newPage();
  page.setDefaultTimeout(PATIENCE);
  if (slower > 1 && !/firefox/i.test(await browser.version())) {
    const slow = (): Promise<void> => page.emulateCPUThrottling(slower).catch(() => undefined);
    // Another document may be another process.
    page.on('framenavigated', () => void slow());
    page.on('domcontentloaded', () => void slow());
    await slow();
  }
  return page;
}

/** What a page complained of: console errors, uncaught errors, refusals of its policy, requests elsewhere. */
export interface Complaints {
  readonly list: string[];
}

/** A page that notes every complaint. */
export async function openPage(browser: Browser, address: string, width = 1280, height = 900): Promise<{ page: Page; complaints: Complaints }> {
  const page = await newPage(browser);
  await page.setViewport({ width, height });
  const list: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warn') list.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => list.push(`error: ${String(error)}`));
  page.on('requestfailed', (request) => list.push(`failed: ${request.url()}`));
  await page.goto(address, { waitUntil: 'load' });
  return { page, complaints: { list } };
}
