import { expect, fixture, html } from '@open-wc/testing';
import type { TemplateResult } from 'lit';
import '../../../components/amplitude/define.js';
import '../../../components/azimuth/define.js';
import '../../../components/conversion/define.js';
import '../../../components/transit/define.js';
import type { LubberElement } from '../../../components/shared/lubber-element.js';
import { flat, must, root } from '../../support/in-widget.js';

const day = { latitude: '40N', longitude: '0', instant: '2026-05-20T15:00:00Z' };
const rear = { rearLatitude: '50-02N', rearLongitude: '005-00W' };

const listed = (element: LubberElement, part: string): string[] => [...root(element).querySelectorAll(`.${part} .cautions li`)].map((each) => flat(each));

// "Not to be used, see below", and the reason stood under the picture, on a telephone below all fields: the officer had to hunt for it.
describe('why an answer is not to be used', () => {
  const cases: readonly [string, TemplateResult, RegExp, RegExp?][] = [
    ['a body below the horizon', html`<lubber-azimuth latitude="40N" longitude="0" instant="2026-05-20T00:00:00Z" bearing="000" heading="010"></lubber-azimuth>`, /below the horizon/],
    // The Sun stands near 257° then, and the variation is a degree or two.
    ['a deviation hardly ever so large', html`<lubber-azimuth latitude=${day.latitude} longitude=${day.longitude} instant=${day.instant} bearing="200" heading="010"></lubber-azimuth>`, /A slip is far likelier/, /tilt|clock|altitude/],
    ['a series of such', html`<lubber-azimuth latitude=${day.latitude} longitude=${day.longitude} instant=${day.instant} series=${'15:00 200\n15:01 200\n15:02 200'} heading="010"></lubber-azimuth>`, /A slip is far likelier/],
    ['an amplitude as far off', html`<lubber-amplitude latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" height-of-eye="18" bearing="050" heading="010"></lubber-amplitude>`, /A slip is far likelier/],
    ['a line taken the wrong way', html`<lubber-transit charted="260" bearing="084" variation="9W"></lubber-transit>`, /taken the wrong way/],
    ['a deviation that no line of a chart gives', html`<lubber-transit charted="080" bearing="020" variation="9W" heading="010"></lubber-transit>`, /A slip is far likelier/],
    [
      'the second of two lines, the first not complete',
      html`<lubber-transit
        latitude="50-00N"
        longitude="005-00W"
        variation="1W"
        .marks=${[{ kind: 'charted', charted: '080' }, { kind: 'two-marks', frontLatitude: '50-03N', frontLongitude: '005-00W', ...rear, bearing: '002' }]}
      ></lubber-transit>`,
      /^Line 2: From this position the rear mark is the nearer one/,
    ],
    ['a deviation that is none', html`<lubber-conversion heading="040" variation="3W" deviation="25E"></lubber-conversion>`, /far beyond that of a corrected compass/],
  ];
  for (const [what, template, reason, other] of cases) {
    it(`stands right below it, once: ${what}`, async () => {
      const element = await fixture<LubberElement>(template);
      const beside = listed(element, 'headline');
      expect(beside.filter((each) => reason.test(each)), beside.join('|')).to.have.length(1);
      const below = listed(element, 'explanation');
      expect(below.filter((each) => beside.includes(each))).to.deep.equal([]);
      expect(below.filter((each) => reason.test(each))).to.deep.equal([]);
      if (other) expect(below.join(' ')).to.match(other);
      const answer = root(element).querySelector('.headline .answer, .headline .waiting');
      const first = must(root(element).querySelector('.headline .cautions'));
      const apart = first.getBoundingClientRect().top - must(answer).getBoundingClientRect().bottom;
      expect(apart).to.be.within(0, 24);
    });
  }

  it('leaves below what is wrong with a card on other headings, and what only needs thought', async () => {
    // 35° sin 2h turns the fastest where 1 + 70 (π/180) cos 2h is nothing, on 072.5 by compass, which is 092.6 magnetic.
    const steep = await fixture<LubberElement>(
      html`<lubber-conversion heading="180" heading-by="magnetic" deviation-source="coefficients" coefficient-d="35"></lubber-conversion>`,
    );
    expect(listed(steep, 'headline')).to.deep.equal([]);
    expect(listed(steep, 'explanation').join(' ')).to.contain('to 092.6° magnetic more than one');
    // A card of D alone: 8° E on 040 by compass is 8 sin 80°, and 8 sin 200° on the bearing of 100.
    const element = await fixture<LubberElement>(
      html`<lubber-conversion kind="bearing" heading="040" bearing="100" variation="3W" deviation-source="coefficients" coefficient-d="8"></lubber-conversion>`,
    );
    expect(listed(element, 'headline')).to.deep.equal([]);
    expect(listed(element, 'explanation').join(' ')).to.contain('which does not count');
  });
});

// A transit asks for no time that its error hangs upon: "check what was observed, its bearing and the time".
describe('what there is to check of a strange error', () => {
  const said = async (template: TemplateResult): Promise<string> => {
    const element = await fixture<LubberElement>(template);
    return [...listed(element, 'headline'), ...listed(element, 'explanation')].join(' ');
  };

  it('is of a transit the marks, what the chart says of them and the bearing', async () => {
    const strange = [
      html`<lubber-transit charted="080" bearing="020" variation="9W"></lubber-transit>`,
      html`<lubber-transit charted="080" bearing="065" variation="9W"></lubber-transit>`,
      html`<lubber-transit charted="080" bearing="065" variation="9W" card-deviation="1E"></lubber-transit>`,
      html`<lubber-transit compass="gyro" charted="080" bearing="070"></lubber-transit>`,
      html`<lubber-transit charted="080" bearing="330" variation="9W"></lubber-transit>`,
    ];
    for (const each of strange) {
      const words = await said(each);
      expect(words).to.contain('check the marks, the positions or charted bearing, and the bearing read').and.not.contain('time');
    }
  });

  it('is of a body what was observed, its bearing and the time', async () => {
    expect(await said(html`<lubber-azimuth latitude=${day.latitude} longitude=${day.longitude} instant=${day.instant} bearing="240"></lubber-azimuth>`)).to.contain(
      'check what was observed, its bearing and the time',
    );
  });
});
