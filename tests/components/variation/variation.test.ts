import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/variation/define.js';
import type { LubberVariation } from '../../../components/variation/variation.js';
import { assertAccessible } from '../../support/axe.js';
import { flat, headline, input, must, problem, root, type } from '../../support/in-widget.js';

const text = (element: LubberVariation): string => flat(root(element).querySelector('.frame'));

/** A row of the table of elements: value, sigma, change. */
function row(element: LubberVariation, label: string): string[] {
  const found = [...root(element).querySelectorAll('table.elements tbody tr')].find((one) => flat(one).startsWith(label));
  return [...(found?.querySelectorAll('td') ?? [])].map(flat);
}

const make = (attributes: Partial<LubberVariation> = {}): Promise<LubberVariation> =>
  fixture(html`<lubber-variation
    .latitude=${attributes.latitude ?? '33-24S'}
    .longitude=${attributes.longitude ?? '018-25E'}
    .date=${attributes.date ?? '2026-11-26'}
    .rose=${attributes.rose ?? ''}
    .model=${attributes.model}
  ></lubber-variation>`);

describe('a variation without attributes', () => {
  it('says which fields are needed, and nothing else', async () => {
    const element = await fixture<LubberVariation>(html`<lubber-variation></lubber-variation>`);
    expect(headline(element)).to.equal('Still needed: Latitude, Longitude and UTC date.');
    expect(element.result).to.equal(null);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid|null/);
    await assertAccessible(element);
  });
});

// Textbook example: 3°45'W (1988) decreasing 6' annually is 3°27'W in 1991.
describe('the printed rose of 1988 in 1991', () => {
  it('typed as printed gives 3°27′W, years before there was a model', async () => {
    const element = await fixture<LubberVariation>(html`<lubber-variation></lubber-variation>`);
    await type(element, 'latitude', '50N');
    await type(element, 'longitude', '004W');
    await type(element, 'date', '1 Jan 1991');
    await type(element, 'rose', "3°45'W (1988) decreasing 6' annually");
    expect(headline(element)).to.contain('3° 27′ W');
    expect(headline(element)).to.contain('after 3.0 years');
    expect(headline(element)).to.contain('hold from 2015.0 to 2030.0');
    expect(text(element)).not.to.match(/NaN|undefined|Invalid/);
    await assertAccessible(element);
  });

  it('typed in parts gives the same', async () => {
    const element = await fixture<LubberVariation>(
      html`<lubber-variation latitude="50N" longitude="004W" date="1991-01-01" rose-form="parts"></lubber-variation>`,
    );
    await type(element, 'roseVariation', '3-45W');
    await type(element, 'roseYear', '1988');
    expect(element.result?.rose).to.equal(null);
    await type(element, 'roseChange', 'decreasing 6');
    expect(headline(element)).to.contain('3° 27′ W');
  });

  it('works it out line by line', async () => {
    const element = await make({ date: '1991-01-01', rose: '3°45′W 1988 (6′E)' });
    element.working = 'open';
    await element.updateComplete;
    const working = flat(root(element).querySelector('[part=working]')).replace(/ /g, '');
    expect(working).to.contain('=1991.0−1988.0=3.0');
    expect(working).to.contain('0.30°');
    expect(working).to.contain('−3.45°');
  });

  it('offers the nearest date a model knows', async () => {
    const element = await make({ date: '1991-01-01' });
    const button = [...root(element).querySelectorAll('button')].find((one) => flat(one) === 'Take 1 January 2015 instead');
    must(button).click();
    await element.updateComplete;
    expect(element.date).to.equal('2015-01-01');
    expect(element.result?.field?.model).to.equal('WMM2015v2');
  });
});

