import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/transit/define.js';
import '../../../components/ship/define.js';
import type { LubberShip } from '../../../components/ship/ship.js';
import type { LubberTransit } from '../../../components/transit/transit.js';
import { assertAccessible } from '../../support/axe.js';
import { laidOut, must, problem, root, type } from '../../support/in-widget.js';

const text = (element: LubberTransit, selector: string): string => (root(element).querySelector(selector)?.textContent ?? '').replace(/\s+/g, ' ').trim();
const headline = (element: LubberTransit): string => text(element, '.headline');

const press = async (element: LubberTransit, label: RegExp): Promise<void> => {
  must([...root(element).querySelectorAll('button')].find((button) => label.test(button.textContent ?? ''))).click();
  await element.updateComplete;
};

describe('a transit typed by keyboard', () => {
  // US Navy lectures, 1917, pelorus example: a line that bears 080 true bears 084 by compass with deviation 5E on the
  // ship's heading and variation 9W; so the error is 4W.
  it('gives the printed error of 4W and its deviation of 5E', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit></lubber-transit>`);
    await type(element, 'charted-0', '080');
    await type(element, 'bearing-0', '084');
    await type(element, 'heading', '278.4');
    await type(element, 'variation', '9W');
    await type(element, 'cardDeviation', '5E');
    expect(headline(element)).to.contain('Error 4.0° W');
    expect(headline(element)).to.contain('deviation found 5.0° E');
    expect(headline(element)).to.contain('difference 0.0°');
    expect(headline(element)).to.contain('4.0 degrees west');
  });

  // On the equator a degree of longitude is due east: by definition, no source needed.
  it('finds two marks on the equator bearing 090 and one mark due north bearing 000', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit
      .marks=${[
        { kind: 'two-marks', frontLatitude: '0', frontLongitude: '010-00E', rearLatitude: '0', rearLongitude: '010-01E', bearing: '091' },
        { kind: 'one-mark', frontLatitude: '0-05N', frontLongitude: '009-58E', bearing: '001' },
      ]}
      latitude="0"
      longitude="009-58E"
      variation="1W"
    ></lubber-transit>`);
    expect(element.result?.marks.map(({ trueBearing }) => Math.round(trueBearing * 100) / 100)).to.deep.equal([90, 0]);
    expect(element.result?.error).to.be.closeTo(-1, 1e-9);
    expect(text(element, '.explanation table')).to.contain('Line 2');
    await assertAccessible(element);
  });

  it('adds and removes lines, and means them', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084" variation="9W"></lubber-transit>`);
    await press(element, /Add a line/);
    expect(headline(element)).to.contain('Still needed: True bearing by the chart (line 2) and Bearing by compass (line 2).');
    await type(element, 'charted-1', '359');
    await type(element, 'bearing-1', '003.4');
    expect(element.result?.error).to.be.closeTo(-4.2, 1e-9);
    await press(element, /Remove line 2/);
    expect(element.result?.error).to.be.closeTo(-4, 1e-9);
  });

  // What is wrong was left with the number of the line that was removed.
  it('goes on saying what is wrong with a line that moves up', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084"></lubber-transit>`);
    await press(element, /Add a line/);
    must(root(element).querySelector<HTMLInputElement>('[name="kind-1"][value="one-mark"]')).click();
    await element.updateComplete;
    await type(element, 'frontLatitude-1', '95N');
    await press(element, /Remove line 1/);
    expect(problem(element, 'frontLatitude-0')).to.contain('outside the range');
  });
});

// Geoscience Australia, GDA technical manual, test line (from memory): Flinders Peak to Buninyong 306°52′05.37″ and
// 54 972.271 m, back 127°10′25.07″.
const [flindersPeak, buninyong] = [
  ['37-57-03.7203S', '144-25-29.5244E'],
  ['37-39-10.1561S', '143-55-35.3839E'],
] as const;

