import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/swing/define.js';
import type { LubberElement } from '../../../components/shared/lubber-element.js';
import { root } from '../../support/in-widget.js';

// A ring is drawn by its name, which has to be one alone in the widget: the first of a name is taken, be it shown or not.
it('each of two charts of a widget has rings of its own at its readings, and a cross where one is struck', async () => {
  const rows = ['000\t5E\t\t355', '045\t2E\t\t041', '090\t3W\t\t095', '180\t3E\t\t178', '270\t1W\t\t272'].map((row, place) => {
    const [heading = '', reading = '', , steering = ''] = row.split('\t');
    return { heading, reading, steering, struck: place === 1 };
  });
  const swing = await fixture<LubberElement>(html`<lubber-swing compasses="two" .rows=${rows}></lubber-swing>`);
  await swing.updateComplete;
  const charts = [...root(swing).querySelectorAll('svg.deviation-chart')];
  const counts = charts.map((chart) => {
    const readings = chart.querySelector('polyline.readings') as SVGPolylineElement;
    const names = ['start', 'mid', 'end'].map((place) => /^url\(#(.+)\)$/.exec(readings.getAttribute(`marker-${place}`) ?? '')?.[1] ?? '');
    expect(new Set(names).size).to.equal(1);
    const named = [...root(swing).querySelectorAll(`[id="${names[0] ?? ''}"]`)];
    expect(named.map((each) => chart.contains(each))).to.deep.equal([true]);
    return [readings.points.numberOfItems, chart.querySelectorAll('.struck').length];
  });
  expect(counts).to.deep.equal([[4, 1], [4, 1]]);
});
