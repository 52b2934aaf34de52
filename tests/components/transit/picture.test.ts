import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/transit/define.js';
import type { LubberTransit } from '../../../components/transit/transit.js';
import { cornersOf, directionFrom, directionOf, outsideOf, size } from '../../support/dividers.js';
import { flat, must, root } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

async function plan(given: Readonly<Record<string, string>>): Promise<SVGElement> {
  const element = await fixture<LubberTransit>(html`<lubber-transit></lubber-transit>`);
  for (const [name, value] of Object.entries(given)) element.setAttribute(name, value);
  await element.updateComplete;
  await until(() => root(element).querySelector('svg.plan') !== null, () => flat(root(element).querySelector('.frame')));
  return must(root(element).querySelector<SVGElement>('svg.plan'));
}

/** Lines whose direction north or a mark gives, by the colour they are drawn in. */
const drawnIn = (picture: SVGElement, colour: string): Element[] => [...picture.querySelectorAll('line')].filter((line) => line.getAttribute('stroke') === `var(--${colour})`);

// Error = true − compass: 2 E; compass north lies by the error from true north, magnetic north by the variation. By hand.
describe('the picture of a transit', () => {
  for (const [charted, bearing, variation, error] of [['120', '118', '3W', 2], ['002', '359.5', '10E', 2.5], ['355', '003', '14W', -8], ['250.5', '251', '0', -0.5]] as const) {
    it(`of ${charted} by the chart and ${bearing} by compass has line and norths at their angles`, async () => {
      const picture = await plan({ charted, bearing, variation, heading: '040' });
      expect(outsideOf(picture)).to.deep.equal([]);
      const [line, ...others] = drawnIn(picture, 'body');
      expect(others).to.deep.equal([]);
      expect((directionOf(must(line)) + 360) % 360).to.be.closeTo(Number(charted), 1e-6);
      const centre = must(picture.querySelector('circle'));
      const ship = [size(centre, 'cx'), size(centre, 'cy')] as const;
      // It runs through the ship, and the longer way towards the mark.
      const behind = directionFrom(ship, [size(must(line), 'x1'), size(must(line), 'y1')]);
      expect(Math.cos(((behind - Number(charted) - 180) * Math.PI) / 180)).to.be.closeTo(1, 1e-9);
      expect(drawnIn(picture, 'ink').map(directionOf)[0]).to.be.closeTo(0, 1e-6);
      const east = parseFloat(variation) * (variation.endsWith('W') ? -1 : 1);
      expect(drawnIn(picture, 'soft').map(directionOf)[0]).to.be.closeTo(east, 1e-6);
      expect(drawnIn(picture, 'accent').map(directionOf)[0]).to.be.closeTo(error, 1e-6);
      for (const north of [...drawnIn(picture, 'ink'), ...drawnIn(picture, 'soft'), ...drawnIn(picture, 'accent')]) expect([size(north, 'x1'), size(north, 'y1')]).to.deep.equal(ship);
      expect(flat([...picture.querySelectorAll('text:not(.soft)')][0])).to.equal(`${Number(charted).toFixed(1).padStart(5, '0')}°`);
    });
  }

  // The charted line has no marks; of two the front one stands nearer to the ship, both on the line; one mark is seen alone. Places invented.
  const front = { frontLatitude: '48-20.0S', frontLongitude: '071-40.0W' };
  const rear = { rearLatitude: '48-22.0S', rearLongitude: '071-38.0W' };
  for (const [what, given, posts] of [
    ['a charted line', { kind: 'charted', charted: '146' }, 0],
    ['two marks', { kind: 'two-marks', ...front, ...rear }, 2],
    ['one mark', { kind: 'one-mark', ...front }, 1],
  ] as const) {
    it(`of ${what} has ${posts} posts, on the line, the front one nearer`, async () => {
      const marks = JSON.stringify([{ ...given, bearing: '145' }]);
      const picture = await plan({ marks, latitude: '48-18.0S', longitude: '071-42.0W', variation: '3W', heading: '040' });
      const centre = must(picture.querySelector('circle'));
      const line = must(drawnIn(picture, 'body')[0]);
      const tops = [...picture.querySelectorAll('path[stroke="var(--body)"]')].map((post) => must(cornersOf(post)[0]));
      expect(tops).to.have.length(posts);
      // The top of a post stands a post's half height over its place: 7 units for the front one of two, 9 for the rear, 8 alone.
      const places = tops.map(([x, y], at) => [x, y + (posts === 1 ? 8 : at === 0 ? 7 : 9)] as const);
      const away = places.map(([x, y]) => Math.hypot(x - size(centre, 'cx'), y - size(centre, 'cy')));
      for (const place of places) {
        const turned = directionFrom([size(centre, 'cx'), size(centre, 'cy')], place) - directionOf(line);
        expect(Math.cos((turned * Math.PI) / 180)).to.be.closeTo(1, 1e-6);
      }
      expect([...away].sort((a, b) => a - b)).to.deep.equal(away);
      expect(outsideOf(picture)).to.deep.equal([]);
    });
  }

  it('by gyro has no magnetic north, and its own by the gyro error', async () => {
    const picture = await plan({ charted: '120', bearing: '121.5', compass: 'gyro', variation: '3W' });
    expect(drawnIn(picture, 'soft')).to.deep.equal([]);
    expect(drawnIn(picture, 'accent').map(directionOf)[0]).to.be.closeTo(-1.5, 1e-6);
  });
});