describe('the bearing of marks by their positions', () => {
  const twoMarks = { kind: 'two-marks', frontLatitude: flindersPeak[0], frontLongitude: flindersPeak[1], rearLatitude: buninyong[0], rearLongitude: buninyong[1] };

  it('is there before the compass is read: 306.9° true, chart and distance beside it once it is', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit .marks=${[twoMarks]}></lubber-transit>`);
    expect(headline(element)).to.contain('306.9° true');
    expect(headline(element)).to.contain('Still needed: Bearing by compass.');
    expect(element.result).to.equal(null);
    await type(element, 'bearing-0', '295');
    expect(headline(element)).to.contain('Error 11.9° E');
    expect(text(element, '.facts')).to.match(/By the line of sight 306\.87°, by the Mercator chart 307\.02°\. The marks are 29\.7 M apart\./);
    await assertAccessible(element);
  });

  it('is taken from the ship’s own place to one mark: 127.2° true', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit compass="gyro" latitude=${buninyong[0]} longitude=${buninyong[1]}></lubber-transit>`);
    const [, , oneMark] = [...root(element).querySelectorAll<HTMLInputElement>('input[name=kind-0]')];
    must(oneMark).focus();
    await sendKeys({ press: ' ' });
    await element.updateComplete;
    await type(element, 'frontLatitude-0', flindersPeak[0]);
    await type(element, 'frontLongitude-0', flindersPeak[1]);
    await type(element, 'bearing-0', '126.2');
    expect(headline(element)).to.contain('Gyro error 1.0° E');
    expect(element.result?.trueBearing).to.be.closeTo(127.17363, 1e-4);
  });

  it('needs the place for one mark and says so', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit .marks=${[{ kind: 'one-mark', frontLatitude: '1', frontLongitude: '1', bearing: '1' }]}></lubber-transit>`);
    expect(headline(element)).to.contain('Still needed: Latitude and Longitude.');
  });

  it('keeps what was typed for another kind of line', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084"></lubber-transit>`);
    const choose = async (index: number): Promise<void> => {
      must(root(element).querySelectorAll<HTMLInputElement>('input[name=kind-0]')[index]).click();
      await element.updateComplete;
    };
    await choose(1);
    expect(element.result).to.equal(null);
    await choose(0);
    expect(element.result?.error).to.be.closeTo(-4, 1e-9);
  });
});

describe('several lines', () => {
  it('the line that is not complete does not count, and the caution names the lines as they are numbered', async () => {
    const marks = ['45 42', '', '262 259', '10 7', '131 118'].map((line) => ({ kind: 'charted', charted: line.split(' ')[0] ?? '', bearing: line.split(' ')[1] ?? '' }));
    const element = await fixture<LubberTransit>(html`<lubber-transit .marks=${marks} variation="2E"></lubber-transit>`);
    expect(element.result?.marks.length).to.equal(4);
    expect(headline(element)).to.contain('Still needed: True bearing by the chart (line 2) and Bearing by compass (line 2).');
    expect(text(element, '.cautions')).to.contain('Line 5 lies 10');
    expect(text(element, 'tr.odd')).to.contain('Line 5');
    await assertAccessible(element);
  });
});

describe('a transit aboard a ship', () => {
  it('takes place, date and the card for the head from her, and shows what the card says', async () => {
    const ship = await fixture<LubberShip>(html`<lubber-ship latitude="33-23S" longitude="71-40W" instant="2026-11-26T08:52:40Z" heading="040" table="000 1W
180 1W"><lubber-transit charted="109.7" bearing="107"></lubber-transit></lubber-ship>`);
    const element = ship.querySelector('lubber-transit') as LubberTransit;
    await element.updateComplete;
    expect(element.result?.variation.source).to.equal('model');
    expect(element.result?.cardDeviation).to.be.closeTo(-1, 1e-9);
    expect(root(element).querySelector<HTMLInputElement>('#cardDeviation')?.placeholder).to.equal('1.0° W');
  });
});

