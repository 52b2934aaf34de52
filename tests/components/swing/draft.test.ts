import { ContextProvider } from '@lit/context';
import { expect, fixture, html } from '@open-wc/testing';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import { shipContext } from '../../../components/shared/ship-context.js';
import type { Ship } from '../../../components/shared/ship-context.js';
import '../../../components/swing/define.js';
import type { LubberSwing } from '../../../components/swing/swing.js';
import { cell, column, flat, paste, root, settled, text } from './grid-hand.js';

const KEY = 'lubber-swing:harbour';

describe('the draft', () => {
  beforeEach(() => localStorage.removeItem(KEY));

  it('comes back after the page is lost, rows, settings and unreadable text alike', async () => {
    const first = await fixture<LubberSwing>(html`<lubber-swing draft="harbour" method="transit"></lubber-swing>`);
    await paste(first, 'heading-0', '000\t131\n045\tno idea\n090\t132,5');
    first.change('transitBearing', '114');
    await settled(first);
    expect(flat(root(first).querySelector('#draft'))).to.match(/Kept as a draft/);
    first.remove();
    const second = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    expect(column(second, 'reading')).to.deep.equal(['131', 'no idea', '132,5']);
    expect([second.method, second.transitBearing]).to.deep.equal(['transit', '114']);
    expect(text(second)).to.contain('The readings kept as a draft are restored.');
    expect(flat(root(second).querySelector('#draft'))).to.match(/Kept as a draft/);
  });

  // Two pages with one draft: the last writer won, and neither was told.
  it('is told where another page changes it too', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    const changedElsewhere = async (key: string): Promise<boolean> => {
      window.dispatchEvent(new StorageEvent('storage', { key, newValue: '{}' }));
      await settled(element);
      return text(element).includes('This draft is being changed on another page too');
    };
    expect(await changedElsewhere('lubber-swing:another')).to.equal(false);
    expect(await changedElsewhere(KEY)).to.equal(true);
  });

  // Named once the swing stood on the page, it did not come back, and was written over by the first reading.
  it('comes back where the page names it late, and not over readings that stand there', async () => {
    const first = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    await paste(first, 'reading-0', '1E\n2E');
    const [empty, begun] = [await fixture<LubberSwing>(html`<lubber-swing></lubber-swing>`), await fixture<LubberSwing>(html`<lubber-swing></lubber-swing>`)];
    await paste(begun, 'reading-0', '5W\n6W');
    for (const swing of [empty, begun]) {
      swing.draft = 'harbour';
      await settled(swing);
    }
    expect([empty, begun].map((swing) => column(swing, 'reading').slice(0, 2))).to.deep.equal([['1E', '2E'], ['5W', '6W']]);
  });

  // Readings of one swing were written over the draft of another, which the page had named in its place.
  it('is another swing’s under another name', async () => {
    const kept = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    await paste(kept, 'reading-0', '1E\n2E');
    const element = await fixture<LubberSwing>(html`<lubber-swing draft="roads"></lubber-swing>`);
    await paste(element, 'reading-0', '5W\n6W');
    for (const [name, readings] of [['harbour', ['1E', '2E']], ['roads', ['5W', '6W']]] as const) {
      element.draft = name;
      await settled(element);
      expect(column(element, 'reading').slice(0, 2)).to.deep.equal(readings);
    }
    localStorage.removeItem('lubber-swing:roads');
  });

  it('is kept no more once the attribute is taken away', async () => {
    localStorage.removeItem('lubber-swing:null');
    const element = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    await paste(element, 'reading-0', '1E\n2E');
    element.removeAttribute('draft');
    await settled(element);
    await paste(element, 'reading-0', '3E');
    expect([KEY, 'lubber-swing:null'].map((key) => localStorage.getItem(key) !== null)).to.deep.equal([true, false]);
    expect(root(element).querySelector('#draft')).to.equal(null);
    expect(localStorage.getItem(KEY)).to.contain('1E');
  });

  it('is gone once cleared, and Undo still brings the rows back', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    await paste(element, 'reading-0', '1E\n2E');
    cell(element, 'clear').click();
    await settled(element);
    expect(localStorage.getItem(KEY)).to.equal(null);
    expect(column(element, 'reading')[0]).to.equal('');
    expect(flat(root(element).querySelector('[role=status]'))).to.equal('All readings are cleared; Undo brings them back.');
    cell(element, 'undo').click();
    await settled(element);
    expect(column(element, 'reading')[0]).to.equal('1E');
  });

  it('holds what has been taken back, not what stood there before', async () => {
    const first = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    await paste(first, 'reading-0', '1E\n2E');
    await paste(first, 'reading-0', '5W\n6W');
    cell(first, 'undo').click();
    await settled(first);
    first.remove();
    const second = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    expect(column(second, 'reading').slice(0, 2)).to.deep.equal(['1E', '2E']);
  });

  it('that is no draft is passed over', async () => {
    for (const bad of ['{', '[]', '{"rows":5}', '{"rows":[null,7]}', '"text"']) {
      localStorage.setItem(KEY, bad);
      const element = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
      expect(column(element, 'heading')[0], bad).to.equal('000');
    }
  });

  it('without storage the swing works on and says that nothing is kept', async () => {
    const { setItem } = Storage.prototype;
    Storage.prototype.setItem = () => {
      throw new DOMException('refused', 'SecurityError');
    };
    try {
      const element = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
      await paste(element, 'reading-0', '1E\n2E');
      expect(element.result?.rows.length).to.equal(2);
      expect(flat(root(element).querySelector('#draft'))).to.match(/This browser keeps no draft/);
    } finally {
      Storage.prototype.setItem = setItem;
    }
  });

  it('keeps the number of headings planned without laying out rows anew', async () => {
    const first = await fixture<LubberSwing>(html`<lubber-swing draft="harbour" headings="36"></lubber-swing>`);
    expect(cell(first, 'undo').hasAttribute('disabled')).to.equal(true);
    await paste(first, 'heading-0', '010\t2W\n020\t1W');
    first.remove();
    const second = await fixture<LubberSwing>(html`<lubber-swing draft="harbour"></lubber-swing>`);
    expect(column(second, 'heading')).to.deep.equal(['010', '020']);
  });

  it('is not kept without a name', async () => {
    const before = localStorage.length;
    const element = await fixture<LubberSwing>(html`<lubber-swing></lubber-swing>`);
    await paste(element, 'reading-0', '1E\n2E');
    expect(localStorage.length).to.equal(before);
  });
});

