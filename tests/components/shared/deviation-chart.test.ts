import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/swing/define.js';
import type { LubberElement } from '../../../components/shared/lubber-element.js';
import { errorsUp, outsideOf, readOff, size } from '../../support/dividers.js';
import type { Label } from '../../support/dividers.js';
import { must, root } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

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

describe('the chart of deviations', () => {
  const across = (chart: Element): readonly [Label, Label] => {
    const labels = [...chart.querySelectorAll('text.soft[text-anchor=middle]')].filter(({ textContent }) => /^\d{3}$/.test(textContent.trim())).map((label): Label => [Number(label.textContent), size(label, 'x')]);
    expect(labels.map(([value]) => value).slice(0, 5)).to.deep.equal([0, 45, 90, 135, 180]);
    return [must(labels[0]), must(labels[4])];
  };
  const cornersOfLine = (line: Element): readonly (readonly [number, number])[] => [...(line as SVGPolylineElement).points].map(({ x, y }) => [x, y] as const);

  // Deviation = A + B sin ζ′ + C cos ζ′ + D sin 2ζ′ + E cos 2ζ′ (Handbook of Magnetic Compass Adjustment), by hand.
  const byHand = (heading: number, [A, B, C, D, E]: readonly [number, number, number, number, number]): number => {
    const z = (heading * Math.PI) / 180;
    return A + B * Math.sin(z) + C * Math.cos(z) + D * Math.sin(2 * z) + E * Math.cos(2 * z);
  };

  it('has curve, old card, readings and limit where heading and axis say', async () => {
    const terms = [0.5, -2, 1.5, 0.8, -0.3] as const;
    const old = [0, 3, -1, 0.5, 0] as const;
    const rows = Array.from({ length: 16 }, (_, place) => ({ heading: String(place * 22.5), reading: `${byHand(place * 22.5, terms).toFixed(2)}`.replace(/^-(.*)$/, '$1W').replace(/^([\d.]+)$/, '$1E') }));
    const [A, B, C, D, E] = old;
    const swing = await fixture<LubberElement>(html`<lubber-swing headings="16" model="approximate" limit="after-adjustment" .rows=${rows} .card=${{ kind: 'approximate', coefficients: { A, B, C, D, E } }}></lubber-swing>`);
    swing.style.cssText = 'display: block; inline-size: 1200px';
    await until(() => root(swing).querySelector('svg.deviation-chart polyline.readings') !== null && root(swing).querySelectorAll('svg.deviation-chart text.soft[text-anchor=middle]').length > 16);
    const chart = must(root(swing).querySelector('svg.deviation-chart'));
    expect(outsideOf(chart)).to.deep.equal([]);
    const [over, up] = [across(chart), errorsUp(chart)];
    const lines = [...chart.querySelectorAll('polyline:not(.readings)')];
    expect(lines).to.have.length(2);
    // The one in use is drawn last, over the other, and solid.
    expect(lines.map((line) => line.getAttribute('stroke-dasharray') === 'none')).to.deep.equal([false, true]);
    for (const [line, expected] of [[lines[0], old], [lines[1], terms]] as const) {
      const corners = cornersOfLine(must(line));
      expect(corners).to.have.length(121);
      // Read to a tenth of a unit, of which there are some 40 to a degree; readings are typed to hundredths.
      for (const [x, y] of corners) expect(readOff(up, y)).to.be.closeTo(byHand(readOff(over, x), expected), 0.02);
    }
    for (const [place, [x, y]] of cornersOfLine(must(chart.querySelector('polyline.readings'))).entries()) {
      expect(readOff(over, x)).to.be.closeTo(place * 22.5, 0.1);
      expect(readOff(up, y)).to.be.closeTo(byHand(place * 22.5, terms), 0.01);
    }
    const limits = [...chart.querySelectorAll('line')].filter((line) => line.getAttribute('stroke') === 'var(--warn)').map((line) => Math.round(readOff(up, size(line, 'y1')) * 100) / 100);
    // ISO 25862: 3° after adjustment, as deviation-limits.ts has it.
    expect(limits).to.deep.equal([3, -3]);
  });

  /**
   * Sixteen readings evenly spread, off by 0.3° to either side in turn: that wave, cos 8ζ′, is orthogonal to all five terms,
   * so s² = 16 · 0.09 / 11. The variance of the curve is s² (1/16 + 4/16) on every heading; half the band is
   * Student's t at 97.5 % for 11 degrees of freedom, 2.201 by the printed tables, times its root.
   */
  it('has the band as wide as Student’s t says, on every heading', async () => {
    const terms = [0.5, -2, 1.5, 0.8, -0.3] as const;
    const written = (value: number): string => `${Math.abs(value).toFixed(2)}${value < 0 ? 'W' : 'E'}`;
    const rows = Array.from({ length: 16 }, (_, place) => ({ heading: String(place * 22.5), reading: written(byHand(place * 22.5, terms) + (place % 2 ? -0.3 : 0.3)) }));
    const swing = await fixture<LubberElement>(html`<lubber-swing headings="16" model="approximate" .rows=${rows}></lubber-swing>`);
    swing.style.cssText = 'display: block; inline-size: 1200px';
    await until(() => root(swing).querySelector('svg.deviation-chart polygon') !== null && root(swing).querySelectorAll('svg.deviation-chart text.soft[text-anchor=middle]').length > 16);
    const chart = must(root(swing).querySelector('svg.deviation-chart'));
    const [over, up] = [across(chart), errorsUp(chart)];
    const corners = cornersOfLine(must(chart.querySelector('polygon'))).map(([x, y]) => [readOff(over, x), readOff(up, y)] as const);
    const half = 2.201 * Math.sqrt(((16 * 0.09) / 11) * (5 / 16));
    const middle = corners.length / 2;
    // Along the lower edge to 360, and back along the upper.
    corners.forEach(([heading, edge], place) => {
      expect(heading).to.be.closeTo((place < middle ? place : corners.length - 1 - place) * (360 / (middle - 1)), 0.1);
      expect(edge).to.be.closeTo(byHand(heading, terms) + (place < middle ? -half : half), 0.02);
    });
    expect(middle).to.be.greaterThan(50);
  });
});
