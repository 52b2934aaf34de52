import { expect, fixture, html, oneEvent, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/languages/de/define.js';
import '../../../components/languages/es/define.js';
import '../../../components/languages/fr/define.js';
import '../../../components/languages/id/define.js';
import '../../../components/languages/zh/define.js';
import type { LubberIron } from '../../../components/iron/iron.js';
import { LubberResultEvent } from '../../../components/shared/events.js';
import { assertAccessible } from '../../support/axe.js';
import { bench, explanation, headline, one, press, problem, root, text, textOf, type } from './bench.js';
import { deviationByHand } from './poisson-by-hand.js';
import { laidOut } from '../../support/in-widget.js';

const views = ['place', 'slip', 'iron', 'heel', 'correctors', 'voyage', 'separate'];
const forces = { source: 'forces', horizontal: 20, vertical: 40 };

function openAll(element: LubberIron): void {
  for (const each of root(element).querySelectorAll('details')) each.open = true;
}

describe('the bench by itself', () => {
  it('shows a ship of the scenario without any attribute', async () => {
    const element = await fixture<LubberIron>(html`<lubber-iron></lubber-iron>`);
    expect(element.result?.needle.behaviour).to.equal('directs');
    expect(headline(element)).to.match(/Deviation \d+\.\d° [EW]/);
  });

  for (const view of views) {
    it(`is accessible and free of NaN at the station ${view}, everything open`, async () => {
      const element = await fixture<LubberIron>(html`<lubber-iron working="open"></lubber-iron>`);
      element.state = { ...element.state, view, heel: 10, foreAftForce: 2 };
      await element.updateComplete;
      openAll(element);
      expect(text(element)).not.to.match(/NaN|undefined|Invalid|null|iron\.|step\.|caution\./);
      await assertAccessible(element);
    });
  }

  // Its last column was cut at 768 and at 320 px.
  it('shows the table of heeling errors whole in narrow boxes', async () => {
    const element = await fixture<LubberIron>(html`<lubber-iron latitude="75-30S" longitude="149-00E" date="2026-07-01"></lubber-iron>`);
    element.state = { ...element.state, view: 'heel', heel: 12, R: -8 };
    for (const width of [320, 720]) {
      element.style.cssText = `display: block; inline-size: ${width}px`;
      await laidOut(element);
      const [table] = one(element, '.explanation').querySelectorAll('.scroll');
      expect((table?.scrollWidth ?? Infinity) - (table?.clientWidth ?? 0), `${width} px`).to.equal(0);
    }
  });

  // In Spanish it was 10 px too wide, in Indonesian 8.
  for (const language of ['de', 'es', 'fr', 'id', 'zh']) {
    it(`shows it whole at 320 px in ${language} too`, async () => {
      const element = await fixture<LubberIron>(html`<lubber-iron lang=${language} latitude="75-30S" longitude="149-00E" date="2026-07-01"></lubber-iron>`);
      element.state = { ...element.state, view: 'heel', heel: 12, R: -8 };
      element.style.cssText = 'display: block; inline-size: 320px';
      await waitUntil(() => root(element).querySelector('.frame.narrow'), 'one column');
      const table = one(element, '.explanation table.heel').parentElement as Element;
      expect(root(element).querySelector('.frame')?.getAttribute('lang')).to.equal(language);
      expect(table.scrollWidth - table.clientWidth).to.be.at.most(0);
    });
  }

  for (const theme of ['day', 'dusk', 'night']) {
    it(`keeps its contrast in the theme ${theme}`, async () => {
      const element = await fixture<LubberIron>(html`<lubber-iron theme=${theme}></lubber-iron>`);
      openAll(element);
      await assertAccessible(element);
    });
  }

  it('names the fields it misses', async () => {
    const element = await bench();
    const field = (one<HTMLElement>(element, '#tab-place').click(), await element.updateComplete, one<HTMLInputElement>(element, '#latitude'));
    field.focus();
    field.select();
    await sendKeys({ press: 'Delete' });
    await element.updateComplete;
    expect(element.result).to.equal(null);
    expect(headline(element)).to.equal('Still needed: Latitude.');
    await sendKeys({ press: 'Tab' });
    await element.updateComplete;
    // Left empty, the field goes back to what stood in for it.
    expect(element.result).not.to.equal(null);
  });
});

describe('each iron by its own slider and field', () => {
  // Poisson’s equations written out in poisson-by-hand.ts; a field of H 20, Z 40 µT.
  for (const name of ['a', 'b', 'c', 'd', 'e', 'f', 'P', 'Q'] as const) {
    it(`${name}: the curve is Poisson’s`, async () => {
      const element = await bench({ ...forces, view: 'iron' });
      openAll(element);
      const slider = one<HTMLInputElement>(element, `input[type=range][aria-label^="${name} "]`);
      slider.focus();
      for (let step = 0; step < 12; step += 1) await sendKeys({ press: 'ArrowRight' });
      await element.updateComplete;
      const value = Number(one<HTMLInputElement>(element, `#${name}`).value);
      expect(value).to.be.closeTo(name === 'P' || name === 'Q' ? 1.2 : 0.06, 1e-9);
      for (const { magneticHeading, deviation } of element.result?.curve ?? []) {
        expect(deviation).to.be.closeTo(deviationByHand({ [name]: value }, 20, 40, magneticHeading), 1e-9);
      }
      expect(slider.getAttribute('aria-valuetext')).to.match(/^[\d.]+( µT)?$/);
    });
  }

  // Common practice: north of the magnetic equator the top of vertical iron is blue and draws the north point; south of
  // it red. The near end is written first; forward of the compass for a pull ahead.
  const ends: readonly [name: string, value: number, z: number, letters: string][] = [
    ['c', 0.05, 40, 'BR'],
    ['c', 0.05, -40, 'RB'],
    ['f', 0.05, 40, 'BR'],
    ['P', 3, 40, 'BR'],
    ['P', -3, -40, 'RB'],
    ['k', 0.05, 40, 'BR'],
  ];
  for (const [name, value, z, letters] of ends) {
    it(`the picture of ${name} ${value} where Z is ${z} µT: ends ${letters}`, async () => {
      const element = await bench({ ...forces, vertical: z, [name]: value, view: 'iron' });
      const picture = one(element, `#${name}`).closest('.slider')?.querySelectorAll('.rod-picture text') ?? [];
      expect([...picture].map((each) => each.textContent).join('')).to.equal(letters);
    });
  }

  it('draws many movements of a slider within one frame once', async () => {
    const element = await bench({ ...forces, view: 'iron' });
    let drawn = 0;
    const updated = (element as unknown as { updated(changed: unknown): void }).updated.bind(element);
    (element as unknown as { updated(changed: unknown): void }).updated = (changed) => {
      drawn += 1;
      updated(changed);
    };
    for (let step = 1; step <= 20; step += 1) element.slide('c', step / 100);
    await element.updateComplete;
    expect(drawn).to.equal(1);
    expect(one<HTMLInputElement>(element, '#c').value).to.equal('0.2');
  });

  it('leaves out of the picture the parts not wanted, and tells permanent from induced', async () => {
    const element = await bench({ ...forces, P: 2, c: 0.1, e: -0.1, view: 'iron' });
    const letters = (): string[] => [...root(element).querySelectorAll('.curve .letter')].map((each) => each.textContent ?? '');
    expect(letters()).to.deep.equal(['B', 'D']);
    for (const box of root(element).querySelectorAll<HTMLInputElement>('.parts input')) {
      const label = box.parentElement?.textContent ?? '';
      if (/^\s*D/.test(label) || /apart/.test(label)) box.click();
    }
    await element.updateComplete;
    expect(letters()).to.deep.equal(['P', 'cZ']);
  });
});

describe('correctors', () => {
  // From the model of core’s correctors, by hand: a magnet below, red end forward, takes its force off P.
  it('a fore-and-aft magnet of 2 µT, red end forward, takes away +B of P 2 µT', async () => {
    const element = await bench({ ...forces, P: 2, view: 'correctors' });
    expect(headline(element)).to.contain('5.7° E');
    await type(element, 'foreAftForce', '2');
    expect(headline(element)).to.contain('Deviation 0.0°');
    expect(headline(element)).to.contain('Dashed: without correctors.');
    await press(element, 'Take all away');
    expect(headline(element)).to.contain('5.7° E');
  });

  it('a Flinders bar aft, 0.1, takes away the B of c 0.1 at every place', async () => {
    const element = await bench({ ...forces, c: 0.1, flindersStrength: 0.1, flindersPlace: 'aft', view: 'correctors' });
    expect(element.result?.exact.B).to.be.closeTo(0, 1e-12);
    element.change('vertical', '-50');
    await element.updateComplete;
    expect(element.result?.exact.B).to.be.closeTo(0, 1e-12);
  });

  it('leaves out spheres that would reach the needle, and says so', async () => {
    const element = await bench({ ...forces, e: -0.1, sphereDiameter: 40, sphereDistance: 20, view: 'correctors' });
    expect(headline(element)).to.contain('The spheres would reach the needle');
    // D = e/−2λ: −e/(2 + e) by hand.
    expect(element.result?.exact.D).to.be.closeTo(0.1 / 1.9, 1e-12);
  });
});

describe('heel', () => {
  // By hand, only R = 5 µT and H 20: heeled 10° to starboard Q becomes −R sin 10°, so on north tan δ = ℭ = −0.0434.
  it('R 5 µT and a heel of 10° give 2.5° W on north', async () => {
    const element = await bench({ ...forces, R: 5, heading: '000', view: 'heel' });
    await type(element, 'heel', '10');
    expect(headline(element)).to.contain('Deviation 2.5° W');
    expect(explanation(element)).to.contain('drawn to the high side');
    expect(element.result?.onHeading.deviation).to.be.closeTo(-2.4858, 0.001);
  });
});

describe('what cannot be', () => {
  const wrong: readonly [view: string, name: string, typed: string, said: RegExp][] = [
    ['place', 'date', '2031-05-01', /models do not hold.*2015-01-01 to 2030-01-01/],
    ['place', 'date', '2014-12-31', /models do not hold/],
    ['place', 'latitude', '91N', /outside the range/],
    ['iron', 'c', 'much', /not understood.*−10 to 10/],
    ['iron', 'P', '9999', /outside the range.*500 µT/],
    ['heel', 'heel', '120', /outside the range.*starboard down/],
    ['slip', 'slipHeading', '400', /outside the range/],
  ];
  for (const [view, name, typed, said] of wrong) {
    it(`${name} ${typed}: said beside the field, and kept`, async () => {
      const element = await bench({ view });
      await type(element, name, typed);
      expect(problem(element, name)).to.match(said);
      expect(one<HTMLInputElement>(element, `#${name}`).value).to.equal(typed);
      expect(text(element)).not.to.match(/NaN|undefined|Invalid/);
      await assertAccessible(element);
    });
  }

  it('takes both ends of the models’ years', async () => {
    for (const date of ['2015-01-01', '2030-01-01']) expect((await bench({ date })).result, date).not.to.equal(null);
  });

  const words: readonly [what: string, state: Record<string, string | number>, said: RegExp][] = [
    ['a heel of 40°', { ...forces, heel: 40 }, /beyond 30°/],
    ['the blackout zone', { latitude: '85-45N', longitude: '139-20E', date: '2025-01-01' }, /blackout zone, a magnetic compass is not to be used/],
    ['the caution zone', { source: 'forces', horizontal: 5, vertical: 55 }, /caution zone/],
    ['λ below 0', { ...forces, a: -1.2, e: -1.3 }, /λ is −0\.2500.*the needle points south|the needle points south.*λ is −0\.2500/],
    ['P stronger than H', { ...forces, P: -30 }, /the needle follows the ship.*stronger than the earth’s/],
    ['P as strong as H', { ...forces, P: -20 }, /On 000\.0° magnetic the forces cancel/],
    ['all horizontal force taken away', { ...forces, a: -1, e: -1 }, /no direction on any heading/],
    ['no horizontal field', { source: 'forces', horizontal: 0, vertical: 60 }, /no horizontal field here.*no north to point to/],
  ];
  for (const [what, state, said] of words) {
    it(`${what}: said in words, drawn, and no NaN`, async () => {
      const element = await bench(state);
      expect(headline(element)).to.match(said);
      expect(text(element)).not.to.match(/NaN|undefined|Infinity/);
      expect(root(element).innerHTML).not.to.contain('NaN');
      await assertAccessible(element);
    });
  }

  it('opens the picture of the force by itself where the needle loses its direction, and marks the place', async () => {
    const element = await bench({ ...forces, P: -20, heading: '000' });
    expect(one<HTMLDetailsElement>(element, 'details[part=force]').open).to.equal(true);
    expect(root(element).querySelector('.force-picture .lost')).not.to.equal(null);
    expect(headline(element)).to.contain('No force directs the needle here');
  });
});

describe('state, locks and events', () => {
  it('is put back from its own text', async () => {
    const first = await bench('c=0.08&P=2&latitude=33-24.0S&longitude=018E&view=voyage&thereSource=dip&thereDip=-60,5');
    const second = await bench(first.stateText);
    expect(second.state).to.deep.equal(first.state);
    expect(second.result).to.deep.equal(first.result);
    const third = await bench(JSON.stringify(first.state));
    expect(third.state).to.deep.equal(first.state);
  });

  it('takes a state from the attribute and others beside it', async () => {
    const element = await fixture<LubberIron>(html`<lubber-iron state="c=0.08&amp;source=position" latitude="60-30N" longitude="003E" date="2026-07-01" heading="045"></lubber-iron>`);
    expect(element.result?.iron.c).to.equal(0.08);
    expect(element.result?.iron.P).to.equal(0);
    expect(element.result?.heading).to.equal(45);
    expect(element.result?.field.z).to.be.greaterThan(40000);
  });

  it('ignores what is no state, and names that are none', async () => {
    const element = await bench({ c: 0.08 });
    element.state = '{broken';
    element.state = null;
    await element.updateComplete;
    expect(element.result?.iron.c).to.equal(0.08);
    element.state = { c: 0.05, nonsense: 1, view: 'nowhere' };
    await element.updateComplete;
    expect(element.state).to.deep.equal({ c: '0.05' });
  });

  it('shows what is wrong in a state at once', async () => {
    const element = await bench({ c: 'lots', view: 'iron' });
    expect(problem(element, 'c')).to.match(/not understood/);
  });

  it('keeps locked fields from the user, from presets and from the slip', async () => {
    const element = await fixture<LubberIron>(html`<lubber-iron locked="P c" state="P=3&amp;c=0.04&amp;view=iron"></lubber-iron>`);
    expect(one<HTMLInputElement>(element, '#P').readOnly).to.equal(true);
    expect(one<HTMLInputElement>(element, 'input[type=range][aria-label^="P "]').disabled).to.equal(true);
    element.takePreset('coaster');
    element.build();
    await element.updateComplete;
    expect(element.result?.iron.P).to.equal(3000);
    expect(element.result?.iron.c).to.equal(0.04);
    expect(element.result?.iron.e).to.equal(-0.14);
  });

  it('fires for the user only, with plain data', async () => {
    const element = await bench({ ...forces, view: 'iron' });
    let fired = 0;
    element.addEventListener(LubberResultEvent.type, () => (fired += 1));
    element.state = { ...forces, c: 0.1, view: 'iron' };
    await element.updateComplete;
    expect(fired).to.equal(0);
    const heard = oneEvent(element, LubberResultEvent.type);
    await type(element, 'c', '0.05');
    const event = (await heard) as unknown as LubberResultEvent;
    expect(event.detail.widget).to.equal('lubber-iron');
    expect(() => structuredClone(event.detail)).not.to.throw();
    expect(JSON.stringify(event.detail)).not.to.contain('NaN');
  });

  it('keeps the working away where the host wants none', async () => {
    const element = await fixture<LubberIron>(html`<lubber-iron working="none"></lubber-iron>`);
    expect(root(element).querySelector('[part=working]')).to.equal(null);
  });

  it('moves between the stations by arrow keys, Home and End, with one tab stop', async () => {
    const element = await bench();
    one(element, '#tab-place').focus();
    await sendKeys({ press: 'End' });
    await element.updateComplete;
    expect(element.text('view')).to.equal('separate');
    await sendKeys({ press: 'ArrowRight' });
    await element.updateComplete;
    expect(element.text('view')).to.equal('place');
    expect(root(element).querySelectorAll('[role=tab][tabindex="0"]').length).to.equal(1);
    expect((root(element).activeElement as HTMLElement).id).to.equal('tab-place');
  });

  it('goes to the station an arrow points to where they stand from right to left', async () => {
    const element = await bench();
    element.dir = 'rtl';
    // An attribute of the widget is noticed after the script that set it.
    await new Promise((resolve) => setTimeout(resolve));
    await element.updateComplete;
    one(element, '#tab-place').focus();
    await sendKeys({ press: 'ArrowLeft' });
    await element.updateComplete;
    const [first, next] = [...root(element).querySelectorAll('[role=tab]')] as [HTMLElement, HTMLElement];
    expect(root(element).activeElement).to.equal(next);
    expect(next.getBoundingClientRect().left).to.be.lessThan(first.getBoundingClientRect().left);
    await sendKeys({ press: 'ArrowRight' });
    await element.updateComplete;
    expect(root(element).activeElement).to.equal(first);
  });

  it('the working ends at the deviation shown and holds tan dip, total, coefficients and tan δ', async () => {
    const element = await fixture<LubberIron>(html`<lubber-iron working="open"></lubber-iron>`);
    element.state = { source: 'forces', horizontal: 30, vertical: -40, P: 3, heading: '090', view: 'iron' };
    await element.updateComplete;
    const working = textOf(one(element, '[part=working]'));
    // The triangle 3, 4, 5, and tan δ = 0.1 on east.
    expect(working).to.contain('−53.13°');
    expect(working).to.contain('50.00 µT');
    expect(working).to.contain('5.7° E');
  });
});
