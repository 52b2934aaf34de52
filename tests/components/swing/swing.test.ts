import { expect, fixture, html } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import '../../../components/swing/define.js';
import type { LubberSwing } from '../../../components/swing/swing.js';
import { assertAccessible } from '../../support/axe.js';
import { cautions, cell, coefficient, column, flat, headline, paste, press, problem, root, settled, text, type, where } from './grid-hand.js';
import { must } from '../../support/in-widget.js';

const make = (): Promise<LubberSwing> => fixture<LubberSwing>(html`<lubber-swing></lubber-swing>`);

// Handbook of Magnetic Compass Adjustment, article 501, by the eight points.
const printed: readonly [string, string][] = [['A', '+1.00°'], ['B', '+12.00°'], ['C', '+8.00°'], ['D', '+5.00°'], ['E', '+1.50°']];
const readings = ['10.5', '20.0', '11.5', '-1.2', '-5.5', '-8.0', '-12.5', '-6.8'];

function expectPrinted(element: LubberSwing): void {
  for (const [name, value] of printed) expect(coefficient(element, name)[1], name).to.equal(value);
}

describe('a swing without attributes', () => {
  it('offers eight headings and says what to do', async () => {
    const element = await make();
    expect(column(element, 'heading')).to.deep.equal(['000', '045', '090', '135', '180', '225', '270', '315']);
    expect(headline(element)).to.match(/Enter a reading on each heading, or paste/);
    expect(element.result).to.equal(null);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid|null/);
    await assertAccessible(element);
  });
});

describe('article 501', () => {
  it('typed by keyboard, Enter going down the column, gives A 1.0 B 12.0 C 8.0 D 5.0 E 1.5', async () => {
    const element = await make();
    const heard: unknown[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event.detail));
    cell(element, 'reading-0').focus();
    for (const reading of readings) {
      await type(element, reading);
      await press(element, 'Enter');
    }
    expectPrinted(element);
    // Least squares of evenly spread headings by hand: B = (24 + 33.6·√½)/4, C = (16 + 22.4·√½)/4.
    expect(coefficient(element, 'B')[0]).to.match(/^\+11\.94° ± 0\.\d\d$/);
    expect(coefficient(element, 'C')[0]).to.match(/^\+7\.96° ± 0\.\d\d$/);
    expect(headline(element)).to.match(/20\.1° E.*045°.*Beyond the limit of 5°/);
    expect(heard.length).to.be.greaterThan(7);
    const last = heard[heard.length - 1] as { result: { card: { kind: string } } };
    expect(last.result.card.kind).to.equal('approximate');
    expect(JSON.parse(JSON.stringify(last))).to.deep.equal(last);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid/);
    await assertAccessible(element);
  });

  it('pasted from a spreadsheet in another order, with decimal commas and 360, gives the same', async () => {
    const element = await make();
    const order = [4, 1, 7, 0, 2, 6, 3, 5];
    const pasted = order.map((i) => `${i === 0 ? 360 : i * 45}\t${(readings[i] ?? '').replace('.', ',').replace('-', '−')}`).join('\r\n');
    expect(await paste(element, 'heading-0', `${pasted}\r\n`)).to.equal(true);
    expectPrinted(element);
    expect(column(element, 'heading')[3]).to.equal('360');
  });

  it('pasted as a list with letters gives the same, whatever the planned headings were', async () => {
    const element = await make();
    element.headings = '36';
    await settled(element);
    await paste(element, 'heading-0', 'N 10.5E\nNE 20.0E\nE 11.5E\nSE 1.2W\nS 5.5W\nSW 8.0W\nW 12.5W\nNW 6.8W');
    expectPrinted(element);
    expect(cautions(element)).to.match(/No reading near 010°, 020°/);
  });
});

