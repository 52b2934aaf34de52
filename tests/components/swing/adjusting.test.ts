import { expect, fixture, html } from '@open-wc/testing';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import '../../../components/deviation-card/define.js';
import '../../../components/ship/define.js';
import '../../../components/swing/define.js';
import type { LubberDeviationCard } from '../../../components/deviation-card/deviation-card.js';
import type { LubberSwing } from '../../../components/swing/swing.js';
import { assertAccessible } from '../../support/axe.js';
import { cautions, cell, column, flat, headline, paste, press, problem, root, settled, text, type, where } from './grid-hand.js';
import { must } from '../../support/in-widget.js';

const KEY = 'lubber-swing:adjusted';
const RAD = Math.PI / 180;
const eight = Array.from({ length: 8 }, (_, i) => i * 45);

/** A written deviation of B, C and D, degrees; the series itself, by hand. */
const byTerms = (heading: number, [B, C, D]: readonly [number, number, number]): number =>
  B * Math.sin(heading * RAD) + C * Math.cos(heading * RAD) + D * Math.sin(2 * heading * RAD);
const written = (deviation: number): string => `${Math.abs(deviation).toFixed(2)}${deviation < 0 ? 'W' : 'E'}`;
const rowsOf = (terms: readonly [number, number, number]): string => eight.map((heading) => `${heading}\t${written(byTerms(heading, terms))}`).join('\n');

const asFound = rowsOf([-8, 5, 3]);
const asLeft = rowsOf([-1, 0.5, 0.5]);

async function tick(element: LubberSwing, id: string): Promise<void> {
  cell(element, id).click();
  await settled(element);
}

async function showRound(element: LubberSwing, stage: 'found' | 'left'): Promise<void> {
  must(root(element).querySelector<HTMLInputElement>(`input[name=stage][value=${stage}]`)).click();
  await settled(element);
}

const largest = (result: { check: { largest: { deviation: number } } | null } | null | undefined): number => Math.abs(result?.check?.largest.deviation ?? NaN);

