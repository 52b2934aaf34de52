import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/transit/define.js';
import type { LubberTransit } from '../../../components/transit/transit.js';
import { assertAccessible } from '../../support/axe.js';

const root = (element: LubberTransit): ShadowRoot => element.shadowRoot as ShadowRoot;
const text = (element: LubberTransit, selector: string): string => (root(element).querySelector(selector)?.textContent ?? '').replace(/\s+/g, ' ').trim();
const headline = (element: LubberTransit): string => text(element, '.headline');

async function type(element: LubberTransit, name: string, typed: string): Promise<void> {
  const field = root(element).querySelector<HTMLInputElement>(`#${name}`);
  if (!field) throw new Error(`no field ${name}`);
  field.focus();
  field.select();
  await sendKeys({ type: typed });
  await sendKeys({ press: 'Tab' });
  await element.updateComplete;
}

const press = async (element: LubberTransit, label: RegExp): Promise<void> => {
  [...root(element).querySelectorAll('button')].find((button) => label.test(button.textContent ?? ''))?.click();
  await element.updateComplete;
};

describe('a transit typed by keyboard', () => {
  // US Navy lectures, 1917, pelorus example: a line that bears 080 true bears 084 by compass with deviation 5E on the
  // ship's heading and variation 9W; so the error is 4W.
  it('gives the printed error of 4W and its deviation of 5E', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit></lubber-transit>`);
    await type(element, 'charted-0', '080');
    await type(element, 'bearing-0', '084');
    await type(element, 'heading', '278.4');
    await type(element, 'variation', '9W');
    await type(element, 'cardDeviation', '5E');
    expect(headline(element)).to.contain('Error 4.0° W');
    expect(headline(element)).to.contain('deviation found 5.0° E');
    expect(headline(element)).to.contain('difference 0.0°');
    expect(headline(element)).to.contain('4.0 degrees west');
  });

  // On the equator a degree of longitude is due east: by definition, no source needed.
  it('finds two marks on the equator bearing 090 and one mark due north bearing 000', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit
      .marks=${[
        { kind: 'two-marks', frontLatitude: '0', frontLongitude: '010-00E', rearLatitude: '0', rearLongitude: '010-01E', bearing: '091' },
        { kind: 'one-mark', frontLatitude: '0-05N', frontLongitude: '009-58E', bearing: '001' },
      ]}
      latitude="0"
      longitude="009-58E"
      variation="1W"
    ></lubber-transit>`);
    expect(element.result?.marks.map(({ trueBearing }) => Math.round(trueBearing * 100) / 100)).to.deep.equal([90, 0]);
    expect(element.result?.error).to.be.closeTo(-1, 1e-9);
    expect(text(element, '.explanation table')).to.contain('Line 2');
    await assertAccessible(element);
  });

  it('adds and removes lines, and means them', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084" variation="9W"></lubber-transit>`);
    await press(element, /Add a line/);
    expect(headline(element)).to.contain('Still needed: True bearing by the chart (line 2) and Bearing by compass (line 2).');
    await type(element, 'charted-1', '359');
    await type(element, 'bearing-1', '003.4');
    expect(element.result?.error).to.be.closeTo(-4.2, 1e-9);
    await press(element, /Remove line 2/);
    expect(element.result?.error).to.be.closeTo(-4, 1e-9);
  });
});

describe('what is odd about a transit', () => {
  it('a line taken the wrong way is named', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="260" bearing="084" variation="9W"></lubber-transit>`);
    expect(text(element, '.cautions')).to.match(/taken the wrong way/);
  });

  it('the same place twice: words', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit
      .marks=${[{ kind: 'two-marks', frontLatitude: '10N', frontLongitude: '10E', rearLatitude: '10N', rearLongitude: '10E', bearing: '1' }]}
    ></lubber-transit>`);
    expect(headline(element)).to.contain('the two places are the same');
  });

  it('without position and date the deviation is not made up', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084"></lubber-transit>`);
    expect(headline(element)).to.contain('not known');
    expect(text(element, '.cautions')).to.contain('Enter position and date');
  });

  it('a wrong part is said beside its field and kept', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit></lubber-transit>`);
    await type(element, 'charted-0', '400');
    expect(text(element, '#charted-0-problem')).to.match(/outside the range/);
    expect(root(element).querySelector<HTMLInputElement>('#charted-0')?.value).to.equal('400');
  });
});

describe('every state of a transit', () => {
  it('empty', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit></lubber-transit>`);
    expect(headline(element)).to.contain('Still needed: True bearing by the chart and Bearing by compass.');
    await assertAccessible(element);
  });

  for (const theme of ['day', 'dusk', 'night'] as const) {
    it(`answered, ${theme}`, async () => {
      const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084" variation="9W" working="open" theme=${theme}></lubber-transit>`);
      await assertAccessible(element);
      expect(text(element, '.frame')).not.to.match(/NaN|undefined/);
    });
  }

  it('fires lubber-result for the user alone, and offers a record', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084" variation="9W"></lubber-transit>`);
    let heard = 0;
    let entry: Record<string, unknown> = {};
    element.addEventListener('lubber-result', () => (heard += 1));
    element.addEventListener('lubber-record-request', (event) => (entry = event.detail.entry));
    element.bearing = '085';
    await element.updateComplete;
    expect(element.result?.error).to.be.closeTo(-5, 1e-9);
    expect(heard).to.equal(0);
    await type(element, 'bearing-0', '086');
    expect(heard).to.be.greaterThan(0);
    await press(element, /Enter in the record/);
    expect(entry['method']).to.equal('transit');
  });

  it('can be locked as a whole', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" locked="marks"></lubber-transit>`);
    expect(root(element).querySelector<HTMLInputElement>('#charted-0')?.readOnly).to.equal(true);
    expect([...root(element).querySelectorAll('button')].some((button) => /Add/.test(button.textContent ?? ''))).to.equal(false);
  });
});