describe('the keyboard', () => {
  it('moves as in a spreadsheet: Enter, arrows, sideways at the end of a text, Tab', async () => {
    const element = await make();
    cell(element, 'heading-0').focus();
    const walk: string[] = [];
    for (const key of ['ArrowDown', 'Enter', 'ArrowRight', 'ArrowUp', 'Shift+Enter', 'ArrowLeft', 'Tab']) {
      await press(element, key);
      walk.push(where(element));
    }
    expect(walk).to.deep.equal(['heading-1', 'heading-2', 'reading-2', 'reading-1', 'reading-0', 'heading-0', 'reading-0']);
  });

  // Notes of a Sun swing are read row by row: three presses of Tab led from a time to the next bearing.
  it('Enter after Tab goes to where the row was begun, as in a spreadsheet; after an arrow straight down', async () => {
    const element = await make();
    element.method = 'sun';
    await settled(element);
    cell(element, 'reading-0').focus();
    const walk: string[] = [];
    for (const key of ['123', 'Tab', '0905', 'Enter', 'Enter', '124', 'Tab', 'ArrowDown', 'Enter', 'Shift+Tab', '125', 'Tab', 'Shift+Enter']) {
      await (/^\d/.test(key) ? type(element, key) : press(element, key));
      walk.push(where(element));
    }
    expect(walk).to.deep.equal([
      ...['reading-0', 'second-0', 'second-0', 'reading-1', 'reading-2', 'reading-2', 'second-2'],
      ...['second-3', 'second-4', 'reading-4', 'reading-4', 'second-4', 'second-3'],
    ]);
    // A heading that was only passed on the way is not where the row was begun.
    cell(element, 'heading-6').focus();
    for (const key of ['Tab', '126', 'Tab', '0910', 'Enter']) await (/^\d/.test(key) ? type(element, key) : press(element, key));
    expect(where(element)).to.equal('reading-7');
  });

  // Enter led back to the column that Tab had been pressed in before the click.
  it('Enter after a click into another cell goes straight down', async () => {
    const element = await make();
    element.method = 'sun';
    await settled(element);
    cell(element, 'heading-1').focus();
    await type(element, '046');
    await press(element, 'Tab');
    const { left, top, width, height } = cell(element, 'second-1').getBoundingClientRect();
    await sendMouse({ type: 'click', position: [Math.round(left + width / 2), Math.round(top + height / 2)] });
    expect(where(element)).to.equal('second-1');
    await type(element, '0910');
    await press(element, 'Enter');
    expect(where(element)).to.equal('second-2');
    await resetMouse();
  });

  it('goes sideways where an arrow points, also in a table from right to left', async () => {
    const element = await make();
    element.dir = 'rtl';
    await settled(element);
    cell(element, 'heading-0').focus();
    const walk: string[] = [];
    for (const key of ['ArrowRight', 'ArrowLeft', 'ArrowDown', 'ArrowRight']) {
      await press(element, key);
      walk.push(where(element));
    }
    expect(cell(element, 'heading-0').getBoundingClientRect().left).to.be.greaterThan(cell(element, 'reading-0').getBoundingClientRect().left);
    expect(walk).to.deep.equal(['heading-0', 'reading-0', 'reading-1', 'heading-1']);
  });

  it('Enter after an arrow within the row goes straight down', async () => {
    const element = await make();
    cell(element, 'heading-0').focus();
    for (const key of ['010', 'Tab', 'ArrowLeft', 'ArrowRight', 'Enter']) await (/^\d/.test(key) ? type(element, key) : press(element, key));
    expect(where(element)).to.equal('reading-1');
  });

  // The right Alt key of many keyboards, which writes letters, is told as Control and Alt.
  it('takes nothing back by Control Z with Alt', async () => {
    const element = await make();
    cell(element, 'reading-0').focus();
    await type(element, '1E');
    const pressed = new KeyboardEvent('keydown', { key: 'z', ctrlKey: true, altKey: true, bubbles: true, cancelable: true, composed: true });
    cell(element, 'reading-0').dispatchEvent(pressed);
    await settled(element);
    expect([pressed.defaultPrevented, column(element, 'reading')[0]]).to.deep.equal([false, '1E']);
  });

  it('leaves the caret inside a text it moves in', async () => {
    const element = await make();
    cell(element, 'reading-0').focus();
    await type(element, '12');
    await press(element, 'ArrowLeft');
    expect(where(element)).to.equal('reading-0');
  });

  it('going down from a last row in use makes another, from an unused one does not', async () => {
    const element = await make();
    cell(element, 'reading-7').focus();
    await press(element, 'Enter');
    expect(where(element)).to.equal('reading-7');
    await type(element, '2W');
    await press(element, 'Enter');
    expect(where(element)).to.equal('reading-8');
  });

  it('Control Z and Control Y undo and redo a cell at a time, and a paste at once', async () => {
    const element = await make();
    cell(element, 'reading-0').focus();
    await type(element, '1E');
    await press(element, 'Enter');
    await type(element, '2E');
    await press(element, 'Control+z');
    expect(column(element, 'reading').slice(0, 2)).to.deep.equal(['1E', '']);
    await press(element, 'Control+z');
    expect(column(element, 'reading').slice(0, 2)).to.deep.equal(['', '']);
    await press(element, 'Control+y');
    await press(element, 'Control+y');
    expect(column(element, 'reading').slice(0, 2)).to.deep.equal(['1E', '2E']);
    await paste(element, 'reading-0', '3E\n4E\n5E');
    expect(column(element, 'reading').slice(0, 3)).to.deep.equal(['3E', '4E', '5E']);
    cell(element, 'undo').click();
    await settled(element);
    expect(column(element, 'reading').slice(0, 3)).to.deep.equal(['1E', '2E', '']);
    cell(element, 'redo').click();
    await settled(element);
    expect(column(element, 'reading').slice(0, 3)).to.deep.equal(['3E', '4E', '5E']);
  });
});

