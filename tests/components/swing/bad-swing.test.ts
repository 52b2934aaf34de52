/** What goes wrong with a swing before it reaches the widget, a case a test: it is named, and nothing pasted is lost. */
import { expect, fixture, html } from '@open-wc/testing';
import '../../../components/swing/define.js';
import type { LubberSwing } from '../../../components/swing/swing.js';
import { cautions, cell, coefficient, column, headline, paste, problem, root, settled, text } from './grid-hand.js';
import { must } from '../../support/in-widget.js';

const make = (): Promise<LubberSwing> => fixture<LubberSwing>(html`<lubber-swing></lubber-swing>`);

// Invented coefficients; deviations from them to two decimals, so that the fit must give them back.
const made = { A: 0.3, B: -3, C: 2, D: 1, E: -0.5 };
const given: readonly (readonly [string, string])[] = [['A', '+0.30°'], ['B', '−3.00°'], ['C', '+2.00°'], ['D', '+1.00°'], ['E', '−0.50°']];
/** Slips of a hand of 0.2° to 0.4°. */
const shaken = [0.2, -0.3, 0.1, 0.3, -0.2, 0.1, -0.1, 0.2, -0.3, 0.4, 0, -0.2, 0.1, -0.1, 0.3, -0.3];

type Line = readonly [heading: number, deviation: number];

function swung(headings: readonly number[], change: (deviation: number, place: number) => number = (deviation) => deviation): Line[] {
  return headings.map((heading, place) => {
    const h = (heading * Math.PI) / 180;
    const deviation = made.A + made.B * Math.sin(h) + made.C * Math.cos(h) + made.D * Math.sin(2 * h) + made.E * Math.cos(2 * h);
    return [heading, change(deviation, place)];
  });
}

const lettered = ([heading, deviation]: Line): string => `${heading}\t${Math.abs(deviation).toFixed(2)}${deviation < 0 ? 'W' : 'E'}`;
const table = (lines: readonly Line[]): string => lines.map(lettered).join('\n');
const evenly = (count: number): number[] => Array.from({ length: count }, (_, place) => (360 * place) / count);

function expectGiven(element: LubberSwing): void {
  for (const [name, value] of given) expect(coefficient(element, name)[0]?.split(' ')[0], name).to.equal(value);
}

