import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import '../../../components/languages/es/define.js';
import '../../../components/languages/fr/define.js';

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

  // Terms of the trade: Rv = Ra + Ct in Spanish, Cv = Cc + W in French (common practice, no source).
  for (const [language, error, deviation, sun] of [
    ['es', 'Corrección total', 'desvío hallado', 'Sol'],
    ['es-CL', 'Corrección total', 'desvío hallado', 'Sol'],
    ['fr', 'Variation (W)', 'déviation trouvée', 'Soleil'],
  ] as const) {
    it(`${language}: names error, deviation and body`, async () => {
      const element = await answered(language);
      expect(element.shadowRoot?.querySelector('.answer .name')?.textContent).to.equal(error);
      expect(text(element)).to.contain(deviation);
      expect(element.shadowRoot?.querySelector('#body option')?.textContent?.trim()).to.equal(sun);
      expect(text(element)).not.to.match(/Still needed|deviation found|true bearing/);
    });
  }

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
