import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import { until } from '../../support/until.js';

describe('the answer as it is spoken', () => {
  // The live region used to stand around the answer: typing 113.5 spoke the errors of 1, 11, 113 and 113. on the way.
  it('is spoken once, after a pause, and not at every key', async () => {
    const element = await fixture<LubberAmplitude>(html`<lubber-amplitude
      latitude="48-17.0S"
      longitude="071-42.5W"
      instant="2026-11-26T08:52:40Z"
    ></lubber-amplitude>`);
    const root = element.shadowRoot as ShadowRoot;
    const status = root.querySelector('[role=status]') as HTMLElement;
    const said: string[] = [];
    new MutationObserver(() => said.push(status.textContent ?? '')).observe(status, { childList: true, characterData: true, subtree: true });
    // Keys of a real keyboard come through the test's browser, on a slow machine with pauses between them.
    const field = root.querySelector('#bearing') as HTMLInputElement;
    for (const typed of ['1', '11', '113', '113.', '113.5']) {
      field.value = typed;
      field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    }
    await until(() => said.length > 0);
    expect(said).to.deep.equal(['Error 9.0 degrees east, ± 0.5°']);
    expect(root.querySelectorAll('[aria-live]').length).to.equal(1);
  });
});
