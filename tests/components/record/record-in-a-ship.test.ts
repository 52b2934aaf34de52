import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/amplitude/define.js';
import '../../../components/record/define.js';
import '../../../components/ship/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberRecord } from '../../../components/record/record.js';
import type { LubberShip } from '../../../components/ship/ship.js';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import { until } from '../../support/until.js';
import { must } from '../../support/in-widget.js';

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
  must(offer).click();
  await until(() => record.entries.length > 0);
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
  must([...(sight.shadowRoot as ShadowRoot).querySelectorAll('button')].find((one) => one.textContent?.includes('Enter in the record'))).click();
  await until(() => record.entries.length > 0);
  expect(record.entries[0]?.bearing).to.equal(90);
});

it('of two books inside a ship each takes the sight, as one of the compass it watches', async () => {
  const ship = await fixture(html`<lubber-ship name=${`Sooty Tern ${Date.now()}`}>
    <lubber-amplitude latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" bearing="113.5"></lubber-amplitude>
    <lubber-record book=${`one ${Date.now()}`}></lubber-record>
    <lubber-record book=${`other ${Date.now()}`} compass="steering"></lubber-record>
  </lubber-ship>`);
  const records = [...ship.querySelectorAll('lubber-record')];
  for (const record of records) await record.whole;
  const sight = ship.querySelector('lubber-amplitude') as LubberAmplitude;
  await sight.updateComplete;
  must([...sight.renderRoot.querySelectorAll('button')].find(({ textContent }) => textContent.trim() === 'Enter in the record')).click();
  await until(() => records.every(({ entries }) => entries.length > 0));
  expect(records.map(({ entries }) => entries.map(({ deviationOf }) => deviationOf))).to.deep.equal([['standard'], ['steering']]);
});

// Whoever had entered a sight had to look for the book on the page by himself.
it('a sight that has entered its result leads to the book, by keyboard and by click; without a book aboard it does not', async () => {
  const ship = await fixture(html`<lubber-ship name=${`Grey Petrel ${Date.now()}`}>
    <lubber-amplitude latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" bearing="113.5"></lubber-amplitude>
    <lubber-record></lubber-record>
  </lubber-ship>`);
  const sight = ship.querySelector('lubber-amplitude') as LubberAmplitude;
  const record = ship.querySelector('lubber-record') as LubberRecord;
  await record.whole;
  await sight.updateComplete;
  const button = (words: string): HTMLButtonElement | undefined => [...sight.renderRoot.querySelectorAll('button')].find(({ textContent }) => textContent.trim() === words);
  expect(button('To the record book')).to.equal(undefined);
  must(button('Enter in the record')).focus();
  await sendKeys({ press: 'Enter' });
  await sight.updateComplete;
  await sendKeys({ press: 'Tab' });
  expect((sight.renderRoot as ShadowRoot).activeElement).to.equal(button('To the record book'));
  await sendKeys({ press: 'Enter' });
  expect(document.activeElement).to.equal(record);
  expect((record.renderRoot as ShadowRoot).activeElement?.textContent).to.equal('Compass error record book');
  (document.activeElement as HTMLElement).blur();
  must(button('To the record book')).click();
  expect(document.activeElement).to.equal(record);
  record.remove();
  must(button('Enter in the record')).click();
  await sight.updateComplete;
  expect([sight.offered, button('To the record book')]).to.deep.equal(['There is no record book here: nothing was kept.', undefined]);
});

// The deviations of a steering compass were judged by the card of the standard compass.
it('a book of the steering compass takes the ship’s card of that compass', async () => {
  const ship = await fixture<LubberShip>(html`<lubber-ship name=${`Storm Tern ${Date.now()}`}><lubber-record compass="steering"></lubber-record></lubber-ship>`);
  const constant = (A: number): DeviationCard => ({ kind: 'approximate', coefficients: { A, B: 0, C: 0, D: 0, E: 0 } });
  ship.card = constant(2);
  const record = ship.querySelector('lubber-record') as LubberRecord;
  await record.whole;
  const enter = async (minute: number): Promise<number | null | undefined> => {
    const outcome = await record.appendEntry({ kind: 'observation', instant: `2026-11-26T08:0${minute}:00Z`, headingSteering: 90, deviation: 1, deviationOf: 'steering' });
    return outcome.saved ? outcome.entry.cardDeviation : undefined;
  };
  expect(await enter(1)).to.equal(null);
  ship.steeringCard = constant(-3);
  await ship.updateComplete;
  expect(await enter(2)).to.equal(-3);
});