describe('what is odd about a transit', () => {
  it('a line taken the wrong way is named', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="260" bearing="084" variation="9W"></lubber-transit>`);
    expect(text(element, '.cautions')).to.match(/taken the wrong way/);
    // The headline claimed ± 0.5° and a figure for practice for half a turn.
    expect(text(element, '.headline')).to.contain('not to be used, see below');
    expect(text(element, '.headline')).not.to.match(/±|say/);
    // In the book it became a deviation of 176° E, and the advice to have the compass adjusted.
    expect(root(element).textContent).not.to.contain('Enter in the record');
  });

  // The same slip was told twice.
  it('front and rear mark exchanged are named once, and the error is not to be used', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit latitude="50-00N" longitude="005-00W" variation="1W"></lubber-transit>`);
    element.marks = [{ kind: 'two-marks', frontLatitude: '50-03N', frontLongitude: '005-00W', rearLatitude: '50-02N', rearLongitude: '005-00W', bearing: '002' }];
    await element.updateComplete;
    expect(root(element).querySelectorAll('.cautions .warning')).to.have.length(1);
    expect(text(element, '.cautions')).to.contain('Exchange the marks').and.not.contain('half a turn');
    expect(text(element, '.headline')).to.contain('not to be used, see below');
  });

  // True north's name stood in the bearing of a line that leads there.
  it('no two names in the picture stand in one place where the line leads north', async () => {
    for (const charted of ['000', '010', '350']) {
      const element = await fixture<LubberTransit>(html`<lubber-transit charted=${charted} bearing=${charted} variation="1W"></lubber-transit>`);
      const boxes = [...root(element).querySelectorAll('svg.plan text')].map((each) => each.getBoundingClientRect());
      expect(boxes).to.have.length(4);
      for (const [index, one] of boxes.entries()) {
        for (const other of boxes.slice(index + 1)) {
          const apart = one.right <= other.left || other.right <= one.left || one.bottom <= other.top + 2 || other.bottom <= one.top + 2;
          expect(apart, charted).to.equal(true);
        }
      }
    }
  });

  it('marks close together are told in whole metres, with what they leave uncertain', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit
      .marks=${[{ kind: 'two-marks', frontLatitude: '50-01.20N', frontLongitude: '005W', rearLatitude: '50-01.26N', rearLongitude: '005W', bearing: '2' }]}
      variation="1W"
    ></lubber-transit>`);
    expect(text(element, '.cautions')).to.match(/The marks are only 111 m apart: places known to ± 10 m leave the bearing of their line uncertain by 7\.2\d°/);
    // A line ended between a figure and its unit.
    expect(element.shadowRoot?.querySelector('.cautions')?.textContent).to.match(/only 111\u00a0m apart.*10\u00a0m leave/);
  });

  // Longitude typed E for W: the headline claimed 88° W ± 0.5° for a mark 385 miles away.
  it('a mark out of sight leaves no error to be used', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit
      .marks=${[{ kind: 'one-mark', frontLatitude: '50-01.2N', frontLongitude: '005W', bearing: '2' }]}
      latitude="50N"
      longitude="005E"
      variation="1W"
    ></lubber-transit>`);
    expect(text(element, '.cautions li')).to.match(/A mark 38\d.\d M away cannot be seen: check the positions/);
    expect(text(element, '.headline')).to.contain('not to be used, see below');
  });

  it('the same place twice: words', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit
      .marks=${[{ kind: 'two-marks', frontLatitude: '10N', frontLongitude: '10E', rearLatitude: '10N', rearLongitude: '10E', bearing: '1' }]}
    ></lubber-transit>`);
    expect(headline(element)).to.contain('the two places are the same');
  });

  it('without position and date the deviation is not made up', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084"></lubber-transit>`);
    expect(headline(element)).to.contain('not known');
    expect(text(element, '.cautions')).to.contain('Enter position and date');
  });

  it('a wrong part is said beside its field and kept', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit></lubber-transit>`);
    await type(element, 'charted-0', '400');
    expect(text(element, '#charted-0-problem')).to.match(/outside the range/);
    expect(root(element).querySelector<HTMLInputElement>('#charted-0')?.value).to.equal('400');
  });
});

describe('every state of a transit', () => {
  it('empty', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit></lubber-transit>`);
    expect(headline(element)).to.contain('Still needed: True bearing by the chart and Bearing by compass.');
    await assertAccessible(element);
  });

  for (const theme of ['day', 'dusk', 'night'] as const) {
    it(`answered, ${theme}`, async () => {
      const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084" variation="9W" working="open" theme=${theme}></lubber-transit>`);
      await assertAccessible(element);
      expect(text(element, '.frame')).not.to.match(/NaN|undefined/);
    });
  }

  it('fires lubber-result for the user alone, and offers a record', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084" variation="9W"></lubber-transit>`);
    let heard = 0;
    let entry: Record<string, unknown> = {};
    element.addEventListener('lubber-result', () => (heard += 1));
    element.addEventListener('lubber-record-request', (event) => (entry = event.detail.entry));
    element.bearing = '085';
    await element.updateComplete;
    expect(element.result?.error).to.be.closeTo(-5, 1e-9);
    expect(heard).to.equal(0);
    await type(element, 'bearing-0', '086');
    expect(heard).to.be.greaterThan(0);
    await press(element, /Enter in the record/);
    expect(entry['method']).to.equal('transit');
  });

  it('asks for the time before a sight of a certain day goes into the book: nobody observed at 0 h', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084" variation="9W" date="2026-11-20"></lubber-transit>`);
    const entries: Record<string, unknown>[] = [];
    element.addEventListener('lubber-record-request', (event) => entries.push(event.detail.entry));
    expect(text(element, '.explanation')).to.contain('Enter the time of the bearing');
    expect(text(element, '.explanation')).not.to.contain('Enter in the record');
    await type(element, 'time', '0730');
    await press(element, /Enter in the record/);
    expect(entries.map(({ instant }) => instant)).to.deep.equal(['2026-11-20T07:30:00Z']);
  });

  it('keeps its answer back where the host says so, and fits 320 px', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" bearing="084" variation="9W" answer="hidden"></lubber-transit>`);
    expect(headline(element)).not.to.contain('4.0°');
    element.answer = 'shown';
    const frame = document.createElement('div');
    frame.style.inlineSize = '320px';
    element.replaceWith(frame);
    frame.append(element);
    await laidOut(element);
    expect(root(element).querySelector('.frame')?.scrollWidth).to.be.at.most(320);
  });

  it('can be locked as a whole', async () => {
    const element = await fixture<LubberTransit>(html`<lubber-transit charted="080" locked="marks"></lubber-transit>`);
    expect(root(element).querySelector<HTMLInputElement>('#charted-0')?.readOnly).to.equal(true);
    expect([...root(element).querySelectorAll('button')].some((button) => /Add/.test(button.textContent ?? ''))).to.equal(false);
  });
});

