import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after } from 'node:test';
import type { Browser, Frame, Page } from 'puppeteer-core';
import { serve } from '../../../demo/serve.js';
import { newPage, openBrowser } from '../browser.js';
import type { BrowserName } from '../browser.js';
import { assertPrintedAnswer, typePrintedSight } from './printed-sight.js';

/** What a page notes of itself while widgets stand in it. */
export interface Noted {
  /** Refusals of its policy. */
  readonly violations: string[];
  /** Whatever changed in its own tree once it was read in, but for where it writes itself down. */
  readonly changes: string[];
  /** Names that scripts have put on the global object since. */
  readonly globals: string[];
}

const watchPage = readFileSync(new URL('watch-page.js', import.meta.url), 'utf8');

/** What the browser asks for when it likes, and complains of where the policy forbids it: no doing of a widget. */
const MARK = 'favicon.ico';

export interface Visit {
  readonly page: Page;
  /** Where the widget stands. */
  readonly frame: Frame;
  /** Warnings and errors of the console, uncaught errors, requests that failed. */
  readonly complaints: string[];
  /** Files asked for, by their name; the mark of the page, which the browser asks for when it likes, left out. */
  readonly requests: string[];
}

/** Opens a host page and takes down all it complains of and asks for. */
export async function visit(browser: Browser, address: string, inside = '', width = 1280): Promise<Visit> {
  const page = await newPage(browser);
  await page.setViewport({ width, height: 900 });
  await page.evaluateOnNewDocument(watchPage);
  const complaints: string[] = [];
  const requests: string[] = [];
  const complain = (text: string): void => {
    if (!text.includes(MARK)) complaints.push(text);
  };
  page.on('console', (message) => {
    if (['error', 'warn'].includes(message.type())) complain(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => complain(`error: ${String(error)}`));
  page.on('requestfailed', (request) => complain(`failed: ${request.url()}`));
  page.on('request', (request) => {
    const name = request.url().split('/').pop() ?? '';
    if (name !== MARK && !request.url().startsWith('data:')) requests.push(name);
  });
  await page.goto(address, { waitUntil: 'load' });
  const frame = page.frames().find((each) => inside !== '' && each.url().endsWith(inside)) ?? page.mainFrame();
  return { page, frame, complaints, requests };
}

/** What the page has noted of itself. */
const notedBy = (frame: Frame): Promise<Noted> => frame.evaluate(() => (globalThis as unknown as { lubberlineNoted: Noted }).lubberlineNoted);

/** Lit leaves a list of its releases on a page, for the day two of them meet, and one of decorated properties. */
const LIT = ['litElementVersions', 'litHtmlVersions', 'litPropertyMetadata', 'reactiveElementVersions'];

export interface Promised {
  /** Everything the page may load, by name. */
  readonly files: readonly string[];
  /** What it may complain of; nothing, as a rule. */
  readonly complaints?: readonly RegExp[];
}

/** Types the printed sight and holds the page to what every host is promised. */
export async function assertGoodGuest({ page, frame, complaints, requests }: Visit, { files, complaints: allowed = [] }: Promised): Promise<void> {
  const loaded = [...new Set(requests)].sort();
  const count = requests.length;
  await typePrintedSight(page, frame);
  await assertPrintedAnswer(frame);
  const noted = await notedBy(frame);
  assert.deepEqual(noted.violations.filter((refusal) => !refusal.includes(MARK)), [], 'the policy of the page refuses nothing');
  assert.deepEqual(noted.changes, [], 'the tree of the page is left alone');
  assert.deepEqual(noted.globals.filter((name) => !LIT.includes(name)), [], 'nothing is put on the global object');
  // Firefox reports no requests for files of a folder.
  if (loaded.length > 0) assert.deepEqual(loaded, [...files].sort(), 'nothing but its own files is asked for');
  assert.deepEqual(requests.slice(count), [], 'nothing is asked for once the page is there');
  assert.equal(complaints.length, allowed.length, complaints.join('\n'));
  allowed.forEach((pattern, index) => assert.match(complaints[index] ?? '', pattern));
}

/** Serves a folder for as long as something is done with its address. */
export async function whileServed(folder: string, policy: string, use: (address: string) => Promise<void>): Promise<void> {
  const { server, address } = await serve({ folder, policy });
  try {
    await use(address);
  } finally {
    server.close();
    server.closeAllConnections();
  }
}

/** One browser for all tests of a file, opened when first asked for. */
export function sharedBrowser(name: BrowserName): () => Promise<Browser> {
  let browser: Promise<Browser> | undefined;
  after(async () => (await browser)?.close());
  return () => (browser ??= openBrowser(name));
}
