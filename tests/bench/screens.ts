/**
 * Pictures of every widget for the eye: `node --import tsx tests/bench/screens.ts FOLDER [TAG …]`
 * draws each in three widths and three lights and prints it, after `npm run build`; pictures
 * that belong together stand side by side on sheets.
 */
import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { openBrowser } from '../pages/browser.js';
import { scene, subjects } from '../support/scenes.js';
import type { StateName } from '../support/scenes.js';
import { Stage } from '../support/stage.js';

type Theme = 'day' | 'dusk' | 'night';

/** What stands side by side on the sheets of one width: pictures, and how much of their size is kept. */
const plan: readonly { readonly width: number; readonly scale: number; readonly sheets: readonly (readonly [StateName, Theme])[][] }[] = [
  { width: 320, scale: 1, sheets: [[['answered', 'day'], ['answered', 'dusk'], ['answered', 'night'], ['refused', 'night'], ['empty', 'day']]] },
  { width: 768, scale: 0.9, sheets: [[['answered', 'dusk'], ['warned', 'day']]] },
  { width: 1280, scale: 0.65, sheets: [[['answered', 'day'], ['answered', 'night']], [['refused', 'day'], ['empty', 'dusk']]] },
];

/** Height of a sheet, pixels: what can still be read when it is looked at whole. */
const SHEET = 1500;

const [folder, ...asked] = process.argv.slice(2);
if (!folder) throw new Error('Say into which folder.');
mkdirSync(folder, { recursive: true });

/** Pictures side by side, cut into sheets that follow each other downwards. */
async function writeSheets(page: Page, name: string, pictures: readonly Uint8Array[], scale: number): Promise<void> {
  await page.setContent('<!doctype html><body style="margin:0;background:#777;display:flex;gap:8px;align-items:flex-start"></body>');
  await page.evaluate(
    async (sources, size) => {
      for (const source of sources) {
        const image = new Image();
        image.src = `data:image/png;base64,${source}`;
        await image.decode();
        image.width = image.naturalWidth * size;
        document.body.append(image);
      }
    },
    pictures.map((picture) => Buffer.from(picture).toString('base64')),
    scale,
  );
  const { width, height } = await page.evaluate(() => ({ width: document.body.scrollWidth, height: document.body.scrollHeight }));
  for (let top = 0, part = 1; top < height; top += SHEET, part += 1) {
    const clip = { x: 0, y: top, width, height: Math.min(SHEET, height - top) };
    writeFileSync(join(folder as string, `${name}-${part}.png`), await page.screenshot({ clip, captureBeyondViewport: true }));
  }
}

/** The pages of a print side by side, where this machine can draw them. */
async function writePrint(page: Page, name: string, pdf: Uint8Array): Promise<void> {
  const file = join(folder as string, `${name}.pdf`);
  writeFileSync(file, pdf);
  try {
    execFileSync('pdftoppm', ['-r', '80', '-png', file, join(folder as string, `${name}-page`)]);
  } catch {
    return;
  }
  const pages = readdirSync(folder as string).filter((each) => each.startsWith(`${name}-page`)).sort();
  for (let at = 0; at < pages.length; at += 2) {
    await writeSheets(page, `${name}-print-${at / 2 + 1}`, pages.slice(at, at + 2).map((each) => readFileSync(join(folder as string, each))), 1);
  }
}

const tags = asked.length > 0 ? asked : Object.keys(subjects);
const { server, address } = await serve();
const browser = await openBrowser();
// A browser of its own: of two pages in one browser the one behind gets no frame.
const second = await openBrowser();
const desk = await second.newPage();
for (const { width, scale, sheets } of plan) {
  for (const tag of tags) {
    const stage = await Stage.open(browser, address, width);
    const name = tag.slice('lubber-'.length);
    for (const [place, sheet] of sheets.entries()) {
      const pictures: Uint8Array[] = [];
      for (const [state, theme] of sheet) {
        await stage.light({ theme });
        await stage.show(scene(tag, state));
        pictures.push(await stage.picture());
      }
      await writeSheets(desk, `${name}-${width}-${place + 1}`, pictures, scale);
    }
    if (width === 1280) {
      await stage.light({ theme: 'night' });
      await stage.show(scene(tag, 'answered'));
      const edge = '12mm';
      await writePrint(desk, name, await stage.page.pdf({ format: 'A4', margin: { top: edge, bottom: edge, left: edge, right: edge } }));
    }
    await stage.close();
  }
}
await browser.close();
await second.close();
server.close();
