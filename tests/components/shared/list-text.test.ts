import { expect, fixture, html } from '@open-wc/testing';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import { addTranslation } from '../../../components/shared/catalogue.js';
import { listText } from '../../../components/shared/list-text.js';
import '../../../components/amplitude/define.js';

const english = (key: string): string => ({ 'list.comma': ', ', 'list.last': ' and ' })[key] ?? key;

describe('things told one after the other', () => {
  it('are strung as English strings them', () => {
    expect(listText(english, [])).to.equal('');
    expect(listText(english, ['Bearing'])).to.equal('Bearing');
    expect(listText(english, ['Latitude', 'Longitude'])).to.equal('Latitude and Longitude');
    expect(listText(english, ['Latitude', 'Longitude', 'UTC date'])).to.equal('Latitude, Longitude and UTC date');
  });

  it('are strung by the marks of the page’s language, without the spaces of English', async () => {
    // `qaa` to `qtz` are for private use (ISO 639-2): no other test speaks it.
    addTranslation('qzh', { 'list.comma': '、', 'list.last': '和', 'sight.date': '日期', 'sight.time': '时间', 'answer.missing': '还需要：{fields}。', 'sight.bearing': '方位' });
    const page = await fixture<HTMLElement>(html`<div lang="qzh"><lubber-amplitude latitude="10N" longitude="20E"></lubber-amplitude></div>`);
    const widget = page.querySelector<LubberAmplitude>('lubber-amplitude');
    await widget?.updateComplete;
    expect(widget?.shadowRoot?.textContent).to.contain('还需要：日期、时间和方位。');
  });
});
