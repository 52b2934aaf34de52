import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/azimuth/define.js';
import type { LubberAzimuth } from '../../../components/azimuth/azimuth.js';
import { assertAccessible } from '../../support/axe.js';

const root = (element: LubberAzimuth): ShadowRoot => element.shadowRoot as ShadowRoot;
const text = (element: LubberAzimuth, selector: string): string => (root(element).querySelector(selector)?.textContent ?? '').replace(/\s+/g, ' ').trim();
const headline = (element: LubberAzimuth): string => text(element, '.headline');

async function type(element: LubberAzimuth, name: string, typed: string): Promise<void> {
  const field = root(element).querySelector<HTMLInputElement>(`#${name}`);
  if (!field) throw new Error(`no field ${name}`);
  field.focus();
  field.select();
  await sendKeys({ type: typed });
  await sendKeys({ press: 'Tab' });
  await element.updateComplete;
}

const evening = (): Promise<LubberAzimuth> =>
  fixture(html`<lubber-azimuth
    latitude="36N"
    longitude="020W"
    instant="2026-03-01T19:50:00Z"
    body="Saturn"
    bearing="265"
    heading="040"
  ></lubber-azimuth>`);

describe('an azimuth typed by keyboard', () => {
  // US Navy manual, chapter 9: latitude 33-37.0N, declination 19-31.6S, LHA 51-53.4 give Zn 231.0; on the meridian of
  // Greenwich GHA is LHA.
  it('gives the printed azimuth of 231.0 from almanac figures', async () => {
    const element = await fixture<LubberAzimuth>(html`<lubber-azimuth method="almanac"></lubber-azimuth>`);
    await type(element, 'gha', '051-53.4');
    await type(element, 'declination', '19-31.6S');
    await type(element, 'latitude', '33-37.0N');
    await type(element, 'longitude', '0');
    expect(headline(element)).to.contain('231.0° true');
    await type(element, 'bearing', '233.0');
    await type(element, 'variation', '4W');
    expect(headline(element)).to.contain('Error 2.0° W');
    expect(headline(element)).to.contain('deviation found 2.0° E');
    expect(text(element, '.explanation')).to.contain('By the tables of A, B and C');
  });

  it('takes SHA and Aries for GHA', async () => {
    const element = await fixture<LubberAzimuth>(html`<lubber-azimuth method="almanac"></lubber-azimuth>`);
    await type(element, 'sha', '300');
    await type(element, 'aries', '111-53.4');
    await type(element, 'declination', '19-31.6S');
    await type(element, 'latitude', '33-37.0N');
    await type(element, 'longitude', '0');
    expect(headline(element)).to.contain('231.0° true');
  });

  // Pub. 9 (1995) art. 1701: 33-24N, 20-13.8N; the altitude of 49.50° is worked by hand from its LHA of 316-41.2.
  it('gives 97.7 by altitude', async () => {
    const element = await fixture<LubberAzimuth>(html`<lubber-azimuth method="altitude"></lubber-azimuth>`);
    await type(element, 'altitude', '49.50');
    await type(element, 'declination', '20-13.8N');
    await type(element, 'latitude', '33-24N');
    await type(element, 'longitude', '0');
    expect(headline(element)).to.contain('097.7° true');
  });
});

describe('which body now', () => {
  it('offers the bodies in sight and takes one by the keyboard', async () => {
    const element = await evening();
    const details = root(element).querySelector<HTMLDetailsElement>('details[part=bodies]');
    if (details) details.open = true;
    const moon = root(element).querySelector<HTMLButtonElement>('button[aria-label="Take Moon"]');
    moon?.focus();
    await sendKeys({ press: 'Enter' });
    await element.updateComplete;
    expect(element.body).to.equal('Moon');
    expect(text(element, '[role=status]')).to.equal('Moon taken.');
  });

  it('names the best first with its reason', async () => {
    const element = await evening();
    expect(text(element, 'details[part=bodies] tbody tr')).to.match(/^Moon .* low and slow enough$/);
  });
});

describe('a series', () => {
  const pasted = '19:50:10\t265.1\t040\n19:51:05 265,3 041\n\n195200;265.4;040\n19:53:20 269.9 040\n19:54:10 265.6';

  it('is read as pasted; the mean takes the place of the single bearing; a bad one stays with its reason', async () => {
    const element = await evening();
    element.series = pasted;
    await element.updateComplete;
    expect(root(element).querySelectorAll('table.series tbody tr').length).to.equal(5);
    expect(text(element, 'table.series tr.struck')).to.contain('far from the others');
    expect(text(element, '.explanation')).to.contain('Mean of 4 of 5 bearings');
    expect(element.result && 'kept' in element.result ? element.result.kept : 0).to.equal(4);
    await assertAccessible(element);
  });

  it('says which line is wrong, and keeps it', async () => {
    const element = await evening();
    element.series = '19:50:10 265.1\n19:51 abc\n25:00 265\n19:52';
    await element.updateComplete;
    expect(text(element, '#series-problem')).to.equal(
      'Line 2, bearing: This was not understood. Line 3, time: Hours go from 0 to 23. Line 4: a time and a bearing are needed, and a head at most.',
    );
    expect(root(element).querySelector<HTMLTextAreaElement>('#series')?.value).to.contain('19:51 abc');
  });

  it('goes on past midnight', async () => {
    const element = await evening();
    element.date = '2026-03-01';
    element.body = 'Sirius';
    element.series = '23:59:00 250\n00:01:00 250.4\n00:02:00 250.7';
    await element.updateComplete;
    const series = element.result;
    expect(series && 'shots' in series ? series.shots.map(({ instant }) => instant.getUTCDate()) : []).to.deep.equal([1, 2, 2]);
  });
});

describe('every state', () => {
  it('empty: says what is needed', async () => {
    const element = await fixture<LubberAzimuth>(html`<lubber-azimuth></lubber-azimuth>`);
    expect(headline(element)).to.contain('Still needed: Latitude, Longitude, UTC date, UTC time and Bearing by compass.');
    await assertAccessible(element);
  });

  for (const theme of ['day', 'dusk', 'night'] as const) {
    it(`answered, everything open, ${theme}: axe finds nothing`, async () => {
      const element = await evening();
      element.theme = theme;
      element.working = 'open';
      await element.updateComplete;
      for (const details of root(element).querySelectorAll('details')) details.open = true;
      await assertAccessible(element);
      expect(root(element).querySelector('.frame')?.textContent).not.to.match(/NaN|undefined|Invalid/);
    });
  }

  it('at the pole and in the zenith: words', async () => {
    const element = await evening();
    element.latitude = '90N';
    await element.updateComplete;
    expect(headline(element)).to.contain('At the pole');
  });

  it('a wrong entry is said beside its field', async () => {
    const element = await fixture<LubberAzimuth>(html`<lubber-azimuth method="almanac" gha="400" declination="91N"></lubber-azimuth>`);
    expect(text(element, '#gha-problem')).to.match(/outside the range.*000 to 360/);
    expect(text(element, '#declination-problem')).to.match(/outside the range/);
    expect(headline(element)).to.contain('To be put right: Greenwich hour angle and Declination.');
  });

  it('fires lubber-result for the user alone', async () => {
    const element = await evening();
    let heard = 0;
    element.addEventListener('lubber-result', () => (heard += 1));
    element.bearing = '266';
    await element.updateComplete;
    expect(heard).to.equal(0);
    await type(element, 'bearing', '266.5');
    expect(heard).to.be.greaterThan(0);
  });
});