describe('Control Z from what has no text', () => {
  // From the tick of a row and from the buttons the browser took it for its own, and took back the last letter typed in some cell.
  it('takes back the last cell from the tick of a row, and what was taken back comes again from the button', async () => {
    const element = await make();
    cell(element, 'reading-0').focus();
    await type(element, '12E');
    await press(element, 'Tab');
    expect(where(element)).to.equal('use-0');
    await press(element, 'Control+z');
    expect([column(element, 'reading')[0], where(element)]).to.deep.equal(['', 'reading-0']);
    must(root(element).querySelector<HTMLElement>('#redo')).focus();
    await press(element, 'Control+y');
    expect([column(element, 'reading')[0], where(element)]).to.deep.equal(['12E', 'reading-0']);
  });
});

describe('the caret', () => {
  it('follows what is taken back, also out of a row that is gone with it', async () => {
    const element = await make();
    cell(element, 'reading-6').focus();
    for (const reading of ['1E', '2E']) {
      await type(element, reading);
      await press(element, 'Enter');
    }
    expect(where(element)).to.equal('reading-8');
    await press(element, 'Control+z');
    expect([where(element), column(element, 'reading')[7]]).to.deep.equal(['reading-7', '']);
    await press(element, 'Control+z');
    expect([where(element), column(element, 'reading')[6]]).to.deep.equal(['reading-6', '']);
    await press(element, 'Control+y');
    expect([where(element), column(element, 'reading')[6]]).to.deep.equal(['reading-6', '1E']);
  });
});

describe('another number of headings', () => {
  it('keeps what has been read and lays the rest between', async () => {
    const element = await make();
    await paste(element, 'heading-0', '045\t2W\n100\t1W');
    must(root(element).querySelector<HTMLInputElement>('input[name=headings][value="16"]')).click();
    await settled(element);
    expect(column(element, 'heading').slice(0, 7)).to.deep.equal(['000', '022.5', '045', '067.5', '090', '100', '112.5']);
    expect(column(element, 'reading').slice(2, 6)).to.deep.equal(['2W', '', '', '1W']);
    cell(element, 'undo').click();
    await settled(element);
    expect(column(element, 'heading')).to.deep.equal(['045', '100']);
  });
});

