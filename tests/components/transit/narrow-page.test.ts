/** Several lines on a page 320 pixels wide: what names a line or a choice stays in one piece. */
import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/languages/de/define.js';
import '../../../components/languages/zh/define.js';
import '../../../components/transit/define.js';
import type { LubberTransit } from '../../../components/transit/transit.js';
import { until } from '../../support/until.js';

const marks = '[{"kind":"two-marks","frontLatitude":"48-16.0S","frontLongitude":"071-40.0W","rearLatitude":"48-15.0S","rearLongitude":"071-38.0W","bearing":"250"},{"kind":"charted","charted":"157","bearing":"148"}]';

/** In how many lines the words within an element are set. */
function linesOf(element: Element): number {
  const range = document.createRange();
  const tops = [...element.childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE).flatMap((words) => {
    range.selectNodeContents(words);
    return [...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => Math.round(top));
  });
  return new Set(tops).size;
}

describe('several lines on a narrow page', () => {
  afterEach(() => document.documentElement.setAttribute('lang', 'en'));

  for (const language of ['en', 'de', 'zh']) {
    it(`${language}: the name of a line stands in one`, async () => {
      document.documentElement.setAttribute('lang', language);
      const box = await fixture<HTMLElement>(html`<div style="inline-size: 320px"><lubber-transit latitude="48-17.0S" longitude="071-42.5W" heading="040" marks=${marks}></lubber-transit></div>`);
      const element = box.querySelector('lubber-transit') as LubberTransit;
      await until(() => element.renderRoot.querySelector('.narrow .facts') !== null);
      const names = [...element.renderRoot.querySelectorAll('tbody th')].filter((each) => /\d/.test(each.textContent ?? ''));
      expect(names.length).to.equal(2);
      expect(names.map(linesOf)).to.deep.equal([1, 1]);
      if (language !== 'zh') return;
      // Without spaces there is no place for a break, not even before the last of five signs.
      const choices = [...element.renderRoot.querySelectorAll('.choices label')];
      expect(choices.length).to.equal(8);
      for (const each of choices) expect(linesOf(each), each.textContent ?? '').to.equal(1);
    });
  }
});
