import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberIron } from '../../../components/iron/iron.js';
import { followed } from '../../../components/shared/entries.js';
import type { LubberShip } from '../../../components/ship/ship.js';
import { input, must, root, type } from '../../support/in-widget.js';

// What an entry shows is what the widget says stands in it, whoever changed either. The inputs are invented.

const morning = { latitude: '48-17.0S', longitude: '071-42.5W', instant: '2026-11-26T08:52:40Z' };

async function sight(): Promise<LubberAmplitude> {
  const widget = await fixture<LubberAmplitude>(
    html`<lubber-amplitude latitude=${morning.latitude} longitude=${morning.longitude} instant=${morning.instant} bearing="113.5"></lubber-amplitude>`,
  );
  await widget.updateComplete;
  return widget;
}

const select = (widget: Element): HTMLSelectElement => root(widget).querySelector('#body') as HTMLSelectElement;

const shownOption = (widget: Element): string => select(widget).selectedOptions[0]?.textContent ?? '';

const chosen = (widget: Element): string[] => [...root(widget).querySelectorAll<HTMLInputElement>('[name=compass]:checked')].map((radio) => radio.value);

async function choose(widget: LubberAmplitude, body: string): Promise<void> {
  select(widget).focus();
  await widget.updateComplete;
  select(widget).value = body;
  select(widget).dispatchEvent(new Event('change', { bubbles: true }));
  await widget.updateComplete;
}

/** Every text that is written into an entry while something is done, as a script would: by the property. */
async function writtenDuring(act: () => Promise<void>): Promise<string[]> {
  const { prototype } = HTMLInputElement;
  const own = Object.getOwnPropertyDescriptor(prototype, 'value') as PropertyDescriptor;
  const written: string[] = [];
  Object.defineProperty(prototype, 'value', {
    ...own,
    set(this: HTMLInputElement, text: string) {
      if (this.type === 'text') written.push(text);
      own.set?.call(this, text);
    },
  });
  try {
    await act();
  } finally {
    Object.defineProperty(prototype, 'value', own);
  }
  return written;
}

describe('a host that takes back what the user did', () => {
  it('is obeyed where it hears of each key', async () => {
    const widget = await sight();
    widget.addEventListener('input', () => (widget.bearing = '113.5'));
    await type(widget, 'bearing', '98');
    expect(input(widget, 'bearing').value).to.equal('113.5');
  });

  it('is obeyed at once, before the widget is drawn anew', async () => {
    const widget = await sight();
    widget.addEventListener('input', () => (widget.bearing = '113.5'));
    const bearing = input(widget, 'bearing');
    bearing.value = '98';
    // A script's event comes to the page before anything is drawn.
    bearing.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    await widget.updateComplete;
    expect(bearing.value).to.equal('113.5');
  });

  it('is obeyed in a choice of few', async () => {
    const widget = await sight();
    const back = (): unknown => (widget.compass = 'magnetic');
    // A change of a choice is heard within the widget only; outside it is the result that tells of it.
    for (const [heard, event] of [[root(widget), 'change'], [widget, 'lubber-result']] as const) {
      heard.addEventListener(event, back);
      must(root(widget).querySelector<HTMLInputElement>('[name=compass][value=gyro]')).click();
      await widget.updateComplete;
      expect([widget.compass, ...chosen(widget)]).to.deep.equal(['magnetic', 'magnetic']);
      heard.removeEventListener(event, back);
    }
  });

  it('is obeyed in a choice of many, and where it holds a word unknown', async () => {
    const widget = await sight();
    let held = 'Sun';
    root(widget).addEventListener('change', () => (widget.body = held));
    await choose(widget, 'Venus');
    expect(select(widget).value).to.equal('Sun');
    held = 'Sirus';
    for (let round = 0; round < 2; round += 1) {
      await choose(widget, 'Venus');
      expect(shownOption(widget)).to.equal('Sirus');
    }
    held = 'Sirius';
    await choose(widget, 'Venus');
    expect(shownOption(widget)).to.equal('Sirius');
  });

  it('is obeyed in a box of several lines', async () => {
    const widget = await fixture<HTMLElementTagNameMap['lubber-azimuth']>(html`<lubber-azimuth series="0852 113"></lubber-azimuth>`);
    await widget.updateComplete;
    const box = root(widget).querySelector('textarea');
    if (!box) throw new Error('no box');
    widget.addEventListener('input', () => (widget.series = '0852 113'));
    box.value = '0852 114';
    box.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    await widget.updateComplete;
    expect(box.value).to.equal('0852 113');
  });
});

