import { ContextProvider } from '@lit/context';
import { expect, fixture, html } from '@open-wc/testing';
import { resetMouse, sendKeys } from '@web/test-runner-commands';
import '../../../components/conversion/define.js';
import '../../../components/languages/es/define.js';
import type { LubberConversion } from '../../../components/conversion/conversion.js';
import '../../../components/ship/define.js';
import type { LubberShip } from '../../../components/ship/ship.js';
import { shipContext } from '../../../components/shared/ship-context.js';
import type { Ship } from '../../../components/shared/ship-context.js';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import { assertAccessible } from '../../support/axe.js';
import { flat, headline, input, must, problem, root, type } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

const text = (element: LubberConversion): string => (root(element).querySelector('.frame') as HTMLElement).textContent ?? '';
const radio = (element: LubberConversion, name: string, value: string): HTMLInputElement => {
  const found = [...root(element).querySelectorAll<HTMLInputElement>(`input[name=${name}]`)].find((one) => one.value === value);
  if (!found) throw new Error(`no choice ${value} of ${name}`);
  return found;
};

/** Chooses with the keyboard alone: the arrow keys walk through the options of a choice. */
async function choose(element: LubberConversion, name: string, value: string): Promise<void> {
  const chosen = root(element).querySelector<HTMLInputElement>(`input[name=${name}]:checked`);
  if (!chosen) throw new Error(`nothing chosen of ${name}`);
  chosen.focus();
  for (let step = 0; step < 4 && !radio(element, name, value).checked; step += 1) {
    await sendKeys({ press: 'ArrowDown' });
    await element.updateComplete;
  }
  expect(radio(element, name, value).checked, value).to.equal(true);
}

const empty = (): Promise<LubberConversion> => fixture(html`<lubber-conversion></lubber-conversion>`);

describe('a conversion without attributes', () => {
  it('says what is needed, and nothing else', async () => {
    const element = await empty();
    expect(headline(element)).to.contain('Still needed: Course, Variation and Deviation.');
    expect(element.result).to.equal(null);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid|null/);
    await assertAccessible(element);
  });
});

