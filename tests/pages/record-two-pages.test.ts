import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import type { LubberRecord } from '../../components/record/record.js';
import type { RecordEntry } from '../../core/record/entry.js';
import { nextEntry } from '../../core/record/chain.js';
import { readDraft } from '../../core/record/read-draft.js';
import { recordToJson } from '../../core/record/record-json.js';
import { verifyChain } from '../../core/record/verify-chain.js';
import { serveRecordPage } from '../soak/record-page.js';
import { openBrowser, openPage } from './browser.js';

let browser: Browser;
let server: Awaited<ReturnType<typeof serveRecordPage>>;
before(async () => {
  server = await serveRecordPage();
  browser = await openBrowser();
});
after(async () => {
  await browser.close();
  server.close();
});

async function bookOn(name: string): Promise<Page> {
  const { page } = await openPage(browser, server.address);
  await page.evaluate(async (book) => {
    const element = document.createElement('lubber-record') as LubberRecord;
    element.book = book;
    document.body.append(element);
    await element.whole;
  }, name);
  return page;
}

/** Enters so many entries one after the other; how many were confirmed. */
function enter(page: Page, count: number, initials: string): Promise<number> {
  return page.evaluate(
    async (many, observer) => {
      const element = document.querySelector('lubber-record') as LubberRecord;
      let saved = 0;
      for (let turn = 0; turn < many; turn++) {
        const outcome = await element.appendEntry({
          kind: 'observation', instant: new Date(Date.UTC(2026, 10, 1) + turn * 60_000), headingStandard: turn % 360, deviation: 1, deviationOf: 'standard', observer,
        });
        if (outcome.saved) saved += 1;
      }
      return saved;
    },
    count,
    initials,
  );
}

const entriesOf = (page: Page): Promise<RecordEntry[]> =>
  page.evaluate(async () => {
    const element = document.querySelector('lubber-record') as LubberRecord;
    await element.exportText('json');
    return element.entries as RecordEntry[];
  });

test('two pages that append 500 entries each at the same time make one chain of 1,000', { timeout: 900_000 }, async () => {
  const [one, two] = [await bookOn('two pages'), await bookOn('two pages')];
  assert.deepEqual(await Promise.all([enter(one, 500, 'E. M.'), enter(two, 500, 'R. T.')]), [500, 500]);
  const [entries, seenByTwo] = [await entriesOf(one), await entriesOf(two)];
  assert.equal(entries.length, 1000);
  assert.deepEqual(verifyChain('two pages', entries), { ok: true, count: 1000, last: entries[999]?.hash });
  assert.deepEqual(seenByTwo, entries);
  for (const initials of ['E. M.', 'R. T.']) assert.equal(entries.filter(({ observer }) => observer === initials).length, 500);
  // Not one after the other: the pages did write at the same time.
  assert.ok(entries.slice(0, 400).some(({ observer }) => observer === 'E. M.') && entries.slice(0, 400).some(({ observer }) => observer === 'R. T.'));
  await one.close();
  await two.close();
});

test('a book of 10,000 entries paints its newest page before the rest is read, and is then found whole', { timeout: 900_000 }, async () => {
  const page = await bookOn('long');
  await page.evaluate(async () => {
    const element = document.querySelector('lubber-record') as LubberRecord;
    // The first entries are made by the book itself, the rest copied behind in one file, as an import would.
    for (let turn = 0; turn < 3; turn++) {
      await element.appendEntry({ kind: 'observation', instant: new Date(Date.UTC(2020, 0, 1) + turn * 14_400_000), headingStandard: turn, deviation: 1, deviationOf: 'standard' });
    }
  });
  const entries = [...(await entriesOf(page))];
  while (entries.length < 10_000) {
    const instant = new Date(Date.UTC(2020, 0, 1) + entries.length * 14_400_000);
    const reading = readDraft({ kind: 'observation', instant, headingStandard: entries.length % 360, deviation: 1, deviationOf: 'standard' });
    if (reading.ok) entries.push(nextEntry('long', entries[entries.length - 1] ?? null, reading.fields, instant));
  }
  const outcome = await page.evaluate((text) => (document.querySelector('lubber-record') as LubberRecord).importText(text), recordToJson('long', entries));
  assert.deepEqual(outcome, { ok: true, added: 9997 });
  await page.close();

  const { page: again } = await openPage(browser, server.address);
  const painted = await again.evaluate(async () => {
    const started = performance.now();
    const element = document.createElement('lubber-record') as LubberRecord;
    element.book = 'long';
    document.body.append(element);
    while (!element.shadowRoot?.querySelector('.book tbody tr')) await new Promise((resolve) => requestAnimationFrame(resolve));
    await new Promise((resolve) => requestAnimationFrame(resolve));
    const first = performance.now() - started;
    const shown = element.shadowRoot?.querySelectorAll('.book tbody tr').length ?? 0;
    await element.whole;
    await element.updateComplete;
    return { first, shown, whole: performance.now() - started, said: element.shadowRoot?.querySelector('.status')?.textContent ?? '', count: element.entries.length };
  });
  console.log(`10,000 entries: first paint after ${Math.round(painted.first)} ms, read and verified after ${Math.round(painted.whole)} ms`);
  assert.equal(painted.shown, 25);
  assert.equal(painted.count, 10_000);
  assert.match(painted.said, /The chain is whole up to No. 10000/);
  await again.close();
});

test('in a sandboxed frame the book works in memory and says so in words', { timeout: 300_000 }, async () => {
  const { page } = await openPage(browser, server.address);
  const said = await page.evaluate(async () => {
    const frame = document.createElement('iframe');
    frame.setAttribute('sandbox', 'allow-scripts');
    frame.srcdoc = `<script src="${location.href}record.js"></script><lubber-record></lubber-record><script>
      (async () => {
        const element = document.querySelector('lubber-record');
        await element.whole;
        await element.appendEntry({ kind: 'no-observation', instant: '2026-11-20T04:00:00Z', remarks: 'overcast' });
        await element.updateComplete;
        parent.postMessage(element.shadowRoot.textContent, '*');
      })();</script>`;
    const heard = new Promise<string>((resolve) => addEventListener('message', (event) => resolve(String(event.data)), { once: true }));
    document.body.append(frame);
    return heard;
  });
  assert.match(said, /This browser refuses storage here/);
  assert.match(said, /No\. 1 is in this page’s memory only/);
  await page.close();
});