describe('as found and as left', () => {
  it('what has been read becomes what was found; the round after adjusting has the same headings and a fresh grid', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing></lubber-swing>`);
    expect(root(element).querySelector('input[name=stage]')).to.equal(null);
    await paste(element, 'heading-0', asFound);
    await tick(element, 'stages');
    expect(element.result?.stage).to.equal('found');
    expect(column(element, 'reading')[0]).to.equal('5.00E');
    await showRound(element, 'left');
    expect(column(element, 'heading').length).to.equal(8);
    expect(column(element, 'reading').join('')).to.equal('');
    await paste(element, 'heading-0', asLeft);
    expect(element.result?.stage).to.equal('left');
    expect([largest(element.result) < 2, largest(element.result?.found) > 8]).to.deep.equal([true, true]);
    const change = [...root(element).querySelectorAll('table.change tr')].map(flat);
    expect(change[2]).to.equal('B −8.0°−1.0°');
    expect(flat(root(element).querySelector('ul.key'))).to.match(/^as left ?as found/);
    expect(text(element)).not.to.match(/NaN|undefined|swing\.[a-z]/);
    await assertAccessible(element);
  });

  // What was found is what the card in use has to answer for; of what is left it says nothing any more.
  it('the card in use until now stands behind what was found, not behind what is left', async () => {
    const card: DeviationCard = { kind: 'approximate', coefficients: { A: 0, B: 2, C: 0, D: 0, E: 0 } };
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${asFound} .card=${card}></lubber-swing>`);
    await tick(element, 'stages');
    expect(flat(root(element).querySelector('ul.key'))).to.match(/^as found ?card in use until now/);
    await showRound(element, 'left');
    await paste(element, 'heading-0', asLeft);
    expect(flat(root(element).querySelector('ul.key'))).to.match(/^as left ?as found/);
    expect(text(element)).not.to.contain('card in use until now');
  });

  it('Undo takes the last change back in the round it was made in, and the parting itself', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${asFound}></lubber-swing>`);
    await tick(element, 'stages');
    await showRound(element, 'left');
    cell(element, 'reading-0').focus();
    await type(element, '1E');
    await showRound(element, 'found');
    cell(element, 'undo').click();
    await settled(element);
    expect([element.stage, column(element, 'reading')[0]]).to.deep.equal(['left', '']);
    cell(element, 'undo').click();
    await settled(element);
    expect([element.stages, column(element, 'reading')[0], element.result?.stage]).to.deep.equal(['one', '5.00E', 'single']);
    cell(element, 'redo').click();
    cell(element, 'redo').click();
    await settled(element);
    expect(element.stages).to.equal('two');
  });

  it('back to one round nothing typed is lost', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${asFound}></lubber-swing>`);
    await tick(element, 'stages');
    await tick(element, 'stages');
    expect([element.result?.stage, column(element, 'reading')[0]]).to.deep.equal(['single', '5.00E']);
  });

  it('a page hands over both; a larger deviation as left is told', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing stage="left" .foundRows=${asLeft} .rows=${asFound}></lubber-swing>`);
    expect([element.result?.stage, element.result?.found?.rows.length]).to.deep.equal(['left', 8]);
    // On paper the other round stands below, figures only.
    const other = root(element).querySelector('.other-round');
    expect(flat(other)).to.match(/^Readings, as found ?Head, C ?Deviation ?δ ?0 ?0\.50E ?0\.5° E/);
    expect(getComputedStyle(other as Element).display).to.equal('none');
    expect(cautions(element)).to.match(/The largest deviation as left, 12\.3° W, exceeds the one as found, 1\.6° W/);
  });

  it('the draft keeps both rounds and the correctors', async () => {
    localStorage.removeItem(KEY);
    const first = await fixture<LubberSwing>(html`<lubber-swing draft="adjusted"></lubber-swing>`);
    await paste(first, 'heading-0', asFound);
    await tick(first, 'stages');
    await showRound(first, 'left');
    await paste(first, 'heading-0', asLeft);
    root(first).querySelector('#correctors-standard')?.setAttribute('open', '');
    const what = root(first).querySelector<HTMLInputElement>('#correctors-standard input') as HTMLInputElement;
    what.focus();
    await type(first, '2 of 20 cm');
    first.remove();
    const second = await fixture<LubberSwing>(html`<lubber-swing draft="adjusted"></lubber-swing>`);
    expect([second.result?.stage, second.stage, second.result?.found?.rows.length]).to.deep.equal(['left', 'left', 8]);
    expect(second.result?.correctors.standard.foreAndAft.what).to.equal('2 of 20 cm');
    expect(second.result?.found?.correctors.standard.foreAndAft.what).to.equal('');
    localStorage.removeItem(KEY);
  });

  it('the event is plain data, with the inputs of both rounds', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing stage="left" .foundRows=${asFound} .rows=${asLeft}></lubber-swing>`);
    let heard: unknown;
    element.addEventListener('lubber-result', (event) => (heard = event.detail));
    cell(element, 'use-0').click();
    await settled(element);
    const detail = heard as { inputs: { rows: unknown[]; found: { rows: unknown[] } }; result: { stage: string } };
    expect(JSON.parse(JSON.stringify(detail))).to.deep.equal(detail);
    expect([detail.inputs.rows.length, detail.inputs.found.rows.length, detail.result.stage]).to.deep.equal([8, 8, 'left']);
  });
});