describe('what cannot be read', () => {
  it('the time of a Sun’s bearing is told what times are taken', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing method="sun" latitude="50N" longitude="004W" date="2026-03-21" .rows=${'000\t101\t0905\n045\tabout east\t0910\n090\t99\tten past nine'}></lubber-swing>`);
    expect([problem(element, 1), problem(element, 2)]).to.deep.equal([
      'Bearing, C: This was not understood. Accepted: 000 to 360 with decimals, or N 45 E.',
      'Time, UTC: This was not understood. Accepted: 09:05:20, 0905 or 090520.',
    ]);
  });

  it('stays in its cell with the reason beside its row, and the rest is fitted', async () => {
    const element = await make();
    await paste(element, 'heading-0', '000\t1.5E\n045\tabout two\n400\t2W\n135\t2O\n\t3E\n180T\t1W\n225\t1.5E\textra');
    expect(column(element, 'reading')).to.deep.equal(['1.5E', 'about two', '2W', '2O', '3E', '1W', '1.5E extra']);
    // The reason was told without what would be taken.
    expect(problem(element, 1)).to.equal('Deviation: This was not understood. Accepted: 3.2W, 2°30′E, −3.2 or 0.');
    expect(problem(element, 2)).to.equal('Head, C: This is outside the range. Accepted: 000 to 360 with decimals, or N 45 E.');
    expect(problem(element, 3)).to.match(/^Deviation: The letter O means east to some and west to others\. Accepted: 3\.2W/);
    expect(problem(element, 4)).to.equal('Head, C: There is a reading without a heading.');
    expect(problem(element, 5)).to.match(/A true heading is not taken here/);
    expect(problem(element, 6)).to.match(/Deviation: /);
    expect(cell(element, 'reading-1').getAttribute('aria-invalid')).to.equal('true');
    expect(element.result?.rows.length).to.equal(1);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid/);
    await assertAccessible(element);
  });

  it('figures that could go either way are refused until another has a minus', async () => {
    const element = await make();
    await paste(element, 'reading-0', '1.5\n2.5');
    expect(problem(element, 0)).to.equal('Deviation: Say which way: E or W. Accepted: 3.2W, 2°30′E, −3.2 or 0.');
    await paste(element, 'reading-2', '-1.0\n-2.0');
    expect(problem(element, 0)).to.equal('');
    expect(element.result?.rows.length).to.equal(4);
  });

  it('is not said while it is being typed', async () => {
    const element = await make();
    cell(element, 'reading-0').focus();
    await type(element, '1.');
    expect(problem(element, 0)).to.equal('');
    await press(element, 'Tab');
    expect(problem(element, 0)).not.to.equal('');
  });

  it('a setting to be put right stops the swing and is named', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing method="transit" transit-bearing="114" variation="17 somewhere" .rows=${'000\t131\n090\t132'}></lubber-swing>`);
    expect(element.result).to.equal(null);
    expect(headline(element)).to.match(/To be put right: Variation/);
    expect(flat(root(element).querySelector('#variation-problem'))).to.match(/not understood/);
  });
});

const shipRows = (count: number, change: (deviation: number, place: number) => number = (deviation) => deviation): string =>
  Array.from({ length: count }, (_, i) => {
    const [heading, h] = [(360 * i) / count, (2 * Math.PI * i) / count];
    const deviation = change(0.3 - 3 * Math.sin(h) + 2 * Math.cos(h) + Math.sin(2 * h), i);
    return `${heading}\t${deviation.toFixed(2)}`;
  }).join('\n');