describe('an entry the user has changed', () => {
  it('follows the page, and the keys that step', async () => {
    const widget = await sight();
    await type(widget, 'bearing', '98');
    widget.bearing = '99';
    await widget.updateComplete;
    expect(input(widget, 'bearing').value).to.equal('99');
    input(widget, 'bearing').focus();
    await sendKeys({ press: 'ArrowUp' });
    await widget.updateComplete;
    expect(input(widget, 'bearing').value).to.equal('099.5');
    widget.compass = 'gyro';
    widget.body = 'Venus';
    await widget.updateComplete;
    expect([chosen(widget), select(widget).value]).to.deep.equal([['gyro'], 'Venus']);
    widget.setAttribute('compass', 'gyroscope');
    await widget.updateComplete;
    expect(chosen(widget)).to.deep.equal([]);
  });

  it('is what the page had given once its form is put back', async () => {
    const form = await fixture<HTMLFormElement>(html`<form><lubber-amplitude bearing="113.5" body="Moon"></lubber-amplitude></form>`);
    const widget = form.querySelector('lubber-amplitude') as LubberAmplitude;
    await widget.updateComplete;
    await type(widget, 'bearing', '98');
    await type(widget, 'latitude', '12N');
    await choose(widget, 'Venus');
    must(root(widget).querySelector<HTMLInputElement>('[name=compass][value=gyro]')).click();
    form.reset();
    await widget.updateComplete;
    expect([input(widget, 'bearing').value, input(widget, 'latitude').value, select(widget).value, ...chosen(widget)]).to.deep.equal(['113.5', '', 'Moon', 'magnetic']);
  });

  it('goes back to the ship where it is emptied', async () => {
    const ship = await fixture<LubberShip>(html`<lubber-ship latitude="33-24.0N"><lubber-amplitude></lubber-amplitude></lubber-ship>`);
    const widget = ship.querySelector('lubber-amplitude') as LubberAmplitude;
    await widget.updateComplete;
    expect(input(widget, 'latitude').value).to.equal('33-24.0N');
    await type(widget, 'latitude', '12N');
    expect(input(widget, 'latitude').value).to.equal('12N');
    await type(widget, 'latitude', '');
    expect(input(widget, 'latitude').value).to.equal('33-24.0N');
  });

  it('stays as it is where it is locked', async () => {
    const widget = await sight();
    widget.locked = 'bearing compass body';
    await widget.updateComplete;
    await type(widget, 'bearing', '98');
    must(root(widget).querySelector<HTMLInputElement>('[name=compass][value=gyro]')).click();
    await widget.updateComplete;
    expect([input(widget, 'bearing').value, select(widget).value, ...chosen(widget)]).to.deep.equal(['113.5', 'Sun', 'magnetic']);
  });

  it('keeps the file a user has chosen', async () => {
    const ship = await fixture<LubberShip>(html`<lubber-ship></lubber-ship>`);
    await ship.updateComplete;
    const files = new DataTransfer();
    files.items.add(new File(['{}'], 'ship.json'));
    const entry = input(ship, 'open-ship');
    entry.files = files.files;
    // A browser tells of it before the change that reads the file; the page may have something drawn in between.
    entry.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    ship.requestUpdate();
    await ship.updateComplete;
    expect(entry.files.length).to.equal(1);
  });
});

describe('an entry that is gone', () => {
  // Every row that had been typed in and taken away was asked at each key until the widget went.
  it('is forgotten', async () => {
    const around = (await fixture(html`<div></div>`)).attachShadow({ mode: 'open' });
    const entry = around.appendChild(document.createElement('input'));
    const show = followed(around);
    const write = (): void => void Object.assign(entry, { value: '98' });
    write();
    entry.dispatchEvent(new InputEvent('input', { bubbles: true }));
    show();
    expect(entry.value).to.equal('');
    entry.remove();
    show();
    write();
    show();
    expect(entry.value).to.equal('98');
  });
});

describe('typing', () => {
  it('in the middle of a text leaves the cursor there, and nothing is written over it', async () => {
    const widget = await sight();
    const bearing = input(widget, 'bearing');
    bearing.focus();
    bearing.setSelectionRange(1, 1);
    const written = await writtenDuring(async () => {
      await sendKeys({ type: '0' });
      await widget.updateComplete;
      await sendKeys({ press: 'Delete' });
      await widget.updateComplete;
    });
    expect([bearing.value, bearing.selectionStart, bearing.selectionEnd]).to.deep.equal(['103.5', 2, 2]);
    expect(written).to.deep.equal([]);
  });

  it('may be undone by the keys of the browser', async () => {
    const widget = await sight();
    const bearing = input(widget, 'bearing');
    bearing.focus();
    bearing.setSelectionRange(5, 5);
    await sendKeys({ type: '7' });
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'z' });
    await sendKeys({ up: 'Control' });
    await widget.updateComplete;
    expect([bearing.value, widget.bearing]).to.deep.equal(['113.5', '113.5']);
  });

  it('takes what is pasted at the cursor', async () => {
    const widget = await sight();
    const bearing = input(widget, 'bearing');
    bearing.focus();
    bearing.setSelectionRange(0, 2);
    const written = await writtenDuring(async () => {
      await sendKeys({ down: 'Control' });
      await sendKeys({ press: 'c' });
      await sendKeys({ up: 'Control' });
      bearing.setSelectionRange(3, 3);
      await sendKeys({ down: 'Control' });
      await sendKeys({ press: 'v' });
      await sendKeys({ up: 'Control' });
      await widget.updateComplete;
    });
    expect([bearing.value, widget.bearing, bearing.selectionStart]).to.deep.equal(['11311.5', '11311.5', 5]);
    expect(written).to.deep.equal([]);
  });
});

describe('what stands in a ship', () => {
  it('is left alone by her: a field of the page, and the bench of iron', async () => {
    const ship = await fixture<LubberShip>(html`<lubber-ship><input id="own" /><lubber-iron></lubber-iron></lubber-ship>`);
    const own = ship.querySelector('#own') as HTMLInputElement;
    own.focus();
    await sendKeys({ type: 'Halcyon' });
    ship.variation = '2E';
    await ship.updateComplete;
    expect(own.value).to.equal('Halcyon');
    const iron = ship.querySelector('lubber-iron') as LubberIron;
    const slider = root(iron).querySelector('input[type=range]') as HTMLInputElement;
    slider.focus();
    await sendKeys({ press: 'ArrowRight' });
    ship.variation = '3E';
    await ship.updateComplete;
    expect(iron.result).not.to.equal(null);
  });
});
