import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/define.js';
import type { LubberElement } from '../../../components/shared/lubber-element.js';
import { root } from '../../support/in-widget.js';

// ARIA 1.2, aria-level: a whole number from 1; headings of a page run to 6.
it('the headings of a widget stand as deep as the page says, and where it says nothing of use as they are written', async () => {
  const swing = await fixture<LubberElement>(html`<lubber-swing compasses="two" rows=${'000\t5E\t\t355\n090\t3W\t\t095\n180\t3E\t\t178'}></lubber-swing>`);
  const deeper = (): (number | null)[] => {
    const headings = [...root(swing).querySelectorAll('h2, h3, h4')];
    return [...new Set(headings.map((each) => (each.hasAttribute('aria-level') ? Number(each.getAttribute('aria-level')) - Number(each.localName[1]) : null)))];
  };
  await swing.updateComplete;
  expect(root(swing).querySelectorAll('h3').length).to.be.above(0);
  expect(deeper()).to.deep.equal([null]);
  for (const [level, expected] of [['4', 2], ['1', -1], ['6', 4], ['9', 0], ['-3', 0], ['deep', 0], [3.2, 1], [undefined, 0]] as const) {
    Object.assign(swing, { headingLevel: level });
    await swing.updateComplete;
    expect(deeper(), String(level)).to.deep.equal([expected]);
  }
  swing.setAttribute('heading-level', '5');
  swing.removeAttribute('heading-level');
  await swing.updateComplete;
  expect(deeper()).to.deep.equal([0]);
});
