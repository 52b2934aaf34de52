import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import { must, root } from '../../support/in-widget.js';

type Answer = (position: { coords: { latitude: number; longitude: number; accuracy: number } }) => void;

const status = (element: LubberAmplitude): string => root(element).querySelector('[role=status]')?.textContent ?? '';

/** Presses "here"; the device answers 33° 24′ S 071° 42′ W once `answer` is called. */
async function asked(element: LubberAmplitude): Promise<{ answer: () => Promise<void>; undo: () => void }> {
  const own = Object.getOwnPropertyDescriptor(navigator, 'geolocation');
  let tell: Answer = () => undefined;
  Object.defineProperty(navigator, 'geolocation', { configurable: true, value: { getCurrentPosition: (told: Answer) => (tell = told) } });
  must([...root(element).querySelectorAll('button')].find(({ textContent }) => textContent === 'Here')).click();
  await element.updateComplete;
  return {
    answer: async () => {
      tell({ coords: { latitude: -33.4, longitude: -71.7, accuracy: 12 } });
      await new Promise((resolve) => setTimeout(resolve));
      await element.updateComplete;
    },
    undo: () => (own ? Object.defineProperty(navigator, 'geolocation', own) : Reflect.deleteProperty(navigator, 'geolocation')),
  };
}

describe('the position of this device', () => {
  it('is taken over when it comes', async () => {
    const element = await fixture<LubberAmplitude>(html`<lubber-amplitude></lubber-amplitude>`);
    const device = await asked(element);
    await device.answer();
    device.undo();
    expect([element.latitude, element.longitude]).to.deep.equal(['33-24.0S', '071-42.0W']);
    expect(status(element)).to.contain('12\u00a0m');
  });

  // An answer that came late once wrote over what the officer had typed in the meantime.
  it('does not overwrite what was typed while it was waited for, and says so', async () => {
    const element = await fixture<LubberAmplitude>(html`<lubber-amplitude></lubber-amplitude>`);
    const device = await asked(element);
    const field = root(element).querySelector<HTMLInputElement>('#latitude');
    if (!field) throw new Error('no field');
    field.value = '48-17.0S';
    field.dispatchEvent(new InputEvent('input'));
    await device.answer();
    device.undo();
    expect([element.latitude, element.longitude]).to.deep.equal(['48-17.0S', undefined]);
    expect(status(element)).to.equal('The position was changed meanwhile: that of this device was not taken over.');
  });
});
