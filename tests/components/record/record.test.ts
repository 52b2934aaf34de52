import { expect, fixture, html, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/record/define.js';
import type { LubberRecord } from '../../../components/record/record.js';
import type { EntryDraft } from '../../../core/record/entry.js';
import { assertAccessible } from '../../support/axe.js';
import { must, type } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

let books = 0;
/** A book of its own for every test. */
const fresh = (): string => `test ${Date.now()} ${(books += 1)}`;

async function open(book = fresh(), more: Partial<LubberRecord> = {}): Promise<LubberRecord> {
  const element = await fixture<LubberRecord>(html`<lubber-record book=${book}></lubber-record>`);
  Object.assign(element, more);
  await element.whole;
  await element.updateComplete;
  return element;
}

const text = (element: LubberRecord): string => ((element.renderRoot.querySelector('.frame') as HTMLElement).textContent ?? '').replace(/\s+/g, ' ');
const told = (element: LubberRecord): string => [...element.renderRoot.querySelectorAll('.told')].map((each) => each.textContent).join('');
const rows = (element: LubberRecord): string[] => [...element.renderRoot.querySelectorAll('.book tbody tr')].map((row) => (row.textContent ?? '').replace(/\s+/g, ' ').trim());
function button(element: LubberRecord, label: string): HTMLButtonElement {
  const found = [...element.renderRoot.querySelectorAll('button')].find((one) => (one.getAttribute('aria-label') ?? one.textContent ?? '').trim() === label);
  if (!found) throw new Error(`no button ${label}`);
  return found;
}

const seen = (minute: number, more: Partial<EntryDraft> = {}): EntryDraft => ({
  kind: 'observation',
  instant: new Date(Date.UTC(2026, 10, 20, 0, minute)),
  headingStandard: (minute * 37) % 360,
  deviation: 1,
  deviationOf: 'standard',
  observer: 'E. M.',
  ...more,
});

const settled = async (element: LubberRecord, what: () => boolean): Promise<void> => {
  await until(what, () => text(element).slice(0, 600));
  await element.updateComplete;
  expect(what(), text(element).slice(0, 600)).to.equal(true);
};

describe('a narrow record book', () => {
  // A scroll bar of the old kind leaves 305 of 320 pixels: the table scrolled by the rest.
  it('of 305 pixels shows its columns whole', async () => {
    const element = await open();
    for (let minute = 0; minute < 12; minute++) await element.appendEntry(seen(minute, { deviation: minute % 2 ? -10.4 : 10.4, cardDeviation: -10.2 }));
    element.style.cssText = 'display: block; inline-size: 305px';
    await waitUntil(() => element.renderRoot.querySelector('.frame.narrow'), 'one column');
    const box = element.renderRoot.querySelector('table.book')?.closest('.scroll') as Element;
    expect(box.scrollWidth).to.be.at.most(box.clientWidth);
  });
});

// On a bridge the button beside a label is 44 pixels high: date and latitude stood 16 lower than time and longitude in the same row.
describe('the form in several columns', () => {
  for (const density of ['', 'bridge']) {
    it(`has the fields of a row stand at one height${density && ', on a bridge too'}`, async () => {
      const around = await fixture<HTMLElement>(html`<div data-lubber-density=${density}><lubber-record book=${fresh()}></lubber-record></div>`);
      const element = around.querySelector('lubber-record') as LubberRecord;
      await element.whole;
      element.style.cssText = 'display: block; inline-size: 1200px';
      await waitUntil(() => element.renderRoot.querySelector('.frame:not(.narrow):not(.close)'), 'wide');
      expect(element.renderRoot.querySelectorAll('.bridge')).to.have.length(density ? 1 : 0);
      must(element.renderRoot.querySelector('.form-grid')?.closest('details')).open = true;
      const [date, ...others] = ['date', 'time', 'latitude', 'longitude'].map((name) => must(element.renderRoot.querySelector(`#${name}`)).getBoundingClientRect());
      expect(must(date).height).to.be.above(20);
      for (const other of others) expect(Math.abs(other.top - must(date).top)).to.be.below(0.6);
    });
  }
});

describe('advice on a book laid aside', () => {
  // 359 h ago had to be worked out.
  it('tells the last check in days from two on, in hours before', async () => {
    const ago = async (hours: number): Promise<string> => {
      const element = await open();
      await element.appendEntry(seen(0, { instant: new Date(Date.now() - hours * 3_600_000) }));
      await settled(element, () => text(element).includes('The last check'));
      return /The last check of the compass was .*? ago/.exec(text(element))?.[0] ?? '';
    };
    expect(await ago(359.5)).to.match(/was 14 days ago$/);
    expect(await ago(47.5)).to.match(/was 47\sh ago$/);
  });
});

describe('an empty record book', () => {
  it('says that it is empty, has nothing to say of NaN, and is accessible with its form open', async () => {
    const element = await open();
    expect(text(element)).to.contain('The book is empty.');
    expect(text(element)).not.to.match(/NaN|undefined|Invalid Date|record\.|advice\./);
    expect(element.result?.count).to.equal(0);
    (element.renderRoot.querySelector('details.form') as HTMLDetailsElement).open = true;
    await assertAccessible(element);
  });

  it('works alone, without any attribute', async () => {
    const element = await fixture<LubberRecord>(html`<lubber-record></lubber-record>`);
    await element.whole;
    expect(element.result?.book).to.equal('book');
  });
});

describe('an entry by keyboard', () => {
  // One look at gyro and standard compass, the sums by hand: gyro bearing 061.0, true 060.0, so gyro error 1 W; gyro head
  // 101 is true head 100; standard head 085 is in error 15 E; with variation 12 E the deviation is 3 E, 2 E more than a card of 1 E.
  it('takes a look at two compasses, saves it, says so, and fires one event', async () => {
    const element = await open(fresh(), { card: { kind: 'approximate', coefficients: { A: 1, B: 0, C: 0, D: 0, E: 0 } } });
    const heard: unknown[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event.detail.result));
    (element.renderRoot.querySelector('details.form') as HTMLDetailsElement).open = true;
    element.bearingBy = 'gyro';
    for (const [name, typed] of Object.entries({
      date: '2026-11-20', time: '0905', headingStandard: '085', headingGyro: '101', target: 'Cape Averil light', bearing: '061', trueBearing: '060', variation: '12E', observer: 'R. T.',
    })) await type(element, name, typed);
    expect(text(element)).to.contain('Deviation found 3.0° E');
    expect(heard).to.deep.equal([]);
    button(element, 'Enter in the book').focus();
    await sendKeys({ press: 'Enter' });
    await settled(element, () => told(element) === 'Saved as No. 1.');
    const [entry] = element.entries;
    expect([entry?.errorGyro, entry?.errorStandard, entry?.deviation, entry?.cardDeviation, entry?.difference]).to.deep.equal([-1, 15, 3, 1, 2]);
    expect([entry?.target, entry?.observer, entry?.instant]).to.deep.equal(['Cape Averil light', 'R. T.', '2026-11-20T09:05:00Z']);
    expect(rows(element)[0]).to.contain('3.0° E');
    expect(heard).to.have.length(1);
    expect((element.renderRoot.querySelector('#bearing') as HTMLInputElement).value).to.equal('');
    expect((element.renderRoot.querySelector('#observer') as HTMLInputElement).value).to.equal('R. T.');
  });

  it('keeps what was typed wrong, with the reason beside the field, and enters nothing', async () => {
    const element = await open();
    (element.renderRoot.querySelector('details.form') as HTMLDetailsElement).open = true;
    await type(element, 'date', '2026-11-20');
    await type(element, 'time', '0905');
    await type(element, 'bearing', '475');
    expect(element.renderRoot.querySelector('#bearing-problem')?.textContent).to.contain('outside the range');
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element).startsWith('To be put right'));
    expect((element.renderRoot.querySelector('#bearing') as HTMLInputElement).value).to.equal('475');
    expect(element.entries).to.have.length(0);
  });

  // A date, a time and a gyro error had no name in words and were told by their codes.
  it('takes the error of a gyro as it reads', async () => {
    const element = await open();
    element.gyroError = '1.5 high';
    await element.updateComplete;
    expect(must(element.renderRoot.querySelector('#gyroError-echo')).textContent).to.equal('1.5° W');
  });

  it('names every field that was typed wrong', async () => {
    const element = await open();
    element.date = 'soon';
    element.time = 'later';
    element.gyroError = 'x';
    await element.updateComplete;
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element).startsWith('To be put right'));
    expect(told(element)).to.equal('To be put right: UTC date, UTC time and Gyro error, if known.');
  });

  it('says what is missing: the time, and something observed', async () => {
    const element = await open();
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) === 'Still needed: UTC date and UTC time.');
    element.date = '2026-11-20';
    await element.updateComplete;
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) === 'Still needed: UTC time.');
    element.time = '0905';
    await element.updateComplete;
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element).includes('a bearing, a ship’s head, an error or a deviation is needed'));
  });

  it('enters "no observation (overcast)" and an event, each with its own fields', async () => {
    const element = await open();
    Object.assign(element, { date: '2026-11-20', time: '0400', entry: 'no-observation', remarks: 'overcast' });
    await element.updateComplete;
    expect(element.renderRoot.querySelector('#bearing')).to.equal(null);
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) === 'Saved as No. 1.');
    Object.assign(element, { date: '2026-11-20', time: '0500', entry: 'event', event: 'lightning' });
    await element.updateComplete;
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) === 'Saved as No. 2.');
    expect(element.entries.map(({ kind, event }) => [kind, event])).to.deep.equal([['no-observation', null], ['event', 'lightning']]);
    expect(text(element)).to.contain('Lightning on 2026-11-20');
  });

  it('enters no event before it is said what happened: one that did not happen would begin the statistics anew', async () => {
    const element = await open();
    Object.assign(element, { date: '2026-11-20', time: '0500', entry: 'event', remarks: 'struck on the bridge' });
    await element.updateComplete;
    const happened = (): HTMLSelectElement => element.renderRoot.querySelector('#event') as HTMLSelectElement;
    expect([happened().value, happened().selectedOptions[0]?.label.trim()]).to.deep.equal(['', 'not given']);
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) !== '');
    expect(told(element)).to.equal('Not entered: What happened is missing.');
    expect(element.entries).to.have.length(0);
    expect(element.remarks).to.equal('struck on the bridge');
    happened().value = 'lightning';
    happened().dispatchEvent(new Event('change', { bubbles: true }));
    await element.updateComplete;
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) === 'Saved as No. 1.');
    expect(element.entries[0]?.event).to.equal('lightning');
    // Nor is the next one what the last was.
    expect(happened().value).to.equal('');
  });

  it('keeps locked fields as given', async () => {
    const element = await fixture<LubberRecord>(html`<lubber-record book=${fresh()} observer="E. M." locked="observer"></lubber-record>`);
    await element.whole;
    const field = element.renderRoot.querySelector<HTMLInputElement>('#observer');
    expect([field?.readOnly, field?.value]).to.deep.equal([true, 'E. M.']);
  });
});