describe('bad swings', () => {
  it('a slip of 6° is marked beside its row with how far it is off, and not using it mends the fit', async () => {
    const element = await make();
    await paste(element, 'heading-0', shipRows(16, (deviation, i) => deviation + (i === 5 ? 6 : 0)));
    expect(problem(element, 5)).to.match(/Does not fit the rest: \d\.\d° E off the curve/);
    expect(root(element).querySelectorAll('tr.reason:not([hidden])').length).to.equal(1);
    cell(element, 'use-5').click();
    await settled(element);
    expect(problem(element, 5)).to.equal('');
    expect(coefficient(element, 'B')[0]).to.match(/^−3\.00°/);
  });

  it('headings in one half only: says which coefficients are lost, and makes no card', async () => {
    const element = await make();
    await paste(element, 'heading-0', shipRows(16).split('\n').slice(0, 8).join('\n'));
    expect(cautions(element)).to.match(/do not determine A/);
    expect(cautions(element), 'of a curve that is not there').not.to.match(/what the curve says/);
    expect(headline(element)).to.match(/Not enough yet for a card/);
    expect(element.result?.card).to.equal(null);
    expect(coefficient(element, 'A')[0]).to.equal('not determined');
  });

  it('a heading twice is told and both readings count', async () => {
    const element = await make();
    await paste(element, 'heading-0', `${shipRows(8)}\n0\t2.31`);
    expect(cautions(element)).to.match(/The heading 000\.0° was taken more than once/);
    expect(headline(element)).to.match(/Headings used: 9 of 8 planned/);
  });

  it('the old card with east and west exchanged throughout is suspected', async () => {
    const element = await make();
    element.card = { kind: 'approximate', coefficients: { A: 0.3, B: -3, C: 2, D: 1, E: 0 } };
    await paste(element, 'heading-0', shipRows(8, (deviation) => 0 - deviation));
    expect(cautions(element)).to.match(/old card with east and west exchanged/);
  });

  it('one deviation on every heading is called a constant', async () => {
    const element = await make();
    await paste(element, 'heading-0', shipRows(16, () => 3).replaceAll('3.00', '3E'));
    expect(cautions(element)).to.match(/differ by a constant only/);
  });
});

describe('methods', () => {
  it('an object of known magnetic bearing: needs the bearing, then 080° less 078.5° is 1.5° E', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing method="known-object" .rows=${'000\t78.5\n090\t81'}></lubber-swing>`);
    expect(headline(element)).to.match(/Still needed: Bearing of the object/);
    cell(element, 'objectBearing').focus();
    await type(element, '080');
    const [first, second] = element.result?.rows ?? [];
    expect(first?.ok && first.deviation).to.be.closeTo(1.5, 1e-9);
    expect(second?.ok && second.deviation).to.be.closeTo(-1, 1e-9);
  });

  it('the Sun needs a place and a day; a time at night is told beside its row', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing method="sun" latitude="50N" longitude="004W" .rows=${'000\t101\t0905\n045\t98\t2310'}></lubber-swing>`);
    expect(headline(element)).to.match(/Still needed: UTC date/);
    element.date = '2026-06-01';
    await settled(element);
    expect(problem(element, 1)).to.match(/The Sun was below the horizon at this time/);
    const [first] = element.result?.rows ?? [];
    expect(first?.ok && (first.altitude ?? 0) > 30).to.equal(true);
    await assertAccessible(element);
  });

  it('an object of unknown bearing loses A, and taking it as 0 makes the card', async () => {
    const bearings = shipRows(8).split('\n').map((line) => {
      const [heading, deviation] = line.split('\t').map(Number) as [number, number];
      return `${heading}\t${(200 - deviation).toFixed(2)}`;
    });
    const element = await fixture<LubberSwing>(html`<lubber-swing method="unknown-object" .rows=${bearings.join('\n')}></lubber-swing>`);
    expect(headline(element)).to.match(/these methods lose A/);
    // The eight points said 0.00°, which is nothing but what the bearings were measured from.
    expect(coefficient(element, 'A')).to.deep.equal(['not determined', 'not determined']);
    expect(coefficient(element, 'B')[0]).to.match(/^−3\.00°/);
    cell(element, 'constant').focus();
    await type(element, '0');
    expect(element.result?.card?.kind).to.equal('approximate');
  });

  it('steadied by gyro of error 1° W with variation 10° W, the compass reading 050° on gyro 045°: deviation 4° E', async () => {
    // True 044°, magnetic 054°, compass 050°.
    for (const error of ['1W', '1 high']) {
      const element = await fixture<LubberSwing>(html`<lubber-swing method="gyro" heading-by="gyro" gyro-error=${error} variation="10W" .rows=${'045\t050'}></lubber-swing>`);
      const [row] = element.result?.rows ?? [];
      expect(row?.ok && [row.heading, row.deviation]).to.deep.equal([50, 4]);
      expect(flat(root(element).querySelector('tbody tr'))).to.match(/050\.0° 4\.0° E/);
    }
  });

  it('a row may have a method of its own, and a letter behind its head a north of its own', async () => {
    const element = await fixture<LubberSwing>(
      html`<lubber-swing variation="10W" gyro-error="0" .rows=${[{ heading: '000', reading: '2W' }, { heading: '045 G', reading: '050', method: 'gyro' }]}></lubber-swing>`,
    );
    const rows = element.result?.rows ?? [];
    expect(rows.map((row) => row.ok && Math.round(row.deviation * 10) / 10)).to.deep.equal([-2, 5]);
    expect(root(element).querySelector('#method-1')).not.to.equal(null);
    await assertAccessible(element);
  });
});

