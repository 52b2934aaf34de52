import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/field-map/define.js';
import type { LubberFieldMap } from '../../../components/field-map/field-map.js';
import { size } from '../../support/dividers.js';
import { flat, must, root } from '../../support/in-widget.js';
import { awayFrom, drawn, nearest, piecesOf, svgOf, whereOn } from './map-on-paper.js';
import type { Point } from './map-on-paper.js';

interface FieldLine {
  readonly utc: string;
  readonly decimal_year: number;
  readonly lat: number;
  readonly lon: number;
  readonly alt_km: number;
  readonly H: number;
}

/** What was worked out independently of the code; the file's header says how. */
const reference = (await (await fetch(new URL('../../reference/field.json', import.meta.url))).json()) as {
  readonly random_wmm2025: readonly FieldLine[];
  readonly magnetic_equator: readonly { readonly decimal_year: number; readonly lon: number; readonly lat: number }[];
  readonly poles: readonly {
    readonly model: string;
    readonly decimal_year: number;
    readonly north_dip_pole: { readonly lat: number; readonly lon: number };
    readonly south_dip_pole: { readonly lat: number; readonly lon: number };
    readonly north_geomagnetic_pole: { readonly lat_geodetic: number; readonly lon: number; readonly south_pole_lon: number };
  }[];
};

type State = Partial<Pick<LubberFieldMap, 'view' | 'lines' | 'date' | 'latitude' | 'longitude'>>;

const make = (state: State): Promise<LubberFieldMap> =>
  fixture(html`<lubber-field-map
    .view=${state.view ?? 'atlantic'}
    .lines=${state.lines ?? 'variation'}
    .date=${state.date ?? '2026-11-26'}
    .latitude=${state.latitude}
    .longitude=${state.longitude}
  ></lubber-field-map>`);

async function set(element: LubberFieldMap, state: State): Promise<void> {
  Object.assign(element, state);
  await element.updateComplete;
}

const views = ['atlantic', 'pacific', 'north', 'south'] as const;
const worldViews = ['atlantic', 'pacific'] as const;
const apart = ([x, y]: Point, [toX, toY]: Point): number => Math.hypot(x - toX, y - toY);
const markOf = (element: LubberFieldMap, name: string): Point => {
  const mark = must(root(element).querySelector(`circle.${name}`));
  return [size(mark, 'cx'), size(mark, 'cy')];
};
const kinds = (element: LubberFieldMap): Element[] => [...svgOf(element).querySelectorAll('path.line')];
/** Paths are written to a tenth of a pixel. */
const TENTH = 0.11;

