import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';
import type { Browser, Page } from 'puppeteer-core';
import type { LubberRecord } from '../../components/record/record.js';
import { verifyChain } from '../../core/record/verify-chain.js';
import type { RecordEntry } from '../../core/record/entry.js';
import { findChromium } from '../install.js';

const args = ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'];

/** When the browser is killed. */
export interface Moment {
  /** Milliseconds of writing before the kill. */
  readonly after: number;
  /** How many entries this browser must have confirmed by then: a slow machine is given the time for them. */
  readonly least: number;
}

/** How long a browser may take to confirm the entries asked for, milliseconds. */
const PATIENCE = 30_000;

/** What became of one kill. */
export interface Kill {
  /** Milliseconds of writing before the kill. */
  readonly after: number;
  /** Entries the user was told are saved. */
  readonly confirmed: number;
  /** Entries in the book when it was opened again. */
  readonly found: number;
  /** Confirmed entries that are not there, or not the same. */
  readonly lost: number;
  /** Whether the chain verifies from the first entry to the last. */
  readonly whole: boolean;
  /** Whether the page raised an alarm about the book. */
  readonly alarm: boolean;
}

const BOOK = 'killed while writing';

async function openBook(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage();
  await page.goto(address);
  await page.evaluate(async (book) => {
    const element = document.createElement('lubber-record') as LubberRecord;
    element.book = book;
    document.body.append(element);
    await element.whole;
  }, BOOK);
  return page;
}

/** Writes as fast as the book confirms, and tells this process of each confirmation the user would see. */
async function writeFor(page: Page, confirmed: Map<number, string>): Promise<void> {
  await page.exposeFunction('confirm_', (number: number, hash: string) => void confirmed.set(number, hash));
  await page.evaluate(() => {
    const element = document.querySelector('lubber-record') as LubberRecord;
    const tell = (globalThis as unknown as { confirm_(number: number, hash: string): void }).confirm_;
    void (async () => {
      for (let turn = element.entries.length; ; turn++) {
        const outcome = await element.appendEntry({
          kind: 'observation', instant: new Date(Date.UTC(2026, 10, 1) + turn * 60_000), headingStandard: turn % 360, deviation: (turn % 50) / 10,
          deviationOf: 'standard', observer: 'E. M.', remarks: 'written until killed',
        });
        if (outcome.saved) tell(outcome.entry.number, outcome.entry.hash);
      }
    })();
  });
}

/** Whether there is anybody left of a group of processes. */
function isThere(group: number): boolean {
  try {
    return process.kill(group, 0);
  } catch {
    return false;
  }
}

async function killAll(browser: Browser): Promise<void> {
  const child = browser.process();
  if (!child?.pid) throw new Error('the browser has no process');
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  // Puppeteer starts the browser as the leader of a group: its renderers and services go with it.
  process.kill(-child.pid, 'SIGKILL');
  await gone;
  // One that is still going holds the files of the book, and the next browser could not open them.
  for (let round = 0; round < 500 && isThere(-child.pid); round++) await new Promise((resolve) => setTimeout(resolve, 10));
}

/** Waits until so many entries are confirmed. */
async function grown(confirmed: ReadonlyMap<number, string>, size: number): Promise<void> {
  const end = Date.now() + PATIENCE;
  while (confirmed.size < size) {
    if (Date.now() > end) throw new Error(`${confirmed.size} entries were confirmed where ${size} were awaited`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

/**
 * Kills the browser while it writes one book, again and again with the same profile, each
 * time at another moment; then opens the book and compares it with what was confirmed.
 */
export async function killWhileWriting(address: string, moments: readonly Moment[], onKill: (kill: Kill) => void = () => undefined): Promise<readonly Kill[]> {
  const profile = mkdtempSync(join(tmpdir(), 'lubberline-kill-'));
  const confirmed = new Map<number, string>();
  const kills: Kill[] = [];
  const executablePath = findChromium() ?? '/usr/bin/chromium';
  const launch = (): Promise<Browser> => puppeteer.launch({ executablePath, headless: true, args, userDataDir: profile });
  try {
    for (const { after, least } of moments) {
      const browser = await launch();
      const before = confirmed.size;
      await writeFor(await openBook(browser, address), confirmed);
      await new Promise((resolve) => setTimeout(resolve, after));
      await grown(confirmed, before + least);
      await killAll(browser);
      const again = await launch();
      const page = await openBook(again, address);
      const { entries, alarm } = await page.evaluate(() => {
        const element = document.querySelector('lubber-record') as LubberRecord;
        return { entries: element.entries as RecordEntry[], alarm: element.renderRoot.querySelector('.alarm') !== null };
      });
      await again.close();
      const kill: Kill = {
        after,
        confirmed: confirmed.size,
        found: entries.length,
        lost: [...confirmed].filter(([number, hash]) => entries[number - 1]?.hash !== hash).length,
        whole: verifyChain(BOOK, entries).ok,
        alarm,
      };
      kills.push(kill);
      onKill(kill);
    }
    return kills;
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
  }
}