// tan δ of the exact coefficients B 0.32, C −0.21, D 0.09, on compass headings by halving.
function largeRows(): string {
  const rad = Math.PI / 180;
  const byMagnetic = (z: number): number =>
    Math.atan2(0.32 * Math.sin(z * rad) - 0.21 * Math.cos(z * rad) + 0.09 * Math.sin(2 * z * rad), 1 + 0.32 * Math.cos(z * rad) + 0.21 * Math.sin(z * rad) + 0.09 * Math.cos(2 * z * rad)) / rad;
  return Array.from({ length: 24 }, (_, i) => {
    let [low, high] = [i * 15 - 90, i * 15 + 90];
    for (let turn = 0; turn < 50; turn++) {
      const middle = (low + high) / 2;
      if (middle - byMagnetic(middle) < i * 15) low = middle;
      else high = middle;
    }
    return `${i * 15}\t${byMagnetic(low).toFixed(3)}`;
  }).join('\n');
}

describe('a swing across midnight, UTC', () => {
  // A time alone is of the day typed; what stands behind "past midnight with the date" has to be read so.
  it('takes a date with a time where one is written', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing method="sun" latitude="20S" longitude="180W" date="2026-03-21" variation="12E"></lubber-swing>`);
    await paste(element, 'heading-0', '000\t50\t20:05\n045\t50\t2026-03-22 20:05');
    const [same, next] = (element.result?.rows ?? []).map((row) => (row.ok ? row.magneticBearing : null));
    expect(root(element).querySelector('.reads')?.textContent).to.contain('past midnight with the date');
    // About the equinox the Sun's declination changes by 0.4° a day (any almanac): low in the east her bearing changes by about as much.
    expect(Math.abs((same ?? NaN) - (next ?? NaN))).to.be.within(0.3, 0.6);
  });
});

describe('large deviations', () => {
  it('take the exact coefficients, B 0.32 C −0.21 D 0.09', async () => {
    const element = await make();
    await paste(element, 'heading-0', largeRows());
    expect(['B', 'C', 'D'].map((name) => coefficient(element, name)[1]?.slice(0, 7))).to.deep.equal(['+0.3200', '−0.2100', '+0.0900']);
    expect(element.result?.card?.kind).to.equal('exact');
  });

  it('offer them where five terms were asked for', async () => {
    const element = await make();
    element.model = 'approximate';
    await paste(element, 'heading-0', largeRows());
    expect(cautions(element)).to.match(/five-term series fails by/);
    expect(element.result?.card?.kind).to.equal('approximate');
    cell(element, 'exact').click();
    await settled(element);
    expect(element.result?.card?.kind).to.equal('exact');
  });
});

describe('judging', () => {
  it('by the limit chosen, with its source', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing limit="panama-canal" .rows=${shipRows(8)}></lubber-swing>`);
    expect(headline(element)).to.match(/Within the limit of 7°/);
    expect(text(element)).to.contain('Panama Canal OP Notice N-1-2022');
  });

  it('advises a licensed adjuster in words: −B asks for red ends aft, with the source', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${shipRows(16)}></lubber-swing>`);
    const advice = flat(root(element).querySelector('.advice'));
    expect(advice).to.match(/Advice only: the manufacturer’s manual and a licensed compass adjuster prevail/);
    expect(advice).to.match(/B −3\.0°: fore-and-aft magnets below the card, red ends aft\..*Source:/);
    expect(advice).not.to.match(/\{|swing\.advice/);
  });

  // It said “where 0.0° should show, take out half of it, 0.0°”.
  it('has nothing halved on the opposite heading where there is no constant part', async () => {
    const rows = [0, 45, 90, 135, 180, 225, 270, 315].map((heading) => `${heading}\t${(3 * Math.sin((heading * Math.PI) / 180)).toFixed(2)}`).join('\n');
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${rows.replace('\t0.00', '\t-0.00')}></lubber-swing>`);
    const advice = flat(root(element).querySelector('.advice'));
    expect(advice).to.match(/On 090° take out all that is seen, 3\.0° E; then check on 270°, where nothing should be left to take out\./);
    expect(advice).not.to.match(/0\.0°|half of it/);
  });

  it('tells a deviation beyond the limit once, with the answer', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${shipRows(8, (deviation) => 3 * deviation)}></lubber-swing>`);
    expect(headline(element)).to.match(/Beyond the limit of 5°/);
    expect(text(element).match(/beyond the limit/gi)).to.have.length(1);
    expect(element.result?.check?.cautions.map(({ code }) => code)).to.include('beyond-limit');
  });

  it('says what the parallax of a near object does, and allows for it once the turn is known', async () => {
    const element = await fixture<LubberSwing>(
      html`<lubber-swing method="known-object" object-bearing="080" circle-radius="300" circle-distance="5" .rows=${'000\t79\n090\t81\n180\t82\n270\t80'}></lubber-swing>`,
    );
    // arcsin(300 m / 9260 m) = 1.86°.
    expect(cautions(element)).to.match(/moves by up to 1\.86°/);
    element.turning = 'port';
    await settled(element);
    expect(cautions(element)).not.to.match(/moves by up to/);
  });
});

describe('a narrow page', () => {
  it('320 pixels wide does not scroll sideways, and the answer stands first', async () => {
    // No fixture: for a plain element it waits for a frame, and a page in the background gets none.
    const frame = document.createElement('div');
    frame.style.inlineSize = '320px';
    document.body.append(frame);
    const element = document.createElement('lubber-swing');
    element.rows = shipRows(36);
    frame.append(element);
    await settled(element);
    expect(element.scrollWidth).to.be.at.most(320);
    const order = root(element).querySelector('.headline')?.compareDocumentPosition(root(element).querySelector('table.grid') as Node) ?? 0;
    expect(order & Node.DOCUMENT_POSITION_FOLLOWING).to.equal(Node.DOCUMENT_POSITION_FOLLOWING);
    await assertAccessible(element);
    frame.remove();
  });
});

describe('the line on what is read', () => {
  it('begins where the fields above it begin', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing></lubber-swing>`);
    const line = [...root(element).querySelectorAll('p.hint')].find((one) => flat(one).startsWith('Deviation on each heading')) as Element;
    expect(getComputedStyle(line).paddingInlineStart).to.equal('0px');
  });
});

