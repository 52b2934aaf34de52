import { ContextProvider } from '@lit/context';
import { expect, fixture, fixtureSync, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { css } from 'lit';
import '../../../components/amplitude/define.js';
import { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import { shipContext } from '../../../components/shared/ship-context.js';
import { headline, input, problem, root } from '../../support/in-widget.js';

// The base of all widgets, tried in one of them: each test names a fault that once was. The inputs are invented.

const answered = (): Promise<LubberAmplitude> =>
  fixture(html`<lubber-amplitude latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" bearing="113.5" heading=""></lubber-amplitude>`);

function resultsOf(element: LubberAmplitude): Event[] {
  const heard: Event[] = [];
  element.addEventListener('lubber-result', (event) => heard.push(event));
  return heard;
}

/** An element that provides a ship at one height of eye. */
function shipAround(inside: Element): HTMLElement {
  const ship = document.createElement('div');
  const initialValue = {
    name: 'Test', compassName: '', values: { heightOfEye: '20', latitude: '10N' }, card: null,
    deviationOn: () => null, useCard: () => undefined, onRecordRequest: () => () => undefined,
  };
  new ContextProvider(ship, { context: shipContext, initialValue });
  ship.append(inside);
  return ship;
}

describe('attributes taken away again', () => {
  it('locked', async () => {
    const element = await answered();
    element.setAttribute('locked', 'latitude');
    await element.updateComplete;
    expect(input(element, 'latitude').readOnly).to.equal(true);
    element.removeAttribute('locked');
    await element.updateComplete;
    expect(input(element, 'latitude').readOnly).to.equal(false);
  });

  it('answer: what was hidden is shown', async () => {
    const element = await answered();
    element.setAttribute('answer', 'hidden');
    await element.updateComplete;
    expect(headline(element)).not.to.contain('Error');
    element.removeAttribute('answer');
    await element.updateComplete;
    expect(headline(element)).to.contain('Error');
  });

  it('body', async () => {
    const element = await answered();
    element.setAttribute('body', 'Moon');
    await element.updateComplete;
    element.removeAttribute('body');
    await element.updateComplete;
    expect((root(element).querySelector('#body') as HTMLSelectElement).value).to.equal('Sun');
  });
});

describe('lubber-result is not fired', () => {
  it('by passing through a field that the host set to the empty text', async () => {
    const element = await answered();
    const heard = resultsOf(element);
    input(element, 'heading').focus();
    await sendKeys({ press: 'Tab' });
    await element.updateComplete;
    expect(heard.length).to.equal(0);
  });

  it('for the host after a key that could not step the value any further', async () => {
    const element = await answered();
    element.heightOfEye = '200';
    await element.updateComplete;
    const heard = resultsOf(element);
    input(element, 'heightOfEye').focus();
    await sendKeys({ press: 'ArrowUp' });
    element.bearing = '114';
    await element.updateComplete;
    expect(heard.length).to.equal(0);
  });
});

describe('properties as frameworks set them', () => {
  it('a finer bearing keeps its decimals', async () => {
    const element = await answered();
    element.bearing = 113.25;
    await element.updateComplete;
    expect(input(element, 'bearing').value).to.equal('113.25');
    element.bearing = 5;
    await element.updateComplete;
    expect(input(element, 'bearing').value).to.equal('005.0');
  });

  for (const [name, value] of [['date', 26], ['date', new Date(0)], ['latitude', new Date(0)], ['instant', 12], ['latitude', Infinity]] as const) {
    it(`${name} as ${typeof value} ${String(value)} is refused beside the field, and the widget lives`, async () => {
      const element = await answered();
      (element as unknown as Record<string, unknown>)[name] = value;
      await element.updateComplete;
      expect(problem(element, name === 'instant' ? 'date' : name)).to.match(/Accepted/);
    });
  }

  it('an instant outside the years is told beside the date', async () => {
    const element = await answered();
    element.instant = new Date('2150-01-01T00:00:00Z');
    await element.updateComplete;
    expect(problem(element, 'date')).to.contain('1900 to 2099');
  });

  it('a locked instant locks date and time', async () => {
    const element = await answered();
    element.locked = 'instant';
    await element.updateComplete;
    expect([input(element, 'date').readOnly, input(element, 'time').readOnly]).to.deep.equal([true, true]);
    const buttons = [...root(element).querySelectorAll('button')].map((button) => button.textContent);
    expect(buttons).not.to.include('Now');
    expect(buttons).not.to.include('Next rising');
  });
});

describe('the ship around a widget', () => {
  it('stands in for a property that a framework set to "undefined"', async () => {
    const element = document.createElement('lubber-amplitude');
    element.latitude = 'undefined';
    const page = fixtureSync<HTMLElement>(html`<div></div>`);
    page.append(shipAround(element));
    await element.updateComplete;
    expect(input(element, 'latitude').value).to.equal('10N');
    expect(input(element, 'heightOfEye').value).to.equal('20');
  });

  it('is forgotten by a widget moved out of her', async () => {
    const element = document.createElement('lubber-amplitude');
    const page = fixtureSync<HTMLElement>(html`<div></div>`);
    page.append(shipAround(element));
    await element.updateComplete;
    page.append(element);
    await element.updateComplete;
    expect(input(element, 'latitude').value).to.equal('');
    expect(input(element, 'heightOfEye').value).to.equal('12.5');
  });

  // A provider of another hand once brought every sight with a heading down.
  it('may be of another hand and not say what the card gives: then it is as without a card', async () => {
    const element = await answered();
    const other = fixtureSync<HTMLElement>(html`<div></div>`);
    other.addEventListener('context-request', (event) => {
      (event as unknown as { callback(ship: unknown): void }).callback({ name: 'Other', compassName: '', values: {}, card: null });
    });
    other.append(element);
    element.heading = '040';
    await element.updateComplete;
    expect(element.ship?.name).to.equal('Other');
    expect(element.result?.error).to.be.a('number');
    expect(element.result?.cardDeviation).to.equal(null);
    expect(input(element, 'cardDeviation').placeholder).to.equal('no card');
  });
});

// Thirteen tags of a script were made ready to be dressed before the one on the page was drawn.
it('styles are measured by the widget’s own size when the first that wears them is drawn', async () => {
  class Dressed extends LubberAmplitude {
    static override styles = [LubberAmplitude.styles, css`.dressed { margin: 3rem; }`];
  }
  const text = (): string => String(Dressed.elementStyles.map((style) => ('cssText' in style ? style.cssText : '')).find((each) => each.includes('.dressed')));
  customElements.define('lubber-dressed', Dressed);
  expect(text()).to.include('3rem');
  await fixture('<lubber-dressed></lubber-dressed>');
  expect(text()).to.include('calc(3 * var(--rem))').and.not.include('3rem');
});
