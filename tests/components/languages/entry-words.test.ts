import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/languages/de/define.js';
import '../../../components/languages/es/define.js';
import '../../../components/languages/fr/define.js';
import '../../../components/languages/id/define.js';
import '../../../components/languages/zh/define.js';
import '../../../components/variation/define.js';
import type { LubberVariation } from '../../../components/variation/variation.js';

/** Entries of a rose and a place in the words of a language; each says 10° 40′ east of 2023 changing 7′ a year towards west. */
const entries: Readonly<Record<string, { latitude: string; longitude: string; date: string; rose: string }>> = {
  es: { latitude: '48-17,0 sur', longitude: '071-42,5 Oeste', date: '26 de noviembre de 2026', rose: '10°40′ este 2023 (disminuye 7′ anual)' },
  fr: { latitude: '48-17,0 sud', longitude: '071-42,5 ouest', date: '26 novembre 2026', rose: '10°40′ Est 2023 (diminution annuelle 7′)' },
  de: { latitude: '48-17,0 Süd', longitude: '071-42,5 West', date: '26. Dezember 2026', rose: '10°40′ Ost 2023 (jährliche Abnahme 7′)' },
  id: { latitude: '48-17,0 LS', longitude: '071-42,5 BB', date: '26 Agustus 2026', rose: '10°40′ timur 2023 (berkurang 7′ per tahun)' },
  zh: { latitude: '48°17.0′南', longitude: '西经71°42.5′', date: '2026年11月26日', rose: '10°40′东 2023 (每年减少7′)' },
};
const months: Readonly<Record<string, string>> = { de: '2026-12-26', id: '2026-08-26' };

async function variation(entry: (typeof entries)[string]): Promise<LubberVariation> {
  const element = await fixture<LubberVariation>(
    html`<lubber-variation latitude=${entry.latitude} longitude=${entry.longitude} date=${entry.date} rose=${entry.rose}></lubber-variation>`,
  );
  await element.updateComplete;
  return element;
}

describe('fields read the words of the page’s language', () => {
  afterEach(() => document.documentElement.setAttribute('lang', 'en'));

  for (const [language, entry] of Object.entries(entries)) {
    it(`${language}: as the same in English, which is read too`, async () => {
      const plain = { latitude: '48-17.0S', longitude: '071-42.5W', date: months[language] ?? '2026-11-26', rose: '10°40′E 2023 (7′W)' };
      document.documentElement.setAttribute('lang', language);
      const [worded, english] = [await variation(entry), await variation({ ...plain, rose: '10°40′ East 2023 (decreasing 7′ annually)' })];
      expect(english.result).not.to.equal(null);
      expect(JSON.stringify(worded.result)).to.equal(JSON.stringify(english.result));
      expect(worded.latitude).to.equal(entry.latitude, 'what was typed stays');
    });
  }

  it('refuse the words of another language, and the letter O in every one', async () => {
    for (const [language, longitude] of [['fr', '071-42.5 timur'], ['de', '071-42,5 O'], ['es', '071-42,5 O']] as const) {
      document.documentElement.setAttribute('lang', language);
      const element = await variation({ latitude: '48-17.0S', longitude, date: '2026-11-26', rose: '' });
      expect(element.renderRoot.querySelector('#longitude')?.getAttribute('aria-invalid'), `${language} ${longitude}`).to.equal('true');
    }
  });
});
