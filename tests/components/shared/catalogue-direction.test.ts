import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/conversion/define.js';
import type { LubberConversion } from '../../../components/conversion/conversion.js';
import { addTranslation, translate } from '../../../components/shared/catalogue.js';

const directionOf = (element: Element): string => getComputedStyle(element.shadowRoot?.querySelector('.frame') as Element).direction;

describe('words read from right to left', () => {
  // Unicode Standard Annex 9: U+2068 first strong isolate, U+2069 pop directional isolate.
  it('hold their values apart; words from left to right are left as they are', () => {
    addTranslation('fa', { some: 'אב {error} גד' });
    addTranslation('nl', { some: 'een {error} twee' });
    expect(translate('fa-IR', {}, 'some', { error: '−3.4°' })).to.equal('אב \u2068−3.4°\u2069 גד');
    expect(translate('nl', {}, 'some', { error: '−3.4°' })).to.equal('een −3.4° twee');
    expect(translate('fa', { other: 'other {error}' }, 'other', { error: 1 })).to.equal('other 1');
    expect(translate('fa', {}, 'nobody.knows')).to.equal('nobody.knows');
  });

  it('turn a widget, which the page may turn otherwise', async () => {
    const place = await fixture(html`<div dir="rtl" lang="he"><lubber-conversion></lubber-conversion></div>`);
    const element = place.querySelector('lubber-conversion') as LubberConversion;
    expect(directionOf(element)).to.equal('ltr');
    addTranslation('he', { 'conversion.title': 'אב' });
    await element.updateComplete;
    expect(directionOf(element)).to.equal('rtl');
    element.dir = 'ltr';
    // An attribute is noticed after the script that set it.
    await new Promise((resolve) => setTimeout(resolve));
    await element.updateComplete;
    expect(directionOf(element)).to.equal('ltr');
  });

  it('are those whose list says so, where the language does not', async () => {
    const place = await fixture(html`<div lang="az"><lubber-conversion></lubber-conversion></div>`);
    const element = place.querySelector('lubber-conversion') as LubberConversion;
    addTranslation('az', { direction: 'rtl' });
    await element.updateComplete;
    expect(directionOf(element)).to.equal('rtl');
  });
});