describe('bad input of a swing', () => {
  it('headings in any order, 360 for 0, give what the order gives', async () => {
    const element = await make();
    const jumbled = evenly(16).map((_, place) => ((place * 7 + 5) % 16) * 22.5);
    await paste(element, 'heading-0', table(swung(jumbled)).replace(/^0\t/m, '360\t'));
    expectGiven(element);
    expect(column(element, 'heading').slice(0, 2)).to.deep.equal(['112.5', '270']);
    expect(column(element, 'heading')).to.include('360');
  });

  it('360 and 0 both: one heading taken twice, both counted', async () => {
    const element = await make();
    await paste(element, 'heading-0', table(swung([...evenly(8), 360])));
    expect(cautions(element)).to.match(/The heading 000\.0° was taken more than once/);
    expect(headline(element)).to.match(/Headings used: 9 of 8 planned/);
    expectGiven(element);
  });

  it('a ship swung both ways: her headings are told in one sentence, and all are counted', async () => {
    const element = await make();
    await paste(element, 'heading-0', table([...swung(evenly(8)), ...swung(evenly(8), (deviation, place) => deviation + (shaken[place] ?? 0))]));
    expect(cautions(element)).to.match(/Taken more than once, and all counted: 000°, 045°, 090°, 135°, 180°, 225°, 270°, 315°\./);
    expect(root(element).querySelectorAll('.cautions li').length).to.equal(1);
    expect(headline(element)).to.match(/Headings used: 16 of 8 planned/);
  });

  it('a heading twice with readings 6° apart: one of them is doubted', async () => {
    const element = await make();
    const [, deviation] = swung([45])[0] as Line;
    await paste(element, 'heading-0', table([...swung(evenly(16)), [45, deviation + 6]]));
    expect(cautions(element)).to.match(/The heading 045\.0° was taken more than once/);
    expect(problem(element, 16)).to.match(/Does not fit the rest/);
  });

  it('the names of the columns over a table are left out, and said so', async () => {
    const element = await make();
    await paste(element, 'heading-0', `Head\tDev\n----\t---\n${table(swung(evenly(8)))}`);
    expect(column(element, 'heading').length).to.equal(8);
    expect(text(element)).to.contain('Names of columns, left out: Head Dev');
    expectGiven(element);
    cell(element, 'undo').click();
    await settled(element);
    expect(root(element).querySelector('#left-out')).to.equal(null);
  });

  it('the names of the columns in rows a page gives are left out, and said so, until other rows come', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing rows=${`Head\tDev\n${table(swung(evenly(8)))}`}></lubber-swing>`);
    expectGiven(element);
    expect(root(element).querySelector('#left-out')?.textContent).to.equal('Names of columns, left out: Head Dev');
    element.rows = swung(evenly(8)).map(([heading, deviation]) => ({ heading: String(heading), reading: `${Math.abs(deviation).toFixed(2)}${deviation < 0 ? 'W' : 'E'}` }));
    await settled(element);
    expectGiven(element);
    expect(root(element).querySelector('#left-out')).to.equal(null);
  });

  // The word took the row of 000°, and every reading below it stood one heading too far on: another card, not refused.
  it('the name over one column of readings does not move them a heading on', async () => {
    const element = await make();
    const readings = table(swung(evenly(8))).replace(/^.*\t/gm, '');
    await paste(element, 'reading-0', `Deviation\n${readings}`);
    expectGiven(element);
    // A word in place of a reading keeps its row.
    await paste(element, 'reading-0', readings.replace(/^.*/, 'fog'));
    expect(column(element, 'reading').slice(0, 2)).to.deep.equal(['fog', readings.split('\n')[1]]);
  });

  it('a list of points of the compass has no names over it', async () => {
    const element = await make();
    await paste(element, 'heading-0', 'N\t\nNE\t2E\nE\t3E');
    expect(column(element, 'heading').slice(0, 3)).to.deep.equal(['N', 'NE', 'E']);
    expect(root(element).querySelector('#left-out')).to.equal(null);
  });

  // Head and deviation together were read as a deviation of degrees and minutes, 45°02′.
  it('a column that counts the lines is left out', async () => {
    const element = await make();
    const lines = table(swung(evenly(8))).split('\n');
    await paste(element, 'heading-0', `No.\tHead\tDev\n${lines.map((line, place) => `${place + 1}\t${line}`).join('\n')}`);
    expect(column(element, 'heading')[1]).to.equal('45');
    expectGiven(element);
  });

  it('headings missing: they are named, and the rest makes a card', async () => {
    const element = await make();
    must(root(element).querySelector<HTMLInputElement>('input[name=headings][value="16"]')).click();
    await settled(element);
    await paste(element, 'heading-0', table(swung(evenly(16).filter((heading) => heading !== 67.5 && heading !== 180))));
    expect(cautions(element)).to.match(/No reading near 067\.5°, 180°\./);
    expect(headline(element)).to.match(/Headings used: 14 of 16 planned/);
    expectGiven(element);
  });

  it('eight headings without one: the card is made, what is missing is named, and the eight points wait for it', async () => {
    const element = await make();
    await paste(element, 'heading-0', table(swung(evenly(8).filter((heading) => heading !== 315))));
    expect(cautions(element)).to.match(/No reading near 315°\./);
    expect(headline(element)).to.match(/Headings used: 7 of 8 planned/);
    expect(text(element)).to.match(/The eight points want a reading on NW\./);
    expectGiven(element);
  });

  it('a curve too steep to be read backwards, a pure D of 30°: twice D in radians is 1 at 28.65°', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing model="approximate" headings="16"></lubber-swing>`);
    await paste(element, 'heading-0', table(evenly(16).map((heading) => [heading, 30 * Math.sin((2 * heading * Math.PI) / 180)])));
    expect(cautions(element)).to.match(/more than one compass heading/);
    expect(text(element)).not.to.match(/NaN|undefined/);
  });

  it('a heading missing in its line: the reading stays and is asked for it', async () => {
    const element = await make();
    await paste(element, 'heading-0', '000\t1.8E\n\t1.2W\n090\t2.2W');
    expect([column(element, 'heading')[1], column(element, 'reading')[1]]).to.deep.equal(['', '1.2W']);
    expect(problem(element, 1)).to.equal('Head, C: There is a reading without a heading.');
  });

  const commas: readonly (readonly [how: string, write: (heading: string, deviation: string) => string])[] = [
    ['tabs', (heading, deviation) => `${heading}\t${deviation}`],
    ['semicolons', (heading, deviation) => `${heading};${deviation}`],
    ['quotation marks and commas', (heading, deviation) => `"${heading}","${deviation}"`],
    ['quotation marks and tabs', (heading, deviation) => `"${heading}"\t"${deviation}"`],
    ['spaces', (heading, deviation) => `${heading} ${deviation}`],
    ['tabs, true minus signs and no-break spaces', (heading, deviation) => `${heading}\u00a0\t\u00a0${deviation.replace('-', '−')}`],
  ];
  for (const [how, write] of commas) {
    it(`decimal commas parted by ${how}`, async () => {
      const element = await make();
      const lines = swung(evenly(16)).map(([heading, deviation]) => write(String(heading).replace('.', ','), deviation.toFixed(2).replace('.', ',')));
      await paste(element, 'heading-0', `${lines.join('\r\n')}\r\n`);
      expect(element.result?.rows.length, text(element).slice(0, 400)).to.equal(16);
      expectGiven(element);
    });
  }

  for (const [order, write] of [
    ['before', (heading: string, magnetic: string, deviation: string) => [heading, magnetic, deviation]],
    ['behind', (heading: string, magnetic: string, deviation: string) => [heading, deviation, magnetic]],
  ] as const) {
    it(`magnetic headings ${order} the deviations, as a card has them, are not taken for readings`, async () => {
      const element = await make();
      const lines = swung(evenly(16)).map(([heading, deviation]) => write(String(heading), ((heading + deviation + 360) % 360).toFixed(0).padStart(3, '0'), deviation.toFixed(2)));
      await paste(element, 'heading-0', [write('Compass', 'Magnetic', 'Deviation'), ...lines].map((cells) => cells.join('\t')).join('\n'));
      expect(text(element)).to.contain(`left out: ${write('Compass', 'Magnetic', 'Deviation').join(' ')}`);
      expect(element.result?.rows.length).to.equal(16);
      expectGiven(element);
    });
  }

  it('a third column that is no magnetic heading stays', async () => {
    const element = await make();
    await paste(element, 'heading-0', '000\t1.8E\t181\n045\t1.2W\t226');
    expect(column(element, 'reading').slice(0, 2)).to.deep.equal(['1.8E 181', '1.2W 226']);
  });

  it('beside gyro headings a deviation is not taken in their place', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing method="gyro" gyro-error="0" variation="0"></lubber-swing>`);
    await paste(element, 'heading-0', '000\t002\t2E\n045\t044\t1W');
    expect(column(element, 'reading').slice(0, 2)).to.deep.equal(['002 2E', '044 1W']);
  });

  it('one half of the compass: says that A and B are not to be had, keeps what is, and makes no card', async () => {
    const element = await make();
    await paste(element, 'heading-0', table(swung(evenly(16).slice(0, 9), (deviation, place) => deviation + (shaken[place] ?? 0) / 4)));
    expect(cautions(element)).to.match(/The headings taken do not determine A B\./);
    expect(cautions(element)).to.match(/No reading near 225°, 270°, 315°/);
    expect(headline(element)).to.match(/Not enough yet for a card: the headings do not determine all five coefficients/);
    expect(['A', 'B'].map((name) => coefficient(element, name)[0])).to.deep.equal(['not determined', 'not determined']);
    for (const name of ['C', 'D', 'E']) expect(coefficient(element, name)[0], name).to.match(/^[+−]\d\.\d\d° ± /);
    expect(text(element)).to.contain('The headings taken do not determine a curve yet.');
    expect(element.result?.card).to.equal(null);
    expect(column(element, 'reading').length).to.equal(9);
  });

  it('the cardinal headings alone: D is not to be had', async () => {
    const element = await make();
    await paste(element, 'heading-0', table(swung(evenly(4))));
    expect(cautions(element)).to.match(/do not determine D\./);
    expect(coefficient(element, 'D')[0]).to.equal('not determined');
  });

  it('east and west exchanged throughout, by a hand that shakes: the old card tells', async () => {
    const element = await make();
    element.card = { kind: 'approximate', coefficients: { ...made, B: -2.8, E: -0.3 } };
    await paste(element, 'heading-0', table(swung(evenly(16), (deviation, place) => (shaken[place] ?? 0) - deviation)));
    expect(cautions(element)).to.match(/These readings are the old card with east and west exchanged: has the naming been reversed\?/);
    expect(root(element).querySelector('.cautions li.warning')).not.to.equal(null);
    // As read it is a swing like any other: nothing is turned round behind the adjuster's back.
    expect(coefficient(element, 'B')[0]).to.match(/^\+[23]\./);
  });

  it('the right way round the old card is silent', async () => {
    const element = await make();
    element.card = { kind: 'approximate', coefficients: { ...made, B: -2.8, E: -0.3 } };
    await paste(element, 'heading-0', table(swung(evenly(16), (deviation, place) => deviation + (shaken[place] ?? 0))));
    expect(cautions(element)).not.to.match(/exchanged/);
  });

  it('a curve that is really a constant, by a hand that shakes: what to check is named', async () => {
    const element = await make();
    await paste(element, 'heading-0', table(evenly(16).map((heading, place): Line => [heading, 3.2 + (shaken[place] ?? 0)])));
    expect(cautions(element)).to.match(/differ by a constant only: check the lubber line, the azimuth circle, the variation and the gyro/);
  });

  it('nothing pasted is lost: titles, words, cells too many and a line beyond the grid all stand where they can be mended', async () => {
    const element = await make();
    const pasted = ['Heading\tDeviation', '000\t1.8E\tlooked twice', '045\toverc.', '090\t2.2 ?', '135\t', '180\t1.2W', '225\t1.0E', '270\t3.8E', '315\t4.1E', '360\t1.7E', '020\t0.9E'];
    await paste(element, 'heading-0', pasted.join('\n'));
    const kept = column(element, 'heading').map((heading, place) => `${heading} ${column(element, 'reading')[place]}`.trim());
    const [names, ...lines] = pasted.map((line) => line.replace(/\t/g, ' ').trim());
    expect(text(element)).to.contain(`left out: ${names}`);
    expect(kept).to.deep.equal(lines);
    for (const row of [0, 1, 2]) expect(problem(element, row), String(row)).not.to.equal('');
    expect(problem(element, 3)).to.equal('');
    expect(element.result?.rows.length).to.equal(6);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid/);
  });

  it('nothing that was there is lost to a paste: Undo brings it back', async () => {
    const element = await make();
    await paste(element, 'heading-0', table(swung(evenly(8))));
    const before = [column(element, 'heading'), column(element, 'reading')];
    await paste(element, 'heading-2', '7\t9E\n8\t9E\n\n9\t9E');
    expect(column(element, 'heading')).not.to.deep.equal(before[0]);
    cell(element, 'undo').click();
    await settled(element);
    expect([column(element, 'heading'), column(element, 'reading')]).to.deep.equal(before);
  });
});