// An officer with a head and no card was shown four dashes, and no word of what to do next.
describe('a conversion half entered', () => {
  const said = async (more: Partial<LubberConversion>): Promise<string> => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="003"></lubber-conversion>`);
    Object.assign(element, more);
    await element.updateComplete;
    return /Still needed: [^.]*\./.exec(headline(element))?.[0] ?? '';
  };
  it('says what is still needed, and of a gyro its error alone', async () => {
    expect(await said({ variation: '5E' })).to.equal('Still needed: Deviation.');
    expect(await said({ variation: '5E', headingBy: 'gyro' })).to.equal('Still needed: Gyro error.');
    expect(await said({ headingBy: 'gyro' })).to.equal('Still needed: Gyro error.');
    expect(await said({ gyroError: '1E', headingBy: 'gyro' })).to.equal('');
    expect(await said({ variation: '5E', deviation: '1W' })).to.equal('');
  });
});

describe('printed examples typed by keyboard', () => {
  // Lectures in Navigation (US Navy course, 1917; Project Gutenberg 27642), pelorus example: ship heading 278.4 by
  // compass with deviation 5E, variation 9W; bearings by compass and the true bearings printed for them.
  it('three pelorus bearings of 084, 048 and 318 are 080, 044 and 314 true (Lectures in Navigation, 1917)', async () => {
    const element = await empty();
    await choose(element, 'kind', 'bearing');
    await type(element, 'bearing', '084');
    await type(element, 'heading', '278.4');
    await type(element, 'variation', '9W');
    await type(element, 'deviation', '5E');
    for (const [compass, printed] of [['084', 80], ['048', 44], ['318', 314]] as const) {
      await type(element, 'bearing', compass);
      expect(element.result?.values.true).to.be.closeTo(printed, 0.5);
      expect(headline(element)).to.contain(`True bearing ${String(printed).padStart(3, '0')}.0°`);
    }
  });

  // USCG deck licence question bank (1981 almanac data), compass course section: true course 236, variation 8E,
  // deviation 1E, wind SSE with leeway 1: the course per standard compass is 226.
  it('236 true with leeway 1 and wind SSE is steered 226 by compass (deck licence question bank)', async () => {
    const element = await empty();
    await type(element, 'heading', '236');
    await choose(element, 'headingBy', 'true');
    await type(element, 'variation', '8E');
    await type(element, 'deviation', '1E');
    await type(element, 'leeway', '1');
    await type(element, 'wind', 'SSE');
    expect(element.result?.values.compass).to.be.closeTo(226, 0.5);
    expect(headline(element)).to.contain('Compass course 226.0°');
    expect(headline(element)).to.contain('T 235.0° − V 8.0° E = M 227.0° − δ 1.0° E = C 226.0°');
  });

  // The same, made good: 195 psc, variation 13W, deviation 4E, wind WSW with leeway 2: 184 made good.
  it('195 by compass with leeway 2 and wind WSW makes good 184 (deck licence question bank)', async () => {
    const element = await empty();
    for (const [name, typed] of [['heading', '195'], ['variation', '13W'], ['deviation', '4E'], ['leeway', '2'], ['wind', 'WSW']] as const) {
      await type(element, name, typed);
    }
    expect(element.result?.madeGood).to.be.closeTo(184, 0.5);
    expect(headline(element)).to.contain('184.0° T');
  });

  // The same: true course 57, gyro error 3E, wind NNW with leeway 1: 053 per gyro compass.
  it('057 true with leeway 1 and wind NNW is steered 053 by gyro (deck licence question bank)', async () => {
    const element = await empty();
    await choose(element, 'headingBy', 'true');
    for (const [name, typed] of [['heading', '057'], ['gyroError', '3E'], ['leeway', '1'], ['wind', 'NNW']] as const) await type(element, name, typed);
    expect(element.result?.values.gyro).to.be.closeTo(53, 0.5);
    expect(headline(element)).to.contain('Gyro course 053.0°');
  });

  // Common practice, no source; by definition, true less gyro: 100 by a gyro that reads 1.5 high is 098.5 true.
  it('100 by a gyro that is 1.5 high is 098.5 true, and the field says back 1.5° W', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading-by="gyro"></lubber-conversion>`);
    await type(element, 'heading', '100');
    await type(element, 'gyroError', '1.5 high');
    expect(headline(element)).to.contain('098.5°');
    expect(flat(root(element).querySelector('#gyroError-echo'))).to.equal('1.5° W');
    await type(element, 'gyroError', '2 low');
    expect(headline(element)).to.contain('102.0°');
    // No other error is high or low.
    await type(element, 'variation', '3 high');
    expect(problem(element, 'variation')).to.contain('not understood');
  });

  // US Navy training manual NAVEDTRA 14220/14221, chapter 9, compass record book excerpt: gyro 120, error 1E,
  // variation 14W, standard 136, steering 134: true 121, magnetic 135, deviations 1W and 1E.
  it('one look at gyro 120, standard 136 and steering 134 gives deviations 1W and 1E (NAVEDTRA 14220)', async () => {
    const element = await empty();
    for (const [name, typed] of [['gyroError', '1E'], ['variation', '14W'], ['lookGyro', '120'], ['lookStandard', '136'], ['lookSteering', '134']] as const) {
      await type(element, name, typed);
    }
    const look = (root(element).querySelector('[part=look]')?.textContent ?? '').replace(/\s+/g, ' ');
    expect(look).to.contain('Head 121.0° true, 135.0° magnetic.');
    expect(look).to.match(/standard 15\.0° W 1\.0° W/);
    expect(look).to.match(/steering 13\.0° W 1\.0° E/);
  });
});