describe('a page as wide as a tablet', () => {
  // Answer and curve stood below all readings from 640 to 930 pixels.
  for (const [width, first] of [[700, 'above'], [780, 'above'], [840, 'beside'], [900, 'beside']] as const) {
    it(`of ${width} pixels has the answer ${first} the readings`, async () => {
      const frame = document.createElement('div');
      frame.style.inlineSize = `${width}px`;
      document.body.append(frame);
      const element = document.createElement('lubber-swing');
      element.rows = shipRows(8);
      frame.append(element);
      await settled(element);
      const [answer, grid] = ['.headline', 'table.grid'].map((each) => (root(element).querySelector(each) as Element).getBoundingClientRect()) as [DOMRect, DOMRect];
      expect(answer.bottom, 'over the readings').to.be.at.most(grid.top);
      if (first === 'beside') expect(answer.left).to.be.at.least(grid.right);
      const box = root(element).querySelector('.scroll') as Element;
      expect(box.scrollWidth).to.be.at.most(box.clientWidth);
      frame.remove();
    });
  }
});

describe('a narrow grid', () => {
  // A reading that does not fit bore a mark that pushed its box for using it out of sight; so did the steering compass's label.
  const deviations = shipRows(16, (deviation, place) => deviation + (place === 5 ? 9 : 0)).split('\n');
  for (const [what, set, rows] of [
    ['with a bad reading', {}, deviations],
    ['of two compasses', { compasses: 'two' }, deviations.map((line, place) => `${line}\t${((place * 22.5 + (place === 5 ? 14 : 2)) % 360).toFixed(1)}`)],
    ['by the Sun', { method: 'sun', latitude: '40N', longitude: '20W', date: '2026-11-26' }, deviations.map((line, place) => `${line.split('\t')[0] ?? ''}\t${120.5 + place}\t08:${10 + place}:20`)],
  ] as const) {
    it(`${what} has room at 320 pixels`, async () => {
      const frame = document.createElement('div');
      frame.style.inlineSize = '304px';
      document.body.append(frame);
      const element = document.createElement('lubber-swing');
      Object.assign(element, { ...set, rows: rows.join('\n') });
      frame.append(element);
      await settled(element);
      expect(flat(root(element).querySelector('.headline'))).to.match(/16 of|Headings used/);
      if (what !== 'by the Sun') expect(problem(element, 5)).to.match(/Does not fit/);
      const box = root(element).querySelector('.scroll') as Element;
      expect(box.scrollWidth, what).to.be.at.most(box.clientWidth);
      frame.remove();
    });
  }
});

