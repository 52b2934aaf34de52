import { expect, fixture, html } from '@open-wc/testing';
import { resetMouse, sendKeys, setViewport } from '@web/test-runner-commands';
import '../../../components/deviation-card/define.js';
import type { LubberDeviationCard } from '../../../components/deviation-card/deviation-card.js';
import { cardHeadings } from '../../../components/deviation-card/card-rows.js';
import type { DeviationCard } from '../../../core/deviation/deviation-card.js';
import { assertAccessible } from '../../support/axe.js';
import { must } from '../../support/in-widget.js';

const root = (element: LubberDeviationCard): ShadowRoot => element.shadowRoot as ShadowRoot;
const text = (element: LubberDeviationCard): string => ((root(element).querySelector('.frame') as HTMLElement).textContent ?? '').replace(/\s+/g, ' ');
const find = <T extends Element>(element: LubberDeviationCard, selector: string): T => {
  const found = root(element).querySelector<T>(selector);
  if (!found) throw new Error(`no ${selector}`);
  return found;
};
const rows = (element: LubberDeviationCard): string[] => [...root(element).querySelectorAll('.figures tbody tr')].map((row) => (row.textContent ?? '').replace(/\s+/g, ' ').trim());

async function type(element: LubberDeviationCard, name: string, typed: string): Promise<void> {
  const field = find<HTMLInputElement>(element, `#${name}`);
  field.focus();
  field.select();
  await sendKeys({ type: typed });
  await sendKeys({ press: 'Tab' });
  await element.updateComplete;
}

const small: DeviationCard = { kind: 'approximate', coefficients: { A: 0.4, B: -3.1, C: 2.2, D: 1, E: -0.5 } };
const given = (): Promise<LubberDeviationCard> =>
  fixture(html`<lubber-deviation-card .card=${small} vessel="m.v. Halcyon Tern" compass-name="Standard" place="Port Averil" date="2026-02-11" today="2026-11-25" horizontal="21.4" vertical="-33.1"></lubber-deviation-card>`);

describe('a card without attributes', () => {
  it('says what it needs', async () => {
    const element = await fixture<LubberDeviationCard>(html`<lubber-deviation-card></lubber-deviation-card>`);
    expect(text(element)).to.contain('Type or paste the deviations');
    expect(element.result).to.equal(null);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid|null/);
    await assertAccessible(element);
  });
});

describe('a card with fields that are refused', () => {
  // The card was shown without its date, and beside it nothing said why.
  it('names them together beside the card, whether there is one or not', async () => {
    const element = await given();
    const named = (): string => (root(element).querySelector('.headline .wrong')?.textContent ?? '').trim();
    expect(named()).to.equal('');
    await type(element, 'date', '2026-13-41');
    await type(element, 'vertical', 'y');
    expect(named()).to.equal('To be put right: Date and Vertical force Z.');
    expect(root(element).querySelector('.paper')).not.to.equal(null);
    Object.assign(element, { card: undefined, table: '000 1\n400 2W' });
    await element.updateComplete;
    expect(named()).to.equal('To be put right: Deviations of the card, Date and Vertical force Z.');
    await assertAccessible(element);
  });
});

describe('a card typed by keyboard', () => {
  // Handbook of Magnetic Compass Adjustment, art. 501, fig. 501: deviations on the eight points.
  it('carries the printed deviations and magnetic headings (Handbook of Magnetic Compass Adjustment, fig. 501)', async () => {
    const element = await fixture<LubberDeviationCard>(html`<lubber-deviation-card every="15"></lubber-deviation-card>`);
    find<HTMLTextAreaElement>(element, '#table').focus();
    for (const line of ['N 10.5E', 'NE 20,0E', 'E 11.5E', 'SE 1.2W', 'S 5.5W', 'SW 8.0W', 'W 12.5W', 'NW 6.8W']) {
      await sendKeys({ type: line });
      await sendKeys({ press: 'Enter' });
    }
    await sendKeys({ press: 'Tab' });
    await element.updateComplete;
    const lines = rows(element);
    expect(lines.length).to.equal(24);
    expect(lines[0]).to.contain('000° 10.5° E').and.to.contain('010.5°');
    expect(lines[21]).to.contain('315° 6.8° W').and.to.contain('308.2°');
    expect(text(element)).to.contain('Deviations exceed the limit of 5°');
    expect(lines[3]).to.contain('beyond the limit');
    expect(lines[9]).not.to.contain('beyond the limit');
  });

  it('takes particulars and correctors, and shows them on the paper', async () => {
    const element = await given();
    await type(element, 'vessel', 'm.v. Ordinary');
    await type(element, 'serial', '0417');
    find<HTMLElement>(element, '.correctors-entry').closest('details')?.setAttribute('open', '');
    const [what, distance] = root(element).querySelectorAll<HTMLInputElement>('.correctors-entry table:first-of-type input');
    must(what).focus();
    await sendKeys({ type: '2' });
    await element.updateComplete;
    const end = find<HTMLSelectElement>(element, '.correctors-entry select');
    end.value = 'red-forward';
    end.dispatchEvent(new Event('change'));
    await element.updateComplete;
    must(distance).focus();
    await sendKeys({ type: '31 cm' });
    await element.updateComplete;
    expect(find(element, '.particulars').textContent).to.contain('m.v. Ordinary').and.to.contain('0417');
    expect((find(element, '.correctors tbody tr').textContent ?? '').replace(/\s+/g, ' ').trim()).to.equal('Fore-and-aft magnets 2 red forward 31 cm');
    expect(element.result?.particulars.correctors.foreAndAft).to.deep.equal({ what: '2', end: 'red-forward', distance: '31 cm' });
  });
});