describe('what a button did', () => {
  const near = (element: LubberRecord, pressed: HTMLElement): number => {
    const said = [...element.renderRoot.querySelectorAll<HTMLElement>('.told')].filter((each) => each.textContent !== '');
    expect(said.length).to.equal(1);
    return (said[0] as HTMLElement).getBoundingClientRect().top - pressed.getBoundingClientRect().bottom;
  };

  // At the head of the book it stood 600 to 2,600 pixels above the button: nobody saw that an entry was refused. From measuring, no standard.
  it('is said right below it, not at the head of a long book', async () => {
    const element = await open();
    for (let minute = 0; minute < 12; minute++) await element.appendEntry(seen(minute));
    (element.renderRoot.querySelector('details.form') as HTMLDetailsElement).open = true;
    // Firefox shows what it has downloaded in a panel, and the keys of the tests after this one would go there.
    const download = HTMLAnchorElement.prototype.click;
    HTMLAnchorElement.prototype.click = () => undefined;
    for (const [label, words] of [['Enter in the book', 'Still needed'], ['Export table (CSV)', 'given to the browser'], ['Make a swing of these observations', 'handed over']] as const) {
      button(element, label).click();
      await settled(element, () => told(element).includes(words));
      expect(near(element, button(element, label)), label).to.be.within(0, 120);
      // What has nothing to say bears no sign of a warning.
      expect([...element.renderRoot.querySelectorAll('.told.wrong')].map((each) => each.textContent)).to.deep.equal(words === 'Still needed' ? [told(element)] : []);
    }
    HTMLAnchorElement.prototype.click = download;
    await element.appendEntry(seen(13));
    await element.updateComplete;
    expect(near(element, element.renderRoot.querySelector('h2') as HTMLElement), 'what the page entered').to.be.within(0, 200);
  });

  it('leaves the keyboard where it was after a correction, or at the form’s head after one is left', async () => {
    const element = await open();
    await element.appendEntry(seen(0));
    for (const [label, then] of [['Leave it as it is', 'New entry'], ['Enter in the book', 'Enter in the book']] as const) {
      await settled(element, () => rows(element).length > 0);
      if (element.renderRoot.querySelector('#entry-1') === null) button(element, 'Show No. 1').click();
      await element.updateComplete;
      button(element, 'Correct or strike out No. 1').click();
      await element.updateComplete;
      await type(element, 'remarks', 'misread');
      button(element, label).focus();
      await sendKeys({ press: 'Enter' });
      await settled(element, () => element.renderRoot.querySelector('[name="replaces"]') === null);
      const active = (element.renderRoot as ShadowRoot).activeElement as HTMLElement;
      expect(active?.textContent?.trim(), label).to.equal(then);
      expect(active.checkVisibility(), label).to.equal(true);
    }
  });
});