describe('the place picked is marked where the projection puts it', () => {
  const places: Readonly<Record<(typeof views)[number], readonly (readonly [number, number])[]>> = {
    atlantic: [[0, 0], [-60, -150], [60, -150], [45, 100], [-33.4, 18.42], [0, 179.9], [0, -179.9], [90, 0], [-90, 0], [89.9, 179.9]],
    pacific: [[0, 180], [0, -179.9], [0, 179.9], [-60, -150], [-60, 150], [0, 0.1], [0, -0.1], [90, 180], [-90, 180]],
    north: [[90, 0], [50, 0], [50, 90], [50, 180], [50, -90], [80.8, -72.8], [60, 150]],
    south: [[-90, 0], [-50, 0], [-50, 90], [-50, 180], [-50, -90], [-60, -150], [-63.9, 135]],
  };
  for (const view of views) {
    it(`${view}: ${places[view].map((place) => place.join('/')).join(', ')}`, async () => {
      const element = await make({ view });
      for (const [latitude, longitude] of places[view]) {
        await set(element, { latitude, longitude });
        expect(apart(markOf(element, 'picked'), whereOn(element, latitude, longitude)), `${latitude} ${longitude}`).to.be.below(TENTH);
      }
    });
  }

  it('corners by eye: east to the right, north up, the date line at the edge, the pole half as wide as the equator', async () => {
    const element = await make({ latitude: 0, longitude: 179.99 });
    const { x, y, width, height } = drawn(element, 'outline').getBBox();
    const right = markOf(element, 'picked');
    expect(right[0]).to.be.closeTo(x + width, 0.2);
    await set(element, { longitude: -179.99 });
    expect(markOf(element, 'picked')[0]).to.be.closeTo(x, 0.2);
    await set(element, { latitude: 90, longitude: 179.99 });
    const corner = markOf(element, 'picked');
    expect(corner[1]).to.be.closeTo(y, 0.2);
    // The poles are lines somewhat more than half as long as the equator: the polynomial of the source at 90° gives 0.55.
    expect((corner[0] - x - width / 2) / (width / 2)).to.be.closeTo(0.55, 0.01);
    await set(element, { latitude: -90 });
    expect(markOf(element, 'picked')[1]).to.be.closeTo(y + height, 0.2);
  });

  it('a click there picks that place', async () => {
    const element = await make({});
    for (const [view, latitude, longitude] of [['atlantic', -60, -150], ['atlantic', 51.3, 3.2], ['pacific', -41, 174.8], ['pacific', 20, -157], ['north', 69.6, 18.9], ['south', -64.8, -62.9]] as const) {
      await set(element, { view });
      const svg = svgOf(element);
      svg.scrollIntoView({ block: 'center' });
      const [x, y] = whereOn(element, latitude, longitude);
      const at = new DOMPoint(x, y).matrixTransform(must(svg.getScreenCTM()));
      svg.dispatchEvent(new MouseEvent('click', { bubbles: true, clientX: at.x, clientY: at.y }));
      await element.updateComplete;
      const picked = must(element.result);
      // Chromium cuts a pointer's place to whole pixels.
      expect(apart(whereOn(element, picked.latitude, picked.longitude), [x, y]), `${view} ${latitude} ${longitude}`).to.be.below(1.7);
    }
  });

  // Seen from above it, the globe turns eastward with the sun round the south pole's map and against it round the north pole's.
  const steps = { atlantic: [20, 30], pacific: [20, -170], north: [70, 30], south: [-70, 30] } as const;
  for (const view of views) {
    it(`${view}: the arrow keys move the cross-hair and its mark together, north, south, east and west`, async () => {
      const [latitude, longitude] = steps[view];
      const element = await make({ view, latitude, longitude });
      must(root(element).querySelector<HTMLElement>('.sheet')).focus();
      for (const [key, north, east] of [['ArrowUp', 5, 0], ['ArrowRight', 5, 5], ['ArrowDown', 0, 5], ['ArrowLeft', 0, 0]] as const) {
        await sendKeys({ press: key });
        await element.updateComplete;
        const at = whereOn(element, Math.round(latitude / 5) * 5 + north, Math.round(longitude / 5) * 5 + east);
        expect(apart(markOf(element, 'cursor'), at), key).to.be.below(TENTH);
        // Both lines of the cross-hair go through it.
        const crossing = piecesOf(drawn(element, 'cross')).filter((line) => awayFrom(at, line) < 0.6);
        expect(crossing.length, key).to.equal(2);
      }
    });
  }
});

