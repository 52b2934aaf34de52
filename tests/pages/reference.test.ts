import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { after, before, describe, it } from 'node:test';
import type { Browser, Page } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { projectFolder } from '../install.js';
import { axeFindings } from '../support/axe-run.js';
import { widgets as widgetNames } from '../support/package-entries.js';
import { openBrowser, openPage } from './browser.js';
import type { Complaints } from './browser.js';
import { laidOut } from './until.js';

interface Named {
  readonly name: string;
}
interface Widget {
  readonly tagName?: string;
  readonly attributes?: readonly Named[];
  readonly events?: readonly Named[];
  readonly cssParts?: readonly Named[];
  readonly cssProperties?: readonly Named[];
}

const manifest = JSON.parse(readFileSync(new URL('../../dist/custom-elements.json', import.meta.url), 'utf8')) as { modules: { declarations?: Widget[] }[] };
const widgets = manifest.modules.flatMap(({ declarations = [] }) => declarations).filter(({ tagName }) => tagName !== undefined);

/** Whether the widget of the page has something to say; a drill has no score before an answer, but an exercise. */
const answers = (page: Page): Promise<boolean> =>
  page.waitForFunction(
    () => {
      const widget = document.querySelector('#example > *') as HTMLElement & { result?: unknown };
      return widget.localName === 'lubber-drill' ? widget.shadowRoot?.querySelector('input') !== null : Boolean(widget.result);
    },
  ).then(() => true, () => false);

describe('the reference', () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;
  let page: Page;
  let complaints: Complaints;

  before(async () => {
    const { status, stderr } = spawnSync(process.execPath, ['demo/reference/build.js'], { cwd: projectFolder, encoding: 'utf8' });
    assert.equal(status, 0, stderr);
    server = await serve();
    browser = await openBrowser();
    ({ page, complaints } = await openPage(browser, `${server.address}demo/reference/`));
  });

  after(async () => {
    await browser.close();
    server.server.close();
  });

  /** Writes over the text box and waits until the page has followed. */
  async function edit(text: string): Promise<void> {
    const [box, refusal] = await Promise.all([page.$('#attributes'), page.$('#refusal')]);
    // Following ends in a refusal, or in none: either takes the mark away.
    await page.evaluate((area, line, words) => {
      line!.textContent = 'not yet';
      (area as HTMLTextAreaElement).value = words;
      area!.dispatchEvent(new Event('input'));
    }, box, refusal, text);
    await page.waitForFunction((line) => line!.textContent !== 'not yet', {}, refusal);
    await page.$eval('#example > *', async (widget) => {
      await (widget as HTMLElement & { updateComplete: Promise<boolean> }).updateComplete;
      await new Promise((resolve) => setTimeout(resolve));
    });
  }

  it('leads from its index to every widget of the manifest', async () => {
    assert.deepEqual(await page.$$eval('.names a', (ways) => ways.map((way) => way.textContent)), widgetNames.map((name) => `lubber-${name}`).sort());
  });

  for (const { tagName = '', attributes = [], events = [], cssParts = [], cssProperties = [] } of widgets) {
    it(`${tagName}: everything of the manifest, an example that answers, at every width, and no complaint`, async () => {
      await page.setViewport({ width: 320, height: 900 });
      await page.goto(`${server.address}demo/reference/${tagName}.html`);
      assert.ok(await answers(page));
      const names = await page.$$eval('.names dt > code:first-child', (found) => found.map((each) => each.textContent));
      for (const { name } of [...attributes, ...events, ...cssParts, ...cssProperties]) assert.ok(names.includes(name), name);
      assert.match(await page.$eval('#copied-html', (text) => text.textContent ?? ''), new RegExp(`<${tagName}\\n`));
      assert.doesNotMatch(await page.$$eval('dt, dd, p', (found) => found.map((each) => each.textContent).join(' ')), /undefined|NaN|\[object|[a-z]'s /);
      // Written again by the reader, the same attributes make the same answer.
      await edit(await page.$eval('#attributes', (box) => (box as HTMLTextAreaElement).value));
      assert.equal(await page.$eval('#refusal', (text) => text.textContent), '');
      assert.ok(await answers(page));
      if (tagName === 'lubber-conversion') {
        for (const light of ['day', 'night']) {
          await page.evaluate((theme) => (document.documentElement.dataset['lubberTheme'] = theme), light);
          assert.deepEqual(await axeFindings(page, 'all', 'html'), [], light);
        }
      }
      for (const width of [320, 768, 1280]) {
        await page.setViewport({ width, height: 900 });
        await laidOut(page);
        assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= width, `${width} px`);
      }
      assert.deepEqual(complaints.list, []);
    });
  }

  it('lets the reader change an attribute, and the widget, the HTML and the result follow', async () => {
    await page.goto(`${server.address}demo/reference/lubber-conversion.html`);
    // Common practice, no source: 100° by compass, variation 9° W and deviation 5° E make 096° true.
    await edit(`heading="100"\nvariation='9W' deviation=5E lang="en"`);
    const result = await page.$eval('#result-now', (text) => text.textContent ?? '');
    assert.match(result, /"true": 96\b/);
    assert.match(await page.$eval('#copied-html', (text) => text.textContent ?? ''), /heading="100"/);
  });

  for (const [text, said] of [
    ['onclick="alert(1)"', 'The widget has no attribute onclick.'],
    ['style="color:red"', 'The widget has no attribute style.'],
    ['heading="100', 'This is no attribute: heading="100'],
    ['<script>', 'This is no attribute: <script>'],
  ] as const) {
    it(`refuses ${text} in words and leaves the widget as it was`, async () => {
      const before = await page.$eval('#example', (place) => place.innerHTML);
      await edit(text);
      assert.equal(await page.$eval('#refusal', (line) => line.textContent), said);
      assert.equal(await page.$eval('#example', (place) => place.innerHTML), before);
      assert.deepEqual(complaints.list, []);
    });
  }
});