describe('both compasses', () => {
  // Deviation of the standard 2° E on every heading; the steering compass 3° E: its head is 1° less.
  const both = eight.map((heading) => `${heading}\t2E\t${(heading + 359) % 360}`).join('\n');

  it('a column for the steering compass appears when asked for, and each has its own coefficients and card', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing></lubber-swing>`);
    expect(column(element, 'steering')).to.deep.equal([]);
    await tick(element, 'compasses');
    await paste(element, 'heading-0', both);
    expect(column(element, 'steering')[0]).to.equal('359');
    const card = element.result?.steering?.card;
    expect(card?.kind === 'approximate' && card.coefficients.A).to.be.closeTo(3, 1e-9);
    expect(root(element).querySelectorAll('table.coefficients').length).to.equal(2);
    expect(root(element).querySelectorAll('[part=curve]').length).to.equal(2);
    expect(headline(element)).to.match(/Steering compass: 3\.0° E on \d{3}°\. Within the limit of 5°/);
    expect(text(element)).not.to.match(/NaN|undefined|swing\.[a-z]/);
    await assertAccessible(element);
  });

  it('the answer stands above the readings, for beside them there is no room', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing style="inline-size: 1200px" .rows=${eight.map((heading) => `${heading}\t2E`).join('\n')}></lubber-swing>`);
    const [answer, grid] = [0, 1].map((place) => () => (root(element).querySelector(['.headline', 'table.grid'][place] as string) as Element).getBoundingClientRect()) as [() => DOMRect, () => DOMRect];
    expect(answer().left).to.be.greaterThan(grid().right);
    await tick(element, 'compasses');
    expect(answer().bottom).to.be.at.most(grid().top);
  });

  it('is walked by keyboard, column by column', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing compasses="two"></lubber-swing>`);
    cell(element, 'heading-0').focus();
    const walk: string[] = [];
    for (const key of ['ArrowRight', 'ArrowRight', 'ArrowDown', 'ArrowLeft']) {
      await press(element, key);
      walk.push(where(element));
    }
    expect(walk).to.deep.equal(['reading-0', 'steering-0', 'steering-1', 'reading-1']);
  });

  it('what cannot be read of it stands with its reason, and the standard’s reading counts', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing compasses="two" .rows=${'000\t2E\t400\n045\t\t044'}></lubber-swing>`);
    expect(problem(element, 0)).to.equal('Head by steering: This is outside the range. Accepted: 000 to 360 with decimals, or N 45 E.');
    expect(cell(element, 'steering-0').getAttribute('aria-invalid')).to.equal('true');
    expect(problem(element, 1)).to.match(/needs the standard’s reading beside it/);
    expect(element.result?.rows.length).to.equal(1);
  });

  it('a head misread by 6° is suspect for the steering compass alone, and can be left out of it alone', async () => {
    const sixteen = Array.from({ length: 16 }, (_, i) => ({ heading: String(i * 22.5), reading: written(2 + 0.2 * Math.sin(7 * i)), steering: String((i * 22.5 + (i === 5 ? 365 : 359)) % 360) }));
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${sixteen}></lubber-swing>`);
    expect(problem(element, 5)).to.match(/^Steering compass: Does not fit the rest/);
    cell(element, 'use-steering-5').click();
    await settled(element);
    expect(problem(element, 5)).to.equal('');
    expect(element.result?.rows.every((row) => row.ok && !row.struck)).to.equal(true);
  });

  it('gives the ship a card for each, and the cards print with their own correctors', async () => {
    const spheres = { spheres: { what: '2 of 15 cm', end: 'athwartships', distance: '28 cm' } };
    const ship = await fixture(html`<lubber-ship name="S" compass-name="standard"
      ><lubber-swing compasses="two" .rows=${both} .correctors=${spheres} steering-correctors='{"heeling":{"what":"1","end":"red-up","distance":"30 cm"}}'></lubber-swing
      ><lubber-deviation-card></lubber-deviation-card><lubber-deviation-card ship-card="steering"></lubber-deviation-card
    ></lubber-ship>`);
    const element = ship.querySelector('lubber-swing') as LubberSwing;
    const [standard, steering] = [...ship.querySelectorAll('lubber-deviation-card')] as [LubberDeviationCard, LubberDeviationCard];
    await settled(element);
    for (const [id, compass] of [['use-card', 'Standard compass'], ['use-steering-card', 'Steering compass']] as const) {
      cell(element, id).click();
      await settled(element);
      expect(flat(root(element).querySelector('p.spoken[role=status]'))).to.equal(`${compass}: the ship uses this card now.`);
    }
    await Promise.all([standard.updateComplete, steering.updateComplete]);
    expect(standard.result?.card).to.deep.equal(element.result?.card);
    expect(steering.result?.card).to.deep.equal(element.result?.steering?.card);
    const paper = (card: LubberDeviationCard): string => flat(card.shadowRoot?.querySelector('.paper'));
    expect(paper(standard)).to.match(/Spheres ?2 of 15 cm ?athwartships ?28 cm/);
    expect(paper(steering)).to.match(/Compass ?steering compass.*Heeling magnet ?1 ?red up ?30 cm/);
  });
});

describe('the correctors', () => {
  it('are entered for the round shown and told; Undo takes them back', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${asFound}></lubber-swing>`);
    root(element).querySelector('#correctors-standard')?.setAttribute('open', '');
    const end = root(element).querySelector<HTMLSelectElement>('#correctors-standard select') as HTMLSelectElement;
    end.value = 'red-aft';
    end.dispatchEvent(new Event('change', { bubbles: true }));
    await settled(element);
    expect(element.result?.correctors.standard.foreAndAft.end).to.equal('red-aft');
    cell(element, 'undo').click();
    await settled(element);
    expect(element.result?.correctors.standard.foreAndAft.end).to.equal('');
  });

  it('stand as they were found when the ship is adjusted, until something is changed', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing .rows=${asFound} correctors='{"flinders":{"what":"30 cm","end":"forward"}}'></lubber-swing>`);
    await tick(element, 'stages');
    await showRound(element, 'left');
    await paste(element, 'heading-0', asLeft);
    expect(element.result?.correctors.standard.flinders.what).to.equal('30 cm');
    expect(element.result?.found?.correctors.standard.flinders.what).to.equal('30 cm');
  });

  it('cannot be changed where they are locked', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing locked="correctors" .rows=${asFound}></lubber-swing>`);
    const inputs = [...root(element).querySelectorAll<HTMLInputElement>('#correctors-standard input')];
    expect(inputs.length > 0 && inputs.every(({ readOnly }) => readOnly)).to.equal(true);
  });
});

