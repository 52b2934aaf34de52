import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import '../../../components/languages/de/define.js';
import '../../../components/languages/es/define.js';
import '../../../components/languages/fr/define.js';
import '../../../components/languages/id/define.js';
import { addTranslation } from '../../../components/shared/catalogue.js';

const text = (element: Element): string => (element.shadowRoot?.textContent ?? '').replace(/\s+/g, ' ');

async function answered(language: string): Promise<LubberAmplitude> {
  document.documentElement.lang = language;
  const element = await fixture<LubberAmplitude>(
    html`<lubber-amplitude latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" bearing="113.5" variation="10.2E"></lubber-amplitude>`,
  );
  await element.updateComplete;
  return element;
}

describe('a widget in the language of its page', () => {
  afterEach(() => (document.documentElement.lang = 'en'));

  // Terms of the trade: Rv = Ra + Ct in Spanish, Cv = Cc + W in French, Hs = Hp + sembir in Indonesian, rwK = MgK + Fw in German (common practice, no source).
  for (const [language, error, deviation, sun] of [
    ['de', 'Fehlweisung', 'gefundene Ablenkung', 'Sonne'],
    ['es', 'Corrección total', 'desvío hallado', 'Sol'],
    ['es-CL', 'Corrección total', 'desvío hallado', 'Sol'],
    ['fr', 'Variation (W)', 'déviation trouvée', 'Soleil'],
    ['id', 'Sembir', 'deviasi yang diperoleh', 'Matahari'],
  ] as const) {
    it(`${language}: names error, deviation and body`, async () => {
      const element = await answered(language);
      expect(element.shadowRoot?.querySelector('.answer .name')?.textContent).to.equal(error);
      expect(text(element)).to.contain(deviation);
      expect(element.shadowRoot?.querySelector('#body option')?.textContent?.trim()).to.equal(sun);
      expect(text(element)).not.to.match(/Still needed|deviation found|true bearing/);
    });
  }

  // WCAG 2.2, 3.1.2: text in another language than the page's says so.
  for (const [page, shown] of [['es-CL', 'es-CL'], ['tl', 'en'], ['en-GB', 'en-GB']] as const) {
    it(`on a page in ${page} says that its words are ${shown}`, async () => {
      const element = await answered(page);
      expect(element.shadowRoot?.querySelector('.frame')?.getAttribute('lang')).to.equal(shown);
    });
  }

  it('says so anew when the language comes late', async () => {
    const element = await answered('nl');
    addTranslation('nl', { 'sight.latitude': 'Breedte' });
    await element.updateComplete;
    expect(element.shadowRoot?.querySelector('.frame')?.getAttribute('lang')).to.equal('nl');
    expect(text(element)).to.contain('Breedte');
  });

  it('keeps the value of a body that it names otherwise', async () => {
    const element = await answered('es');
    const select = element.shadowRoot?.querySelector<HTMLSelectElement>('#body');
    if (!select) throw new Error('no list of bodies');
    select.value = 'Moon';
    select.dispatchEvent(new Event('change'));
    await element.updateComplete;
    expect(element.body).to.equal('Moon');
    expect(text(element)).to.contain('Demora de aguja (la Luna)');
  });
});

describe('the word behind the name of a field the page has set', () => {
  afterEach(() => document.documentElement.setAttribute('lang', 'en'));

  // "Latitud (dado)" and "Latitude (donné)" disagreed in gender with most fields' names: a noun fits all. From grammar, no source.
  for (const [language, label] of [['es', 'Latitud (dato)'], ['fr', 'Latitude (donnée)']] as const) {
    it(`${language}: fits a name of either gender`, async () => {
      document.documentElement.lang = language;
      const element = await fixture<LubberAmplitude>(html`<lubber-amplitude latitude="48-17.0S" locked="latitude"></lubber-amplitude>`);
      await element.updateComplete;
      expect(element.renderRoot.querySelector('label[for="latitude"]')?.textContent?.replace(/\s+/g, ' ').trim()).to.equal(label);
    });
  }
});
