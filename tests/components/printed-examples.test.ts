import { expect, fixture } from '@open-wc/testing';
import { html } from 'lit';
import type { TemplateResult } from 'lit';
import '../../components/amplitude/define.js';
import '../../components/azimuth/define.js';
import '../../components/conversion/define.js';
import '../../components/field-map/define.js';
import '../../components/iron/define.js';
import '../../components/transit/define.js';
import '../../components/variation/define.js';

/**
 * Examples and table values that officers know by heart, held against the widgets as a user reads
 * them. All from memory: the book is named, no copy was at hand.
 */
interface Example {
  readonly source: string;
  readonly widget: TemplateResult;
  /** Where it is read; the headline unless given. */
  readonly at?: string;
  readonly says: RegExp;
}

const inSeptember2019 = html`<lubber-variation latitude="51-28.7N" longitude="0" date="2019-09-01"></lubber-variation>`;
const inNovember2022 = html`<lubber-variation latitude="50-36N" longitude="002W" date="2022-11-02"></lubber-variation>`;
const midnight = (latitude: string): TemplateResult =>
  html`<lubber-amplitude latitude=${latitude} longitude="0" instant="2026-06-21T00:00:00Z" moment="upper-limb" height-of-eye="0"></lubber-amplitude>`;
const byB = (heading: string): TemplateResult => html`<lubber-conversion heading=${heading} variation="0" coefficient-b="10"></lubber-conversion>`;
const dipOf = (height: string): TemplateResult =>
  html`<lubber-amplitude latitude="30N" longitude="0" instant="2026-03-20T06:00:00Z" moment="upper-limb" height-of-eye=${height} bearing="90" variation="0" working="open"></lubber-amplitude>`;

const examples: readonly Example[] = [
  {
    source: 'Pub. 9 (2002), amplitude: latitude 51-24.6N, declination 19-40.4N, setting: W 32.6 N by the table, a tenth less than by the formula',
    widget: html`<lubber-azimuth method="altitude" altitude-of="true" altitude="0" side="west" declination="19-40.4N" latitude="51-24.6N" longitude="0"></lubber-azimuth>`,
    says: /302\.7° true/,
  },
  {
    source: 'tables of amplitudes: at the equator the amplitude is the declination, 23.4 N at the June solstice',
    widget: html`<lubber-amplitude latitude="0" longitude="0" instant="2026-06-21T05:58:00Z"></lubber-amplitude>`,
    says: /066\.6°.*E 23\.4° N/,
  },
  { source: 'almanacs: at the June solstice the Sun’s upper limb stays above the horizon of the sea at midnight from about 65-44N: not in 65-40N', widget: midnight('65-40N'), says: /35\d\.\d° true|The Sun setting, 35\d/ },
  { source: 'the same in 65-48N', widget: midnight('65-48N'), says: /The Sun does not set here/ },
  { source: 'British Geological Survey: in September 2019 the compass pointed true north at Greenwich, first for some 360 years', widget: inSeptember2019, says: /Variation 0\.0°/ },
  { source: 'the same and Ordnance Survey: in November 2022 the line without variation came ashore in Dorset on the meridian of 2° W', widget: inNovember2022, says: /Variation 0\.[01]°/ },
  {
    source: 'Norie’s Tables A, B, C: hour angle 30, latitude 30N, declination 20N: A 1.00 S, B 0.728 N, C 0.272 S, azimuth S 76.7 W',
    widget: html`<lubber-azimuth method="almanac" gha="030" declination="20N" latitude="30N" longitude="0" compass="gyro" bearing="256.7" working="open"></lubber-azimuth>`,
    at: '[part=working]',
    says: /A, named S.*=1\.0000 B, named N.*=0\.7279 C, named S.*=0\.2721 Azimuth from south towards west.*=76\.74° True bearing.*=256\.7°/,
  },
  { source: 'Nautical Almanac, table of dip: 10 m 5.6′', widget: dipOf('10'), at: '[part=working]', says: /5\.6′/ },
  { source: 'the same: 30 m 9.6′', widget: dipOf('30'), at: '[part=working]', says: /9\.6′/ },
  {
    source: 'Nautical Almanac, altitude corrections of the Sun, October to March, lower limb, 30°: +14.6′',
    widget: html`<lubber-azimuth method="altitude" altitude-of="lower" altitude="30" height-of-eye="0" side="east" latitude="10N" longitude="0" instant="2026-03-01T09:00:00Z"></lubber-azimuth>`,
    says: /altitude 30\.2°/,
  },
  {
    source: 'makers’ tables of the steaming error: 15 knots north in latitude 40: 1.2° west',
    widget: html`<lubber-conversion heading="000" heading-by="true" variation="0" speed="15" latitude="40N"></lubber-conversion>`,
    at: '.fields',
    says: /Speed error on this course: 1\.2° W/,
  },
  { source: 'textbooks, coefficient B of +10: all of it on east by compass', widget: byB('090'), says: /deviation 10\.0° E/i },
  { source: 'the same: 0.7 of it on north-east', widget: byB('045'), says: /deviation 7\.1° E/i },
  { source: 'the same: with the other name on west', widget: byB('270'), says: /deviation 10\.0° W/i },
  {
    source: 'textbooks: dip at Greenwich 66½°',
    widget: html`<lubber-variation latitude="51-28.7N" longitude="0" date="2026-01-01"></lubber-variation>`,
    at: '[part=elements]',
    says: /Dip, down \+ 66\.[45]/,
  },
  {
    source: 'seamanship manuals: a transit of 270 by the chart seen at 272 by gyro: gyro 2 high, error west',
    widget: html`<lubber-transit compass="gyro" charted="270" bearing="272"></lubber-transit>`,
    says: /Gyro error 2\.0° W.*gyro high/,
  },
];

const read = (element: Element, at: string): string => (element.shadowRoot?.querySelector(at)?.textContent ?? '').replace(/\s+/g, ' ').trim();

describe('printed examples from memory', () => {
  for (const { source, widget, at = '.headline', says } of examples) {
    it(source, async () => {
      const element = await fixture<HTMLElement & { updateComplete: Promise<boolean> }>(widget);
      await element.updateComplete;
      expect(read(element, at)).to.match(says);
    });
  }

  // Reports on the model of 2015, version 2: the north dip pole crossed the 180th meridian in October 2017.
  it('the north dip pole stands west of the 180th meridian before October 2017 and east of it after', async () => {
    for (const [date, letter] of [['2017-09-15', 'W'], ['2017-11-15', 'E']] as const) {
      const element = await fixture(html`<lubber-field-map date=${date}></lubber-field-map>`);
      expect(read(element, '.frame')).to.match(new RegExp(`Dip poles at 86° 33′ N, 179° \\d\\d′ ${letter}`));
    }
  });
});
