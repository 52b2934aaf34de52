/**
 * A swing of 36 headings in Chromium, slowed four times: from a figure typed in a cell to the
 * new fit, curve and table, laid out. `node --import tsx tests/bench/swing.bench.ts`.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import puppeteer from 'puppeteer-core';
import { findChromium } from '../install.js';

const SLOWER = 4;
const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'swing-bench-'));

/** Runs in the page; a text, since the page knows none of the loader's helpers. The first turns run before the engine has made fast code. */
const inPage = `
const deviation = (i, large) => {
  const h = (i * Math.PI) / 18;
  return large * (0.5 - 3 * Math.sin(h) + 2 * Math.cos(h) + Math.sin(2 * h)) + 0.3 * Math.sin(7 * i);
};
const written = (value) => Math.abs(value).toFixed(1) + (value < 0 ? 'W' : 'E');
async function measure(large) {
  const swing = document.createElement('lubber-swing');
  swing.headings = '36';
  swing.rows = Array.from({ length: 36 }, (_, i) => ({ heading: String(i * 10), reading: written(deviation(i, large)) }));
  document.body.append(swing);
  await swing.updateComplete;
  const times = [];
  for (let turn = 0; turn < 260; turn++) {
    const cell = swing.shadowRoot.querySelector('#reading-' + (turn % 36));
    cell.value = written(deviation(turn % 36, large) + (turn % 5) / 10);
    await new Promise((resolve) => requestAnimationFrame(resolve));
    const start = performance.now();
    cell.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    await swing.updateComplete;
    swing.getBoundingClientRect();
    times.push(performance.now() - start);
  }
  return times.slice(60).sort((a, b) => a - b);
}`;

/** Ways a page may be used: five terms, and deviations so large that the exact curve is taken. */
const sizes = { 'five terms': 1, 'exact': 6 } as const;

async function measure(size: number): Promise<readonly number[]> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('no Chromium: see npm test');
  const browser = await puppeteer.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--no-first-run'] });
  try {
    const page = await browser.newPage();
    await page.setViewport({ width: 1280, height: 1400 });
    await page.goto(pathToFileURL(join(folder, 'page.html')).href);
    await page.emulateCPUThrottling(SLOWER);
    return (await page.evaluate(`measure(${size})`)) as readonly number[];
  } finally {
    await browser.close();
  }
}

await build({
  entryPoints: [join(root, 'components/swing/define.ts')],
  bundle: true,
  format: 'iife',
  minify: true,
  conditions: ['production'],
  tsconfig: join(root, 'tsconfig.json'),
  outfile: join(folder, 'swing.js'),
});
writeFileSync(join(folder, 'page.html'), '<!doctype html><html lang="en"><meta charset="utf-8"><body><script src="swing.js"></script><script>' + inPage + '</script></body></html>');
try {
  for (const [name, size] of Object.entries(sizes)) {
    const times = await measure(size);
    const at = (part: number): string => (times[Math.floor(times.length * part)] ?? 0).toFixed(1);
    console.log(`36 headings, ${name}, CPU slowed ${SLOWER} times: median ${at(0.5)} ms, 95th percentile ${at(0.95)} ms`);
  }
} finally {
  rmSync(folder, { recursive: true });
}
