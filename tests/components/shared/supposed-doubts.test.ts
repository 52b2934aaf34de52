import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/amplitude/define.js';
import '../../../components/azimuth/define.js';
import '../../../components/transit/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberAzimuth } from '../../../components/azimuth/azimuth.js';
import type { LubberTransit } from '../../../components/transit/transit.js';
import { assertAccessible } from '../../support/axe.js';
import { must, root } from '../../support/in-widget.js';

type Sight = LubberAmplitude | LubberAzimuth | LubberTransit;

/** Standard deviation of the whole; what each cause does, by its code. */
function doubtOf(element: Sight): { total: number; effects: Record<string, number> } {
  const doubt = element.result?.doubt;
  if (!doubt) throw new Error('no result');
  return { total: doubt.total, effects: Object.fromEntries(doubt.items.map(({ code, effect }) => [code, effect])) };
}

const names = (element: Sight): string[] => [...root(element).querySelectorAll('[part=doubt] input')].map(({ id }) => id);

const sights = [
  { at: () => fixture<Sight>(html`<lubber-amplitude latitude="10N" longitude="20W" instant="2026-03-20T07:30:00Z" bearing="090"></lubber-amplitude>`),
    fields: ['doubtReading', 'doubtHorizonAltitude', 'doubtPosition', 'doubtTime'] },
  { at: () => fixture<Sight>(html`<lubber-azimuth latitude="10N" longitude="20W" instant="2026-03-20T09:30:00Z" bearing="100"></lubber-azimuth>`),
    fields: ['doubtReading', 'doubtPosition', 'doubtTime', 'doubtTilt'] },
  { at: () => fixture<Sight>(html`<lubber-transit latitude="10N" longitude="20W" charted="100" bearing="101"></lubber-transit>`),
    fields: ['doubtReading', 'doubtCharted'] },
];

describe('what is supposed of a sight', () => {
  it('has a field for each cause in the table of doubts, empty where the usual holds', async () => {
    for (const { at, fields } of sights) {
      const element = await at();
      expect(names(element)).to.deep.equal(fields);
      const reading = root(element).querySelector<HTMLInputElement>('#doubtReading');
      expect([reading?.value, reading?.placeholder]).to.deep.equal(['', '0.5']);
      root(element).querySelector('details[part=doubt]')?.setAttribute('open', '');
      await assertAccessible(element);
    }
  });

  it('is set by keys: effect and total follow by the root of the sum of squares, and the inputs keep it', async () => {
    for (const { at } of sights) {
      const element = await at();
      const before = doubtOf(element);
      let inputs: Record<string, unknown> = {};
      element.addEventListener('lubber-result', (event) => (inputs = event.detail.inputs));
      root(element).querySelector('details[part=doubt]')?.setAttribute('open', '');
      must(root(element).querySelector<HTMLInputElement>('#doubtReading')).focus();
      await sendKeys({ type: '1,5°' });
      await sendKeys({ press: 'Tab' });
      await element.updateComplete;
      const after = doubtOf(element);
      expect(after.effects['reading']).to.equal(1.5);
      // 0.5 before, so the square of the whole grows by 1.5² − 0.5² = 2.
      expect(after.total ** 2 - before.total ** 2).to.be.closeTo(2, 1e-9);
      expect(inputs['doubts']).to.deep.equal({ reading: 1.5 });
      expect(root(element).querySelector('.answer')?.textContent).to.contain(`±\u00a0${after.total.toFixed(1)}°`);
    }
  });

  it('is set by the page; what cannot be read is refused beside its field, kept, and the usual holds', async () => {
    const element = await fixture<LubberAzimuth>(html`<lubber-azimuth
      latitude="10N" longitude="20W" instant="2026-03-20T09:30:00Z" bearing="100" doubt-time="60 s" doubt-tilt="0" doubt-position="far"
    ></lubber-azimuth>`);
    const { effects } = doubtOf(element);
    const rate = element.result && 'azimuthRate' in element.result ? Math.abs(element.result.azimuthRate) : NaN;
    // One minute of time is the rate of one minute; a level circle turns nothing.
    expect(effects['time']).to.be.closeTo(rate, 1e-12);
    expect(effects['tilt']).to.equal(0);
    expect(root(element).querySelector<HTMLDetailsElement>('[part=doubt]')?.open).to.equal(true);
    expect(root(element).querySelector('#doubtPosition-problem')?.textContent).to.equal('This was not understood. Accepted: 0 to 60\u00a0M, one standard deviation.');
    expect(root(element).querySelector<HTMLInputElement>('#doubtPosition')?.value).to.equal('far');
    expect(element.result?.doubt.items.find(({ code }) => code === 'position')?.cause.value).to.equal(1);
    for (const [text, refused] of [['61', true], ['-1', true], ['60 M', false], ['0', false], ['', false]] as const) {
      element.doubtPosition = text;
      await element.updateComplete;
      expect(root(element).querySelector<HTMLElement>('#doubtPosition-problem')?.hidden, text).to.equal(!refused);
      // Put right it once closed under the hand of whoever typed.
      expect(root(element).querySelector<HTMLDetailsElement>('[part=doubt]')?.open, text).to.equal(true);
    }
  });

  it('holds for a series: the tilt of each bearing is one tilt', async () => {
    const at = (tilt: string): Promise<LubberAzimuth> => fixture(html`<lubber-azimuth latitude="10N" longitude="20W" instant="2026-03-20T09:30:00Z" doubt-tilt=${tilt} series="09:30 100
09:31 100.2
09:32 100.1"></lubber-azimuth>`);
    const [one, two] = [doubtOf(await at('1')).effects['tilt'] ?? NaN, doubtOf(await at('2')).effects['tilt'] ?? NaN];
    expect(two).to.be.closeTo(2 * one, 1e-9).and.greaterThan(0);
  });

  it('cannot be changed where the page has locked it', async () => {
    const element = await fixture<LubberAmplitude>(html`<lubber-amplitude
      latitude="10N" longitude="20W" instant="2026-03-20T07:30:00Z" bearing="090" doubt-reading="0.2" locked="doubt-reading"
    ></lubber-amplitude>`);
    expect(root(element).querySelector<HTMLInputElement>('#doubtReading')?.readOnly).to.equal(true);
    expect(doubtOf(element).effects['reading']).to.equal(0.2);
  });
});
