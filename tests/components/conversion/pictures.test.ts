import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/conversion/define.js';
import type { LubberConversion } from '../../../components/conversion/conversion.js';
import { directionOf, outsideOf, size } from '../../support/dividers.js';
import { flat, must, root } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

async function drawn(given: Readonly<Record<string, string>>): Promise<ShadowRoot> {
  const element = await fixture<LubberConversion>(html`<lubber-conversion></lubber-conversion>`);
  for (const [name, value] of Object.entries(given)) element.setAttribute(name, value);
  await element.updateComplete;
  await until(() => root(element).querySelector('svg.chain') !== null);
  return root(element);
}

const of = (shadow: ShadowRoot, kind: string): number => directionOf(must(shadow.querySelector(`svg.norths line.${kind}`)));

// True = compass + deviation + variation, east positive; compass north lies by variation and deviation from true north. Sums by hand.
const cases = [
  { given: { kind: 'course', heading: '100', 'heading-by': 'compass', variation: '10W', deviation: '4E' }, magnetic: -10, compass: -6, direction: 94 },
  { given: { kind: 'course', heading: '355', 'heading-by': 'compass', variation: '12E', deviation: '3E' }, magnetic: 12, compass: 15, direction: 10 },
  { given: { kind: 'course', heading: '002', 'heading-by': 'true', variation: '20W', deviation: '5W' }, magnetic: -20, compass: -25, direction: 2 },
  { given: { kind: 'bearing', heading: '270', 'heading-by': 'compass', bearing: '045', 'bearing-by': 'compass', variation: '5E', deviation: '2W' }, magnetic: 5, compass: 3, direction: 48, head: 273 },
] as const;

describe('the picture of the three norths', () => {
  for (const { given, ...angles } of cases) {
    it(`has every ray at its angle: ${Object.entries(given).map(([name, value]) => `${name} ${value}`).join(', ')}`, async () => {
      const shadow = await drawn(given);
      expect(outsideOf(must(shadow.querySelector('svg.norths')))).to.deep.equal([]);
      expect(of(shadow, 'true')).to.be.closeTo(0, 1e-9);
      expect(of(shadow, 'magnetic')).to.be.closeTo(angles.magnetic, 1e-6);
      expect(of(shadow, 'compass')).to.be.closeTo(angles.compass, 1e-6);
      for (const ray of ['direction', 'head'] as const) {
        const expected = ray in angles ? (angles as Record<string, number>)[ray] : undefined;
        if (expected === undefined) expect(shadow.querySelector(`svg.norths line.${ray}`)).to.equal(null);
        else expect(Math.cos(((of(shadow, ray) - expected) * Math.PI) / 180)).to.be.closeTo(1, 1e-12);
      }
      // From the ship's place, and each name nearer to its own ray's end than to any other's.
      const lines = [...shadow.querySelectorAll('svg.norths line')];
      for (const line of lines) expect([size(line, 'x1'), size(line, 'y1')]).to.deep.equal([0, 0]);
      const names = [...shadow.querySelectorAll('svg.norths text')];
      expect(names).to.have.length(lines.length);
      names.forEach((name, place) => {
        const away = lines.map((line) => Math.hypot(size(name, 'x') - size(line, 'x2'), size(name, 'y') - size(line, 'y2')));
        expect(away.indexOf(Math.min(...away)), flat(name)).to.equal(place);
      });
    });
  }
});

describe('the picture of the chain', () => {
  // Gyro 100, error 1 W, so true 099; variation 10 W: magnetic 109; deviation 4 E: compass 105. By hand.
  for (const [width, kind] of [[800, 'across'], [300, 'down']] as const) {
    it(`goes from gyro to compass with what lies between, ${kind}`, async () => {
      const shadow = await drawn({ kind: 'course', heading: '100', 'heading-by': 'gyro', 'gyro-error': '1W', variation: '10W', deviation: '4E' });
      (shadow.host as HTMLElement).style.cssText = `display: block; inline-size: ${width}px`;
      await until(() => must(shadow.querySelector('svg.chain')).classList.contains('down') === (kind === 'down'));
      const chain = must(shadow.querySelector('svg.chain'));
      expect(outsideOf(chain)).to.deep.equal([]);
      const along = kind === 'down' ? 'y' : 'x';
      const stations = [...chain.querySelectorAll('circle')];
      const near = (selector: string, at: number, room: number): string =>
        [...chain.querySelectorAll(selector)].filter((text) => Math.abs(size(text, along) - at) < room).map((text) => flat(text).replace(/\u00a0/g, ' ')).join(' ');
      expect(stations.map((station) => near('text.value', size(station, `c${along}`), 8))).to.deep.equal(['100.0°', '099.0°', '109.0°', '105.0°']);
      const between = stations.slice(1).map((station, place) => (size(station, `c${along}`) + size(must(stations[place]), `c${along}`)) / 2);
      expect(between.map((at) => /[\d.]+° [EW]$/.exec(near('text.soft', at, 8))?.[0])).to.deep.equal(['1.0° W', '10.0° W', '4.0° E']);
      expect(stations.map((station) => station.getAttribute('fill') === 'var(--accent)')).to.deep.equal([true, false, false, false]);
    });
  }
});
