/**
 * From the start of a script to an answer on the screen: the amplitude alone, the script of the
 * sights and the script of everything, each beside an empty element of Lit in the same run; from
 * a folder and over http, at full speed and slowed four times. Medians over twenty fresh pages,
 * each opened once the machine has come to rest: the browser starts processes for a new page and
 * ends those of the page before, and where they run beside it half of what is measured is theirs.
 * `node components/build.js`, then `node --import tsx tests/bench/start-up.bench.ts`.
 */
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import puppeteer from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { findChromium } from '../install.js';
import { atRest } from './at-rest.js';

const RUNS = 20;
const SPEEDS = [1, 4];
const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = `${mkdtempSync(join(tmpdir(), 'lubberline-start-'))}/`;

const empty = `
  import { LitElement, html } from 'lit';
  customElements.define('empty-element', class extends LitElement { render() { return html\`<p class="answer">Nothing</p>\`; } });
`;
const amplitude = '<lubber-amplitude latitude="33-24.0N" longitude="071-42.5W" instant="2026-11-25T11:31:48Z" bearing="130" heading="020"></lubber-amplitude>';

/** Name, element and script of each page. */
const pages = [
  ['empty', '<empty-element></empty-element>', 'empty.js'],
  ['amplitude', amplitude, 'amplitude.js'],
  ['sights', amplitude, 'lubberline-sights.js'],
  ['everything', amplitude, 'lubberline.js'],
] as const;

async function bundle(contents: string, name: string): Promise<void> {
  await build({ stdin: { contents, resolveDir: root }, bundle: true, minify: true, format: 'iife', conditions: ['production'], legalComments: 'none', outfile: join(folder, name) });
}

await bundle(empty, 'empty.js');
await bundle("import 'lubberline/components/amplitude/define.js';", 'amplitude.js');
for (const script of ['lubberline-sights.js', 'lubberline.js']) copyFileSync(join(root, 'dist', script), join(folder, script));
for (const [name, element, script] of pages) {
  // The clock starts before the script is fetched; it stops when the answer is laid out, and again when it has been painted.
  writeFileSync(
    join(folder, `${name}.html`),
    `<!doctype html><meta charset="utf-8"><title>.</title><body>${element}<script>globalThis.started = performance.now();</script><script src="${script}"></script><script>
      globalThis.measured = (async () => {
        const element = document.body.firstElementChild;
        // Not \`updateComplete\`: who waits for that has what is closed drawn, too.
        let answer;
        while (!(answer = element.shadowRoot.querySelector('.answer'))) await new Promise((resolve) => setTimeout(resolve));
        answer.getBoundingClientRect();
        const laidOut = performance.now() - started;
        await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
        return { laidOut, painted: performance.now() - started, text: answer.textContent.trim() };
      })();
    </script>`,
  );
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;

const executablePath = findChromium();
if (!executablePath) throw new Error('no Chromium: see npm test');
const browser = await puppeteer.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'] });
const server = await serve({ folder, policy: '' });

for (const [how, base] of [['file', pathToFileURL(folder).href], ['http', server.address]] as const) {
  for (const speed of SPEEDS) {
    const times = new Map<string, { laidOut: number[]; painted: number[] }>(pages.map(([name]) => [name, { laidOut: [], painted: [] }]));
    for (let run = 0; run < RUNS; run += 1) {
      for (const [name] of pages) {
        // A context of its own: nothing compiled before is found again.
        const context = await browser.createBrowserContext();
        const page = await context.newPage();
        await atRest();
        // A page that is slowed is never at rest.
        await page.emulateCPUThrottling(speed);
        await page.goto(`${base}${name}.html`);
        const { laidOut, painted, text } = await page.evaluate(() => (globalThis as unknown as { measured: Promise<{ laidOut: number; painted: number; text: string }> }).measured);
        if (!text) throw new Error(`${name}: no answer`);
        times.get(name)?.laidOut.push(laidOut);
        times.get(name)?.painted.push(painted);
        await context.close();
      }
    }
    const nothing = times.get('empty') ?? { laidOut: [], painted: [] };
    for (const [name] of pages) {
      const { laidOut, painted } = times.get(name) ?? nothing;
      const ratio = (kind: 'laidOut' | 'painted', of: readonly number[]): string => `${median(of).toFixed(1).padStart(6)} ms (${(median(of) / median(nothing[kind])).toFixed(2)})`;
      console.log(`${how}, ${speed} times slower, ${name.padEnd(10)}: laid out ${ratio('laidOut', laidOut)}, painted ${ratio('painted', painted)}`);
    }
  }
}
server.server.close();
await browser.close();
rmSync(folder, { recursive: true });
