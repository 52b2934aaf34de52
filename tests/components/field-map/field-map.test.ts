import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/field-map/define.js';
import type { LubberFieldMap } from '../../../components/field-map/field-map.js';
import { assertAccessible } from '../../support/axe.js';
import { flat, input, must, problem, root, type } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

const text = (element: LubberFieldMap): string => flat(root(element).querySelector('.frame'));
const sheet = (element: LubberFieldMap): HTMLElement => root(element).querySelector('.sheet') as HTMLElement;
const status = (element: LubberFieldMap): string => flat(root(element).querySelector('[role=status]'));
const labels = (element: LubberFieldMap): string[] => [...root(element).querySelectorAll('.level')].map(flat);

const make = (attributes: Partial<LubberFieldMap> = {}): Promise<LubberFieldMap> =>
  fixture(html`<lubber-field-map
    .latitude=${attributes.latitude}
    .longitude=${attributes.longitude}
    .date=${attributes.date ?? '2026-11-26'}
    .view=${attributes.view ?? 'atlantic'}
    .lines=${attributes.lines ?? 'variation'}
  ></lubber-field-map>`);

async function press(element: LubberFieldMap, key: string, times = 1): Promise<void> {
  for (let count = 0; count < times; count += 1) await sendKeys({ press: key });
  await element.updateComplete;
}

/** Clicks the map at a share of its width and height. */
async function clickAt(element: LubberFieldMap, across: number, down: number): Promise<void> {
  const box = (root(element).querySelector('svg.map') as SVGElement).getBoundingClientRect();
  sheet(element).dispatchEvent(new MouseEvent('click', { bubbles: true, clientX: box.left + across * box.width, clientY: box.top + down * box.height }));
  await element.updateComplete;
}

/** A cell of the table by the words of its row and column. */
function cell(element: LubberFieldMap, latitude: string, longitude: string): string {
  const table = root(element).querySelector('table.world');
  const column = [...(table?.querySelectorAll('thead th') ?? [])].findIndex((one) => flat(one) === longitude);
  const found = [...(table?.querySelectorAll('tbody tr') ?? [])].find((one) => flat(one.querySelector('th')) === latitude);
  return flat(found?.querySelectorAll('td')[column - 1]);
}

afterEach(() => {
  document.documentElement.style.fontSize = '';
});

describe('a map without attributes', () => {
  it('is drawn for today and waits for a place', async () => {
    const element = await fixture<LubberFieldMap>(html`<lubber-field-map></lubber-field-map>`);
    expect((root(element).querySelector('#date') as HTMLInputElement).value).to.equal(new Date().toISOString().slice(0, 10));
    expect(text(element)).to.contain('Pick a place on the map, or enter one.');
    expect(element.result).to.equal(null);
    expect(root(element).innerHTML).not.to.match(/NaN|undefined|Invalid/);
    await assertAccessible(element);
  });
});

describe('a place picked by keys', () => {
  // WMM2020 report: 0N 120E at 2020.0: D 0.16, I -15.42, H 39624.4, F 41104.9.
  it('0N 120E in 2020: 24 steps to the east, then Enter, tell the printed elements', async () => {
    const element = await make({ date: '2020-01-01' });
    const heard: unknown[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event.detail));
    sheet(element).focus();
    await press(element, 'ArrowRight', 24);
    expect(status(element)).to.equal('00° 00′ N, 120° 00′ E. Variation 0.2 degrees east.');
    expect(heard.length).to.equal(0);
    await press(element, 'Enter');
    expect(text(element)).to.match(/Variation 0\.16° E.*−15\.42°.*39\.62 µT.*41\.10 µT/);
    expect(heard.length).to.equal(1);
    const detail = heard[0] as { inputs: Record<string, unknown>; result: { field: { model: string } } };
    expect(detail.inputs).to.deep.equal({ latitude: 0, longitude: 120, date: '2020-01-01' });
    expect(JSON.parse(JSON.stringify(detail))).to.deep.equal(detail);
  });

  it('steps by 1° with Shift, and comes onto the scale from a place between', async () => {
    const element = await make({ latitude: '33-24S', longitude: '018-25E' });
    sheet(element).focus();
    await press(element, 'ArrowUp');
    expect(status(element)).to.contain('30° 00′ S, 018° 25′ E');
    await sendKeys({ down: 'Shift' });
    await press(element, 'ArrowUp');
    await sendKeys({ up: 'Shift' });
    expect(status(element)).to.contain('29° 00′ S');
    await press(element, 'ArrowLeft');
    expect(status(element)).to.contain('015° 00′ E');
  });

  it('goes on across the 180° meridian and stops at a pole', async () => {
    const element = await make({ latitude: '88N', longitude: '178E' });
    sheet(element).focus();
    await press(element, 'ArrowUp', 2);
    expect(status(element)).to.contain('90° 00′ N');
    await press(element, 'ArrowRight', 2);
    expect(status(element)).to.contain('175° 00′ W');
  });

  it('Escape leaves the place as it was', async () => {
    const element = await make({ latitude: '10N', longitude: '020E' });
    sheet(element).focus();
    await press(element, 'ArrowUp');
    expect(root(element).querySelector('.cursor')).not.to.equal(null);
    await press(element, 'Escape');
    expect(root(element).querySelector('.cursor')).to.equal(null);
    expect(element.latitude).to.equal('10N');
  });

  it('a polar map ends at 50°', async () => {
    const element = await make({ view: 'south', latitude: '52S', longitude: '000E' });
    sheet(element).focus();
    await press(element, 'ArrowUp', 3);
    expect(status(element)).to.contain('50° 00′ S');
  });
});