describe('a correction', () => {
  it('strikes out, keeps the old line readable, and needs a reason', async () => {
    const element = await open();
    await element.appendEntry(seen(0));
    await settled(element, () => rows(element).length === 1);
    button(element, 'Show No. 1').click();
    await element.updateComplete;
    button(element, 'Correct or strike out No. 1').click();
    await element.updateComplete;
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element).includes('Remarks is missing'));
    await type(element, 'remarks', 'read from the wrong card');
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) === 'Saved as No. 2.');
    expect(element.entries.map(({ number, corrects }) => [number, corrects])).to.deep.equal([[1, null], [2, 1]]);
    expect(element.renderRoot.querySelector('tr.struck')?.textContent).to.contain('struck out by No. 2');
    expect(element.swing).to.deep.equal([]);
  });

  it('says what counts again where it is itself struck out, before and after', async () => {
    const element = await open();
    await element.appendEntry(seen(0));
    await element.appendEntry({ kind: 'correction', corrects: 1, replacement: null, remarks: 'read from the wrong card', observer: 'E. M.', instant: seen(0).instant });
    await settled(element, () => element.entries.length === 2);
    const hint = (): string => element.renderRoot.querySelector('#revives')?.textContent ?? '';
    for (const number of [1, 2]) {
      button(element, `Show No. ${number}`).click();
      await element.updateComplete;
      expect(hint()).to.equal('');
    }
    button(element, 'Correct or strike out No. 2').click();
    await element.updateComplete;
    expect(hint()).to.equal('With this correction struck out, No. 1 stands again.');
    await type(element, 'remarks', 'the card was the right one');
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) === 'Saved as No. 3. With this correction struck out, No. 1 stands again.');
    expect(hint()).to.equal('');
  });

  it('puts the fields of the form in the place of the old', async () => {
    const element = await open();
    await element.appendEntry(seen(0, { deviation: null, deviationOf: null, bearingBy: 'standard', bearing: 100, trueBearing: 110, variation: 8 }));
    await settled(element, () => rows(element).length === 1);
    button(element, 'Show No. 1').click();
    await element.updateComplete;
    button(element, 'Correct or strike out No. 1').click();
    await element.updateComplete;
    element.change('replaces', 'entry');
    await element.updateComplete;
    await type(element, 'bearing', '101');
    await type(element, 'remarks', 'misread');
    button(element, 'Enter in the book').click();
    await settled(element, () => told(element) === 'Saved as No. 2.');
    expect(element.swing.map(({ number, deviation }) => [number, deviation])).to.deep.equal([[2, 1]]);
  });
});