// Official lines of the models' reports at height 0: D and I to 0.01°, H, Z and F to 0.1 nT or better.
const lines: readonly [place: [string, string], at: string, model: string, D: string, I: string, H: string, Z: string, F: string][] = [
  [['13S', '059W'], '2027-07-02T12:00:00Z', 'WMM2025', '17.49° W', '−15.26°', '22.40 µT', '−6.11 µT', '23.22 µT'],
  [['80N', '000E'], '2020-01-01T00:00:00Z', 'WMM2020', '1.28° W', '83.14°', '6.57 µT', '54.61 µT', '55.00 µT'],
  [['0N', '120E'], '2022-07-02T12:00:00Z', 'WMM2020', '0.06° W', '−15.24°', '39.68 µT', '−10.81 µT', '41.13 µT'],
  [['80S', '120W'], '2020-01-01T00:00:00Z', 'WMM2020', '69.36° E', '−72.20°', '16.85 µT', '−52.48 µT', '55.12 µT'],
  [['80N', '000E'], '2017-07-02T12:00:00Z', 'WMM2015v2', '2.59° W', '83.08°', '6.61 µT', '54.51 µT', '54.91 µT'],
];
describe('official lines', () => {
  for (const [[latitude, longitude], at, model, ...printed] of lines) {
    it(`${model}, ${latitude} ${longitude} on ${at.slice(0, 10)}: D ${printed[0]}, dip ${printed[1]}`, async () => {
      const element = await fixture<LubberVariation>(html`<lubber-variation latitude=${latitude} longitude=${longitude} instant=${at}></lubber-variation>`);
      const shown = ['Variation', 'Dip', 'Horizontal', 'Vertical', 'Total'].map((label) => row(element, label)[0]);
      expect(shown).to.deep.equal(printed);
      expect(element.result?.field?.model).to.equal(model);
    });
  }

  it('WMM2015 itself, when it is named: 80N 0E at 2015.0 is 3.85° W', async () => {
    const element = await make({ latitude: '80N', longitude: '000E', date: '2015-01-01', model: 'WMM2015' });
    expect(row(element, 'Variation')[0]).to.equal('3.85° W');
  });
});

describe('model beside chart', () => {
  it('agree: says so', async () => {
    expect(text(await make({ rose: '24°50′W 2015 (8′W)' }))).to.match(/Model and chart agree: 0\.\d+° apart.*On the chart use the chart’s/);
  });
  it('differ: the chart prevails, and why', async () => {
    expect(text(await make({ rose: '20°00′W 2024 (8′W)' }))).to.match(/more than twice the doubt.*The chart prevails.*local anomaly/);
  });
  it('differ by the letter: suspects it', async () => {
    expect(text(await make({ rose: '26°20′E 2026 (8′E)' }))).to.match(/has east been taken for west/);
  });
  it('carries what was entered from one form into the other', async () => {
    const element = await make({ rose: '12°30.5′E 2010 (7.5′W)' });
    element.change('roseForm', 'parts');
    await element.updateComplete;
    expect(['roseVariation', 'roseYear', 'roseChange'].map((name) => input(element, name).value)).to.deep.equal(['12°30.5′E', '2010', '7.5W']);
    element.change('roseForm', 'printed');
    await element.updateComplete;
    expect(input(element, 'rose').value).to.equal('12°30.5′E 2010 (7.5′W)');
  });
});

describe('wrong entries', () => {
  const wrong: readonly [name: string, typed: string, said: RegExp][] = [
    ['latitude', '91N', /outside the range/],
    ['rose', "4°15'W (8'E)", /The year of the rose is missing/],
    ['rose', "4°15'W 2015", /The annual change is missing; where the chart gives none, write \(0′\)/],
    ['rose', "4°15' 2015 (8'E)", /which way: E or W/],
    ['rose', 'about four', /year of the rose is missing/],
    ['date', '2026-02-31', /no such day/],
  ];
  for (const [name, typed, said] of wrong) {
    it(`${name} ${typed}: said beside the field, and kept`, async () => {
      const element = await make();
      await type(element, name, typed);
      expect(problem(element, name)).to.match(said);
      expect(input(element, name).value).to.equal(typed);
      expect(text(element)).not.to.match(/NaN|undefined|Invalid/);
      await assertAccessible(element);
    });
  }

  it('an unfinished rose leaves the model alone in the answer', async () => {
    const element = await make();
    await type(element, 'rose', "4°15'W 2015");
    expect(headline(element)).to.contain('the model is shown alone');
    expect(element.result?.rose).to.equal(null);
  });
});