describe('places typed to a tenth of a minute', () => {
  // 185.2 m by definition; a rounded figure has its width by √12 (JCGM 100:2008, 4.3.7). Two ends so displaced across a
  // line of 1.9 km, plane: √2 · 53.5 m. Found with ± 10 m supposed: ± 0.7° where chance alone gave errors of 5°.
  it('are not taken for places known to ten metres', async () => {
    const marks = (front: string, rear: string) => JSON.stringify([{ kind: 'two-marks', frontLatitude: front, frontLongitude: '71-42.5W', rearLatitude: rear, rearLongitude: '71-41.2W', bearing: '045' }]);
    const element = await fixture<LubberTransit>(html`<lubber-transit variation="10E" marks=${marks('48-17.0S', '48-16.4S')}></lubber-transit>`);
    const item = (code: string) => must(element.result?.doubt.items.find((each) => each.code === code));
    const [first] = must(element.result).marks;
    const across = (Math.SQRT2 * 185.2) / Math.sqrt(12);
    expect(item('marks').cause.value).to.be.closeTo(185.2 / Math.sqrt(12), 1e-9);
    expect(item('marks').effect).to.be.closeTo((Math.atan(across / must(first?.markDistance)) * 180) / Math.PI, 0.01);
    expect(text(element, '.cautions')).to.match(/places known to ± 53\.5 m leave the bearing of their line uncertain by 2\.2\d°/);
    // To the hundredth the usual holds, and what the user supposes holds whatever was typed.
    element.setAttribute('marks', marks('48-17.00S', '48-16.40S'));
    await element.updateComplete;
    expect(item('marks').cause.value).to.equal(10);
    element.setAttribute('marks', marks('48-17.0S', '48-16.4S'));
    await type(element, 'doubtMarks', '25');
    expect(item('marks').cause.value).to.equal(25);
  });

  // Her place to a tenth may be 93 m off in each direction: 111 m beside the line is no proof of a wrong one.
  it('bring no warning of a ship off the line that their rounding may have put there', async () => {
    const marks = JSON.stringify([{ kind: 'two-marks', frontLatitude: '0-00.04N', frontLongitude: '010-00.00E', rearLatitude: '0-00.04N', rearLongitude: '010-02.00E', bearing: '091' }]);
    const element = await fixture<LubberTransit>(html`<lubber-transit marks=${marks} variation="1W" latitude="0-00.10N" longitude="009-58.00E"></lubber-transit>`);
    expect(text(element, '.cautions')).to.contain('111 m off the line');
    await type(element, 'latitude', '0-00.1N');
    await type(element, 'longitude', '009-58.0E');
    expect(text(element, '.cautions')).not.to.contain('off the line');
  });
});
