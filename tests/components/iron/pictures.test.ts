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

describe('the force on the needle, to scale', () => {
  // Poisson's equations, trade.md 5, worked by hand for this ship: µT at the compass, forward and to starboard.
  const ship = { a: -0.1, b: 0.05, c: 0.08, d: -0.03, e: -0.2, f: -0.05, P: 4, Q: -3 };
  function forceByHand(heading: number, z: number): readonly [forward: number, starboard: number] {
    const { a, b, c, d, e, f, P, Q } = ship;
    const [x, y] = [H * Math.cos(heading / RADIAN), -H * Math.sin(heading / RADIAN)];
    return [(1 + a) * x + b * y + c * z + P, d * x + (1 + e) * y + f * z + Q];
  }

  for (const vertical of [40, -40]) {
    for (const heading of [0, 60, 135, 250]) {
      it(`on ${heading} with Z ${vertical}: arrow and ellipse, bow upwards, by one measure`, async () => {
        const element = await bench({ ...forces, ...ship, vertical, heading: String(heading).padStart(3, '0'), view: 'iron' });
        const drawn = picture(element, 'svg.force-picture');
        const corners = cornersOf(picture(element, 'svg.force-picture path.ellipse'));
        expect(corners.length).to.equal(72);
        const turn = corners.map((_, index) => forceByHand(index * 5, vertical));
        const longest = (points: readonly (readonly [number, number])[]): number => Math.max(...points.map(([one, other]) => Math.hypot(one, other)));
        const measure = longest(corners) / longest(turn);
        // The picture is filled as far as its labels allow.
        expect(Math.max(...corners.flat().map(Math.abs))).to.be.closeTo(73, 0.1);
        corners.forEach(([right, down], index) => {
          const [forward, starboard] = must(turn[index]);
          expect(right, `${index * 5}`).to.be.closeTo(starboard * measure, 0.15);
          expect(-down, `${index * 5}`).to.be.closeTo(forward * measure, 0.15);
        });
        const [from, to] = cornersOf(picture(element, 'svg.force-picture path.now'));
        const [forward, starboard] = forceByHand(heading, vertical);
        expect(must(from)).to.deep.equal([0, 0]);
        expect(must(to)[0]).to.be.closeTo(starboard * measure, 0.15);
        expect(-must(to)[1]).to.be.closeTo(forward * measure, 0.15);
        const [ahead, side] = [...drawn.querySelectorAll('text')];
        expect([Math.sign(size(must(ahead), 'y')), size(must(ahead), 'x')]).to.deep.equal([-1, 0]);
        expect(size(must(side), 'x')).to.be.greaterThan(0);
      });
    }
  }

  it('the directive force over H stands at its per cent, and λ at 1 + (a + e)/2', async () => {
    const element = await bench({ ...forces, ...ship, view: 'iron' });
    const drawn = picture(element, 'svg.directive');
    const across = [...drawn.querySelectorAll('text[text-anchor=middle]')].map((label): Label => [parseFloat(label.textContent), size(label, 'x')]);
    const up = [...drawn.querySelectorAll('text[text-anchor=end]')].map((label): Label => [parseFloat(label.textContent), size(label, 'y') - 4]);
    const share = (y: number): number => readOff([must(up[0]), must(up.at(-1))], y) / 100;
    expect(share(size(must(drawn.querySelector('line.mean')), 'y1'))).to.be.closeTo(1 + (ship.a + ship.e) / 2, 0.005);
    const corners = cornersOf(must(drawn.querySelector('path.whole')));
    expect(corners.length).to.be.greaterThan(70);
    for (const [x, y] of corners) {
      const heading = readOff([must(across[0]), must(across.at(-1))], x);
      expect(share(y), `${heading}`).to.be.closeTo(Math.hypot(...forceByHand(heading, 40)) / H, 0.01);
    }
  });
});

describe('the field of a place', () => {
  // Places compare by eye only where a microtesla is as long in one picture as in the other.
  it('is drawn by one measure wherever she lies', async () => {
    const lengths: number[] = [];
    for (const [horizontal, vertical] of [[20, 40], [35, -20], [8, 60]] as const) {
      const element = await bench({ source: 'forces', horizontal, vertical, view: 'place' });
      const total = must([...picture(element, 'svg.field-picture').querySelectorAll('g line')][2]);
      lengths.push(Math.hypot(size(total, 'x2'), size(total, 'y2')) / Math.hypot(horizontal, vertical));
    }
    for (const length of lengths) expect(length).to.be.closeTo(must(lengths[0]), 1e-6);
  });

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
        // The iron itself bears the colour of its letter: each piece of the hull lies on its own side of east and west.
        const hull = must(must(plan).querySelector('.hull')).getBoundingClientRect();
        const centre = hull.top + hull.height / 2;
        const pieces = [...must(plan).querySelectorAll('.piece:not(.plain)')];
        expect(pieces.length).to.equal(ends.length);
        for (const piece of pieces) {
          const { top, height } = piece.getBoundingClientRect();
          expect(piece.classList.contains(top + height / 2 < centre ? 'red' : 'blue'), `piece at ${top + height / 2 - centre}`).to.equal(true);
        }
        const [top, foot] = [...must(side).querySelectorAll('text.pole')].map((text) => text.textContent.trim());
        expect([top, foot]).to.deep.equal(vertical === '40' ? ['B', 'R'] : ['R', 'B']);
        const mast = [...must(side).querySelectorAll('line.piece')].sort((one, other) => size(one, 'y1') - size(other, 'y1')).map((piece) => piece.classList.contains('red'));
        expect(mast).to.deep.equal(vertical === '40' ? [false, true] : [true, false]);
        const decks = [...must(side).querySelectorAll('path.piece')].sort((one, other) => one.getBoundingClientRect().top - other.getBoundingClientRect().top).map((piece) => piece.classList.contains('red'));
        expect(decks).to.deep.equal(mast);
      });
    }
  }
});
