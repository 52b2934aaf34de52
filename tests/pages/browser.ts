import puppeteer from 'puppeteer-core';
import type { Browser, Page } from 'puppeteer-core';
import { findChromium } from '../install.js';

/** A real Chromium without window; the flags keep it off a network that is not there. */
export function openBrowser(): Promise<Browser> {
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