describe('a place picked by pointer', () => {
  it('the middle of the Atlantic map is 0°, 0°', async () => {
    const element = await make();
    // The margin below the map is higher than that above it.
    const svg = root(element).querySelector('svg.map') as SVGElement;
    const height = svg.getBoundingClientRect().height;
    await clickAt(element, 0.5, (6 + (height - 28) / 2) / height);
    expect(element.result?.latitude).to.be.closeTo(0, 0.5);
    expect(element.result?.longitude).to.be.closeTo(0, 0.5);
  });
  it('the middle of the Pacific map is the 180° meridian', async () => {
    const element = await make({ view: 'pacific' });
    await clickAt(element, 0.5, 0.4);
    expect(Math.abs(element.result?.longitude ?? 0)).to.be.closeTo(180, 0.5);
  });
  it('the middle of the Arctic map is the north pole', async () => {
    const element = await make({ view: 'north' });
    await clickAt(element, 0.5, 0.5);
    expect(element.result?.latitude).to.be.closeTo(90, 0.3);
  });
  it('beside the map nothing is picked', async () => {
    const element = await make();
    await clickAt(element, 0.01, 0.03);
    expect(element.result).to.equal(null);
  });
  it('a place the host has fixed stays', async () => {
    const element = await make({ latitude: '10N', longitude: '020E' });
    element.locked = 'latitude longitude';
    await element.updateComplete;
    await clickAt(element, 0.5, 0.3);
    expect(element.latitude).to.equal('10N');
  });
});

