import { expect } from '@open-wc/testing';
import type { LubberIron } from '../../../components/iron/iron.js';
import { cornersOf, directionFrom, errorsUp, outsideOf, readOff, size } from '../../support/dividers.js';
import type { Label } from '../../support/dividers.js';
import { must } from '../../support/in-widget.js';
import { bench, root } from './bench.js';

const RADIAN = 180 / Math.PI;
const H = 20;

/**
 * Poisson's equations for a ship upright with permanent iron alone (Handbook of Magnetic Compass
 * Adjustment, on the nine rods): to the bow H cos ζ + P, to starboard Q − H sin ζ. The needle
 * shows the way of both together; deviation is magnetic less compass heading.
 */
function byHand(magnetic: number, P: number, Q: number): { readonly compass: number; readonly deviation: number } {
  const bow = H * Math.cos(magnetic / RADIAN) + P;
  const starboard = Q - H * Math.sin(magnetic / RADIAN);
  const compass = (Math.atan2(-starboard, bow) * RADIAN + 360) % 360;
  return { compass, deviation: ((magnetic - compass + 540) % 360) - 180 };
}

const forces = { source: 'forces', horizontal: H, vertical: 40 };
const picture = (element: LubberIron, selector: string): Element => must(root(element).querySelector(selector));

describe('the curve of the bench', () => {
  for (const [P, Q, heading] of [[4, 0, 90], [-6, 3, 200], [2, -5, 355], [0, 9, 0]] as const) {
    it(`runs where P ${P} and Q ${Q} put the needle, and marks the heading ${heading}`, async () => {
      const element = await bench({ ...forces, P, Q, heading: String(heading).padStart(3, '0') });
      const curve = picture(element, 'svg.curve');
      expect(outsideOf(curve)).to.deep.equal([]);
      const up = errorsUp(curve);
      const headings = [...curve.querySelectorAll('text.soft[text-anchor=middle]')].map((label): Label => [parseFloat(label.textContent), size(label, 'x')]);
      const across = [must(headings[0]), must(headings.at(-1))] as const;
      const here = byHand(heading, P, Q);
      const dot = must(curve.querySelector('circle.here'));
      expect(readOff(across, size(dot, 'cx'))).to.be.closeTo(here.compass, 0.1);
      expect(readOff(up, size(dot, 'cy'))).to.be.closeTo(here.deviation, 0.05);
      const corners = cornersOf(must(curve.querySelector('path.whole')));
      expect(corners.length).to.be.greaterThan(70);
      // Each corner by itself: to the heading it stands over, the deviation that the equations give. Drawn to a tenth of a unit.
      for (const [x, y] of corners) {
        const [compass, deviation] = [readOff(across, x), readOff(up, y)];
        expect(byHand(compass + deviation, P, Q).deviation).to.be.closeTo(deviation, 0.35);
      }
      const largest = Math.max(...corners.map(([, y]) => readOff(up, y)));
      expect(largest).to.be.closeTo(Math.asin(Math.hypot(P, Q) / H) * RADIAN, 0.15);
    });
  }
});

describe('the force on the needle, bow upwards', () => {
  // Without iron it points to magnetic north, which a ship on 090 has on her port side, on 180 astern.
  for (const [heading, turned] of [['000', 0], ['090', -90], ['180', 180], ['225', 135]] as const) {
    it(`on ${heading} lies ${turned} from ahead`, async () => {
      const element = await bench({ ...forces, heading, view: 'iron' });
      expect(outsideOf(picture(element, 'svg.force-picture'))).to.deep.equal([]);
      const [from, to] = cornersOf(picture(element, 'svg.force-picture path.now'));
      expect(Math.cos((directionFrom(must(from), must(to)) - turned) / RADIAN)).to.be.closeTo(1, 1e-4);
    });
  }

  it('with P ahead on 090 turns towards the bow by the deviation', async () => {
    const element = await bench({ ...forces, P: 4, heading: '090', view: 'iron' });
    const [from, to] = cornersOf(picture(element, 'svg.force-picture path.now'));
    expect(directionFrom(must(from), must(to))).to.be.closeTo(-byHand(90, 4, 0).compass, 0.5);
  });
});

describe('the field of a place', () => {
  for (const vertical of ['40', '-40']) {
    it(`of Z ${vertical} has its arrow ${vertical.startsWith('-') ? 'up' : 'down'}, H to the right, both to one scale`, async () => {
      const element = await bench({ ...forces, vertical, view: 'place' });
      expect(outsideOf(picture(element, 'svg.field-picture'))).to.deep.equal([]);
      const ends = [...picture(element, 'svg.field-picture').querySelectorAll('g line')].map((line) => [size(line, 'x2'), size(line, 'y2')] as const);
      expect(ends).to.have.length(3);
      const [level, upright, total] = [must(ends[0]), must(ends[1]), must(ends[2])];
      expect([level[1], upright[0]]).to.deep.equal([0, 0]);
      expect(upright[1] / level[0]).to.be.closeTo(Number(vertical) / H, 1e-6);
      expect(total).to.deep.equal([level[0], upright[1]]);
    });
  }
});

describe('the ship’s induced poles, magnetic north upwards', () => {
  // The end towards north, and the end towards the ground north of the magnetic equator, takes the north-seeking pole, red: trade.md's polarity rule is common practice.
  for (const vertical of ['40', '-40']) {
    for (const heading of ['000', '045', '090', '180', '300']) {
      it(`on ${heading} with Z ${vertical} are red to the north, and ${vertical.startsWith('-') ? 'up' : 'down'}`, async () => {
        const element = await bench({ ...forces, vertical, heading, view: 'place' });
        const ship = picture(element, 'svg.polarity');
        expect(outsideOf(ship)).to.deep.equal([]);
        const [plan, side] = [...ship.querySelectorAll(':scope > g')];
        expect(must(plan).querySelector('g')?.getAttribute('transform')).to.equal(`rotate(${Number(heading)})`);
        const ends = [...must(plan).querySelectorAll('text.pole')].map((text) => [text.textContent.trim(), size(text, 'y') - 5] as const);
        expect(ends.length).to.be.within(2, 4);
        for (const [letter, y] of ends) expect(letter, `at ${y}`).to.equal(y < 0 ? 'R' : 'B');
        const [top, foot] = [...must(side).querySelectorAll('text.pole')].map((text) => text.textContent.trim());
        expect([top, foot]).to.deep.equal(vertical === '40' ? ['B', 'R'] : ['R', 'B']);
      });
    }
  }
});
