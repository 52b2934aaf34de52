import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/variation/define.js';
import type { LubberVariation } from '../../../components/variation/variation.js';
import { cornersOf, directionFrom, errorIn, outsideOf } from '../../support/dividers.js';
import { flat, must, root } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

async function drawn(given: Readonly<Record<string, string>>): Promise<ShadowRoot> {
  const element = await fixture<LubberVariation>(html`<lubber-variation></lubber-variation>`);
  for (const [name, value] of Object.entries(given)) element.setAttribute(name, value);
  await element.updateComplete;
  await until(() => root(element).querySelector('svg.rose') !== null, () => flat(root(element).querySelector('.frame')));
  return root(element);
}

/** From the first corner of a path to its second. */
function pointing(path: Element): number {
  const [from, to] = cornersOf(path);
  return directionFrom(must(from), must(to));
}

/** Where the variation is east and west, the dip down and up; places of our own choosing, the figures those the widget writes. */
const places = [
  ['variation east, dip up', { latitude: '48-17S', longitude: '071-42.5W', date: '2026-11-26' }],
  ['variation west, dip up', { latitude: '35S', longitude: '020E', date: '2026-11-26' }],
  ['variation west, dip down', { latitude: '40N', longitude: '050W', date: '2026-11-26' }],
  ['variation east, dip down', { latitude: '50N', longitude: '130W', date: '2026-11-26' }],
] as const;

describe('the compass rose of the variation', () => {
  for (const [what, given] of places) {
    it(`has its needle and inner ring by the variation: ${what}`, async () => {
      const shadow = await drawn(given);
      const variation = errorIn(must(/[\d.]+°\s[EW]/.exec(flat(shadow.querySelector('.answer'))))[0]);
      expect(Math.sign(variation)).to.equal(what.includes('east') ? 1 : -1);
      // Written to a tenth of a degree.
      expect(pointing(must(shadow.querySelector('svg.rose path.magnetic')))).to.be.closeTo(variation, 0.06);
      expect(outsideOf(must(shadow.querySelector('svg.rose')))).to.deep.equal([]);
      const [outer, inner] = [...shadow.querySelectorAll('svg.rose path.ticks')];
      const first = (ring: Element | undefined): number => directionFrom([135, 135], must(cornersOf(must(ring))[0]));
      // Ticks are drawn to a tenth of a unit, some 0.07 degrees of the inner ring.
      expect(first(outer)).to.be.closeTo(0, 0.1);
      expect(first(inner)).to.be.closeTo(variation, 0.2);
      const [, sweep, x, y] = /A[\d.]+ [\d.]+ 0 0 ([01]) ([\d.-]+) ([\d.-]+)Z/.exec(must(shadow.querySelector('path.wedge')).getAttribute('d') ?? '') ?? [];
      expect(directionFrom([135, 135], [Number(x), Number(y)])).to.be.closeTo(variation, 0.06);
      // From north to the needle by the side on which it lies: 1 is clockwise (SVG 2, 9.3.8).
      expect(Number(sweep)).to.equal(variation > 0 ? 1 : 0);
    });
  }

  // By hand: 10°40′ E in 2023, 7′ W a year, three years and eleven months on at the end of November 2026: 27.3′ less.
  it('has the chart’s north beside the model’s', async () => {
    const shadow = await drawn({ latitude: '48-17S', longitude: '071-42.5W', date: '2026-11-26', rose: "10°40'E 2023 (7'W)" });
    expect(pointing(must(shadow.querySelector('svg.rose path.chart')))).to.be.closeTo(10 + (40 - 27.3) / 60, 0.05);
  });
});

describe('the triangle of the forces', () => {
  for (const [what, given] of places) {
    it(`is to scale, level to the right and upright as it acts: ${what}`, async () => {
      const shadow = await drawn(given);
      const picture = must(shadow.querySelector('svg.forces'));
      expect(outsideOf(picture)).to.deep.equal([]);
      const side = (kind: string): readonly [number, number] => {
        const [from, to] = cornersOf(must(picture.querySelector(`path.${kind}`)));
        return [must(to)[0] - must(from)[0], must(to)[1] - must(from)[1]];
      };
      const texts = [...picture.querySelectorAll('text')].map((text) => flat(text).replace(/\u00a0/g, ' ').replace('−', '-'));
      const written = (letter: string): number => Number(must(texts.find((text) => text.startsWith(`${letter} `))).split(' ')[1]?.replace('°', ''));
      const [scaleFrom, scaleTo] = [...(must(picture.querySelector('path.scale')).getAttribute('d') ?? '').matchAll(/h(-?[\d.]+)/g)].map(([, length]) => Number(length) / 10);
      expect(scaleTo).to.equal(undefined);
      const unit = must(scaleFrom);
      expect(side('level')[0] / unit).to.be.closeTo(written('H'), 0.006);
      expect(side('level')[1]).to.equal(0);
      expect(side('upright')[0]).to.equal(0);
      // Down is positive, in the drawing as in the field.
      expect(side('upright')[1] / unit).to.be.closeTo(written('Z'), 0.006);
      expect(Math.sign(side('upright')[1])).to.equal(what.includes('dip down') ? 1 : -1);
      // The arc of the dip turns from the level the way the force does.
      expect(/ 0 0 ([01]) /.exec(must(picture.querySelector('path.arc')).getAttribute('d') ?? '')?.[1]).to.equal(what.includes('dip down') ? '1' : '0');
      expect(Math.hypot(...side('total')) / unit).to.be.closeTo(written('F'), 0.006);
      expect((Math.atan2(side('total')[1], side('total')[0]) * 180) / Math.PI).to.be.closeTo(written('I'), 0.06);
    });
  }
});
