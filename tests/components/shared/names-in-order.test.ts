import { expect, fixture, html } from '@open-wc/testing';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import '../../../components/define.js';
import type { FieldElement } from '../../../components/shared/field-element.js';
import { flat, headline, must, root } from '../../support/in-widget.js';
import { subjects } from '../../support/scenes.js';

const wrongPlace = 'latitude="95N" longitude="17x" date="2026-13-41" time="25:10"';
const wrongHead = 'bearing="400" heading="x" variation="3" card-deviation="200E"';

const given = (tag: string, more = ''): string => `<${tag} ${must(subjects[tag]).refused} ${more}></${tag}>`;

/** All that each can refuse at once. */
const refused: Readonly<Record<string, string>> = {
  amplitude: `<lubber-amplitude ${wrongPlace} ${wrongHead} height-of-eye="-4"></lubber-amplitude>`,
  'azimuth of a body': `<lubber-azimuth ${wrongPlace} ${wrongHead}></lubber-azimuth>`,
  'azimuth by the almanac': `<lubber-azimuth method="almanac" gha="400" sha="x" aries="y" declination="91N" ${wrongPlace} ${wrongHead}></lubber-azimuth>`,
  'azimuth by altitude': `<lubber-azimuth method="altitude" altitude="91" height-of-eye="-4" declination="91N" ${wrongPlace} ${wrongHead}></lubber-azimuth>`,
  'transit by the chart': `<lubber-transit charted="400" ${wrongPlace} ${wrongHead}></lubber-transit>`,
  'transit of two marks': `<lubber-transit marks='[{"kind":"two-marks","frontLatitude":"95N","frontLongitude":"x","rearLatitude":"y","rearLongitude":"z","bearing":"400"}]' ${wrongPlace} heading="x" variation="3"></lubber-transit>`,
  variation: given('lubber-variation', 'time="25:10"'),
  conversion: given('lubber-conversion'),
  'deviation curve': given('lubber-deviation-curve'),
};

describe('what is to be put right', () => {
  // An azimuth named what places its body last, a transit her head after the time, though the fields stand the other way round.
  for (const [name, markup] of Object.entries(refused)) {
    it(`is named in the order the fields stand in: ${name}`, async () => {
      const element = await fixture<FieldElement>(html`${unsafeHTML(markup)}`);
      await element.updateComplete;
      const labels = [...root(element).querySelectorAll('[aria-invalid=true]')].map(({ id }) => flat(root(element).querySelector(`label[for=${id}]`)));
      const said = /To be put right: (.*?)\./.exec(headline(element))?.[1] ?? '';
      expect(said).to.equal(`${labels.slice(0, -1).join(', ')} and ${String(labels.at(-1))}`);
    });
  }
});