describe('the headings of a card', () => {
  it('every 10° with the intercardinals are 40, every 15° are 24 (flag forms)', () => {
    expect(cardHeadings(10).length).to.equal(40);
    expect(cardHeadings(10)).to.include.members([0, 45, 135, 225, 315, 350]);
    expect(cardHeadings(15).length).to.equal(24);
  });
});

describe('the age of a card', () => {
  // It was told as 0 months.
  it('is told in words in the first month', async () => {
    const element = await given();
    element.date = '2026-11-20';
    await element.updateComplete;
    expect(text(element)).to.contain('This card is less than a month old.');
  });

  it('is told, and held against the limit chosen: twelve months for the canal (Panama Canal OP Notice N-1-2022, 4.k)', async () => {
    const element = await given();
    expect(text(element)).to.contain('Age of this card in months: 9.');
    // The figure stays beside its words where a line ends.
    expect(root(element).querySelector('.verdict')?.textContent).to.contain('months:\u00a09.');
    expect(element.result?.cautions.map(({ code }) => code)).not.to.contain('card-too-old');
    element.date = '2025-11-25';
    element.limit = 'panama-canal';
    await element.updateComplete;
    expect(text(element)).to.contain('This card is 12 months old; the limit chosen asks for a new one after 12.');
    element.date = '2027-01-01';
    await element.updateComplete;
    expect(text(element)).to.contain('still to come');
    element.date = '';
    await element.updateComplete;
    expect(text(element)).to.contain('not dated');
  });
});

describe('the two forces', () => {
  // In a wide widget's narrow column a downward force with its minus had its echo on a line of its own.
  it('each have what was understood beside them', async () => {
    const box = await fixture<HTMLElement>(html`<div style="inline-size: 1240px"><lubber-deviation-card horizontal="18.4" vertical="-38.5"></lubber-deviation-card></div>`);
    const widget = root(must(box.querySelector('lubber-deviation-card')));
    for (const name of ['horizontal', 'vertical']) {
      const [typed, echo] = [name, `${name}-echo`].map((id) => must(widget.querySelector(`#${id}`)).getBoundingClientRect());
      expect(echo?.top, name).to.be.lessThan(typed?.bottom ?? NaN);
    }
  });
});

