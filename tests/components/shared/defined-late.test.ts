import { expect, fixtureSync, html } from '@open-wc/testing';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';

// The inputs are invented. This file alone imports no definition beforehand.
describe('a widget that stands in the page before it is defined', () => {
  it('takes over attributes, properties, listeners and the form it stands in', async () => {
    const form = fixtureSync<HTMLFormElement>(html`<form><lubber-amplitude name="sight" latitude="48-17.0S" longitude="071-42.5W"></lubber-amplitude></form>`);
    const element = form.querySelector('lubber-amplitude') as LubberAmplitude;
    const heard: Event[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event));
    Object.assign(element, { instant: new Date('2026-11-26T08:52:40Z'), bearing: 113.5, heightOfEye: 18, required: true });
    expect(element.shadowRoot).to.equal(null);
    await import('../../../components/amplitude/define.js');
    await element.updateComplete;
    expect(Object.hasOwn(element, 'bearing')).to.equal(false);
    expect(element.result).not.to.equal(null);
    expect(JSON.parse(String(new FormData(form).get('sight'))) as unknown).to.have.property('inputs').that.includes({ heightOfEye: 18, bearing: 113.5 });
    expect(element.checkValidity()).to.equal(true);
    expect(heard.length).to.equal(0);
    element.change('bearing', '114');
    await element.updateComplete;
    expect(heard.length).to.equal(1);
  });
});
