import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/amplitude/define.js';
import '../../../components/deviation-card/define.js';
import '../../../components/ship/define.js';
import { readCorrectors } from '../../../core/deviation/corrector-states.js';
import type { Correctors } from '../../../core/deviation/corrector-states.js';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberDeviationCard } from '../../../components/deviation-card/deviation-card.js';
import type { LubberShip } from '../../../components/ship/ship.js';
import { assertAccessible } from '../../support/axe.js';
import { laidOut, must, root } from '../../support/in-widget.js';

// Cards and correctors are invented. That correctors belong on the card of their compass: flag forms, as in trade practice.

const words = (element: Element | null | undefined): string => (element?.textContent ?? '').replace(/\s+/g, ' ').trim();
const box = (ship: LubberShip, id: string): HTMLTextAreaElement => root(ship).querySelector(`#${id}`) as HTMLTextAreaElement;
/** What is said of a compass: the heads of what opens, its own first, then that of its correctors. */
const heads = (ship: LubberShip, compass: string): string[] => [...root(ship).querySelectorAll(`#${compass} summary`)].map(words);

const swung: DeviationCard = { kind: 'approximate', coefficients: { A: 0.5, B: 2, C: -1, D: 1.5, E: 0 } };
const noted: Correctors = readCorrectors({ spheres: { what: '2 of 18 cm', end: 'athwartships', distance: '25 cm' } });
const others: Correctors = readCorrectors({ foreAndAft: { what: '4', end: 'red-forward', distance: 'third tray' } });

async function aboard(): Promise<{ ship: LubberShip; sight: LubberAmplitude; papers: LubberDeviationCard[] }> {
  const ship = await fixture<LubberShip>(html`<lubber-ship name="Halcyon Tern" heading="040">
    <lubber-amplitude></lubber-amplitude><lubber-deviation-card></lubber-deviation-card><lubber-deviation-card ship-card="steering"></lubber-deviation-card>
  </lubber-ship>`);
  const sight = ship.querySelector('lubber-amplitude') as LubberAmplitude;
  const papers = [...ship.querySelectorAll('lubber-deviation-card')];
  await settle(ship, ...papers);
  for (const details of root(ship).querySelectorAll('details')) details.open = true;
  return { ship, sight, papers };
}

async function settle(...elements: readonly { readonly updateComplete: Promise<boolean> }[]): Promise<void> {
  for (let round = 0; round < 3; round += 1) for (const element of elements) await element.updateComplete;
}

/** Types into a field as it stands, at its end. */
async function type(ship: LubberShip, id: string, lines: readonly string[]): Promise<void> {
  box(ship, id).focus();
  for (const [index, line] of lines.entries()) {
    if (index > 0) await sendKeys({ press: 'Enter' });
    await sendKeys({ type: line });
  }
  await settle(ship);
}

async function put(ship: LubberShip, id: string, text: string): Promise<void> {
  box(ship, id).value = text;
  box(ship, id).dispatchEvent(new Event('input'));
  await settle(ship);
}

it('puts the cards of both compasses side by side where there is room for two, and not for a third only', async () => {
  const place = await fixture<HTMLElement>(html`<div><lubber-ship name="Halcyon Tern"></lubber-ship></div>`);
  place.style.width = '60rem';
  const ship = place.firstElementChild as LubberShip;
  for (const details of root(ship).querySelectorAll('details')) details.open = true;
  const [standard, steering] = ['standard', 'steering'].map((id) => root(ship).querySelector(`#${id}`)?.getBoundingClientRect().top);
  expect(steering).to.equal(standard);
});

describe('the compasses of a ship', () => {
  it('say which card of each is in use and which correctors are noted, as a swing hands them over', async () => {
    const { ship, sight, papers } = await aboard();
    expect([...heads(ship, 'standard'), ...heads(ship, 'steering')]).to.deep.equal([
      'Standard compass: no deviation card', 'Correctors: not noted', 'Steering compass: no deviation card', 'Correctors: not noted',
    ]);
    sight.ship?.useCard(swung, { compass: 'standard', correctors: noted });
    sight.ship?.useCard({ kind: 'table', rows: [{ heading: 0, deviation: 3 }, { heading: 180, deviation: -1 }] }, { compass: 'steering', correctors: others });
    await settle(ship, ...papers);
    expect(heads(ship, 'standard')).to.deep.equal(['Standard compass: deviation card by coefficients', 'Correctors: Spheres']);
    expect(heads(ship, 'steering')).to.deep.equal(['Steering compass: deviation card, headings: 2', 'Correctors: Fore-and-aft magnets']);
    expect(words(root(ship).querySelector('.bar'))).to.contain('deviation card by coefficients · Steering compass: deviation card, headings: 2');
    expect(papers.map(({ result }) => result?.particulars.correctors)).to.deep.equal([noted, others]);
    must(root(ship).querySelector<HTMLButtonElement>('#remove-steeringCard')).click();
    await settle(ship, ...papers);
    expect(heads(ship, 'steering')).to.deep.equal(['Steering compass: no deviation card', 'Correctors: not noted']);
    expect(heads(ship, 'standard')[1]).to.equal('Correctors: Spheres');
    expect(papers[1]?.result).to.equal(null);
  });

  it('take a card of the steering compass and correctors by keyboard, tell the page and keep them', async () => {
    const { ship, papers } = await aboard();
    const heard: unknown[] = [];
    ship.addEventListener('lubber-result', ({ detail }) => heard.push(detail.result));
    await type(ship, 'steeringTable', ['000 2.5E', '090 1W', '180 2W']);
    const entry = root(ship).querySelectorAll<HTMLInputElement>('#steering .correctors-entry [aria-label^="Heeling magnet"]');
    must(entry[0]).focus();
    await sendKeys({ type: '1' });
    await sendKeys({ press: 'Tab' });
    await sendKeys({ type: 'red up' });
    await settle(ship, ...papers);
    expect(heads(ship, 'steering')).to.deep.equal(['Steering compass: deviation card, headings: 3', 'Correctors: Heeling magnet']);
    const { steeringCard, correctors } = ship.result;
    expect(steeringCard).to.deep.equal({ kind: 'table', rows: [{ heading: 0, deviation: 2.5 }, { heading: 90, deviation: -1 }, { heading: 180, deviation: -2 }] });
    expect(correctors).to.deep.equal({ steering: readCorrectors({ heeling: { what: '1', end: 'red-up' } }) });
    expect(heard.at(-1)).to.deep.equal(ship.result);
    expect(papers[1]?.result?.rows[0]?.deviation).to.be.closeTo(2.5, 1e-9);
    expect(papers[1]?.result?.particulars.correctors.heeling.end).to.equal('red-up');
    await assertAccessible(ship);
    const frame = document.createElement('div');
    frame.style.inlineSize = '320px';
    ship.replaceWith(frame);
    frame.append(ship);
    await laidOut(ship, ...papers);
    expect(frame.scrollWidth).to.be.at.most(320);
  });

  it('leave both as they are where the page has locked them', async () => {
    const { ship } = await aboard();
    ship.steeringCard = swung;
    ship.locked = 'steering-card steering-table correctors';
    await settle(ship);
    expect(root(ship).querySelector('#remove-steeringCard')).to.equal(null);
    expect(box(ship, 'steeringTable').readOnly).to.equal(true);
    expect([...root(ship).querySelectorAll<HTMLInputElement>('.correctors-entry input')].every(({ readOnly }) => readOnly)).to.equal(true);
  });
});