describe('the date', () => {
  // In a narrow column the reason pushed the slider down, and while a date was typed the slider jumped to its first year.
  it('leaves the slider where it is, and at its year, while a date is refused', async () => {
    const element = await make();
    element.theme = 'day';
    const frame = document.createElement('div');
    frame.style.inlineSize = '320px';
    element.replaceWith(frame);
    frame.append(element);
    await until(() => element.width.narrow);
    await element.updateComplete;
    const year = input(element, 'year');
    const before = [year.getBoundingClientRect().top, input(element, 'date').getBoundingClientRect().top, year.value];
    await type(element, 'date', '2026-11-31');
    expect(problem(element, 'date')).to.match(/Accepted/);
    expect([year.getBoundingClientRect().top, input(element, 'date').getBoundingClientRect().top, year.value]).to.deep.equal(before);
    expect(frame.scrollWidth).to.be.at.most(320);
    // The row of the date was once laid out by a class with the name of a theme, and the whole map with it.
    expect(sheet(element).getBoundingClientRect().width).to.be.above(280);
    frame.remove();
  });

  it('goes by years with the slider’s keys, and the map with it', async () => {
    const element = await make();
    const before = root(element).querySelector('.line.zero')?.getAttribute('d');
    (root(element).querySelector('#year') as HTMLInputElement).focus();
    await press(element, 'ArrowLeft');
    expect(element.date).to.equal('2025-01-01');
    expect(root(element).querySelector('.line.zero')?.getAttribute('d')).not.to.equal(before);
    await press(element, 'Home');
    expect(text(element)).to.contain('Variation on 2015-01-01, by WMM2015v2');
    await press(element, 'End');
    expect(text(element)).to.contain('on 2030-01-01, by WMM2025');
  });

  it('outside the models the land stays, and the nearest year is offered', async () => {
    const element = await make({ date: '2031-05-01', latitude: '10N', longitude: '020E' });
    expect(text(element)).to.contain('hold from 2015.0 to 2030.0');
    expect(root(element).querySelector('.line')).to.equal(null);
    expect(root(element).querySelector('.land')?.getAttribute('d')).to.match(/^M/);
    must([...root(element).querySelectorAll('button')].find((one) => flat(one) === 'Take 1 January 2030 instead')).click();
    await element.updateComplete;
    expect(element.result?.field.model).to.equal('WMM2025');
  });

  it('a date that is none is said and kept', async () => {
    const element = await make({ date: '2026-13-01' });
    element.settle('date');
    await element.updateComplete;
    expect(flat(root(element).querySelector('#date-problem'))).to.match(/no such day/);
    expect(root(element).innerHTML).not.to.match(/NaN|Invalid/);
  });

  // Two reasons beside fields far apart, and beside the answer only that a place was awaited.
  it('and a place that is none are named together where the answer would stand', async () => {
    const element = await make({ date: '2026-13-01', latitude: '95N', longitude: '17E' });
    const named = (): string => flat(root(element).querySelector('.headline .wrong'));
    expect(named()).to.equal('To be put right: Latitude and UTC date.');
    element.latitude = '75N';
    await element.updateComplete;
    expect(named()).to.equal('To be put right: UTC date.');
    await assertAccessible(element);
  });

  it('an instant of the host gives its day', async () => {
    const element = await fixture<LubberFieldMap>(html`<lubber-field-map instant="2020-01-01T10:00:00Z"></lubber-field-map>`);
    expect(element.date).to.equal('2020-01-01');
  });
});

