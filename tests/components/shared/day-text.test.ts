import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';

// The days of the week by the calendar: 1 January 2000 was a Saturday, 29 February 2024 a Thursday (common knowledge).
describe('the day at the end of a date', () => {
  for (const [date, said] of [
    ['2000-01-01', 'Sat, 1 Jan 2000'],
    ['2024-02-29', 'Thu, 29 Feb 2024'],
    ['1999-12-31', 'Fri, 31 Dec 1999'],
  ] as const) {
    it(`${date} is ${said}`, async () => {
      const element = await fixture<LubberAmplitude>(html`<lubber-amplitude date=${date}></lubber-amplitude>`);
      expect(element.shadowRoot?.querySelector('#date-echo')?.textContent.trim()).to.equal(said);
    });
  }
});
