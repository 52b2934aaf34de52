import { aTimeout, expect, fixture, html, waitUntil } from '@open-wc/testing';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import '../../../components/deviation-curve/define.js';
import type { LubberDeviationCurve } from '../../../components/deviation-curve/deviation-curve.js';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import { assertAccessible } from '../../support/axe.js';
import { must } from '../../support/in-widget.js';

/** The chart library comes when it comes. */
const SLOWLY = { timeout: 60_000 };

const root = (element: LubberDeviationCurve): ShadowRoot => element.shadowRoot as ShadowRoot;
const text = (element: LubberDeviationCurve): string => ((root(element).querySelector('.frame') as HTMLElement).textContent ?? '').replace(/\s+/g, ' ');
const headline = (element: LubberDeviationCurve): string => (root(element).querySelector('.headline')?.textContent ?? '').replace(/\s+/g, ' ').trim();
const readout = (element: LubberDeviationCurve): string => (root(element).querySelector('output')?.textContent ?? '').replace(/\s+/g, ' ').trim();
const find = <T extends Element>(element: LubberDeviationCurve, selector: string): T => {
  const found = root(element).querySelector<T>(selector);
  if (!found) throw new Error(`no ${selector}`);
  return found;
};

// Handbook of Magnetic Compass Adjustment, art. 501, fig. 501: deviations on the eight points.
const printed = 'N 10.5E\nNE 20.0E\nE 11.5E\nSE 1.2W\nS 5.5W\nSW 8.0W\nW 12.5W\nNW 6.8W';
// Its coefficients by the eight points: A 1.0 B 12.0 C 8.0 D 5.0 E 1.5; least squares agree within 0.1.
const coefficients = { A: 1, B: 12, C: 8, D: 5, E: 1.5 };
const left: DeviationCard = { kind: 'approximate', coefficients: { A: 0.4, B: -1.2, C: 1, D: 1.5, E: 0 } };

const typed = (): Promise<LubberDeviationCurve> => fixture(html`<lubber-deviation-curve .table=${printed}></lubber-deviation-curve>`);

afterEach(() => {
  document.documentElement.style.fontSize = '';
});

describe('a curve without attributes', () => {
  it('says how to get one', async () => {
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve></lubber-deviation-curve>`);
    expect(headline(element)).to.contain('Type or paste a table');
    expect(element.result).to.equal(null);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid|null/);
    await assertAccessible(element);
  });
});

describe('readings that make no curve beside a card that has one', () => {
  // The coefficients of three readings stood below the largest deviation of the card as if they were the card's.
  it('say in words whose the coefficients are', async () => {
    const few = [0, 90, 270].map((heading) => ({ heading, deviation: heading === 90 ? 3 : -1 }));
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve .card=${left} .points=${few}></lubber-deviation-curve>`);
    expect(headline(element)).to.contain('Coefficients of the readings alone; the largest deviation is that of the curve “card”: A');
    expect(headline(element)).not.to.contain('of the curve through them');
  });
});