describe('the book and what goes wrong', () => {
  it('survives its page: another element opens the same entries', async () => {
    const book = fresh();
    const first = await open(book);
    await first.appendEntry(seen(0));
    first.remove();
    const second = await open(book);
    expect(second.entries.map(({ number }) => number)).to.deep.equal([1]);
    expect(text(second)).to.contain('One entry, kept on this device.');
    expect(text(second)).to.contain('The chain is whole up to No. 1.');
  });

  it('two elements over one book show each other’s entries', async () => {
    const book = fresh();
    const [one, two] = [await open(book), await open(book)];
    await one.appendEntry(seen(0));
    await two.appendEntry(seen(1));
    await settled(one, () => one.entries.length === 2);
    await settled(two, () => two.entries.length === 2);
    expect(one.entries[1]?.previous).to.equal(one.entries[0]?.hash);
  });

  it('an entry earlier than the last is accepted and marked', async () => {
    const element = await open();
    await element.appendEntry(seen(5));
    expect((await element.appendEntry(seen(3))).saved).to.equal(true);
    await settled(element, () => told(element).includes('observed before the entry above it'));
    expect(rows(element)[0]).to.contain('observed before the entry above it');
  });

  it('the same again is refused in words, and the book is unharmed', async () => {
    const element = await open();
    await element.appendEntry(seen(0));
    const outcome = await element.appendEntry(seen(0));
    expect(outcome).to.deep.equal({ saved: false, reason: 'duplicate', number: 1 });
    await settled(element, () => told(element).includes('the same stands in the book already, as No. 1'));
    expect(element.entries).to.have.length(1);
  });

  it('a full disk is said in words, nothing half-written, and the next entry goes in', async () => {
    const element = await open();
    await element.appendEntry(seen(0));
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (...args) {
      add.apply(this, args);
      throw new DOMException('simulated', 'QuotaExceededError');
    };
    const outcome = await element.appendEntry(seen(1));
    IDBObjectStore.prototype.add = add;
    expect(outcome).to.deep.equal({ saved: false, reason: 'full', number: null });
    await settled(element, () => told(element).includes('the disk is full'));
    expect((await element.appendEntry(seen(2))).saved).to.equal(true);
    await element.whole;
    expect(element.entries.map(({ number, instant }) => [number, instant.slice(14, 16)])).to.deep.equal([[1, '00'], [2, '02']]);
  });

  it('storage refused: works in memory and says so, loudly', async () => {
    const open_ = IDBFactory.prototype.open;
    IDBFactory.prototype.open = () => {
      throw new DOMException('simulated', 'SecurityError');
    };
    const element = await open();
    IDBFactory.prototype.open = open_;
    expect(text(element)).to.contain('This browser refuses storage here');
    await element.appendEntry(seen(0));
    await settled(element, () => told(element).includes('in this page’s memory only'));
    expect(element.result?.keeps).to.equal('memory');
    expect(await element.exportText('json')).to.contain('"count":1');
    await assertAccessible(element);
  });

  it('an altered entry in the database is found after opening, with its number', async () => {
    const book = fresh();
    const first = await open(book);
    for (const minute of [0, 1, 2]) await first.appendEntry(seen(minute));
    first.remove();
    await meddle(book, (store) => {
      const request = store.get(2);
      request.onsuccess = () => store.put({ ...request.result, deviation: 4 });
    });
    const second = await open(book);
    await settled(second, () => text(second).includes('No. 2 was altered after it was written.'));
    const outcome = await second.importText(await second.exportText('json'));
    expect(outcome.ok).to.equal(false);
    expect(told(second)).to.contain('This book is itself broken at No. 2');
  });

  it('a book shorter than this device remembers raises an alarm; an import brings the entries back', async () => {
    const book = fresh();
    const first = await open(book);
    for (const minute of [0, 1, 2]) await first.appendEntry(seen(minute));
    const file = await first.exportText('csv');
    first.remove();
    await meddle(book, (store) => store.delete(3));
    const second = await open(book);
    expect(text(second)).to.contain('Entries are missing: this device remembers 3, and the book holds 2.');
    expect(await second.importText(file)).to.deep.equal({ ok: true, added: 1 });
    await settled(second, () => !text(second).includes('Entries are missing'));
    expect(second.entries).to.have.length(3);
  });

  it('a remembered count that lags behind is no matter', async () => {
    const book = fresh();
    const first = await open(book);
    for (const minute of [0, 1, 2]) await first.appendEntry(seen(minute));
    const [entry] = first.entries;
    first.remove();
    localStorage.setItem(`lubberline-record:${book}`, JSON.stringify({ count: 1, last: entry?.hash }));
    expect(text(await open(book))).not.to.contain('missing');
  });

  it('a newer release in another page takes the book over: this page lets go, says so and saves nothing more', async () => {
    const book = fresh();
    const element = await open(book);
    const newer = await raw(book, 2);
    await settled(element, () => text(element).includes('A newer release in another page has taken the book over.'));
    expect(await element.appendEntry(seen(0))).to.deep.equal({ saved: false, reason: 'closed', number: null });
    newer.close();
    const later = await open(book);
    expect(text(later)).to.contain('This book was written by a newer release and is left alone.');
  });
});

