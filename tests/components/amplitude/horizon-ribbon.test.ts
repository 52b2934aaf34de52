import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/amplitude/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import { cornersOf, errorIn, outsideOf, readOff, size } from '../../support/dividers.js';
import type { Label } from '../../support/dividers.js';
import { flat, must, root } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

/** Instants are those of sunrise at places of our own choosing; what is looked at is the picture alone. */
const sights = [
  ['the body to the right of the reading: an error east', { latitude: '48-17.0S', longitude: '071-42.5W', instant: '2026-11-26T08:52:40Z', bearing: '113.5' }, 1],
  ['the body to the left: an error west', { latitude: '48-17.0S', longitude: '071-42.5W', instant: '2026-11-26T08:52:40Z', bearing: '131' }, -1],
  ['reading and body on either side of north', { latitude: '65-00.0N', longitude: '010-00.0W', instant: '2026-06-21T02:00:00Z', bearing: '352' }, 1],
  ['a compass that is a third of the circle out', { latitude: '48-17.0S', longitude: '071-42.5W', instant: '2026-11-26T08:52:40Z', bearing: '250' }, -1],
] as const;

async function picture(given: Readonly<Record<string, string>>): Promise<SVGElement> {
  const element = await fixture<LubberAmplitude>(html`<lubber-amplitude></lubber-amplitude>`);
  for (const [name, value] of Object.entries(given)) element.setAttribute(name, value);
  await element.updateComplete;
  await until(() => root(element).querySelector('svg.ribbon text') !== null);
  return must(root(element).querySelector<SVGElement>('svg.ribbon'));
}

/** Degrees from one direction to another by the shorter way, clockwise positive. */
const turn = (from: number, to: number): number => ((((to - from) % 360) + 540) % 360) - 180;

/** The figures under the horizon, counted on across north. */
function scaleOf(ribbon: SVGElement): readonly [Label, Label] {
  const labels = [...ribbon.querySelectorAll('text.soft')].map((label): Label => [parseFloat(label.textContent), size(label, 'x')]);
  const first = must(labels[0]);
  const last = must(labels.at(-1));
  // Every figure is as far from the first as its place says, so none is missing or doubled.
  const gap = turn(must(labels[0])[0], must(labels[1])[0]);
  expect(gap).to.be.greaterThan(0);
  labels.forEach(([value], place) => expect(turn(first[0] + place * gap, value)).to.be.closeTo(0, 1e-9));
  return [first, [first[0] + (labels.length - 1) * gap, last[1]]];
}

describe('the picture of the horizon', () => {
  for (const [what, given, way] of sights) {
    it(`shows ${what}`, async () => {
      const ribbon = await picture(given);
      expect(outsideOf(ribbon)).to.deep.equal([]);
      const scale = scaleOf(ribbon);
      const disc = must(ribbon.querySelector('circle'));
      const texts = [...ribbon.querySelectorAll('text:not(.soft)')];
      const trueBearing = parseFloat(must(texts.find((each) => each.textContent.includes('true'))).textContent);
      const compassBearing = parseFloat(must(texts.find((each) => each.textContent.includes('compass'))).textContent);
      const error = errorIn(flat(texts.find((each) => each.textContent.includes('error'))));
      const reading = must([...ribbon.querySelectorAll('line')].find((line) => line.getAttribute('stroke-width') === '2'));
      // Figures are written to a tenth of a degree.
      expect(turn(trueBearing, readOff(scale, size(disc, 'cx')))).to.be.closeTo(0, 0.06);
      expect(turn(compassBearing, readOff(scale, size(reading, 'x1')))).to.be.closeTo(0, 0.06);
      expect(compassBearing).to.equal(Number(given.bearing));
      // Error = true − compass, and the arrow leads from what was read to what is.
      expect(error).to.be.closeTo(turn(compassBearing, trueBearing), 0.11);
      expect(Math.sign(error)).to.equal(way);
      const arrows = [...ribbon.querySelectorAll('path')];
      const shaft = /^M(-?[\d.]+) 56 H(-?[\d.]+)$/.exec(must(arrows[0]).getAttribute('d') ?? '');
      expect([Number(shaft?.[1]), Number(shaft?.[2])]).to.deep.equal([size(reading, 'x1'), size(disc, 'cx')]);
      const [barb, tip] = cornersOf(must(arrows[1]));
      expect(tip?.[0]).to.equal(size(disc, 'cx'));
      expect(Math.sign((tip?.[0] ?? NaN) - (barb?.[0] ?? NaN))).to.equal(way);
    });
  }

  // A limb on the line is half a diameter from the centre. Bowditch, on amplitudes: the Sun's centre is on the celestial horizon
  // with her lower limb some two thirds of a diameter above the visible one, more from a high bridge.
  for (const [moment, least, most] of [['upper-limb', -0.5, -0.5], ['centre', 0, 0], ['lower-limb', 0.5, 0.5], ['celestial', 1, 1.4]] as const) {
    it(`has the disc where it stands with its ${moment}, there and beside the choice`, async () => {
      const ribbon = await picture({ ...sights[0][1], moment, 'height-of-eye': '18' });
      const choice = must((ribbon.getRootNode() as ShadowRoot).querySelector('svg.moment'));
      for (const [drawing, horizon] of [[ribbon, must(ribbon.querySelector('line'))], [choice, must(choice.querySelector('line'))]] as const) {
        const disc = must(drawing.querySelector('circle'));
        expect((size(horizon, 'y1') - size(disc, 'cy')) / (2 * size(disc, 'r'))).to.be.within(least - 1e-9, most + 1e-9);
      }
    });
  }
});