describe('locked readings', () => {
  // Method and north of a locked row could be chosen, and changed its deviation.
  it('keep the method and the north of each row', async () => {
    const rows = [{ heading: '000', reading: '2W' }, { heading: '045', reading: '050', method: 'gyro' }];
    const element = await fixture<LubberSwing>(html`<lubber-swing locked="rows" variation="10W" gyro-error="0" .rows=${rows}></lubber-swing>`);
    const choices = [...root(element).querySelectorAll<HTMLSelectElement>('.grid select')];
    expect(choices.map(({ disabled }) => disabled)).to.deep.equal([true, true, true, true]);
  });

  it('can be walked and not be changed', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing locked="rows" .rows=${shipRows(8)}></lubber-swing>`);
    expect(cell(element, 'reading-0').readOnly).to.equal(true);
    expect(await paste(element, 'heading-0', '1\t2E\n3\t4E')).to.equal(false);
    expect(root(element).querySelector('#clear')).to.equal(null);
    await press(element, 'ArrowDown');
    expect(where(element)).to.equal('heading-1');
    // No row is made below the last.
    cell(element, 'heading-7').focus();
    await press(element, 'ArrowDown');
    expect([where(element), column(element, 'heading').length]).to.deep.equal(['heading-7', 8]);
  });
});

describe('an answer kept back', () => {
  it('shows neither curve nor coefficients', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing answer="hidden" .rows=${shipRows(8)}></lubber-swing>`);
    expect(root(element).querySelector('table.coefficients')).to.equal(null);
    expect(root(element).querySelector('svg')).to.equal(null);
  });

  it('shows neither what a reading came to nor which one is odd, until the page shows it', async () => {
    const rows = shipRows(16, (deviation, place) => (place === 5 ? -9.9 : deviation));
    const element = await fixture<LubberSwing>(html`<lubber-swing answer="hidden" headings="16" .rows=${rows}></lubber-swing>`);
    const figures = (): string => [...root(element).querySelectorAll('table.grid td.figure')].map(({ textContent }) => textContent?.trim()).join('');
    const reasons = (): number => root(element).querySelectorAll('tr.reason:not([hidden])').length;
    expect([figures(), reasons()]).to.deep.equal(['', 0]);
    element.answer = 'shown';
    await settled(element);
    expect(figures()).to.match(/9\.9° W/);
    expect(reasons()).to.equal(1);
  });
});

describe('events', () => {
  it('come for what the user did, not for what the host set', async () => {
    const element = await make();
    let heard = 0;
    element.addEventListener('lubber-result', () => (heard += 1));
    element.rows = shipRows(8);
    await settled(element);
    expect(element.result?.card?.kind).to.equal('approximate');
    expect(heard).to.equal(0);
    cell(element, 'use-0').click();
    await settled(element);
    expect(heard).to.equal(1);
  });
});