describe('export and import', () => {
  it('counts what is not yet exported, and takes a file back whole', async () => {
    const book = fresh();
    const element = await open(book);
    for (const minute of [0, 1]) await element.appendEntry(seen(minute));
    expect(text(element)).to.contain('Entries not yet exported: 2.');
    const file = await element.exportText('json');
    await element.appendEntry(seen(2));
    expect(await element.importText(file)).to.deep.equal({ ok: true, added: 0 });
    await settled(element, () => text(element).includes('One entry is not yet exported.'));
  });

  const refusals: readonly [string, (file: string) => string, string][] = [
    ['an altered entry', (file) => file.replace('"deviation":1.00', '"deviation":1.01'), 'Entry No. 1 of the file was altered.'],
    ['an unknown schema', (file) => file.replace('lubberline-record/1', 'lubberline-record/9'), 'another version of the form'],
    ['a foreign CSV', () => 'date,heading,error\r\n2026-11-01,045,3.2W\r\n', 'no record book of this kind'],
    ['a file laid out anew', (file) => JSON.stringify(JSON.parse(file), null, 2), 'saved anew by another program'],
    ['a torn file', (file) => file.slice(0, file.lastIndexOf('\n{')), 'The file is not complete: entry No. 2 is missing or cut off.'],
    ['a file torn in the midst of an entry', (file) => file.slice(0, file.lastIndexOf('\n{') + 90), 'The file is not complete: entry No. 2 is missing or cut off.'],
    ['another ship’s file', (file) => file.replace(/"book":"[^"]*"/, '"book":"Other"'), 'does not follow'],
    ['nothing', () => '', 'The file is empty.'],
  ];
  for (const [what, change, words] of refusals) {
    it(`refuses ${what} in words and leaves the book as it was`, async () => {
      const element = await open();
      for (const minute of [0, 1]) await element.appendEntry(seen(minute));
      const before = [...element.entries];
      const outcome = await element.importText(change(await element.exportText('json')));
      expect(outcome.ok).to.equal(false);
      await element.updateComplete;
      expect(told(element)).to.contain(words);
      expect(told(element)).to.contain('Nothing was imported');
      expect(element.entries).to.deep.equal(before);
    });
  }

  it('refuses the whole file of another book, and one that went another way', async () => {
    const [one, other] = [await open(), await open()];
    await one.appendEntry(seen(0));
    await other.appendEntry(seen(0));
    const wrong = await one.importText(await other.exportText('json'));
    expect(wrong.ok ? '' : wrong.reason).to.equal('another-book');
    const book = fresh();
    const memory = IDBFactory.prototype.open;
    IDBFactory.prototype.open = () => { throw new DOMException('simulated', 'SecurityError'); };
    const fork = await open(book);
    IDBFactory.prototype.open = memory;
    await fork.appendEntry(seen(7));
    const own = await open(book);
    await own.appendEntry(seen(8));
    const forked = await own.importText(await fork.exportText('csv'));
    expect(forked.ok ? '' : `${forked.reason} ${forked.number}`).to.equal('forked 1');
  });
});

describe('what the book makes of its entries', () => {
  it('makes a swing for the page, on the user’s word only', async () => {
    const element = await open();
    for (const minute of [0, 1, 2]) await element.appendEntry(seen(minute));
    await settled(element, () => rows(element).length === 3);
    const heard: { kind?: string; observations?: readonly unknown[] }[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event.detail.result as object));
    expect(heard).to.have.length(0);
    button(element, 'Make a swing of these observations').click();
    expect(heard.map(({ kind, observations }) => [kind, observations?.length])).to.deep.equal([['swing', 3]]);
    expect(element.swing[1]).to.deep.equal({ number: 2, heading: 37, deviation: 1 });
  });

  it('takes what a sight offers', async () => {
    const element = await open(fresh(), { observer: 'J. V.' });
    await element.appendRequest({
      widget: 'lubber-amplitude',
      entry: {
        method: 'amplitude', body: 'Sun', latitude: -48.28, longitude: -71.71, instant: '2026-11-26T08:52:40Z', compass: 'magnetic', bearing: 113.5, heading: 40,
        result: { trueBearing: 123.1, error: 9.6, variation: { source: 'model', model: 'WMM2025', value: 11.2, sigma: 0.3 }, deviation: -1.6, deviationDoubt: 0.61, cardDeviation: -1.5, difference: -0.1 },
      },
    });
    const [entry] = element.entries;
    expect([entry?.target, entry?.bearing, entry?.headingStandard, entry?.errorStandard, entry?.variationSource, entry?.deviation, entry?.doubt, entry?.observer]).to.deep.equal(
      ['Sun', 113.5, 40, 9.6, 'WMM2025', -1.6, 0.61, 'J. V.'],
    );
    // It said "1 observations".
    await settled(element, () => text(element).includes('Observations: 1.'));
  });

  it('advises when the card no longer fits, and is accessible with entries, details and charts', async () => {
    const element = await open(fresh(), { card: { kind: 'approximate', coefficients: { A: -2, B: 0, C: 0, D: 0, E: 0 } }, now: '2026-11-20T01:00:00Z' });
    for (let minute = 0; minute < 12; minute++) await element.appendEntry(seen(minute));
    await settled(element, () => text(element).includes('Re-adjust or swing anew'));
    expect(text(element)).to.contain('differed from the card by more than 2.0° on 5 of the last 5');
    expect(element.renderRoot.querySelectorAll('svg[role="img"]')).to.have.length(2);
    button(element, 'Show No. 12').click();
    for (const details of element.renderRoot.querySelectorAll('details')) details.open = true;
    await element.updateComplete;
    for (const theme of ['day', 'dusk', 'night'] as const) {
      element.theme = theme;
      await element.updateComplete;
      await assertAccessible(element);
    }
    expect(text(element)).not.to.match(/NaN|undefined|Invalid Date|record\.|advice\.|field\./);
  });

  // Guidance to SOLAS V, annex 13 (summary): adjusted anew after what alters the ship or the gear about the compass.
  it('asks for more than checks after lightning, and not after cargo', async () => {
    const event = { kind: 'event', instant: '2026-11-20T00:00:00Z' } as const;
    const element = await open(fresh(), { now: '2026-11-20T01:00:00Z' });
    await element.appendEntry({ ...event, event: 'cargo' });
    await settled(element, () => text(element).includes('before trusting the card'));
    expect(text(element)).not.to.contain('Have the compass adjusted');
    await element.appendEntry({ ...event, event: 'lightning' });
    await settled(element, () => text(element).includes('Have the compass adjusted if structure or electrical gear near it was altered, or if lightning has struck.'));
  });

  // Position and gyro belong to each line of a compass observation book (forms of flag States, in part; common practice).
  it('prints where she was and what the gyro said, which on the screen stand behind each row, and can be signed', async () => {
    const element = await open();
    await element.appendEntry({ ...seen(0), latitude: -71.17, longitude: -179.508, headingStandard: 4, headingGyro: 358.5, errorGyro: -0.5 });
    await settled(element, () => rows(element).length === 1);
    const besides = /71°10′S 179°30′W|G 358\.5°|G 0\.5° W/g;
    expect(rows(element)[0]).not.to.match(besides);
    dispatchEvent(new Event('beforeprint'));
    await element.updateComplete;
    expect(rows(element)[0]?.match(besides)).to.have.length(3);
    expect(text(element), 'lines to sign on').to.match(/Officer, name and signature ?Master ?Date/);
    dispatchEvent(new Event('afterprint'));
    await element.updateComplete;
  });

  // True less gyro by hand: 122.5 − 123.6. A row of the sight taken by gyro told neither head nor error, and one of marks without a name no more than "observation".
  it('tells on the screen the gyro’s error where the bearing is the gyro’s, and how an error was found where no body or mark has a name', async () => {
    const element = await open();
    const draft = { instant: '2026-11-26T08:52:40Z', bearingBy: 'gyro', bearing: 123.6, trueBearing: 122.5, headingGyro: 40, variation: 10.2, method: 'transit' } as const;
    await element.appendEntry({ kind: 'observation', ...draft });
    await settled(element, () => rows(element).length === 1);
    expect(rows(element)[0]).to.contain('G 040.0°').and.to.match(/G 1\.1° W/).and.to.contain('marks in line').and.not.contain('observation');
  });

  it('pages through a long book by keyboard, and prints all of it', async () => {
    const element = await open();
    for (let minute = 0; minute < 30; minute++) await element.appendEntry(seen(minute));
    await settled(element, () => rows(element).length === 25);
    button(element, 'Older').focus();
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(rows(element)).to.have.length(5);
    dispatchEvent(new Event('beforeprint'));
    await element.updateComplete;
    expect(rows(element)).to.have.length(30);
    expect(element.renderRoot.querySelectorAll('.book button')).to.have.length(0);
    dispatchEvent(new Event('afterprint'));
    await element.updateComplete;
    expect(rows(element)).to.have.length(5);
  });
});

/** The database of a book as anything on the same origin may open it. */
function raw(book: string, version?: number): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(`lubberline-record:${book}`, version);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function meddle(book: string, change: (store: IDBObjectStore) => void): Promise<void> {
  const database = await raw(book);
  await new Promise<void>((resolve) => {
    const transaction = database.transaction('entries', 'readwrite');
    transaction.oncomplete = () => resolve();
    change(transaction.objectStore('entries'));
  });
  database.close();
}
