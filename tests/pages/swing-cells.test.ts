/** What a key costs the engine, before the swing has heard of it. */
import assert from 'node:assert/strict';
import { after, before, describe, it } from 'node:test';
import type { Page } from 'puppeteer-core';
import { openStage } from './open-stage.js';
import type { OpenStage } from './open-stage.js';

/** Name of the engine's event and of the parts of the page it began from. */
interface TraceEvent {
  readonly name: string;
  readonly ts: number;
  readonly args: { readonly data?: { readonly type?: string }; readonly endData?: { readonly layoutRoots?: readonly { readonly nodeName: string }[] } };
}

/** What the engine laid out anew between the stroke of a digit in the cell that has the focus and the widget's hearing of it. */
async function laidOutFor(page: Page, digit: string): Promise<readonly string[]> {
  await page.tracing.start({ categories: ['devtools.timeline'] });
  await page.keyboard.press(digit as '7');
  const kept = await page.tracing.stop();
  const events = (JSON.parse(Buffer.from(kept ?? []).toString()) as { traceEvents: TraceEvent[] }).traceEvents;
  const of = (type: string): number => {
    const found = events.find(({ name, args }) => name === 'EventDispatch' && args.data?.type === type);
    assert.ok(found, `${type} arrived`);
    return found.ts;
  };
  const [struck, heard] = [of('keypress'), of('input')];
  return events.filter(({ name, ts }) => name === 'Layout' && ts > struck && ts < heard).flatMap(({ args }) => (args.endData?.layoutRoots ?? []).map(({ nodeName }) => nodeName));
}

const rows = '000\t1.0E\n010\t1.5E\n020\t2.0E\n030\t1.5E';

describe('a cell of a swing', () => {
  let opened: OpenStage;
  let page: Page;

  before(async () => {
    opened = await openStage(1280);
    page = opened.stage.page;
    await opened.stage.show({ html: `<lubber-swing headings="36" rows="${rows}"></lubber-swing>`, press: [], tag: 'lubber-swing', state: 'answered' } as never);
  });

  after(() => opened.close());

  it('is laid out alone when a digit is typed into it, not the page', async () => {
    await page.focus('lubber-swing >>> #reading-1');
    const laidOut: (readonly string[])[] = [];
    for (const digit of '1234567') {
      // What is still to be drawn of the digit before is not this one's.
      await opened.stage.settle(2);
      laidOut.push(await laidOutFor(page, digit));
    }
    // What a widget draws late may fall between: then that one tells nothing.
    assert.ok(
      laidOut.some((roots) => roots.length > 0 && roots.every((name) => /^(INPUT|DIV)/.test(name))),
      laidOut.join(' | '),
    );
  });
});
