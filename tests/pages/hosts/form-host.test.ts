import assert from 'node:assert/strict';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readFileSync } from 'node:fs';
import { describe, it } from 'node:test';
import type { Page } from 'puppeteer-core';
import { browserNames } from '../browser.js';
import { until } from '../until.js';
import { siteOf } from './host-site.js';
import { assertPrintedAnswer, typePrintedSight } from './printed-sight.js';
import { sharedBrowser, visit } from './try-host.js';

/** A server that gives the files of a folder and takes down what is posted to it. */
async function logbook(folder: string): Promise<{ address: string; posted: URLSearchParams[]; close(): void }> {
  const posted: URLSearchParams[] = [];
  const server = createServer((request, response) => {
    if (request.method === 'POST') {
      let body = '';
      request.on('data', (part: Buffer) => (body += part.toString()));
      request.on('end', () => {
        posted.push(new URLSearchParams(body));
        response.writeHead(200, { 'content-type': 'text/html' }).end('<!doctype html><title>Logged</title><p>Logged.');
      });
      return;
    }
    const name = request.url === '/' ? 'index.html' : (request.url ?? '').slice(1);
    const type = name.endsWith('.js') ? 'text/javascript' : name.endsWith('.css') ? 'text/css' : 'text/html';
    response.writeHead(200, { 'content-type': `${type}; charset=utf-8` }).end(readFileSync(folder + name));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const close = (): void => {
    server.close();
    server.closeAllConnections();
  };
  return { address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`, posted, close };
}

/** A field as it stands, of the first widget unless another is named. */
const field = (page: Page, name: string, tag = 'lubber-amplitude'): Promise<string> =>
  page.evaluate((of, id) => document.querySelector(of)?.shadowRoot?.querySelector<HTMLInputElement>(`#${id}`)?.value ?? '', tag, name);

/** Types over a field. */
async function typeOver(page: Page, tag: string, name: string, text: string): Promise<void> {
  await page.evaluate((of, id) => document.querySelector(of)!.shadowRoot!.querySelector<HTMLInputElement>(`#${id}`)!.select(), tag, name);
  await page.keyboard.type(text);
}

async function press(page: Page, id: string): Promise<void> {
  await page.focus(`#${id}`);
  await page.keyboard.press('Enter');
}

for (const name of browserNames) {
  describe(`a form that is sent, in ${name}`, () => {
    const browser = sharedBrowser(name);

    it('waits for the result that is required, posts it, and begins anew', async () => {
      const site = siteOf('form');
      const log = await logbook(site.folder);
      try {
        const { page, frame, complaints } = await visit(await browser(), log.address);
        await press(page, 'send');
        assert.equal(await page.evaluate(() => document.querySelector('form')?.checkValidity()), false);
        await until('the browser leads to what is missing', async () => (await page.evaluate(() => document.activeElement?.shadowRoot?.activeElement?.id)) === 'latitude');
        await typePrintedSight(page, frame);
        await assertPrintedAnswer(frame);
        await typeOver(page, 'lubber-swing', 'reading-0', '5W');
        await typeOver(page, 'lubber-transit', 'bearing-0', '257');
        // A page that listens for its end is not set aside whole.
        await page.evaluate(() => {
          addEventListener('unload', () => undefined);
          Object.assign(window, { first: true });
        });
        await Promise.all([page.waitForNavigation(), press(page, 'send')]);
        assert.equal(log.posted.length, 1);
        const sent = log.posted[0] as URLSearchParams;
        assert.deepEqual([...sent.keys()], ['officer', 'sight'], 'what is disabled is not sent');
        const sight = JSON.parse(sent.get('sight') ?? 'null') as { widget: string; result: { deviation: number } };
        assert.equal(sight.widget, 'lubber-amplitude');
        assert.ok(Math.abs(sight.result.deviation - 1.4) < 0.05);

        await page.evaluate(() => history.back());
        await until('the form is back', async () => (await field(page, 'bearing').catch(() => '')) !== '');
        assert.equal(await page.evaluate(() => 'first' in window), false, 'the page is made anew');
        assert.deepEqual([await field(page, 'bearing'), await field(page, 'latitude')], ['101.0', '24-30.0N'], 'what was typed is there still');
        assert.deepEqual([await field(page, 'reading-0', 'lubber-swing'), await field(page, 'reading-1', 'lubber-swing'), await field(page, 'bearing-0', 'lubber-transit')], ['5W', '2E', '257'], 'and comes before what the page gives');

        await press(page, 'reset');
        await page.waitForFunction(() => document.querySelector('lubber-amplitude')?.shadowRoot?.querySelector<HTMLInputElement>('#bearing')?.value === '');
        assert.equal(await field(page, 'latitude'), '');
        assert.deepEqual(complaints, []);
        await page.close();
      } finally {
        log.close();
        site.remove();
      }
    });
  });
}
