import { expect, fixture, html } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';

describe('the focus', () => {
  const focused = (element: LubberAmplitude): string => element.shadowRoot?.activeElement?.id ?? '';

  it('stays away from the fields when a text is clicked', async () => {
    const element = await fixture<LubberAmplitude>(html`<lubber-amplitude></lubber-amplitude>`);
    const { left, top } = (element.shadowRoot?.querySelector('.how li') as HTMLElement).getBoundingClientRect();
    await sendMouse({ type: 'click', position: [Math.round(left + 50), Math.round(top + 5)] });
    expect(focused(element)).to.equal('');
  });

  it('goes to the first field when the page gives it to the widget', async () => {
    const element = await fixture<LubberAmplitude>(html`<lubber-amplitude></lubber-amplitude>`);
    element.focus();
    expect(focused(element)).to.equal('body');
  });
});

after(() => resetMouse());
