/** `npm run pictures`: takes the pictures of README from the built demo, at a fixed time, so that they come out the same. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { serve } from '../../demo/serve.js';
import { projectFolder } from '../install.js';
import { openBrowser } from '../pages/browser.js';
import { pictures } from './pictures.js';

/** The invented ship's own morning. */
const NOW = Date.UTC(2026, 10, 26, 8, 52, 40);

const folder = join(projectFolder, 'demo', 'pictures');
mkdirSync(folder, { recursive: true });
const { server, address } = await serve();
const browser = await openBrowser();
try {
  for (const { name, page: path, tag, theme, width, height } of pictures) {
    const context = await browser.createBrowserContext();
    const page = await context.newPage();
    await page.setViewport({ width, height: 900 });
    await page.evaluateOnNewDocument((now) => {
      const Clock = Date;
      globalThis.Date = class extends Clock {
        constructor(...given: unknown[]) {
          super(...((given.length > 0 ? given : [now]) as [number]));
        }
        static override now(): number {
          return now;
        }
      } as DateConstructor;
    }, NOW);
    await page.goto(`${address}demo/${path}?theme=${theme}`, { waitUntil: 'networkidle0' });
    const box = await page.evaluate((sought) => {
      const widget = document.querySelector(sought);
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      const { x, y, width: wide, height: high } = (widget as Element).getBoundingClientRect();
      return { x: x + scrollX, y: y + scrollY, width: wide, height: high };
    }, tag);
    const clip = { ...box, height: Math.min(box.height, height) };
    await page.screenshot({ path: join(folder, name) as `${string}.webp`, type: 'webp', quality: 80, clip, captureBeyondViewport: true });
    await context.close();
    console.log(name);
  }
} finally {
  await browser.close();
  server.close();
  server.closeAllConnections();
}
