/** A stage for widgets in a browser of its own, without the demo's policy. */
import { serve } from '../../demo/serve.js';
import { Stage } from '../support/stage.js';
import { openBrowser } from './browser.js';

export interface OpenStage {
  readonly stage: Stage;
  close(): Promise<void>;
}

/** `width` of the page in pixels. */
export async function openStage(width: number): Promise<OpenStage> {
  const { server, address } = await serve({ policy: '' } as never);
  const browser = await openBrowser();
  const close = async (): Promise<void> => {
    await browser.close();
    server.close();
  };
  return { stage: await Stage.open(browser, address, width), close };
}