describe('the graticule and the figures at the edge', () => {
  for (const view of views) {
    it(`${view}: meridians and parallels run through their places, and each figure stands at its own`, async () => {
      const element = await make({ view });
      const polar = view === 'north' || view === 'south';
      const sign = view === 'south' ? -1 : 1;
      const lines = piecesOf(drawn(element, 'graticule'));
      const crossings = polar ? [[60, 30], [70, -90], [80, 150]] : [[30, 60], [-60, -120], [60, 150], [-30, 30]];
      for (const [latitude = NaN, longitude = NaN] of crossings) {
        const at = whereOn(element, polar ? sign * latitude : latitude, longitude);
        expect(lines.filter((line) => awayFrom(at, line) < 0.3).length, `${latitude} ${longitude}`).to.equal(2);
      }
      const figures = [...svgOf(element).querySelectorAll('text.soft')].map((figure) => ({ text: flat(figure), at: [size(figure, 'x'), size(figure, 'y')] as const }));
      expect(figures.length).to.be.greaterThan(5);
      for (const { text, at } of figures) {
        const [, degrees = '', letter = ''] = /^(\d+)°([NSEW]?)$/.exec(text) ?? [];
        const value = (letter === 'S' || letter === 'W' ? -1 : 1) * Number(degrees);
        const isLatitude = letter === 'N' || letter === 'S' || (!polar && value === 0 && Math.abs(at[1] - whereOn(element, 0, 0)[1]) < 20);
        const middle = view === 'pacific' ? -179.99 : 0;
        const place = isLatitude ? whereOn(element, value, polar ? 0 : view === 'pacific' ? 0.01 : middle - 179.99) : whereOn(element, polar ? sign * 50 : -90, value);
        // Beside or below its line, by no more than a letter and a half.
        expect(apart(at, place), text).to.be.below(17);
      }
    });
  }
});

