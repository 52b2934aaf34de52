import { expect, fixture, fixtureSync, html } from '@open-wc/testing';
import '../../../components/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberElement } from '../../../components/shared/lubber-element.js';
import { assertAccessible } from '../../support/axe.js';
import { flat, input, problem, root, type } from '../../support/in-widget.js';

// What hosts do to widgets. The inputs are invented.

const text = (element: Element): string => flat(root(element).querySelector('.frame'));

const answered = (): Promise<LubberAmplitude> =>
  fixture(html`<lubber-amplitude latitude="48-17.0S" longitude="071-42.5W" instant="2026-11-26T08:52:40Z" bearing="113.5"></lubber-amplitude>`);

type Case = readonly [tag: string, answeredBy: Readonly<Record<string, string>>, attribute: string, word: string, choice: string | null];

const sight = { latitude: '48-17.0S', longitude: '071-42.5W', instant: '2026-11-26T08:52:40Z', bearing: '113.5' };
const card = JSON.stringify({ kind: 'approximate', coefficients: { A: 0, B: 4, C: 1, D: 2, E: 0 } });

const cases: readonly Case[] = [
  ['amplitude', sight, 'body', 'Foo', 'body'],
  ['amplitude', sight, 'moment', 'noon', 'moment'],
  ['amplitude', sight, 'compass', 'abc', 'compass'],
  ['azimuth', sight, 'body', 'Foo', 'body'],
  ['azimuth', sight, 'method', 'guess', 'method'],
  ['azimuth', sight, 'compass', 'Gyroscope', 'compass'],
  ['azimuth', { ...sight, method: 'altitude', altitude: '20' }, 'altitude-of', 'middle', 'altitudeOf'],
  ['azimuth', { ...sight, method: 'altitude', altitude: '20' }, 'side', 'north', 'side'],
  ['transit', { latitude: '48S', longitude: '71W', instant: '2026-11-26T08:52:40Z', charted: '120', bearing: '118' }, 'compass', 'abc', 'compass'],
  ['conversion', { heading: '100', variation: '10W', deviation: '5E' }, 'kind', 'trip', 'kind'],
  ['conversion', { heading: '100', variation: '10W', deviation: '5E' }, 'heading-by', 'truth', 'headingBy'],
  ['conversion', { heading: '100', variation: '10W', deviation: '5E' }, 'deviation-source', 'hearsay', null],
  ['variation', { latitude: '48S', longitude: '71W', instant: '2026-11-26T08:52:40Z' }, 'model', 'WMM1999', null],
  ['deviation-curve', { card }, 'limit', 'none', 'limit'],
  ['deviation-curve', { card }, 'table-is', 'guesses', 'tableIs'],
  ['deviation-card', { card }, 'format', 'a5', 'format'],
  ['deviation-card', { card }, 'every', '20', 'every'],
  ['field-map', { latitude: '48S', longitude: '71W', date: '2026-11-26' }, 'lines', 'height', 'lines'],
  ['swing', { rows: '000\t1E\n090\t2E\n180\t1W\n270\t2W' }, 'method', 'guess', 'method'],
  ['swing', { rows: '000\t1E\n090\t2E\n180\t1W\n270\t2W' }, 'headings', '12', 'headings'],
  ['swing', { rows: '000\t1E\n090\t2E\n180\t1W\n270\t2W' }, 'model', 'best', 'model'],
];