describe('what the map shows', () => {
  // WMM2025 at 2025.0, published: dip poles 85.762N 139.298E and 63.851S 135.078E (from memory).
  it('names the poles in words', async () => {
    expect(text(await make({ date: '2025-01-01' }))).to.contain('Dip poles at 85° 46′ N, 139° 18′ E and 63° 51′ S, 135° 05′ E.');
  });

  // WMM2020 report lines at 2020.0: 0N 120E H 39624.4, I -15.42; 80S 120W D 69.36; 80N 0E D -1.28.
  it('says the same in a table', async () => {
    const element = await make({ date: '2020-01-01' });
    expect(cell(element, '80°S', '120°W')).to.equal('69° E');
    expect(cell(element, '80°N', '0°')).to.equal('1° W');
    element.lines = 'dip';
    await element.updateComplete;
    expect(cell(element, '0°', '120°E')).to.equal('−15°');
    element.lines = 'horizontal';
    element.view = 'pacific';
    await element.updateComplete;
    expect(cell(element, '0°', '120°E')).to.equal('39.6');
  });

  it('labels its lines, with no two labels in one place', async () => {
    const element = await make();
    expect(labels(element)).to.include.members(['0°', '10°W', '20°W', '10°E', '20°E']);
    const places = [...root(element).querySelectorAll('.level')].map((one) => [Number(one.getAttribute('x')), Number(one.getAttribute('y'))] as const);
    places.forEach(([x, y], index) =>
      places.slice(index + 1).forEach(([otherX, otherY]) => expect(Math.hypot(x - otherX, y - otherY)).to.be.greaterThan(11)),
    );
  });

  // Places well inside land or sea, from any atlas; Antarctica's ring goes round its pole, and others over the seam of a map.
  const onLand = { atlantic: ['25S 135E', '65N 175W', '85S 000E', '85S 179E'], pacific: ['20N 001W', '20N 001E', '25S 135E', '85S 001W', '85S 179E'], north: ['75N 040W', '65N 100E'], south: ['90S 000E', '85S 120E'] } as const;
  const atSea = { atlantic: ['00N 030W', '60S 000E', '88N 000E'], pacific: ['00N 160W', '60S 170E', '00N 001W'], north: ['90N 000E', '55N 020W'], south: ['60S 060E', '52S 150W'] } as const;

  it('draws land where there is land, over the seam and round the pole, and shows nothing of it beside the map', async () => {
    const element = await make();
    for (const view of ['atlantic', 'pacific', 'north', 'south'] as const) {
      for (const [places, isLand] of [[onLand[view], true], [atSea[view], false]] as const) {
        for (const place of places) {
          const [latitude, longitude] = place.split(' ') as [string, string];
          Object.assign(element, { view, latitude, longitude });
          await element.updateComplete;
          const point = (root(element).querySelector('svg.map') as SVGSVGElement).createSVGPoint();
          const mark = root(element).querySelector('.picked') as SVGCircleElement;
          [point.x, point.y] = [mark.cx.baseVal.value, mark.cy.baseVal.value];
          expect((root(element).querySelector('.land') as SVGPathElement).isPointInFill(point), `${view} ${place}`).to.equal(isLand);
          expect((root(element).querySelector('.outline') as SVGPathElement).isPointInFill(point), `${view} ${place} on the map`).to.equal(true);
        }
      }
      expect(root(element).querySelector('[clip-path] > .land')).not.to.equal(null);
    }
  });

  it('warns of a place in the blackout zone', async () => {
    expect(text(await make({ latitude: '85-30N', longitude: '136E' }))).to.match(/blackout zone, a magnetic compass is not to be used/);
  });

  it('asks nothing of any network', async () => {
    const element = await make();
    const before = performance.getEntriesByType('resource').length;
    for (const view of ['pacific', 'north', 'south', 'atlantic'] as const) {
      element.view = view;
      await element.updateComplete;
    }
    await clickAt(element, 0.5, 0.4);
    expect(performance.getEntriesByType('resource').length).to.equal(before);
  });

  // Its figures stayed 11 pixels high where those of the page were twice as large (WCAG 2.2, 1.4.4).
  it('is drawn twice as large, lines and figures, on a page of letters twice as large', async () => {
    document.documentElement.style.fontSize = '200%';
    const element = await make();
    const map = root(element).querySelector('svg.map') as SVGSVGElement;
    const shown = (): number => map.getBoundingClientRect().width;
    const letters = (): number => (parseFloat(getComputedStyle(root(element).querySelector('.level') as SVGTextElement).fontSize) * shown()) / map.viewBox.baseVal.width;
    await until(() => letters() > 20);
    expect(letters()).to.be.within(21, 25);
    expect(shown()).to.be.within(sheet(element).clientWidth - 42, sheet(element).clientWidth);
  });

  it('fits a narrow column without sideways scrolling', async () => {
    const element = await make();
    element.style.inlineSize = '288px';
    // On a busy machine the next frame may be long in coming.
    await until(() => element.width.narrow);
    await element.updateComplete;
    expect((root(element).querySelector('svg.map') as SVGElement).getBoundingClientRect().width).to.be.at.most(288);
    expect(element.scrollWidth).to.be.at.most(288);
  });
});

describe('what the host can do', () => {
  it('keeps the answer back', async () => {
    const element = await make({ latitude: '10N', longitude: '020E' });
    element.answer = 'hidden';
    await element.updateComplete;
    expect(root(element).querySelector('[part=answer]')).to.equal(null);
    sheet(element).focus();
    await press(element, 'ArrowUp');
    expect(status(element)).not.to.contain('Variation');
  });

  it('hears nothing of what the host itself sets', async () => {
    const element = await make();
    let heard = 0;
    element.addEventListener('lubber-result', () => (heard += 1));
    Object.assign(element, { latitude: '10N', longitude: '020E', date: '2020-01-01' });
    await element.updateComplete;
    expect(heard).to.equal(0);
    expect(element.result?.longitude).to.equal(20);
  });
});

describe('every view passes axe', () => {
  for (const [theme, view, lines] of [
    ['day', 'atlantic', 'variation'],
    ['dusk', 'north', 'dip'],
    ['night', 'south', 'horizontal'],
  ] as const) {
    it(`${theme}, ${view}, ${lines}`, async () => {
      const element = await make({ view, lines, latitude: '10N', longitude: '020E' });
      element.theme = theme;
      root(element).querySelector('details')?.setAttribute('open', '');
      await element.updateComplete;
      await assertAccessible(element);
    });
  }
});