// A card typed by hand once kept the correctors of the card a swing had handed over before it.
describe('the correctors of a card', () => {
  const said = (ship: LubberShip): string => words(root(ship).querySelector('[role=status]'));
  const known = (ship: LubberShip): unknown => ship.result.correctors?.standard;

  it('go with it when another is typed, which is said, and come back with it', async () => {
    const { ship, sight } = await aboard();
    sight.ship?.useCard(swung, { compass: 'standard', correctors: noted });
    sight.ship?.useCard(swung, { compass: 'steering', correctors: others });
    await settle(ship);
    await type(ship, 'table', ['000 1E', '090 2W']);
    expect(known(ship)).to.equal(undefined);
    expect(ship.result.correctors?.steering).to.deep.equal(others);
    expect(said(ship)).to.equal('Standard compass: the correctors noted with the card before are put aside.');
    await put(ship, 'table', '');
    expect([ship.cardInUse, known(ship)]).to.deep.equal([swung, noted]);
    expect(said(ship)).to.equal('Standard compass: the correctors noted with this card hold again.');
  });

  // With two compasses aboard nobody could tell of which the card was; and a card put aside was told as another in use.
  it('are told with their compass, behind what became of its card', async () => {
    const { ship, sight } = await aboard();
    const remove = (card: string): HTMLButtonElement => root(ship).querySelector(`#remove-${card}`) as HTMLButtonElement;
    sight.ship?.useCard(swung, { compass: 'standard', correctors: noted });
    await settle(ship);
    expect(said(ship)).to.equal('Standard compass: the card handed over is in use.');
    sight.ship?.useCard(swung, { compass: 'steering' });
    await settle(ship);
    expect(said(ship)).to.equal('Steering compass: the card handed over is in use.');
    expect(['card', 'steeringCard'].map((card) => remove(card).getAttribute('aria-label'))).to.deep.equal(['Standard compass: Put this card aside', 'Steering compass: Put this card aside']);
    remove('steeringCard').click();
    await settle(ship);
    expect(said(ship)).to.equal('Steering compass: no card is in use.');
    remove('card').click();
    await settle(ship);
    expect(said(ship)).to.equal('Standard compass: no card is in use. Standard compass: the correctors noted with the card before are put aside.');
  });

  it('stay while one line after the other is typed and mended, and when they were noted first', async () => {
    const { ship } = await aboard();
    ship.correctors = { standard: noted };
    await settle(ship);
    await type(ship, 'table', ['000 -1', '090 -2.5', '180 1']);
    expect(known(ship)).to.deep.equal(noted);
    await put(ship, 'table', '000 -1\n090 -2.');
    await put(ship, 'table', '000 -1\n090 no');
    await put(ship, 'table', '000 -1\n090 -2.6\n180 1');
    expect(known(ship)).to.deep.equal(noted);
    // Another card pasted over it shares no line with it.
    await put(ship, 'table', '000 3E\n090 1E\n180 2W');
    expect(known(ship)).to.equal(undefined);
  });

  it('are what the page or a file says with a card', async () => {
    const { ship } = await aboard();
    Object.assign(ship, { card: swung, correctors: { standard: noted } });
    await settle(ship);
    Object.assign(ship, { card: { ...swung, coefficients: { A: 1, B: 0, C: 0, D: 0, E: 0 } }, correctors: JSON.stringify({ standard: others }) });
    await settle(ship);
    expect(known(ship)).to.deep.equal(others);
    ship.card = { kind: 'table', rows: [{ heading: 0, deviation: 1 }] };
    await settle(ship);
    expect(known(ship)).to.equal(undefined);
  });
});