describe('a table typed from a book', () => {
  // Handbook of Magnetic Compass Adjustment, art. 501, fig. 501: deviations on the eight points.
  const lines = ['N 10.5E', 'NE 20.0E', 'E 11.5E', 'SE 1.2W', 'S 5.5W', 'SW 8.0W', 'W 12.5W', 'NW 6.8W'];
  // On the printed headings themselves the magnetic heading is heading and deviation: no interpolation comes in.
  const magnetic = [10.5, 65, 101.5, 133.8, 174.5, 217, 257.5, 308.2];

  it('converts courses both ways on every printed heading (Handbook of Magnetic Compass Adjustment, fig. 501)', async () => {
    const element = await empty();
    await choose(element, 'source', 'table');
    must(root(element).querySelector<HTMLTextAreaElement>('#table')).focus();
    for (const line of lines) {
      await sendKeys({ type: line });
      await sendKeys({ press: 'Enter' });
    }
    await sendKeys({ press: 'Tab' });
    await element.updateComplete;
    expect(flat(root(element).querySelector('#table-echo'))).to.equal('Headings understood: 8.');
    await type(element, 'variation', '0');
    for (const [place, expected] of magnetic.entries()) {
      element.headingBy = 'compass';
      element.heading = place * 45;
      await element.updateComplete;
      expect(element.result?.values.true, String(place * 45)).to.be.closeTo(expected, 1e-9);
      element.headingBy = 'true';
      element.heading = expected;
      await element.updateComplete;
      expect(((element.result?.values.compass ?? NaN) - place * 45 + 540) % 360, String(expected)).to.be.closeTo(180, 1e-9);
    }
  });

  it('reads what a spreadsheet pastes: tabs, decimal commas, signs, any order, 360 and 0', async () => {
    const element = await empty();
    element.table = 'Heading\tDeviation\n180\t−2,5\n360\t3,5\n090\t1\n000\t3,5\n270\t-2';
    element.heading = '180';
    element.variation = '0';
    await element.updateComplete;
    expect(element.result?.deviation).to.equal(-2.5);
    expect(headline(element)).to.contain('True course 177.5°');
  });

  it('a point without a deviation is no name of a column', async () => {
    const element = await empty();
    element.table = 'heading\n000 2E\n090 3E\nS';
    await element.updateComplete;
    expect(problem(element, 'table')).to.match(/Line 4, “S”:.*heading and a deviation/).and.not.match(/Line 1/);
    element.table = 'heading deviation\nN 2E\nE 3E\nS 1W';
    await element.updateComplete;
    expect(problem(element, 'table')).to.equal('');
  });

  // A line without figures was taken for names of columns wherever it stood: only the count told that a heading was missing.
  for (const line of ['south', 'South-East', 'signed by the master']) {
    it(`“${line}” among the rows is a row without a deviation`, async () => {
      const element = await empty();
      element.table = `000 2E\n090 3E\n${line}\n270 1W`;
      await element.updateComplete;
      expect(problem(element, 'table')).to.contain(`Line 3, “${line}”:`);
    });
  }

  it('a point in words is a row at the top, too', async () => {
    const element = await empty();
    element.table = 'north\n090 3E\n270 1W';
    await element.updateComplete;
    expect(problem(element, 'table')).to.match(/Line 1, “north”:.*heading and a deviation/);
  });

  it('what stands over the rows is left out, and said: a title with a year, names of columns, a rule', async () => {
    const element = await empty();
    element.table = 'Deviation card 12 May 2026\nHeading;Deviation\n-------;---------\n000;2E\n090;3E\n180;1W';
    await element.updateComplete;
    expect(problem(element, 'table')).to.equal('');
    expect(flat(root(element).querySelector('#table-echo'))).to.equal('Headings understood: 3. Left out as a title: Deviation card 12 May 2026 Heading;Deviation');
  });

  it('a first line of figures that is no title for certain is refused, and named', async () => {
    const element = await empty();
    for (const line of ['Swung 12 May', 'sud est 3,5 W', 'south 3W']) {
      element.table = `${line}\n000 2E\n090 3E`;
      await element.updateComplete;
      expect(problem(element, 'table'), line).to.contain(`Line 1, “${line}”:`);
    }
  });

  // Read in the words of the page, the headings were counted without them.
  it('counts and names lines in the words of the page', async () => {
    const element = await empty();
    element.lang = 'es';
    element.table = 'norte 2 este\n090 3 oeste';
    await element.updateComplete;
    expect(flat(root(element).querySelector('#table-echo'))).to.equal('Rumbos leídos: 2.');
    element.table = 'norte 2 este\n090 3 oeste\n180 300E';
    await element.updateComplete;
    expect(problem(element, 'table')).to.match(/^Línea 3, «180 300E»/);
  });

  it('names the lines it does not understand, and keeps them', async () => {
    const element = await empty();
    element.table = '000 2.5\n045 3,1,1E\n045\n090 3E\n090 4E';
    await element.updateComplete;
    expect(problem(element, 'table')).to.match(/Line 1.*E or W/).and.match(/Line 2/).and.match(/Line 3.*heading and a deviation/).and.match(/Line 5.*another deviation/);
    expect(input(element, 'table').value).to.equal('000 2.5\n045 3,1,1E\n045\n090 3E\n090 4E');
    await assertAccessible(element);
  });
});