describe('a curve typed by keyboard', () => {
  it('passes through the printed deviations and says the largest (Handbook of Magnetic Compass Adjustment, fig. 501)', async () => {
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve></lubber-deviation-curve>`);
    find<HTMLTextAreaElement>(element, '#table').focus();
    for (const line of printed.split('\n')) {
      await sendKeys({ type: line });
      await sendKeys({ press: 'Enter' });
    }
    await sendKeys({ press: 'Tab' });
    await element.updateComplete;
    expect(headline(element)).to.match(/Largest 20\.0° E\s*on 045°, beyond the limit of 5°/);
    const rows = [...root(element).querySelectorAll('.figures tbody tr')].map((row) => (row.textContent ?? '').replace(/\s+/g, ' ').trim());
    expect(rows[0]).to.equal('000° 10.5° E 010.5°');
    expect(rows[9]).to.equal('135° 1.2° W 133.8°');
    expect(rows.length).to.equal(24);
  });

  it('as readings gives the printed coefficients', async () => {
    const element = await typed();
    element.tableIs = 'readings';
    await element.updateComplete;
    for (const [name, value] of Object.entries(coefficients)) {
      expect(element.result?.fit?.coefficients[name as 'A'], name).to.be.closeTo(value, 0.1);
    }
    expect(headline(element)).to.match(/B \+11\.9°/);
    expect(headline(element)).to.contain('Coefficients of the readings and of the curve through them');
    expect(find(element, '.static polygon').getAttribute('points')?.length).to.be.greaterThan(100);
  });

  it('tells deviation and magnetic heading by the arrow keys, politely', async () => {
    const element = await typed();
    element.heading = '044';
    await element.updateComplete;
    const slider = find<HTMLInputElement>(element, '#cursor');
    slider.focus();
    await sendKeys({ press: 'ArrowRight' });
    await element.updateComplete;
    expect(slider.value).to.equal('45');
    expect(slider.getAttribute('aria-valuetext')).to.equal('045°');
    expect(readout(element)).to.contain('045° by compass: deviation 20.0° E, magnetic 065.0°.');
    expect(find(element, 'output').getAttribute('aria-live')).to.equal('polite');
  });
});

describe('the picture', () => {
  it('is a figure whose name says the extremes and the crossings', async () => {
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve .card=${{ kind: 'approximate', coefficients: { A: 0, B: 4, C: 0, D: 0, E: 0 } }}></lubber-deviation-curve>`);
    // A pure B of 4°: largest on east and west, nothing on north and south.
    expect(find(element, '[role=figure]').getAttribute('aria-label')).to.equal('card: from 4.0 degrees west on 270° to 4.0 degrees east on 090°; no deviation on 000°, 180°.');
  });

  it('gets a canvas that fills its column, hidden from assistive technology; the vectors stay for print', async () => {
    const element = await typed();
    await waitUntil(() => root(element).querySelector('canvas') !== null, 'no canvas', SLOWLY);
    await waitUntil(() => find(element, 'figure').classList.contains('drawn'), 'not drawn', SLOWLY);
    const live = find<HTMLElement>(element, '.live');
    expect(live.getAttribute('aria-hidden')).to.equal('true');
    expect(Math.abs(find<HTMLElement>(element, '.uplot').getBoundingClientRect().width - live.getBoundingClientRect().width)).to.be.lessThan(2);
    expect(getComputedStyle(find(element, '.static')).display).to.equal('none');
    expect(find(element, '.static svg')).not.to.equal(null);
  });

  // The figures of its axes stayed 12 pixels high where those of the page were twice as large (WCAG 2.2, 1.4.4).
  it('leaves its figures twice the room on a page of letters twice as large', async () => {
    const room = async (): Promise<number> => {
      const element = await typed();
      await waitUntil(() => root(element).querySelector('.u-over') !== null, 'no canvas', SLOWLY);
      return find(element, '.u-over').getBoundingClientRect().left - find(element, '.uplot').getBoundingClientRect().left;
    };
    const usual = await room();
    document.documentElement.style.fontSize = '200%';
    expect(await room()).to.be.closeTo(2 * usual, 2);
  });

  it('follows its width', async () => {
    const element = await typed();
    await waitUntil(() => root(element).querySelector('canvas') !== null, 'no canvas', SLOWLY);
    element.style.setProperty('inline-size', '400px');
    await waitUntil(() => find<HTMLElement>(element, '.uplot').getBoundingClientRect().width <= 400, 'not so narrow', SLOWLY);
    expect(document.documentElement.scrollWidth).to.be.at.most(innerWidth);
  });

  it('follows the theme', async () => {
    const element = await typed();
    element.theme = 'day';
    const pixels = (): string => find<HTMLCanvasElement>(element, 'canvas').toDataURL();
    await waitUntil(() => root(element).querySelector('canvas') !== null, 'no canvas', SLOWLY);
    await waitUntil(() => find(element, 'figure').classList.contains('drawn'), 'not drawn', SLOWLY);
    await element.updateComplete;
    await aTimeout(150);
    const day = pixels();
    await aTimeout(150);
    expect(pixels(), 'drawn to its end').to.equal(day);
    element.theme = 'night';
    await waitUntil(() => pixels() !== day, 'the same picture', SLOWLY);
  });

  it('reads the heading under the pointer', async () => {
    const element = await typed();
    await waitUntil(() => root(element).querySelector('.u-over') !== null, 'no canvas', SLOWLY);
    element.scrollIntoView();
    const over = find(element, '.u-over').getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(over.left + over.width / 2), Math.round(over.top + over.height / 2)] });
    await waitUntil(() => element.heading !== undefined, 'no heading', SLOWLY);
    expect(Number(element.heading)).to.be.closeTo(180, 1);
  });

  it('leaves nothing running when it is taken away', async () => {
    const element = await typed();
    await waitUntil(() => root(element).querySelector('canvas') !== null, 'no canvas', SLOWLY);
    element.remove();
    expect(root(element).querySelector('canvas')).to.equal(null);
  });
});

describe('several curves', () => {
  it('shows before and after by name, the one in use first', async () => {
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve .cards=${[{ name: 'as left', card: left }]} .beforeCard=${{ kind: 'approximate', coefficients }}></lubber-deviation-curve>`);
    const heads = [...root(element).querySelectorAll('.figures thead th')].map((head) => head.textContent);
    expect(heads).to.deep.equal(['By compass', 'as left', 'before', 'Magnetic']);
    expect(root(element).querySelectorAll('.key li').length).to.equal(3);
    expect(headline(element)).to.contain('within the limit');
  });

  it('marks a doubtful reading and one that is struck out', async () => {
    const points = Array.from({ length: 16 }, (_, place) => {
      const turn = (place * 22.5 * Math.PI) / 180;
      // A pure B of 3° with a little scatter of our own, and one reading 8° out.
      return { heading: place * 22.5, deviation: 3 * Math.sin(turn) + (place % 2 ? 0.2 : -0.2) + (place === 5 ? 8 : 0), ...(place === 9 ? { struck: true } : {}) };
    });
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve .points=${points}></lubber-deviation-curve>`);
    expect(element.result?.fit?.suspects).to.deep.equal([5]);
    expect(root(element).querySelectorAll('.static .suspect').length).to.equal(1);
    expect(root(element).querySelectorAll('.static .struck').length).to.equal(1);
    expect(text(element)).to.contain('Number of readings that do not fit the rest: 1.');
    expect(text(element)).to.contain('doubtful reading');
  });
});

