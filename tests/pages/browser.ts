import puppeteer from 'puppeteer-core';
import type { Browser, Page } from 'puppeteer-core';
import { askedBrowsers, findChromium, findFirefox } from '../install.js';

export type BrowserName = 'chromium' | 'firefox';

/** The browsers a page that must work in both is tried in. */
export const browserNames: readonly BrowserName[] = askedBrowsers();

/** A real Firefox without window, which takes the same made-up host name for this machine and does not turn it to https. */
function openFirefox(): Promise<Browser> {
  const executablePath = findFirefox();
  if (!executablePath) throw new Error('no Firefox: see npm test');
  return puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: true,
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

/** What a page complained of: console errors, uncaught errors, refusals of its policy, requests elsewhere. */
export interface Complaints {
  readonly list: string[];
}

/** A page that notes every complaint. */
export async function openPage(browser: Browser, address: string, width = 1280, height = 900): Promise<{ page: Page; complaints: Complaints }> {
  const page = await browser.newPage();
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
