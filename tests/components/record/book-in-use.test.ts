import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/record/define.js';
import { RecordBook } from '../../../components/record/record-book.js';
import type { LubberRecord } from '../../../components/record/record.js';
import type { EntryDraft } from '../../../core/record/entry.js';
import { prepareEntry } from '../../../core/record/prepare-entry.js';
import { flat, must, root } from '../../support/in-widget.js';

const seen: EntryDraft = { kind: 'observation', instant: '2026-11-20T08:00:00Z', headingStandard: 90, deviation: 1, deviationOf: 'standard' };

describe('the book a widget has open', () => {
  // Whoever named another book and entered at once found the entry in the book before.
  it('is that of the name it has when something is entered, though it was named that moment', async () => {
    const [before, after] = [`before ${Date.now()}`, `after ${Date.now()}`];
    const record = await fixture<LubberRecord>(html`<lubber-record book=${before}></lubber-record>`);
    await record.whole;
    record.book = after;
    const outcome = await record.appendEntry(seen);
    expect([outcome.saved, record.result?.book, record.entries.length]).to.deep.equal([true, after, 1]);
    record.book = before;
    await record.whole;
    expect([record.result?.book, record.entries.length]).to.deep.equal([before, 0]);
    record.book = after;
    expect(await record.exportText('json')).to.contain(after);
  });

  // Begun in one book, a correction was entered in the next, of the entry that had the same number there.
  it('takes no correction along into another book', async () => {
    const record = await fixture<LubberRecord>(html`<lubber-record book=${`first ${Date.now()}`}></lubber-record>`);
    await record.whole;
    await record.appendEntry(seen);
    await record.updateComplete;
    for (const words of ['Show No. 1', 'Correct or strike out No. 1']) {
      must([...root(record).querySelectorAll('button')].find((button) => (button.getAttribute('aria-label') ?? flat(button)) === words)).click();
      await record.updateComplete;
    }
    expect(flat(root(record).querySelector('.form summary'))).to.equal('Correction of No. 1');
    record.book = `second ${Date.now()}`;
    await record.whole;
    await record.updateComplete;
    expect(flat(root(record).querySelector('.form summary'))).to.equal('New entry');
  });

  // Entered within the moment in which a name may still be typed, it struck out the entry of that number in the book just named.
  it('enters no correction in a book named that moment', async () => {
    const [from, to] = [`from ${Date.now()}`, `to ${Date.now()}`];
    const record = await fixture<LubberRecord>(html`<lubber-record book=${to}></lubber-record>`);
    await record.appendEntry(seen);
    record.book = from;
    await record.appendEntry(seen);
    await record.whole;
    await record.updateComplete;
    for (const words of ['Show No. 1', 'Correct or strike out No. 1']) {
      must([...root(record).querySelectorAll('button')].find((button) => (button.getAttribute('aria-label') ?? flat(button)) === words)).click();
      await record.updateComplete;
    }
    Object.assign(record, { remarks: 'wrong body', observer: 'AB' });
    await record.updateComplete;
    record.book = to;
    must(root(record).querySelector<HTMLButtonElement>('.form .main')).click();
    await new Promise((resolve) => setTimeout(resolve, 300));
    await record.whole;
    expect([record.result?.book, record.entries.length]).to.deep.equal([to, 1]);
    record.book = from;
    await record.whole;
    expect(record.entries.length).to.equal(1);
  });

  // Its channel was shut while the entry was written, and an entry that is in the book was told as not saved.
  it('keeps an entry that is written as it is left, and says so', async () => {
    const name = `written ${Date.now()}`;
    const book = new RecordBook(name, () => undefined);
    await book.ready;
    const fields = prepareEntry(seen, { watched: 'standard', card: null });
    const { add } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.add = function (...asked) {
      const request = add.apply(this, asked);
      book.close();
      return request;
    };
    try {
      expect(fields.ok && (await book.append(fields.fields, new Date('2026-11-20T09:00:00Z'))).saved).to.equal(true);
    } finally {
      IDBObjectStore.prototype.add = add;
    }
    const again = new RecordBook(name, () => undefined);
    await again.ready;
    expect(again.entries.length).to.equal(1);
    again.close();
  });

  // Each update set the waiting back: inside a ship whose time is told twice a second the book never changed.
  it('changes with the name though the widget is drawn again and again', async () => {
    const record = await fixture<LubberRecord>(html`<lubber-record book=${`ticking ${Date.now()}`}></lubber-record>`);
    await record.whole;
    const name = `ticked ${Date.now()}`;
    record.book = name;
    for (let tick = 0; tick < 200 && record.result?.book !== name; tick += 1) {
      await new Promise((resolve) => setTimeout(resolve, 300));
      record.requestUpdate();
    }
    expect(record.result?.book).to.equal(name);
  });

  // Moved about the page while it opened, a widget left a channel open behind it for each move.
  it('leaves no channel open when it is left while it opens', async () => {
    const Channel = globalThis.BroadcastChannel;
    let open = 0;
    globalThis.BroadcastChannel = class extends Channel {
      constructor(name: string) {
        super(name);
        open += 1;
      }

      override close(): void {
        open -= 1;
        super.close();
      }
    };
    const { get } = IDBObjectStore.prototype;
    const book = new RecordBook(`left ${Date.now()}`, () => undefined);
    // The last thing it reads as it opens is how much of it was exported.
    IDBObjectStore.prototype.get = function (...asked) {
      const request = get.apply(this, asked);
      book.close();
      return request;
    };
    try {
      await book.ready;
      expect(open).to.equal(0);
    } finally {
      IDBObjectStore.prototype.get = get;
      globalThis.BroadcastChannel = Channel;
    }
  });
});