describe('the diagonal diagram', () => {
  it('leads from 045 by compass out to 20.0° E and back to 065 magnetic', async () => {
    const element = await typed();
    element.heading = '045';
    await element.updateComplete;
    find<HTMLDetailsElement>(element, '[part=diagram]').open = true;
    expect(find(element, '.diagonal').getAttribute('aria-label')).to.match(/from 045° by compass out to a deviation of 20\.0°\sE and back to 065\.0° magnetic/);
    const walk = find<SVGPathElement>(element, '.walk').getAttribute('d') ?? '';
    const [, start, turn, finish] = /M[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)L[\d.]+ ([\d.]+)/.exec(walk) ?? [];
    // Out and back slant alike, so the turn lies midway between compass and magnetic heading.
    expect(Number(turn)).to.be.closeTo((Number(start) + Number(finish)) / 2, 1e-6);
    expect(Number(finish) - Number(start)).to.be.closeTo(20 * 3, 1e-6);
  });
});

describe('hard input', () => {
  it('a curve too steep for one answer lists what answers, without NaN', async () => {
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve heading="090" card='{"kind":"approximate","coefficients":{"A":0,"B":0,"C":0,"D":35,"E":0}}'></lubber-deviation-curve>`);
    expect(readout(element)).to.match(/by compass all answer/);
    expect(text(element)).to.contain('too steep for one answer');
    expect(text(element)).not.to.match(/NaN|undefined/);
  });

  it('too few readings give no curve and say so', async () => {
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve points='[{"heading":0,"deviation":1},{"heading":10,"deviation":2}]'></lubber-deviation-curve>`);
    expect(element.result).to.equal(null);
    expect(headline(element)).to.contain('The readings do not determine');
  });

  it('says which of the things handed over cannot be read', async () => {
    const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve points='[{"heading":0}]' cards='[{"name":"a","card":{"kind":"tabel"}}]' card="{"></lubber-deviation-curve>`);
    expect(text(element)).to.match(/readings given to this widget cannot be read at points\[0\]/).and.match(/cards\[0\]\.card.* is none of/).and.match(/card is not JSON/);
  });

  it('bad lines are named beside the field and kept', async () => {
    const element = await typed();
    element.table = '000 2.5\n045 3E';
    await element.updateComplete;
    expect(find(element, '#table-problem').textContent).to.match(/Line 1.*E or W/);
    expect(find<HTMLTextAreaElement>(element, '#table').value).to.equal('000 2.5\n045 3E');
    element.heading = '400';
    await element.updateComplete;
    expect(headline(element)).to.contain('To be put right: Deviations and Heading by compass.');
    await assertAccessible(element);
  });
});

describe('what the host can do', () => {
  it('hears lubber-result for what the user did, and only for that', async () => {
    const element = await typed();
    const heard: unknown[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event.detail));
    element.limit = 'panama-canal';
    await element.updateComplete;
    expect(heard.length).to.equal(0);
    const select = find<HTMLSelectElement>(element, '#limit');
    select.value = 'after-adjustment';
    select.dispatchEvent(new Event('change'));
    await element.updateComplete;
    expect(heard.length).to.equal(1);
    expect(JSON.parse(JSON.stringify(heard[0]))).to.deep.equal(heard[0]);
  });

  it('locks the table and keeps the answer back', async () => {
    const element = await typed();
    element.locked = 'table';
    element.answer = 'hidden';
    await element.updateComplete;
    expect(find<HTMLTextAreaElement>(element, '#table').readOnly).to.equal(true);
    expect(root(element).querySelector('.answer')).to.equal(null);
  });

  for (const theme of ['day', 'dusk', 'night'] as const) {
    it(`passes axe with table and diagram open, ${theme}`, async () => {
      const element = await fixture<LubberDeviationCurve>(html`<lubber-deviation-curve theme=${theme} .table=${printed} table-is="readings" .beforeCard=${left}></lubber-deviation-curve>`);
      find<HTMLDetailsElement>(element, '[part=diagram]').open = true;
      must([...root(element).querySelectorAll('button')].find((button) => button.textContent?.includes('Show the table'))).click();
      await element.updateComplete;
      await assertAccessible(element);
    });
  }
});

after(() => resetMouse());
