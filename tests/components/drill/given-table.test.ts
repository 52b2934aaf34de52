import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/drill/define.js';
import type { LubberDrill } from '../../../components/drill/drill.js';
import { flat, must, root } from '../../support/in-widget.js';

describe('a table of deviations that is given', () => {
  // A deviation of none stood with its sign of degrees under the letters of the others.
  it('has the figures below each other, whether a letter follows or none', async () => {
    const element = await fixture<LubberDrill>(html`<lubber-drill kind="coefficients" level="1" count="12" seed="4711"></lubber-drill>`);
    let seen = 0;
    for (let number = 1; number <= 12; number += 1) {
      must(root(element).querySelectorAll<HTMLButtonElement>('.progress button')[number - 1]).click();
      await element.updateComplete;
      const cells = [...root(element).querySelectorAll('.given-table td:nth-child(2)')].filter((cell) => flat(cell) !== '');
      const ends = cells.map((cell) => {
        const range = document.createRange();
        const figure = [...cell.querySelectorAll('bdi')].flatMap((bdi) => [...bdi.childNodes]).find((node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').includes('°'));
        if (!figure) throw new Error(`no figure in ${flat(cell)}`);
        range.setStart(figure, 0);
        range.setEnd(figure, (figure.textContent ?? '').indexOf('°') + 1);
        return range.getBoundingClientRect().right;
      });
      if (cells.some((cell) => flat(cell) === '0.0°')) seen += 1;
      expect(Math.max(...ends) - Math.min(...ends), cells.map(flat).join()).to.be.below(0.6);
    }
    expect(seen, 'no exercise with a deviation of none').to.be.above(0);
  });
});