describe('an attribute with a word that is none of its own', () => {
  for (const [tag, answeredBy, attribute, word, choice] of cases) {
    it(`lubber-${tag} ${attribute}="${word}" is told, and there is no answer`, async () => {
      const element = document.createElement(`lubber-${tag}`) as LubberElement & { readonly result: unknown };
      for (const [name, value] of Object.entries(answeredBy)) element.setAttribute(name, value);
      (await fixture(html`<div></div>`)).append(element);
      await element.updateComplete;
      expect(element.result).not.to.equal(null);
      const before = element.getAttribute(attribute);
      element.setAttribute(attribute, word);
      await element.updateComplete;
      expect(element.result).to.equal(null);
      expect(text(element)).to.contain(`To be put right: ${attribute}="${word}"`);
      if (choice) expect(problem(element, choice)).to.equal(`${word}: This name is not known.`);
      expect(text(element)).not.to.match(/NaN|undefined/);
      await assertAccessible(element);
      if (before === null) element.removeAttribute(attribute);
      else element.setAttribute(attribute, before);
      await element.updateComplete;
      expect(element.result).not.to.equal(null);
      expect(text(element)).not.to.contain(`="${word}"`);
    });
  }

  it('is put right by the user', async () => {
    const element = await answered();
    element.setAttribute('body', 'Foo');
    await element.updateComplete;
    const select = root(element).querySelector('#body') as HTMLSelectElement;
    expect(select.selectedOptions[0]?.textContent).to.equal('Foo');
    expect(flat(root(element).querySelector('label[for=bearing]'))).to.equal('Bearing of Foo by compass');
    select.value = 'Sun';
    select.dispatchEvent(new Event('change'));
    await element.updateComplete;
    expect(problem(element, 'body')).to.equal('');
    expect(element.result).not.to.equal(null);
  });

  it('kind of a drill draws no other exercises in its place', async () => {
    const element = await fixture<LubberElement>(html`<lubber-drill kind="conversion navigation" seed="4711"></lubber-drill>`);
    expect(text(element)).to.match(/^To be put right: kind="conversion navigation"/);
    expect(root(element).querySelector('input')).to.equal(null);
  });

  it('theme leaves the page’s', async () => {
    const element = await answered();
    document.documentElement.setAttribute('data-lubber-theme', 'night');
    element.setAttribute('theme', 'xyz');
    await element.updateComplete;
    expect(root(element).querySelector('.frame')?.classList.contains('night')).to.equal(true);
    document.documentElement.removeAttribute('data-lubber-theme');
  });
});

describe('numbers as properties', () => {
  const set = async (name: string, value: unknown): Promise<LubberAmplitude> => {
    const element = await answered();
    (element as unknown as Record<string, unknown>)[name] = value;
    await element.updateComplete;
    return element;
  };

  for (const [name, value] of [['longitude', 200], ['longitude', -181], ['latitude', 95], ['bearing', 365], ['bearing', -5], ['variation', 200], ['heightOfEye', 500], ['time', 2460], ['time', 52440]] as const) {
    it(`${name} ${value} is refused, not turned into another`, async () => {
      const element = await set(name, value);
      expect(input(element, name).value).to.equal(String(value));
      expect(problem(element, name)).to.match(/Accepted/);
      expect(element.result).to.equal(null);
    });
  }

  for (const [name, value, shown] of [['longitude', 180, '180-00.0E'], ['longitude', -71.7083, '071-42.5W'], ['latitude', -90, '90-00.0S'], ['bearing', 360, '360'], ['bearing', 113.25, '113.25'], ['variation', -3.25, '3.25W'], ['heightOfEye', 12.34, '12.34']] as const) {
    it(`${name} ${value} is taken as ${shown}`, async () => {
      const element = await set(name, value);
      expect(input(element, name).value).to.equal(shown);
      expect(problem(element, name)).to.equal('');
    });
  }

  it('time 1455 is 14:55, as in an attribute', async () => {
    const element = await set('time', 1455);
    expect(input(element, 'time').value).to.equal('1455');
    expect(flat(root(element).querySelector('#time-echo'))).to.equal('14:55:00');
  });
});

describe('an instant taken away', () => {
  for (const how of ['attribute', 'property'] as const) {
    it(`as ${how} takes date and time along`, async () => {
      const element = await answered();
      expect(element.result).not.to.equal(null);
      if (how === 'attribute') element.removeAttribute('instant');
      else (element as { instant: unknown }).instant = undefined;
      await element.updateComplete;
      expect([input(element, 'date').value, input(element, 'time').value]).to.deep.equal(['', '']);
      expect(element.result).to.equal(null);
    });
  }

  it('leaves what the user has typed over it', async () => {
    const element = await answered();
    await type(element, 'time', '09:00');
    element.removeAttribute('instant');
    await element.updateComplete;
    expect([input(element, 'date').value, input(element, 'time').value]).to.deep.equal(['', '09:00']);
  });

  it('that was none goes, too', async () => {
    const element = await answered();
    element.instant = 'tomorrow morning';
    await element.updateComplete;
    expect(problem(element, 'date')).not.to.equal('');
    element.removeAttribute('instant');
    await element.updateComplete;
    expect([input(element, 'date').value, problem(element, 'date')]).to.deep.equal(['', '']);
  });

  it('goes from the map as well', async () => {
    const element = await fixture<LubberElement & { date?: string }>(html`<lubber-field-map instant="2020-05-06T00:00:00Z"></lubber-field-map>`);
    expect(element.date).to.equal('2020-05-06');
    element.removeAttribute('instant');
    await element.updateComplete;
    expect(element.date).to.equal(undefined);
  });
});

