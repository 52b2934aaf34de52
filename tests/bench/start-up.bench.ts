/**
 * From the start of a script to an answer on the screen, counted from the moment the page asks
 * for the script and from its first line: the amplitude alone, the script of the
 * sights and the script of everything, each beside an empty element of Lit in the same run; from
 * a folder and over http, at full speed and slowed four times. Medians over twenty fresh pages,
 * each opened once the machine has come to rest: the browser starts processes for a new page and
 * ends those of the page before, and where they run beside it half of what is measured is theirs.
 * `node components/build.js`, then `node --import tsx tests/bench/start-up.bench.ts`.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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
/** The script tells when its first line runs: what was fetched and read before is not in the time from there. */
function timed(from: string, script: string): void {
  writeFileSync(join(folder, script), `globalThis.began = performance.now();${readFileSync(join(from, script), 'utf8')}`);
}

for (const [name, element, script] of pages) {
  timed(name === 'sights' || name === 'everything' ? join(root, 'dist') : folder, script);
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
        const now = performance.now();
        return { laidOut, painted: now - started, run: now - began, text: answer.textContent.trim() };
      })();
    </script>`,
  );
}

const kinds = ['laidOut', 'painted', 'run'] as const;
type Kind = (typeof kinds)[number];
const none = (): Record<Kind, number[]> => ({ laidOut: [], painted: [], run: [] });

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;

const executablePath = findChromium();
if (!executablePath) throw new Error('no Chromium: see npm test');
const browser = await puppeteer.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'] });
const server = await serve({ folder, policy: '' });

for (const [how, base] of [['file', pathToFileURL(folder).href], ['http', server.address]] as const) {
  for (const speed of SPEEDS) {
    const times = new Map<string, Record<Kind, number[]>>(pages.map(([name]) => [name, none()]));
    for (let run = 0; run < RUNS; run += 1) {
      for (const [name] of pages) {
        // A context of its own: nothing compiled before is found again.
        const context = await browser.createBrowserContext();
        const page = await context.newPage();
        await atRest();
        // A page that is slowed is never at rest.
        await page.emulateCPUThrottling(speed);
        await page.goto(`${base}${name}.html`);
        const found = await page.evaluate(() => (globalThis as unknown as { measured: Promise<Record<Kind, number> & { text: string }> }).measured);
        if (!found.text) throw new Error(`${name}: no answer`);
        for (const kind of kinds) times.get(name)?.[kind].push(found[kind]);
        await context.close();
      }
    }
    const nothing = times.get('empty') ?? none();
    for (const [name] of pages) {
      const own = times.get(name) ?? nothing;
      const ratio = (kind: Kind): string => `${median(own[kind]).toFixed(1).padStart(6)} ms (${(median(own[kind]) / median(nothing[kind])).toFixed(2)})`;
      console.log(`${how}, ${speed} times slower, ${name.padEnd(10)}: laid out ${ratio('laidOut')}, painted ${ratio('painted')}, painted from the first line ${ratio('run')}`);
    }
  }
}
server.server.close();
await browser.close();
rmSync(folder, { recursive: true });
