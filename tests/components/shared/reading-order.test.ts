import { expect } from '@open-wc/testing';
import '../../../components/deviation-card/define.js';
import '../../../components/field-map/define.js';
import '../../../components/iron/define.js';
import { root } from '../../support/in-widget.js';

type Widget = HTMLElement & { readonly updateComplete: Promise<unknown> };

/** The widget in so wide a column, and whether its answer then stands before its fields. */
async function headlineFirst(column: HTMLElement, widget: Widget, width: number): Promise<boolean> {
  column.style.inlineSize = `${width}px`;
  await new Promise((resolve) => setTimeout(resolve, 100));
  await widget.updateComplete;
  const parts = [...root(widget).querySelectorAll('.columns > :is(.fields, .headline)')].map(({ classList }) => classList[0]);
  expect([...parts].sort()).to.deep.equal(['fields', 'headline']);
  return parts[0] === 'headline';
}

describe('fields and answer in the order they are read', () => {
  for (const tag of ['lubber-deviation-card', 'lubber-field-map', 'lubber-iron']) {
    it(`leave the focus in its field where ${tag} becomes one column, and two again`, async () => {
      const column = document.createElement('div');
      const widget = document.createElement(tag) as Widget;
      column.append(widget);
      document.body.append(column);
      expect(await headlineFirst(column, widget, 1100)).to.equal(false);
      const field = root(widget).querySelector<HTMLElement>('.columns > .fields :is(input, select, textarea)');
      field?.focus();
      for (const width of [320, 1100]) {
        expect(await headlineFirst(column, widget, width), `${width} px`).to.equal(width === 320);
        expect(root(widget).activeElement === field, `${width} px`).to.equal(true);
      }
      column.remove();
    });
  }
});
