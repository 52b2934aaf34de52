import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/record/define.js';
import { lastingSoFar } from '../../../components/record/lasting-storage.js';
import type { LubberRecord } from '../../../components/record/record.js';
import { flat, must, root } from '../../support/in-widget.js';

/** The browser's store as a page finds it: what it has promised, and what it answers when asked. */
function storage(value: unknown): void {
  Object.defineProperty(navigator, 'storage', { configurable: true, value });
}

const status = (record: LubberRecord): string => flat(root(record).querySelector('.status'));

async function until(what: () => boolean): Promise<void> {
  for (let tries = 0; tries < 3000 && !what(); tries += 1) await new Promise((resolve) => setTimeout(resolve, 20));
  expect(what()).to.equal(true);
}

/** An entry typed into the form and entered by its button. */
async function enter(record: LubberRecord, time: string): Promise<void> {
  Object.assign(record, { date: '2026-11-20', time, headingStandard: '090', headingGyro: '100', gyroError: '0' });
  await record.updateComplete;
  const before = record.entries.length;
  must(root(record).querySelector<HTMLButtonElement>('.form .main')).click();
  await until(() => record.entries.length > before && record.date === undefined);
}

// Storage Standard: a box of storage is "best-effort" or, once asked for and granted, "persistent".
describe('whether the browser keeps a book', () => {
  afterEach(() => delete (navigator as { storage?: unknown }).storage);

  it('is not known outside a secure context, in a frame without an origin, or from an older browser', async () => {
    storage(undefined);
    expect(await lastingSoFar()).to.equal(null);
    storage({ persisted: () => Promise.reject(new TypeError('opaque origin')) });
    expect(await lastingSoFar()).to.equal(null);
    storage({});
    expect(await lastingSoFar()).to.equal(null);
    const record = await fixture<LubberRecord>(html`<lubber-record book=${`silent ${Date.now()}`}></lubber-record>`);
    await record.whole;
    await record.appendEntry({ kind: 'observation', instant: '2026-11-20T08:00:00Z', headingStandard: 90, deviation: 1, deviationOf: 'standard' });
    await record.updateComplete;
    expect(status(record)).to.contain('One entry').and.not.contain('promised');
  });

  it('is asked for once, when the user first keeps an entry; a refusal is told and nothing more', async () => {
    let asked = 0;
    storage({ persisted: async () => false, persist: async () => ((asked += 1), false) });
    const record = await fixture<LubberRecord>(html`<lubber-record book=${`asked ${Date.now()}`}></lubber-record>`);
    await record.whole;
    await record.appendEntry({ kind: 'observation', instant: '2026-11-20T08:00:00Z', headingStandard: 90, deviation: 1, deviationOf: 'standard' });
    await until(() => status(record).includes('has not promised to keep the book: short of room, it may clear it.'));
    expect(asked, 'neither by the page nor by what the page itself enters').to.equal(0);
    await enter(record, '0900');
    await enter(record, '0910');
    expect([asked, record.entries.length]).to.deep.equal([1, 3]);
    expect(status(record)).to.contain('has not promised');
    expect(root(record).querySelector('[role=alert]')).to.equal(null);
  });

  // The second book of a page went on saying that nothing was promised until something was entered in it.
  it('is told by every book of the page as the browser says it now', async () => {
    let promised = false;
    storage({ persisted: async () => promised, persist: async () => promised });
    const [one, other] = [0, 1].map((number) => Object.assign(document.createElement('lubber-record'), { book: `page ${number} ${Date.now()}` })) as [LubberRecord, LubberRecord];
    for (const record of [one, other]) {
      await fixture(record);
      await record.whole;
      await record.appendEntry({ kind: 'observation', instant: '2026-11-20T08:00:00Z', headingStandard: 90, deviation: 1, deviationOf: 'standard' });
      await until(() => status(record).includes('has not promised'));
    }
    promised = true;
    await enter(one, '0900');
    for (const record of [one, other]) await until(() => status(record).includes('The browser has promised to keep the book'));
  });

  it('is told where it was promised before', async () => {
    storage({ persisted: async () => true });
    const record = await fixture<LubberRecord>(html`<lubber-record book=${`promised ${Date.now()}`}></lubber-record>`);
    await record.whole;
    expect(status(record)).not.to.contain('promised');
    await record.appendEntry({ kind: 'observation', instant: '2026-11-20T08:00:00Z', headingStandard: 90, deviation: 1, deviationOf: 'standard' });
    await until(() => status(record).includes('The browser has promised to keep the book'));
  });
});
