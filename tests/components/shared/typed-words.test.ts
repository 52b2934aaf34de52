import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';

/** Two words that frameworks write into attributes and properties when they mean nothing. */
describe('the words null and undefined in a field', () => {
  const field = (element: LubberAmplitude): HTMLInputElement => element.renderRoot.querySelector<HTMLInputElement>('#bearing') as HTMLInputElement;

  // Typed, the last letter emptied the field and nobody said why.
  for (const word of ['null', 'undefined']) {
    it(`typed as ${word} stay, and are refused like anything else`, async () => {
      const element = await fixture<LubberAmplitude>(html`<lubber-amplitude latitude="10N" longitude="20W" instant="2026-03-20T07:30:00Z" bearing="090"></lubber-amplitude>`);
      expect(element.result).not.to.equal(null);
      field(element).select();
      field(element).focus();
      await sendKeys({ type: word });
      await sendKeys({ press: 'Tab' });
      await element.updateComplete;
      expect(field(element).value).to.equal(word);
      expect(element.renderRoot.querySelector('#bearing-problem')?.textContent).to.match(/not understood/);
      expect(element.result).to.equal(null);
      // From the page such a word says that there is nothing.
      element.bearing = word === 'null' ? 'undefined' : 'null';
      await element.updateComplete;
      expect([field(element).value, element.renderRoot.querySelector('#bearing-problem')?.textContent]).to.deep.equal(['', '']);
    });
  }
});
