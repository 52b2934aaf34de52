/**
 * A swing of 36 headings in Chromium, slowed four times: from a figure typed in a cell to the
 * new fit, curve and table, laid out; and to the end of the frame that paints them.
 * `node --import tsx tests/bench/swing.bench.ts`.
 *
 * A machine that has other work spreads its timings, and the slowing spreads them more: what a
 * key costs is the median of several runs in which the same keys are typed. Beside it stands
 * every single timing, and how far those of a sum that is always the same lie apart in these runs.
 * The same keys unslowed, each by its lowest timing, tell what they cost where nothing disturbs them.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import puppeteer from 'puppeteer-core';
import { findChromium } from '../install.js';
import { atRest } from './at-rest.js';

const SLOWER = 4;
const RUNS = 5;
const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'swing-bench-'));

/** Runs in the page; a text, since the page knows none of the loader's helpers. */
const inPage = `
const noise = (i) => 0.3 * Math.sin(7 * i);
const series = (h) => 0.5 - 3 * Math.sin(h) + 2 * Math.cos(h) + Math.sin(2 * h);
// Poisson's law by magnetic heading, solved for the heading by compass by going round.
const law = (h) => {
  let turned = 0;
  for (let round = 0; round < 60; round++) {
    const m = h + turned;
    const [sin, cos, sin2, cos2] = [Math.sin(m), Math.cos(m), Math.sin(2 * m), Math.cos(2 * m)];
    turned = Math.atan2(0.01 - 0.3 * sin + 0.15 * cos + 0.08 * sin2, 1 - 0.3 * cos - 0.15 * sin + 0.08 * cos2);
  }
  return (turned * 180) / Math.PI;
};
const deviation = (i, model) => (model === 'exact' ? law : series)((i * Math.PI) / 18) + noise(i);
const written = (value) => Math.abs(value).toFixed(1) + (value < 0 ? 'W' : 'E');
const steadySum = () => {
  let sum = 0;
  for (let i = 0; i < 150000; i++) sum += Math.sin(i) * i;
  return sum;
};
async function measure(model) {
  const swing = document.createElement('lubber-swing');
  swing.headings = '36';
  swing.rows = Array.from({ length: 36 }, (_, i) => ({ heading: String(i * 10), reading: written(deviation(i, model)) }));
  document.body.append(swing);
  await swing.updateComplete;
  const times = [];
  for (let turn = 0; turn < 460; turn++) {
    const cell = swing.shadowRoot.querySelector('#reading-' + (turn % 36));
    cell.value = written(deviation(turn % 36, model) + (turn % 5) / 10);
    await new Promise((resolve) => requestAnimationFrame(resolve));
    const start = performance.now();
    cell.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    await swing.updateComplete;
    swing.getBoundingClientRect();
    const laidOut = performance.now();
    // The next task comes when the frame is done with.
    await new Promise((resolve) => { const { port1, port2 } = new MessageChannel(); port1.onmessage = resolve; port2.postMessage(0); });
    const painted = performance.now();
    window.sum = steadySum();
    times.push([laidOut - start, painted - start, performance.now() - painted]);
  }
  if (swing.result.model !== model) throw new Error('not the curve that was meant: ' + swing.result.model);
  return times;
}`;

/** The curves a swing may come to, each by deviations of its own law: of 5°, and of some 20°, which five terms do not follow. */
const models = { approximate: 'five terms', exact: 'exact' } as const;

/** The first sixty keys run before the engine has made fast code; of the others the earlier ones take longer, for reasons not proved. */
const stretches = { 'keys 61 to 260': [60, 260], 'keys 261 to 460': [260, 460] } as const;

/** Of each key typed what the swing took until it was laid out and painted, and what the steady sum took, milliseconds. */
type Run = readonly (readonly [laidOut: number, painted: number, steady: number])[];

async function runsOf(model: string, slower: number): Promise<readonly Run[]> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error('no Chromium: see npm test');
  const browser = await puppeteer.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--no-first-run'] });
  const runs: Run[] = [];
  try {
    while (runs.length < RUNS) {
      const page = await browser.newPage();
      await page.setViewport({ width: 1280, height: 1400 });
      await page.goto(pathToFileURL(join(folder, 'page.html')).href);
      await atRest();
      await page.emulateCPUThrottling(slower);
      runs.push((await page.evaluate(`measure('${model}')`)) as Run);
      await page.close();
    }
    return runs;
  } finally {
    await browser.close();
  }
}

/** The value below which such a part of the values lie. */
function at(values: readonly number[], part: number): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length * part)] ?? 0;
}

const spread = (values: readonly number[]): string => `median ${at(values, 0.5).toFixed(1)} ms, 95th percentile ${at(values, 0.95).toFixed(1)} ms`;

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
  for (const [model, name] of Object.entries(models)) {
    const runs = await runsOf(model, SLOWER);
    const unslowed = await runsOf(model, 1);
    console.log(`36 headings, ${name}`);
    for (const [stretch, [from, to]] of Object.entries(stretches)) {
      const part = runs.map((run) => run.slice(from, to));
      const keys = (kind: 0 | 1): readonly number[] => (part[0] ?? []).map((_, key) => at(part.map((run) => run[key]?.[kind] ?? 0), 0.5));
      const singly = part.flat();
      const lowest = (unslowed[0] ?? []).slice(from, to).map((_, key) => Math.min(...unslowed.map((run) => run[from + key]?.[0] ?? Infinity)));
      console.log(`  ${stretch}, CPU slowed ${SLOWER} times`);
      console.log(`    a key laid out, its median of ${RUNS} runs: ${spread(keys(0))}`);
      console.log(`    a key painted, its median of ${RUNS} runs:  ${spread(keys(1))}`);
      console.log(`    every single timing, laid out:       ${spread(singly.map(([laidOut]) => laidOut))}`);
      console.log(`    the same sum every time:             ${spread(singly.map(([, , steady]) => steady))}`);
      console.log(`  ${stretch}, not slowed`);
      console.log(`    a key laid out, its lowest of ${RUNS} runs: ${spread(lowest)}`);
    }
  }
} finally {
  rmSync(folder, { recursive: true });
}
