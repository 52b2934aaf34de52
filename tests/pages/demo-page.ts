/** One page of the demo, in a browser of its own, under the demo's strict policy. */
import type { Page, Permission } from 'puppeteer-core';
import { serve } from '../../demo/serve.js';
import { openBrowser, openPage } from './browser.js';

export interface DemoPage {
  readonly page: Page;
  /** All that the browser complained of. */
  readonly complaints: readonly string[];
  close(): Promise<void>;
}

/** `prepare` runs in the page before its own scripts; `granted` is what the browser need not ask the user for. */
export async function openDemoPage(path: string, { prepare, granted = [] }: { prepare?: () => void; granted?: Permission[] } = {}): Promise<DemoPage> {
  const { server, address } = await serve();
  const browser = await openBrowser();
  await browser.defaultBrowserContext().overridePermissions(new URL(address).origin, granted);
  const { page, complaints } = await openPage(browser, 'about:blank');
  // The loader of the tests names inner functions by a helper the page does not have.
  await page.evaluateOnNewDocument('globalThis.__name = (named) => named');
  if (prepare) await page.evaluateOnNewDocument(prepare);
  await page.goto(`${address}${path}`);
  const close = async (): Promise<void> => {
    await browser.close();
    server.close();
  };
  return { page, complaints: complaints.list, close };
}
