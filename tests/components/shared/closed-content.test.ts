import { expect } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import { until } from '../../support/until.js';

/** As a page has it at the first paint: nobody waits for what can come later. */
async function firstPaint(attributes: string): Promise<LubberAmplitude> {
  const holder = document.createElement('div');
  holder.innerHTML = `<lubber-amplitude latitude="33-24.0N" longitude="071-42.5W" instant="2026-11-25T11:31:48Z" bearing="130" ${attributes}></lubber-amplitude>`;
  document.body.append(holder);
  // The first update runs as soon as the tasks at hand are done.
  await Promise.resolve();
  await Promise.resolve();
  return holder.firstElementChild as LubberAmplitude;
}

const select = (widget: LubberAmplitude): HTMLSelectElement => widget.renderRoot.querySelector('#body') as HTMLSelectElement;

describe('what can wait until the answer is on the screen', () => {
  let widget: LubberAmplitude;

  afterEach(() => widget.parentElement?.remove());

  it('lets the answer stand alone at first, with the room of its picture', async () => {
    widget = await firstPaint('');
    expect(widget.renderRoot.querySelector('.answer')?.textContent).to.match(/\d/);
    const ribbon = widget.renderRoot.querySelector('.ribbon') as SVGElement;
    const height = ribbon.getBoundingClientRect().height;
    expect(ribbon.childElementCount).to.equal(0);
    expect(height).to.be.greaterThan(80);
    await widget.updateComplete;
    expect(ribbon.childElementCount).to.be.greaterThan(5);
    expect(ribbon.getBoundingClientRect().height).to.equal(height);
  });

  it('comes by itself, nobody waiting for it', async () => {
    widget = await firstPaint('');
    await until(() => (widget.renderRoot.querySelector('.ribbon')?.childElementCount ?? 0) > 5);
    expect(widget.renderRoot.querySelector('[part="working"] math')).to.not.equal(null);
    expect(select(widget).options.length).to.be.greaterThan(60);
  });

  // Typed at once, "Polaris" found no such entry.
  it('comes when the list of bodies is gone to', async () => {
    widget = await firstPaint('');
    select(widget).focus();
    await Promise.resolve();
    expect([...select(widget).options].map(({ value }) => value)).to.include('Polaris');
  });

  it('shows the star that is chosen from the start, and keeps it when the others come', async () => {
    widget = await firstPaint('body="Vega"');
    expect([select(widget).value, select(widget).selectedOptions[0]?.text]).to.deep.equal(['Vega', 'Vega']);
    expect(select(widget).options.length).to.be.lessThan(10);
    await widget.updateComplete;
    expect(select(widget).value).to.equal('Vega');
    expect(select(widget).options.length).to.be.greaterThan(60);
  });
});