describe('the classic mistakes', () => {
  // Our own round figures; arithmetic by hand: C 100 + 5E + 10W = 095 true.
  const worked: readonly [own: string, said: RegExp][] = [
    ['095', /Your 095\.0° agrees/],
    ['115', /variation has been applied the wrong way/],
    ['085', /deviation has been applied the wrong way/],
    ['105', /both been applied|variation has been left out/],
    ['090', /deviation has been left out/],
    ['275', /reciprocal/],
  ];
  for (const [own, said] of worked) {
    it(`100 by compass, variation 10W, deviation 5E, by hand ${own}: ${said.source}`, async () => {
      const element = await fixture<LubberConversion>(html`<lubber-conversion heading="100" variation="10W" deviation="5E"></lubber-conversion>`);
      await type(element, 'byHand', own);
      expect(headline(element)).to.match(said);
    });
  }

  const card: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 0, C: 8, D: 0, E: 0 } };

  it('a deviation of the bearing instead of the head is told by the card', async () => {
    // Head 000: 8E by the card. Bearing 180: 8W.
    const element = await fixture<LubberConversion>(
      html`<lubber-conversion kind="bearing" heading="000" bearing="180" variation="0" deviation="8W" deviation-source="value" .card=${card}></lubber-conversion>`,
    );
    expect(text(element).replace(/\s+/g, ' ')).to.contain('The deviation 8.0° W looks as if it were taken for the bearing: for the ship’s head the card says 8.0° E.');
    element.source = 'card';
    await element.updateComplete;
    expect(element.result?.values.true).to.be.closeTo(188, 1e-9);
    await type(element, 'byHand', '172');
    expect(headline(element)).to.contain('The deviation has been taken for the bearing');
  });

  it('a card too steep for one answer lists the headings', async () => {
    // A quadrantal deviation of 35° is beyond the 28.65° at which the slope reaches −1 (trade.md: a pure D).
    const steep: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 0, C: 0, D: 35, E: 0 } };
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="090" heading-by="magnetic" variation="0" .card=${steep}></lubber-conversion>`);
    expect(headline(element)).to.match(/too steep for a unique answer: the compass headings \d{3}\.\d°, 090\.0°, \d{3}\.\d° all answer/);
    expect(text(element)).not.to.match(/NaN|undefined/);
    await assertAccessible(element);
  });
});

describe('a conversion with fields that are refused', () => {
  // A course was answered without the leeway that was refused, and beside it nothing said so.
  it('names them together beside the answer', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="100" heading-by="true" variation="10W" deviation="5E"></lubber-conversion>`);
    const named = (): string => [...root(element).querySelectorAll('.headline .waiting')].map(flat).join(' ');
    expect(named()).to.equal('');
    for (const [name, typed] of [['leeway', 'five'], ['wind', '400'], ['byHand', 'x'], ['speed', '900'], ['lookGyro', 'y']] as const) await type(element, name, typed);
    expect(headline(element)).not.to.contain('105.0°');
    expect(named()).to.equal('To be put right: Leeway, Wind from, true, Your own result, to be checked, Speed and Head by gyro.');
    await type(element, 'leeway', '0');
    expect(headline(element)).to.contain('Compass course 105.0°');
    expect(named()).to.equal('To be put right: Wind from, true, Your own result, to be checked, Speed and Head by gyro.');
    element.source = 'coefficients';
    element.coefficientB = 'z';
    await element.updateComplete;
    expect(named()).to.contain('Wind from').and.to.contain('Deviation');
    await assertAccessible(element);
  });

  it('asks for the wind where there is leeway: its side is not known without', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="100" heading-by="true" variation="10W" deviation="5E"></lubber-conversion>`);
    await type(element, 'leeway', '5');
    // A course to steer stood there that had left the leeway out.
    expect(headline(element)).to.contain('Still needed: Wind from, true.').and.not.to.contain('105.0°');
    expect(element.result).to.equal(null);
    // A course steered leads to its true one all the same: what it makes good waits for the wind.
    element.headingBy = 'compass';
    await element.updateComplete;
    expect(headline(element)).to.contain('True course 095.0°').and.to.contain('Still needed: Wind from, true.');
    element.headingBy = 'true';
    await type(element, 'wind', 'N');
    expect(headline(element)).to.contain('Compass course 100.0°').and.not.to.contain('Still needed');
  });
});

describe('hard input', () => {
  const wrong: readonly [name: string, typed: string, said: RegExp][] = [
    ['heading', '361', /outside the range/],
    ['variation', '3.2', /E or W/],
    ['variation', '-3W', /letter or the sign/],
    ['deviation', '2O', /east to some/],
    ['gyroError', '3..1E', /two decimal marks/],
    ['leeway', '91', /0 to 90/],
    ['speed', '-1', /0 to 100/],
    ['byHand', '4,5,6', /two decimal marks/],
  ];
  for (const [name, typed, said] of wrong) {
    it(`${name} ${typed}: said beside the field, and kept`, async () => {
      const element = await fixture<LubberConversion>(html`<lubber-conversion heading="350" variation="12E" deviation="3E" gyro-error="1W"></lubber-conversion>`);
      await type(element, name, typed);
      expect(problem(element, name)).to.match(said);
      expect(input(element, name).value).to.equal(typed);
      expect(text(element)).not.to.match(/NaN|undefined/);
    });
  }

  it('crosses north: 350 by compass with 15E is 005 true', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="350" variation="12E" deviation="3E"></lubber-conversion>`);
    expect(headline(element)).to.contain('True course 005.0°');
    expect(headline(element)).to.contain('5.0 degrees');
  });

  it('says why a card handed over is none', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion card='{"kind":"table","rows":[{"heading":0}]}'></lubber-conversion>`);
    expect(text(element)).to.contain('rows[0].deviation is not a number');
    element.card = '{';
    await element.updateComplete;
    expect(text(element)).to.contain('is not JSON');
  });

  it('coefficients are taken by sign or by letter', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="090" variation="0" coefficient-b="+12.0" coefficient-e="1.5E"></lubber-conversion>`);
    // On east B counts whole and E the other way: 12.0 − 1.5.
    expect(element.result?.deviation).to.be.closeTo(10.5, 1e-9);
  });

  it('the gyro’s speed error is offered and taken over: 20 knots north in latitude 60 is 2.5° west (from memory)', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="000" heading-by="true" variation="0" speed="20" latitude="60N"></lubber-conversion>`);
    const use = [...root(element).querySelectorAll('button')].find((button) => button.textContent === 'Use as gyro error');
    must(use).click();
    await element.updateComplete;
    expect(element.result?.gyroError).to.be.closeTo(-2.5, 0.05);
  });
});

describe('letters twice as large on a page 320 px wide', () => {
  // Leeway and wind stood beside each other whatever their letters, and went out of the page.
  it('leave nothing to be moved sideways for', async () => {
    document.documentElement.style.fontSize = '200%';
    const box = await fixture<HTMLElement>(html`<div style="inline-size: 320px"><lubber-conversion heading="100" heading-by="true" variation="10W" deviation="5E" leeway="5" wind="NNW"></lubber-conversion></div>`);
    const frame = root(must(box.querySelector('lubber-conversion'))).querySelector('.frame');
    try {
      await until(() => frame?.classList.contains('narrow') === true);
      expect(frame?.scrollWidth).to.be.at.most(320);
      const [leeway, wind] = ['leeway', 'wind'].map((name) => must(frame?.querySelector(`#${name}`)).getBoundingClientRect());
      expect(wind?.top).to.be.greaterThan(leeway?.bottom ?? NaN);
    } finally {
      document.documentElement.style.fontSize = '';
    }
    await until(() => must(frame?.querySelector('#wind')).getBoundingClientRect().top < must(frame?.querySelector('#leeway')).getBoundingClientRect().bottom);
  });
});