describe('a transit by its two marks', () => {
  it('is worked out from their positions: due east on the equator 090°, variation 10° W, bearing 098° by compass: 2° E', async () => {
    const element = await fixture<LubberSwing>(
      html`<lubber-swing method="transit" transit-by="marks" variation="10W" front-latitude="0" front-longitude="010-00E" rear-latitude="0" rear-longitude="010-01E" .rows=${'000\t98'}></lubber-swing>`,
    );
    // Along the equator the geodesic is the equator; 090 + 10 = 100 magnetic.
    const [row] = element.result?.rows ?? [];
    expect(row?.ok && row.deviation).to.be.closeTo(2, 1e-9);
    expect(flat(root(element).querySelector('#line'))).to.equal('From the front mark the rear one bears 090.0° T.');
    await assertAccessible(element);
  });

  it('says which marks are missing, and that two in one place are no line', async () => {
    const element = await fixture<LubberSwing>(html`<lubber-swing method="transit" variation="10W" .rows=${'000\t98'}></lubber-swing>`);
    must(root(element).querySelector<HTMLInputElement>('input[name=transitBy][value=marks]')).click();
    await settled(element);
    expect(headline(element)).to.match(/Still needed: Front mark, latitude, Front mark, longitude, Rear mark, latitude/);
    for (const name of ['frontLatitude', 'rearLatitude']) element.change(name, '33-24.0N');
    for (const name of ['frontLongitude', 'rearLongitude']) element.change(name, '071-42.5W');
    await settled(element);
    expect(flat(root(element).querySelector('#line-problem'))).to.match(/the two places are the same/);
    expect(text(element)).not.to.match(/NaN|undefined/);
  });

  it('asks about a place from which nobody sees them: 010 E taken for 010 W is 1200 miles', async () => {
    const element = await fixture<LubberSwing>(
      html`<lubber-swing method="transit" transit-by="marks" variation="10W" latitude="0" longitude="010-00W" front-latitude="0" front-longitude="010-00E" rear-latitude="0" rear-longitude="010-01E" .rows=${'000\t98'}></lubber-swing>`,
    );
    const told = flat(root(element).querySelector('[part=cautions]'));
    expect(told).to.match(/A mark 120\d\.\d M away cannot be seen: check the positions, N or S, E or W\./);
    expect(told).not.to.match(/[{}]/);
  });

  it('the variation by the model is that at the front mark where no place of the ship is given', async () => {
    const marks = html`<lubber-swing method="transit" transit-by="marks" date="2026-06-01" front-latitude="50N" front-longitude="004W" rear-latitude="50-01N" rear-longitude="004W" .rows=${'000\t0'}></lubber-swing>`;
    const [row] = (await fixture<LubberSwing>(marks)).result?.rows ?? [];
    const placed = html`<lubber-swing method="transit" transit-bearing="0" date="2026-06-01" latitude="50N" longitude="004W" .rows=${'000\t0'}></lubber-swing>`;
    const [same] = (await fixture<LubberSwing>(placed)).result?.rows ?? [];
    expect(row?.ok && same?.ok && Math.abs(row.deviation - same.deviation)).to.be.lessThan(1e-6);
  });
});
