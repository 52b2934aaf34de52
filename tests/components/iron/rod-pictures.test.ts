import { expect } from '@open-wc/testing';
import type { LubberIron } from '../../../components/iron/iron.js';
import { outsideOf, size } from '../../support/dividers.js';
import { must } from '../../support/in-widget.js';
import { bench, one } from './bench.js';

const RADIAN = 180 / Math.PI;
const H = 20;

type Axis = 'forward' | 'starboard' | 'down';
type Vector = Readonly<Record<Axis, number>>;
type Flat = readonly [number, number];

/**
 * Poisson's equations, trade.md 5: X′ = (1+a)X + bY + cZ + P; Y′ = dX + (1+e)Y + fZ + Q; Z′ = gX + hY + (1+k)Z + R,
 * x forward, y to starboard, z down. Each parameter by the axis it pulls along and the axis of the field that makes it pull.
 */
const parameters: Readonly<Record<string, readonly [pull: Axis, by: Axis | 'always']>> = {
  a: ['forward', 'forward'], b: ['forward', 'starboard'], c: ['forward', 'down'],
  d: ['starboard', 'forward'], e: ['starboard', 'starboard'], f: ['starboard', 'down'],
  g: ['down', 'forward'], h: ['down', 'starboard'], k: ['down', 'down'],
  P: ['forward', 'always'], Q: ['starboard', 'always'], R: ['down', 'always'],
};

/** To the right and downwards in each view of the ship; which view it is, the hull tells. */
const axes = { plan: ['forward', 'starboard'], side: ['forward', 'down'], astern: ['starboard', 'down'] } as const;

/** Which view a hull is: from above both sides are alike, with the stem to the right; from astern port is as starboard. */
function viewOf(hull: SVGPathElement): keyof typeof axes {
  const { x, y, width, height } = hull.getBBox();
  const isHull = (across: number, down: number): boolean => hull.isPointInFill(new DOMPoint(x + across * width, y + down * height));
  const shares = Array.from({ length: 19 }, (_, index) => (index + 1) / 20);
  const alike = (mirrored: (across: number, down: number) => boolean): boolean =>
    shares.every((across) => shares.every((down) => isHull(across, down) === mirrored(across, down)));
  if (alike((across, down) => isHull(across, 1 - down))) {
    expect([isHull(0.03, 0.12), isHull(0.97, 0.12)], 'stern square, stem to the right').to.deep.equal([true, false]);
    return 'plan';
  }
  if (alike((across, down) => isHull(1 - across, down))) return 'astern';
  expect([isHull(0.06, 0.8), isHull(0.97, 0.8)], 'stem raked, to the right').to.deep.equal([true, false]);
  return 'side';
}

function pictureOf(element: LubberIron, name: string): Element {
  const slider = must(one(element, `#${name}`).closest('.slider'));
  slider.closest('details')?.setAttribute('open', '');
  return must(slider.querySelector('.rod-picture'));
}

interface Pole {
  readonly colour: 'red' | 'blue';
  readonly at: Flat;
}

const colourIn = (line: Element): 'red' | 'blue' | null => (line.classList.contains('red') ? 'red' : line.classList.contains('blue') ? 'blue' : null);

function polesIn(picture: Element): readonly Pole[] {
  return [...picture.querySelectorAll('line.rod')].flatMap((line) => {
    const colour = colourIn(line);
    return colour ? [{ colour, at: [size(line, 'x2'), size(line, 'y2')] as const }] : [];
  });
}

/**
 * What the poles drawn do to a north-seeking, red end at the compass: like repels, unlike draws, as the inverse square
 * (Coulomb's law, any book of physics). So the picture is asked whether such a rod would act so.
 */
function pullOf(poles: readonly Pole[], [x, y]: Flat): Flat {
  const pulls = poles.map(({ colour, at }): Flat => {
    const [right, down] = [at[0] - x, at[1] - y];
    const strength = (colour === 'blue' ? 1 : -1) / Math.hypot(right, down) ** 3;
    return [strength * right, strength * down];
  });
  return [pulls.reduce((sum, [right]) => sum + right, 0), pulls.reduce((sum, [, down]) => sum + down, 0)];
}

const compassIn = (picture: Element): Flat => {
  const compass = must(picture.querySelector('circle.compass'));
  return [size(compass, 'cx'), size(compass, 'cy')];
};