describe('the paper', () => {
  it('shows field, coefficients and lines to sign on, without a name', async () => {
    const element = await given();
    const paper = (find(element, '[part=paper]').textContent ?? '').replace(/\s+/g, ' ');
    for (const said of ['m.v. Halcyon Tern', 'Standard', 'Port Averil', '2026-02-11', '21.4 µT', '−33.1 µT', 'A +0.4°', 'B −3.1°', 'within the limit of 5°', 'licensed compass adjuster prevail']) {
      expect(paper).to.contain(said);
    }
    expect([...root(element).querySelectorAll('.signatures p')].map((line) => line.textContent)).to.deep.equal(['Compass adjuster, name and signature', 'Master', 'Date']);
  });

  it('as a pocket card keeps the figures and leaves out the curve', async () => {
    const element = await given();
    element.format = 'pocket';
    await element.updateComplete;
    expect(rows(element).length).to.equal(40);
    expect(root(element).querySelector('.paper svg')).to.equal(null);
    expect(find(element, '.paper').classList.contains('pocket')).to.equal(true);
  });

  // From the pictures, no standard: the last letter of the magnetic headings stood out of sight, on a bridge the whole of them.
  for (const density of ['', 'bridge']) {
    it(`as a pocket card on the screen shows its figures without scrolling${density && ', on a bridge too'}`, async () => {
      await setViewport({ width: 1280, height: 800 });
      const large: DeviationCard = { kind: 'exact', coefficients: { A: 0.01, B: 0.36, C: -0.25, D: 0.12, E: 0.02 } };
      const around = await fixture<HTMLElement>(html`<div data-lubber-density=${density}><lubber-deviation-card format="pocket" .card=${large}></lubber-deviation-card></div>`);
      const element = must(around.querySelector<LubberDeviationCard>('lubber-deviation-card'));
      await element.updateComplete;
      const halves = find(element, '.paper .halves');
      expect(root(element).querySelectorAll('.flag').length).to.be.greaterThan(20);
      expect(halves.scrollWidth).to.be.at.most(halves.clientWidth);
      await setViewport({ width: 800, height: 600 });
    });
  }

  it('an exact card that has no single deviation on some headings shows dashes', async () => {
    const element = await fixture<LubberDeviationCard>(html`<lubber-deviation-card .card=${{ kind: 'exact', coefficients: { A: 0, B: 1.4, C: 0, D: 0, E: 0 } } as DeviationCard}></lubber-deviation-card>`);
    expect(rows(element).some((row) => row.includes('–'))).to.equal(true);
    expect(text(element)).not.to.match(/NaN|undefined/);
    expect(text(element)).to.contain('gives no deviation, or two');
  });
});

describe('hard input', () => {
  for (const [name, typed, said] of [
    ['date', '2026-02-31', /no such day/],
    ['horizontal', '-1', /outside the range/],
    ['vertical', '4..1', /two decimal marks/],
  ] as const) {
    it(`${name} ${typed}: said beside the field, and kept`, async () => {
      const element = await given();
      await type(element, name, typed);
      expect(find(element, `#${name}-problem`).textContent).to.match(said);
      expect(find<HTMLInputElement>(element, `#${name}`).value).to.equal(typed);
      await assertAccessible(element);
    });
  }

  it('beside an empty field is told to come from elsewhere, until another is typed', async () => {
    const element = await given();
    const hint = (): string => find<HTMLElement>(element, '#table-echo').textContent ?? '';
    expect(hint()).to.match(/^What is shown was handed over/);
    await type(element, 'table', '000 1E');
    expect(hint()).not.to.contain('handed over');
    element.table = '';
    Object.assign(element, { card: undefined });
    await element.updateComplete;
    expect(hint()).to.match(/^A line for each heading/);
  });

  it('says why a card handed over is none', async () => {
    const element = await fixture<LubberDeviationCard>(html`<lubber-deviation-card card='{"kind":"table","rows":[{"heading":0,"deviation":1},{"heading":360,"deviation":2}]}'></lubber-deviation-card>`);
    expect(text(element)).to.contain('rows give one heading two deviations');
  });

  it('correctors that are no correctors are left empty', async () => {
    const element = await given();
    element.correctors = '{"spheres":{"what":7,"end":"upwards"},"flinders":"x"}';
    await element.updateComplete;
    expect(element.result?.particulars.correctors.spheres).to.deep.equal({ what: '', end: '', distance: '' });
  });
});

describe('what the host can do', () => {
  it('hears lubber-result for what the user did, and only for that', async () => {
    const element = await given();
    const heard: unknown[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event.detail));
    element.remarks = 'upright';
    await element.updateComplete;
    expect(heard.length).to.equal(0);
    await type(element, 'remarks', 'boats swung in');
    expect(heard.length).to.be.greaterThan(0);
    expect(JSON.parse(JSON.stringify(heard[0]))).to.deep.equal(heard[0]);
  });

  it('locks fields and correctors', async () => {
    const element = await given();
    element.locked = 'vessel correctors';
    await element.updateComplete;
    expect(find<HTMLInputElement>(element, '#vessel').readOnly).to.equal(true);
    expect(find<HTMLInputElement>(element, '.correctors-entry input').readOnly).to.equal(true);
    expect(find<HTMLSelectElement>(element, '.correctors-entry select').disabled).to.equal(true);
  });

  for (const theme of ['day', 'dusk', 'night'] as const) {
    for (const format of ['a4', 'pocket'] as const) {
      it(`passes axe, ${theme}, ${format}`, async () => {
        const element = await given();
        element.theme = theme;
        element.format = format;
        for (const details of root(element).querySelectorAll('details')) details.open = true;
        await element.updateComplete;
        await assertAccessible(element);
      });
    }
  }
});

after(() => resetMouse());
