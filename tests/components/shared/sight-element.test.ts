import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/amplitude/define.js';
import '../../../components/azimuth/define.js';
import '../../../components/transit/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberAzimuth } from '../../../components/azimuth/azimuth.js';
import type { LubberTransit } from '../../../components/transit/transit.js';
import type { LubberResultEvent } from '../../../components/shared/events.js';
import { must } from '../../support/in-widget.js';

type Sight = LubberAmplitude | LubberAzimuth | LubberTransit;

/** The same ship at the same time in each of the three; only what was observed differs. */
const sights: Readonly<Record<string, () => Promise<Sight>>> = {
  amplitude: () => fixture(html`<lubber-amplitude latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" bearing="113.5" heading="040"></lubber-amplitude>`),
  azimuth: () => fixture(html`<lubber-azimuth latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" bearing="113.5" heading="040"></lubber-azimuth>`),
  transit: () => fixture(html`<lubber-transit latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" charted="120" bearing="113.5" heading="040"></lubber-transit>`),
};

const root = (element: Sight): ShadowRoot => element.shadowRoot as ShadowRoot;
const headline = (element: Sight): string => (root(element).querySelector('.headline')?.textContent ?? '').replace(/\s+/g, ' ').trim();

for (const [name, sight] of Object.entries(sights)) {
  describe(`what every sight is told, in ${name}`, () => {
    // An azimuth by gyro was held back by a variation it neither showed nor named.
    it('a gyro is not held back by what was left in the fields of the split', async () => {
      const element = await sight();
      for (const left of ['variation', 'cardDeviation'] as const) {
        element.compass = 'magnetic';
        element[left] = '1..5';
        await element.updateComplete;
        expect(element.result).to.equal(null);
        expect(headline(element)).to.contain(`To be put right: ${left === 'variation' ? 'Variation' : 'Deviation by the card'}.`);
        element.compass = 'gyro';
        await element.updateComplete;
        expect(element.result?.compass).to.equal('gyro');
        expect(headline(element)).not.to.contain('To be put right');
        element[left] = '';
      }
    });

    // A field was named "by compass" in the list of what is wrong, which stood under "by gyro".
    it('names a field as its label does', async () => {
      const element = await sight();
      element.compass = 'gyro';
      element.bearing = '';
      element.heading = 'abc';
      await element.updateComplete;
      const label = root(element).querySelector('label[for=heading]')?.textContent;
      expect(label).to.equal('Ship’s head by gyro');
      expect(headline(element)).to.contain(`To be put right: ${String(label)}.`);
    });

    it('tells the page the same of ship, compass and doubt', async () => {
      const element = await sight();
      const told: Record<string, unknown>[] = [];
      element.addEventListener('lubber-result', (event) => told.push((event as LubberResultEvent).detail.inputs));
      must(root(element).querySelector<HTMLInputElement>('#variation')).focus();
      await sendKeys({ type: '10E' });
      await element.updateComplete;
      element.doubtReading = '0.3';
      must(root(element).querySelector<HTMLInputElement>('#cardDeviation')).focus();
      await sendKeys({ type: '1W' });
      await element.updateComplete;
      expect(told[told.length - 1]).to.deep.include({
        instant: '2026-11-26T08:52:40Z',
        compass: 'magnetic',
        heading: 40,
        variation: 10,
        cardDeviation: -1,
        doubts: { reading: 0.3 },
      });
      expect(told[told.length - 1]?.['latitude']).to.be.closeTo(-(48 + 17 / 60), 1e-9);
      expect(told[told.length - 1]?.['longitude']).to.be.closeTo(-(71 + 42.5 / 60), 1e-9);
    });
  });
}