describe('inside a ship', () => {
  it('takes her card as the old one and gives her the new one on the press of a button', async () => {
    const taken: [DeviationCard, string | undefined][] = [];
    const old: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 2, C: 0, D: 0, E: 0 } };
    const ship: Ship = { name: 'S', compassName: 'standard', values: {}, card: old, deviationOn: () => null, useCard: (card, of) => taken.push([card, of?.compass]), onRecordRequest: () => () => undefined };
    const harbour = document.createElement('div');
    new ContextProvider(harbour, { context: shipContext, initialValue: ship });
    document.body.append(harbour);
    const element = document.createElement('lubber-swing');
    element.rows = [0, 45, 90, 135, 180, 225, 270, 315].map((heading) => ({ heading: String(heading), reading: `${3 + (heading % 90 ? 0 : 1)}E` }));
    harbour.append(element);
    await settled(element);
    expect(text(element)).to.contain('card in use until now');
    cell(element, 'use-card').click();
    await settled(element);
    expect(flat(root(element).querySelector('[role=status]'))).to.equal('Standard compass: the ship uses this card now.');
    // A steering compass swung by itself is no standard compass.
    cell(element, 'use-as-steering').click();
    await settled(element);
    expect(taken).to.deep.equal([
      [element.result?.card, 'standard'],
      [element.result?.card, 'steering'],
    ]);
    harbour.remove();
  });
});