describe('the rod drawn for a parameter would pull the needle as Poisson’s equations say', () => {
  for (const [name, [pull, by]] of Object.entries(parameters)) {
    for (const value of [1, -1]) {
      it(`${name} ${value < 0 ? 'below' : 'above'} 0: ${pull}, ${by === 'always' ? 'always' : `by the field ${by}`}, on four headings in both hemispheres`, async () => {
        for (const vertical of [40, -40]) {
          for (const heading of [30, 150, 210, 330]) {
            const field: Vector = { forward: H * Math.cos(heading / RADIAN), starboard: -H * Math.sin(heading / RADIAN), down: vertical };
            const element = await bench({ source: 'forces', horizontal: H, vertical, heading: String(heading).padStart(3, '0'), view: 'iron', [name]: by === 'always' ? 3 * value : 0.1 * value });
            const picture = pictureOf(element, name);
            expect(outsideOf(picture)).to.deep.equal([]);
            const [toRight, toFoot] = axes[viewOf(must(picture.querySelector('path.hull')))];
            const poles = polesIn(picture);
            expect(poles.map(({ colour }) => colour).sort()).to.deep.equal(['blue', 'red']);
            const where = `${heading}, Z ${vertical}`;

            // It lies along the axis of the field that makes it a magnet; a magnet along the axis it pulls.
            const [[x1, y1], [x2, y2]] = [must(poles[0]).at, must(poles[1]).at];
            const along = y1 === y2 ? toRight : x1 === x2 ? toFoot : 'askew';
            expect(along, where).to.equal(by === 'always' ? pull : by);

            // And what it does to the needle is the term of the equation that bears its name, in sign and direction.
            const [right, down] = pullOf(poles, compassIn(picture));
            const drawn = toRight === pull ? right : toFoot === pull ? down : 0;
            const aside = toRight === pull ? down : right;
            expect(Math.sign(drawn), where).to.equal(value * (by === 'always' ? 1 : Math.sign(field[by])));
            expect(Math.abs(aside), where).to.be.below(Math.abs(drawn) * 0.7);

            // Iron made a magnet by a field has its red end where the field goes.
            if (by !== 'always') {
              const [red, blue] = [must(poles.find(({ colour }) => colour === 'red')).at, must(poles.find(({ colour }) => colour === 'blue')).at];
              const towards = along === toRight ? red[0] - blue[0] : red[1] - blue[1];
              expect(Math.sign(towards), where).to.equal(Math.sign(field[by]));
            }

            // The letters stand at the ends of their colours.
            const letters = [...picture.querySelectorAll('text')];
            expect(letters.length).to.equal(2);
            for (const letter of letters) {
              const from = ({ at: [x, y] }: Pole): number => Math.hypot(size(letter, 'x') - x, size(letter, 'y') - y);
              const near = [...poles].sort((first, second) => from(first) - from(second))[0];
              expect(letter.textContent.trim(), where).to.equal(must(near).colour === 'red' ? 'R' : 'B');
            }
          }
        }
      });
    }
  }

  it('without a value a rod is a faint line without colours, where the one above 0 would be', async () => {
    const [none, above] = [await bench({ view: 'iron' }), await bench({ view: 'iron', c: 0.1 })];
    const ends = (element: LubberIron): readonly Flat[] => [...pictureOf(element, 'c').querySelectorAll('line.rod')].map((line) => [size(line, 'x2'), size(line, 'y2')]);
    expect(ends(none)).to.deep.equal(ends(above));
    for (const name of Object.keys(parameters)) {
      expect(polesIn(pictureOf(none, name)), name).to.deep.equal([]);
      expect(pictureOf(none, name).querySelector('text'), name).to.equal(null);
    }
  });

  // On 090 the field runs across the ship: what lies fore and aft is no magnet, and what lies athwart is one.
  it('a rod across the field bears no colour', async () => {
    const element = await bench({ source: 'forces', horizontal: H, vertical: 40, heading: '090', view: 'iron', d: 0.1, b: 0.1 });
    expect(polesIn(pictureOf(element, 'd'))).to.deep.equal([]);
    expect(polesIn(pictureOf(element, 'b')).length).to.equal(2);
  });
});
