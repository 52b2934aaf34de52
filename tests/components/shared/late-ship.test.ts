import { expect, fixtureSync, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';

describe('a ship that is defined after the widgets inside her', () => {
  it('is found all the same', async () => {
    const page = fixtureSync<HTMLElement>(html`<lubber-ship latitude="10N"><lubber-amplitude></lubber-amplitude></lubber-ship>`);
    const element = page.querySelector('lubber-amplitude') as LubberAmplitude;
    await element.updateComplete;
    await import('../../../components/ship/define.js');
    await (page as unknown as LubberAmplitude).updateComplete;
    await element.updateComplete;
    expect((element.shadowRoot?.querySelector('#latitude') as HTMLInputElement).value).to.equal('10N');
  });
});
