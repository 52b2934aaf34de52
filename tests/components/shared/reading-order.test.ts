import { expect } from '@open-wc/testing';
import '../../../components/deviation-card/define.js';
import '../../../components/field-map/define.js';
import '../../../components/iron/define.js';
import { must, root } from '../../support/in-widget.js';

/** The parts of a widget in so wide a column, as they follow each other once they do as wanted. */
async function partsAt(column: HTMLElement, widget: Element, width: number, wanted: readonly string[]): Promise<readonly string[]> {
  const parts = (): string[] => [...root(widget).querySelectorAll('.columns > :is(.fields, .headline)')].map(({ classList }) => String(classList[0]));
  column.style.inlineSize = `${width}px`;
  for (let tries = 0; tries < 1200 && parts().join() !== wanted.join(); tries += 1) await new Promise((resolve) => setTimeout(resolve, 50));
  return parts();
}

const twoColumns = ['fields', 'headline'];
const oneColumn = ['headline', 'fields'];

describe('fields and answer in the order they are read', () => {
  for (const tag of ['lubber-deviation-card', 'lubber-field-map', 'lubber-iron']) {
    it(`leave the focus in its field where ${tag} becomes one column, and two again`, async () => {
      const column = document.createElement('div');
      const widget = document.createElement(tag);
      column.append(widget);
      document.body.append(column);
      expect(await partsAt(column, widget, 1100, twoColumns)).to.deep.equal(twoColumns);
      const field = root(widget).querySelector<HTMLElement>('.columns > .fields :is(input, select, textarea)');
      must(field).focus();
      for (const [width, wanted] of [[320, oneColumn], [1100, twoColumns]] as const) {
        expect(await partsAt(column, widget, width, wanted)).to.deep.equal(wanted);
        expect(root(widget).activeElement === field, `${width} px`).to.equal(true);
      }
      column.remove();
    });
  }
});