describe('what the host can do', () => {
  it('hears lubber-result for what the user did, and only for that', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="100" variation="10W" deviation="5E"></lubber-conversion>`);
    const heard: { widget: string; inputs: Record<string, unknown>; result: unknown }[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event.detail as (typeof heard)[number]));
    element.heading = '101';
    await element.updateComplete;
    expect(heard.length).to.equal(0);
    await type(element, 'heading', '102');
    expect(heard.length).to.be.greaterThan(0);
    const last = heard[heard.length - 1];
    expect(last?.widget).to.equal('lubber-conversion');
    expect(last?.inputs['heading']).to.deep.equal({ value: 102, by: 'compass' });
    expect(JSON.parse(JSON.stringify(last))).to.deep.equal(last);
  });

  it('locks fields, keeps the answer back, leaves out the working', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion heading="100" variation="10W" deviation="5E" locked="variation" answer="hidden" working="none"></lubber-conversion>`);
    expect(input(element, 'variation').readOnly).to.equal(true);
    expect(text(element)).not.to.contain('095.0°');
    element.answer = 'shown';
    await element.updateComplete;
    expect(text(element)).to.contain('095.0°');
    expect(root(element).querySelector('[part=working]')).to.equal(null);
  });

  it('asks for no look at three compasses that is given, while the answer is kept back', async () => {
    const element = await fixture<LubberConversion>(html`<lubber-conversion variation="9W" gyro-error="1E" look-gyro="272" answer="hidden"></lubber-conversion>`);
    const look = (): string => flat(root(element).querySelector('[part=look]'));
    expect(look()).to.contain('Needs the gyro head');
    element.lookStandard = '278';
    await element.updateComplete;
    expect(look()).not.to.contain('Needs the gyro head');
    expect(look()).not.to.contain('282.0°');
    element.answer = 'shown';
    await element.updateComplete;
    // 272 and 1 E are 273 true; 9 W of it are 282 magnetic, by hand.
    expect(look()).to.contain('282.0°');
  });

  it('takes the card and the variation of the ship around it', async () => {
    const around = await fixture(html`<div></div>`);
    const card: DeviationCard = { kind: 'approximate', coefficients: { A: 2, B: 0, C: 0, D: 0, E: 0 } };
    const ship: Ship = { name: 'm.v. Halcyon Tern', compassName: 'standard', values: { variation: '12E', heading: '100' }, card, deviationOn: () => 2, useCard: () => undefined, onRecordRequest: () => () => undefined };
    new ContextProvider(around as HTMLElement, { context: shipContext, initialValue: ship });
    const element = document.createElement('lubber-conversion');
    around.append(element);
    await element.updateComplete;
    await element.updateComplete;
    // 100 by compass, deviation 2E, variation 12E: 114 true, by hand.
    expect(headline(element)).to.contain('True course 114.0°');
    expect(radio(element, 'source', 'card').checked).to.equal(true);
    element.heading = '200';
    await element.updateComplete;
    expect(headline(element)).to.contain('True course 214.0°');
  });

  it('takes the variation of the model at the ship’s place and time, and says whose it is, until one is typed', async () => {
    // Variation 0.1737 W there on 15 January 2029: documentation of an open WMM2025 library.
    const ship = await fixture<LubberShip>(html`<lubber-ship latitude="37.03" longitude="-7.91" instant="2029-01-15T00:00:00Z"><lubber-conversion heading="100" deviation="5E"></lubber-conversion></lubber-ship>`);
    const element = ship.querySelector('lubber-conversion') as LubberConversion;
    await element.updateComplete;
    await element.updateComplete;
    // 100 by compass and 5.0 E are 105 magnetic; less 0.2 W: 104.8 true, by hand.
    expect(headline(element)).to.contain('True course 104.8°');
    expect(headline(element)).to.contain('0.2° W');
    expect(headline(element)).to.contain('WMM2025');
    expect(input(element, 'variation').placeholder).to.equal('0.2° W WMM2025');
    await type(element, 'variation', '3E');
    expect(headline(element)).to.contain('True course 108.0°');
    expect(headline(element)).not.to.contain('WMM2025');
  });

  for (const theme of ['day', 'dusk', 'night'] as const) {
    it(`passes axe, ${theme}`, async () => {
      const element = await fixture<LubberConversion>(
        html`<lubber-conversion kind="bearing" theme=${theme} working="open" heading="278.4" bearing="084" variation="9W" gyro-error="1E" by-hand="100" deviation="5E"></lubber-conversion>`,
      );
      await assertAccessible(element);
    });
  }
});

after(() => resetMouse());
