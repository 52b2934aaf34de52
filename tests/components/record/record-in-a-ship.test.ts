import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import '../../../components/record/define.js';
import '../../../components/ship/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberRecord } from '../../../components/record/record.js';

// A sight's event bubbles past its sibling: only the ship around both can hand it on.
it('a sight inside a ship enters its result in the ship’s own book', async () => {
  const ship = await fixture(html`<lubber-ship name=${`Halcyon Tern ${Date.now()}`} compass-name="standard">
    <lubber-amplitude
      latitude="48-17.0S"
      longitude="071-42.5W"
      instant="2026-11-26T08:52:40Z"
      height-of-eye="18"
      bearing="113.5"
      heading="040"
      card-deviation="1.5W"
    ></lubber-amplitude>
    <lubber-record observer="E. M."></lubber-record>
  </lubber-ship>`);
  const sight = ship.querySelector('lubber-amplitude') as LubberAmplitude;
  const record = ship.querySelector('lubber-record') as LubberRecord;
  await record.whole;
  await sight.updateComplete;
  expect(record.result?.book).to.match(/^Halcyon Tern \d+, standard$/);
  const offer = [...(sight.shadowRoot as ShadowRoot).querySelectorAll('button')].find((one) => one.textContent?.includes('Enter in the record'));
  offer?.click();
  for (let tries = 0; tries < 100 && record.entries.length === 0; tries++) await new Promise((resolve) => setTimeout(resolve, 20));
  const [entry] = record.entries;
  expect([entry?.method, entry?.target, entry?.bearing, entry?.headingStandard, entry?.cardDeviation, entry?.observer]).to.deep.equal(
    ['amplitude', 'Sun', 113.5, 40, -1.5, 'E. M.'],
  );
  expect(entry?.trueBearing).to.be.closeTo(sight.result?.trueBearing ?? NaN, 0.01);
  expect(entry?.difference).to.be.closeTo(sight.result?.difference ?? NaN, 0.01);
  expect(sight.shadowRoot?.textContent).to.contain('Offered to the record book.');
  expect(record.entries).to.have.length(1);
});

it('an entry offered with the record inside no ship goes to the host, who may enter it', async () => {
  const record = await fixture<LubberRecord>(html`<lubber-record book=${`host ${Date.now()}`}></lubber-record>`);
  const sight = await fixture<LubberAmplitude>(html`<lubber-amplitude latitude="10N" longitude="20W" instant="2026-03-20T07:30:00Z" bearing="090" heading="000"></lubber-amplitude>`);
  sight.addEventListener('lubber-record-request', (event) => void record.appendRequest(event.detail));
  [...(sight.shadowRoot as ShadowRoot).querySelectorAll('button')].find((one) => one.textContent?.includes('Enter in the record'))?.click();
  for (let tries = 0; tries < 100 && record.entries.length === 0; tries++) await new Promise((resolve) => setTimeout(resolve, 20));
  expect(record.entries[0]?.bearing).to.equal(90);
});