describe('the lines run where the field has their value', () => {
  // The official test values of WMM2020 (NOAA and BGS), and the independent evaluation of WMM2025, tests/reference/field.json:
  // places at sea level where an element is within a tenth of a degree, or a third of a hundredth of H, of a line's value.
  const cases = [
    { lines: 'variation', date: '2022-07-02', latitude: 80, longitude: 0, level: '0°', views: ['north'], value: 'D 0.01' },
    { lines: 'variation', date: '2022-07-02', latitude: 0, longitude: 120, level: '0°', views: worldViews, value: 'D -0.06' },
    { lines: 'variation', date: '2029-08-01', latitude: 17.3891, longitude: -91.64, level: '0°', views: worldViews, value: 'D 0.101' },
    { lines: 'variation', date: '2028-09-07', latitude: 60.6277, longitude: 110.7073, level: '10°W', views: ['atlantic', 'pacific', 'north'], value: 'D -9.930' },
    { lines: 'variation', date: '2025-10-09', latitude: -9.8634, longitude: -124.8303, level: '10°E', views: worldViews, value: 'D 10.003' },
    { lines: 'dip', date: '2027-08-14', latitude: -47.8945, longitude: -179.9356, level: '−70°', views: worldViews, value: 'I -70.141' },
    { lines: 'dip', date: '2027-08-02', latitude: 26.15, longitude: -66.9741, level: '50°', views: worldViews, value: 'I 50.118' },
    { lines: 'dip', date: '2029-02-16', latitude: -60.1671, longitude: 99.8667, level: '−80°', views: ['atlantic', 'pacific', 'south'], value: 'I -79.881' },
    { lines: 'horizontal', date: '2029-05-08', latitude: 12.5817, longitude: 73.0609, level: '40', views: worldViews, value: 'H 40098' },
    { lines: 'horizontal', date: '2028-12-07', latitude: 50.8396, longitude: -35.6057, level: '20', views: worldViews, value: 'H 19917' },
    { lines: 'horizontal', date: '2029-07-20', latitude: -15.7415, longitude: 0, level: '15', views: ['atlantic'], value: 'H 15070' },
    { lines: 'horizontal', date: '2026-02-09', latitude: -5.2606, longitude: 17.3419, level: '25', views: worldViews, value: 'H 24936' },
  ] as const;
  for (const { lines, date, latitude, longitude, level, views: on, value } of cases) {
    for (const view of on) {
      it(`${view}: the line of ${level} passes ${latitude} ${longitude} on ${date}, ${value}`, async () => {
        const element = await make({ view, lines, date });
        const at = whereOn(element, latitude, longitude);
        const found = nearest(at, kinds(element));
        // A tenth of a degree of the field is less than a degree of the map there, which is two pixels of the world, seven of a pole.
        expect(found.away).to.be.below(2);
        const kind = level === '0°' ? 'zero' : level.includes('W') || level.startsWith('−') ? 'negative' : 'positive';
        expect([...found.path.classList]).to.include(kind);
        const said = [...svgOf(element).querySelectorAll('text.level')].filter((label) => awayFrom([size(label, 'x'), size(label, 'y')], found.piece) < 2.7).map(flat);
        expect(new Set(said)).to.deep.equal(new Set([level]));
      });
    }
  }

  it('the magnetic equator passes the places worked out apart, right across both maps', async () => {
    const element = await make({});
    for (const view of worldViews) {
      for (const { decimal_year: year, lon, lat } of reference.magnetic_equator) {
        await set(element, { view, date: `${year}-01-01` });
        // The seam belongs to both edges.
        const at = whereOn(element, lat, lon === -180 ? -179.99 : lon);
        expect(nearest(at, [drawn(element, 'equator')]).away, `${view} ${year} ${lon}`).to.be.below(0.4);
      }
    }
  });

  it('the poles of both kinds stand where they were worked out apart, and the geographic pole in the middle of its map', async () => {
    const element = await make({});
    for (const { model, decimal_year: year, north_dip_pole: north, south_dip_pole: south, north_geomagnetic_pole: axis } of reference.poles) {
      // The models the map takes for those days.
      if (!((model === 'WMM2025' && year === 2025) || (model === 'WMM2020' && year === 2020))) continue;
      for (const view of views) {
        await set(element, { view, date: `${year}-01-01` });
        const dips = [...svgOf(element).querySelectorAll('circle.pole.filled')].map((sign): Point => [size(sign, 'cx'), size(sign, 'cy')]);
        const axes = [...svgOf(element).querySelectorAll('path.pole.open')].map((sign): Point => {
          const [, x, top] = /^M([\d.-]+) ([\d.-]+)/.exec(sign.getAttribute('d') ?? '') ?? [];
          return [Number(x), Number(top) + 5];
        });
        const wanted = (northern: readonly [number, number], southern: readonly [number, number]): readonly Point[] => [
          ...(view === 'south' ? [] : [whereOn(element, ...northern)]),
          ...(view === 'north' ? [] : [whereOn(element, ...southern)]),
        ];
        for (const [signs, places] of [
          [dips, wanted([north.lat, north.lon], [south.lat, south.lon])],
          [axes, wanted([axis.lat_geodetic, axis.lon], [-axis.lat_geodetic, axis.south_pole_lon])],
        ] as const) {
          expect(signs.length).to.equal(places.length);
          signs.forEach((sign, index) => expect(apart(sign, must(places[index])), `${view} ${year}`).to.be.below(0.6));
        }
      }
    }
  });

  it('the hatching lies where H is below 6 and below 2 µT, and nowhere else', async () => {
    const element = await make({});
    const near = reference.random_wmm2025.filter(({ H, alt_km: height, lat }) => height === 0 && Math.abs(lat) > 50 && H < 12_000);
    expect(near.length).to.be.greaterThan(12);
    expect(near.some(({ H }) => H < 2000)).to.equal(true);
    for (const { lat, lon, H, utc } of near) {
      for (const view of [...worldViews, lat > 0 ? 'north' : 'south'] as const) {
        await set(element, { view, date: utc.slice(0, 10) });
        // A pole is the very edge of the world.
        const [x, y] = whereOn(element, Math.max(-89.7, Math.min(89.7, lat)), lon);
        const [caution, blackout] = [...svgOf(element).querySelectorAll<SVGPathElement>('path.zone')].map((zone) => zone.isPointInFill(new DOMPoint(x, y)));
        expect([caution, blackout], `${view} ${lat} ${lon}, H ${H}`).to.deep.equal([H < 6000, H < 2000]);
      }
    }
  });
});