const attributesOf = new Map<string, Readonly<Record<string, string>>>([
  ...cases.map(([tag, attributes]) => [tag, attributes] as const),
  ['iron', { latitude: '60-30N', longitude: '003-00E', date: '2025-05-06', heading: '045', heel: '10' }],
  ['ship', { name: 'Test', latitude: '48S', longitude: '71W', instant: '2026-11-26T08:52:40Z', card, 'height-of-eye': '20', heading: '45', variation: '10E' }],
]);

describe('every attribute of a widget can be taken away', () => {
  for (const [tag, attributes] of attributesOf) {
    it(`lubber-${tag}: it is as one that never had them`, async () => {
      const place = await fixture(html`<div></div>`);
      const [one, other] = [document.createElement(`lubber-${tag}`), document.createElement(`lubber-${tag}`)] as [LubberElement, LubberElement];
      for (const [name, value] of Object.entries(attributes)) one.setAttribute(name, value);
      place.append(one, other);
      await one.updateComplete;
      for (const name of Object.keys(attributes)) one.removeAttribute(name);
      await one.updateComplete;
      await other.updateComplete;
      expect(text(one)).to.equal(text(other));
    });
  }
});

describe('a widget that is moved', () => {
  it('about the page keeps what was typed, and fires nothing', async () => {
    const page = fixtureSync<HTMLElement>(html`<div><section></section><aside data-lubber-theme="night"></aside></div>`);
    const element = document.createElement('lubber-amplitude');
    page.querySelector('section')?.append(element);
    await element.updateComplete;
    await type(element, 'latitude', '48-17.0S');
    const heard: Event[] = [];
    element.addEventListener('lubber-result', (event) => heard.push(event));
    for (const place of ['aside', 'section', 'aside']) {
      page.querySelector(place)?.append(element);
      await element.updateComplete;
    }
    expect(input(element, 'latitude').value).to.equal('48-17.0S');
    expect(root(element).querySelector('.frame')?.classList.contains('night')).to.equal(true);
    expect(heard.length).to.equal(0);
  });

  it('into the document of a frame keeps its styles and its state, there and back', async () => {
    const page = fixtureSync<HTMLElement>(html`<div><iframe title="frame"></iframe></div>`);
    const element = document.createElement('lubber-amplitude');
    page.append(element);
    await element.updateComplete;
    await type(element, 'latitude', '48-17.0S');
    const padding = (): string => getComputedStyle(root(element).querySelector('.frame') as Element).paddingBlockStart;
    expect(padding()).not.to.equal('0px');
    const frame = (page.querySelector('iframe') as HTMLIFrameElement).contentDocument as Document;
    frame.documentElement.setAttribute('data-lubber-theme', 'night');
    frame.body.append(element);
    await element.updateComplete;
    expect(padding()).not.to.equal('0px');
    expect(root(element).querySelector('.frame')?.classList.contains('night')).to.equal(true);
    expect(input(element, 'latitude').value).to.equal('48-17.0S');
    page.append(element);
    await element.updateComplete;
    expect(padding()).not.to.equal('0px');
    expect(input(element, 'latitude').value).to.equal('48-17.0S');
  });

  it('is a copy by its attributes when it is cloned', async () => {
    const element = await answered();
    const copy = element.cloneNode(true) as LubberAmplitude;
    element.after(copy);
    await copy.updateComplete;
    expect(copy.result).to.deep.equal(element.result);
    await type(copy, 'bearing', '120');
    expect(input(element, 'bearing').value).to.equal('113.5');
    copy.remove();
  });
});

describe('fifty widgets on a page', () => {
  it('each keep to themselves', async () => {
    const page = fixtureSync<HTMLElement>(html`<div>${Array.from({ length: 50 }, (_, index) => html`<lubber-amplitude latitude=${`${index}N`} longitude="071-42.5W" instant="2026-11-26T11:00:00Z" bearing="110"></lubber-amplitude>`)}</div>`);
    const all = [...page.querySelectorAll('lubber-amplitude')];
    await Promise.all(all.map((one) => one.updateComplete));
    expect(new Set(all.map(({ result }) => result?.error)).size).to.equal(50);
    await type(all[25] as LubberAmplitude, 'bearing', '111');
    expect(all.filter((one) => input(one, 'bearing').value === '110').length).to.equal(49);
  });
});