describe('hard places', () => {
  // WMM2025's dip poles at 2025.0, published: 85.762N 139.298E (from memory).
  it('near a dip pole: blackout zone, not to be used', async () => {
    expect(text(await make({ latitude: 85.762, longitude: 139.298, date: '2025-01-01' }))).to.match(/blackout zone, a magnetic compass is not to be used/);
  });
  // It stood below all fields on a telephone, where "Variation 7.7° W" was seen without it.
  it('says right below the answer that a compass is not to be used there', async () => {
    const element = await make({ latitude: '63-51S', longitude: '135-04.6E', date: '2025-01-01' });
    const beside = must(root(element).querySelector('.headline .cautions'));
    expect(flat(beside)).to.match(/blackout zone/);
    expect(beside.getBoundingClientRect().top - must(root(element).querySelector('.answer')).getBoundingClientRect().bottom).to.be.within(0, 24);
    expect(flat(root(element).querySelector('.explanation .cautions'))).to.equal('');
  });
  // WMM2025's south dip pole at 2025.0, published: 63.851S 135.078E (from memory). It was told to change by 2369° in a year.
  it('tells no change in a year where the pole goes by, and one where it is some way off', async () => {
    const element = await make({ latitude: '63-51S', longitude: '135-04.6E', date: '2025-01-01' });
    expect(headline(element)).to.contain('change in a year –');
    expect(row(element, 'Variation')[2]).to.equal('–');
    expect(headline(await make({ latitude: '85S', longitude: '135E' }))).to.match(/change in a year [\d.]+′ [EW]/);
  });
  it('in the caution zone', async () => expect(text(await make({ latitude: '73N', longitude: '095W' }))).to.match(/caution zone/));
  it('at the pole the meridian is named', async () => {
    expect(text(await make({ latitude: '90S', longitude: '180' }))).to.match(/counted from the meridian of 180° 00.0′ E/);
  });
  it('south of the magnetic equator the forces point up', async () => {
    expect(root(await make()).querySelector('.forces')?.getAttribute('aria-label')).to.match(/Z 22\.\d+ µT upward.*dip −64/);
    expect(root(await make({ latitude: '50N' })).querySelector('.forces')?.getAttribute('aria-label')).to.match(/downward/);
  });
  it('2030.0 still belongs to the models, the day after does not', async () => {
    expect((await make({ date: '2030-01-01' })).result?.field?.model).to.equal('WMM2025');
    expect((await make({ date: '2030-01-02' })).result?.outside).to.deep.equal({ from: 2015, until: 2030, nearest: 2030 });
  });
});

describe('what the host can do', () => {
  it('hears lubber-result for what the user did, and only for that', async () => {
    const element = await make();
    const heard: { widget: string; inputs: Record<string, unknown> }[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event.detail));
    element.latitude = '34S';
    await element.updateComplete;
    expect(heard.length).to.equal(0);
    await type(element, 'latitude', '35S');
    const detail = heard[heard.length - 1];
    expect(detail?.widget).to.equal('lubber-variation');
    expect(detail?.inputs['latitude']).to.equal(-35);
    expect(JSON.parse(JSON.stringify(detail))).to.deep.equal(detail);
  });

  it('locks fields, keeps the answer back, leaves out the working', async () => {
    const element = await make();
    Object.assign(element, { locked: 'latitude rose', answer: 'hidden', working: 'none' });
    await element.updateComplete;
    expect(input(element, 'latitude').readOnly && input(element, 'rose').readOnly).to.equal(true);
    expect(text(element)).not.to.contain('26.3° W');
    element.answer = 'shown';
    await element.updateComplete;
    expect(text(element)).to.contain('26.3° W');
    expect(root(element).querySelector('[part=working]')).to.equal(null);
  });
});

describe('every state of it passes axe', () => {
  for (const theme of ['day', 'dusk', 'night'] as const) {
    it(`answered, ${theme}`, async () => {
      const element = await make({ rose: '24°50′W 2015 (8′W)' });
      Object.assign(element, { theme, working: 'open' });
      await element.updateComplete;
      await assertAccessible(element);
    });
  }
});
