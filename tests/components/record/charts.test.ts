import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/record/define.js';
import type { LubberRecord } from '../../../components/record/record.js';
import { cornersOf, errorsUp, outsideOf, readOff, size } from '../../support/dividers.js';
import type { Label } from '../../support/dividers.js';
import { must } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

const DAY = 86_400_000;

/** Twelve observations, headings and deviations invented; a card of 1.0 E everywhere, so the difference is one degree less. */
const observed = Array.from({ length: 12 }, (_, place) => ({
  instant: new Date(Date.UTC(2026, 10, 1) + place * DAY),
  heading: (20 + place * 137) % 360,
  deviation: [2.5, -1.5, 0.5, 3, -2.5, 1, 0, 2, -1, 1.5, -0.5, 2.2][place] as number,
}));

async function open(): Promise<LubberRecord> {
  const element = await fixture<LubberRecord>(html`<lubber-record book=${`charts ${Date.now()}`} now="2026-11-12T12:00:00Z"></lubber-record>`);
  element.card = { kind: 'approximate', coefficients: { A: 1, B: 0, C: 0, D: 0, E: 0 } };
  await element.whole;
  for (const { instant, heading, deviation } of observed) {
    await element.appendEntry({ kind: 'observation', instant, headingStandard: heading, deviation, deviationOf: 'standard', cardDeviation: 1, observer: 'E. M.' });
  }
  await until(() => element.renderRoot.querySelectorAll('svg[role=img]').length === 2);
  return element;
}

const dots = (picture: Element): Element[] => [...picture.querySelectorAll('circle')];
const isFilled = (dot: Element): boolean => dot.getAttribute('fill') === 'var(--accent)';

describe('the charts of a record book', () => {
  let pictures: Element[];
  before(async () => {
    pictures = [...(await open()).renderRoot.querySelectorAll('svg[role=img]')];
  });

  it('show each deviation where heading and axis say', () => {
    const picture = must(pictures[0]);
    const headings = [...picture.querySelectorAll('text[text-anchor=middle]')].map((label): Label => [parseInt(label.textContent, 10), size(label, 'x')]);
    expect(headings.map(([heading]) => heading)).to.deep.equal([90, 180, 270]);
    const across = [must(headings[0]), must(headings[2])] as const;
    const up = errorsUp(picture);
    // Drawn to a tenth of a unit, of which there is less than one to a degree of heading.
    for (const [place, dot] of dots(picture).entries()) {
      expect(readOff(across, size(dot, 'cx'))).to.be.closeTo(observed[place]?.heading ?? NaN, 0.5);
      expect(readOff(up, size(dot, 'cy'))).to.be.closeTo(observed[place]?.deviation ?? NaN, 0.02);
    }
    expect(dots(picture)).to.have.length(12);
    expect(readOff(across, must(headings[1])[1])).to.be.closeTo(180, 0.5);
  });

  it('stay within their frames', () => expect(pictures.flatMap(outsideOf)).to.deep.equal([]));

  it('fill the last ten', () => {
    for (const picture of pictures) expect(dots(picture).map(isFilled)).to.deep.equal([false, false, ...Array.from({ length: 10 }, () => true)]);
  });

  it('draw a card that is the same on every heading as a level line', () => {
    const picture = must(pictures[0]);
    const points = cornersOf(must(picture.querySelector('path')));
    expect(points).to.have.length(73);
    for (const [, y] of points) expect(readOff(errorsUp(picture), y)).to.be.closeTo(1, 0.02);
  });

  it('show each difference from the card where its day and the axis say, with the line of least squares', () => {
    const picture = must(pictures[1]);
    const up = errorsUp(picture);
    const places = dots(picture).map((dot) => [size(dot, 'cx'), readOff(up, size(dot, 'cy'))] as const);
    const across = [[0, places[0]?.[0] ?? NaN], [11, places[11]?.[0] ?? NaN]] as const;
    for (const [place, [x, difference]] of places.entries()) {
      expect(readOff(across, x)).to.be.closeTo(place, 0.01);
      expect(difference).to.be.closeTo((observed[place]?.deviation ?? NaN) - 1, 0.02);
    }
    // A straight line by least squares, day by day, written out here.
    const differences = observed.map(({ deviation }) => deviation - 1);
    const mean = differences.reduce((sum, each) => sum + each, 0) / 12;
    const slope = differences.reduce((sum, each, day) => sum + (day - 5.5) * (each - mean), 0) / Array.from({ length: 12 }, (_, day) => (day - 5.5) ** 2).reduce((sum, each) => sum + each, 0);
    const line = must(picture.querySelector('line[stroke-dasharray]'));
    expect(readOff(up, size(line, 'y1'))).to.be.closeTo(mean - 5.5 * slope, 0.02);
    expect(readOff(up, size(line, 'y2'))).to.be.closeTo(mean + 5.5 * slope, 0.02);
    expect([size(line, 'x1'), size(line, 'x2')]).to.deep.equal([places[0]?.[0], places[11]?.[0]]);
  });
});
