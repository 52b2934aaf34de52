import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import '../../../components/languages/es/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';

/** Figures by the page's language: the decimal comma of Spanish (Unicode CLDR), for people and nobody else. */
describe('the figures of a page in Spanish', () => {
  const figures = async (): Promise<LubberAmplitude> => {
    const element = await fixture<LubberAmplitude>(
      html`<lubber-amplitude latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" height-of-eye="18" bearing="113,5" heading="040" card-deviation="1,4W" working="open"></lubber-amplitude>`,
    );
    await element.updateComplete;
    return element;
  };
  const textOf = (element: LubberAmplitude): string => element.renderRoot.textContent ?? '';
  afterEach(() => document.documentElement.setAttribute('lang', 'en'));

  it('have a comma, spoken ones too, and a point again when the language changes', async () => {
    document.documentElement.setAttribute('lang', 'es');
    const element = await figures();
    expect(textOf(element)).to.match(/\d,\d° [EW]/).and.not.match(/\d\.\d/);
    expect(element.renderRoot.querySelector('.answer .spoken')?.textContent).to.match(/\d,\d grados (este|oeste)/);
    document.documentElement.setAttribute('lang', 'en');
    await new Promise((resolve) => setTimeout(resolve));
    await element.updateComplete;
    expect(textOf(element)).to.match(/\d\.\d° [EW]/).and.not.match(/\d,\d/);
  });

  it('are the same to machines as in English', async () => {
    document.documentElement.setAttribute('lang', 'es');
    const spanish = await figures();
    spanish.change('latitude', 48.25);
    await spanish.updateComplete;
    expect(spanish.renderRoot.querySelector<HTMLInputElement>('#latitude')?.value).to.equal('48-15.0N');
    spanish.change('latitude', '48-17,0S');
    await spanish.updateComplete;
    document.documentElement.setAttribute('lang', 'en');
    const english = await figures();
    expect(JSON.stringify(spanish.result)).to.equal(JSON.stringify(english.result));
    expect(JSON.stringify(spanish.result)).to.match(/"error":-?\d+\.\d/);
  });
});
