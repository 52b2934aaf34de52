import { expect, fixture, html, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../components/amplitude/define.js';
import '../../../components/ship/define.js';
import type { LubberAmplitude } from '../../../components/amplitude/amplitude.js';
import type { LubberShip } from '../../../components/ship/ship.js';
import { LubberRecordRequestEvent } from '../../../components/shared/events.js';
import type { RecordRequestDetail } from '../../../components/shared/events.js';
import { assertAccessible } from '../../support/axe.js';
import { input, laidOut, must, root } from '../../support/in-widget.js';
import { until } from '../../support/until.js';

async function aboard(): Promise<{ ship: LubberShip; sight: LubberAmplitude }> {
  const ship = await fixture<LubberShip>(html`<lubber-ship
    name="Halcyon Tern"
    latitude="48-17.0S"
    longitude="071-42.5W"
    instant="2026-11-26T08:52:40Z"
    height-of-eye="18"
    heading="040"
    ><lubber-amplitude bearing="113.5"></lubber-amplitude
  ></lubber-ship>`);
  const sight = ship.querySelector('lubber-amplitude') as LubberAmplitude;
  await sight.updateComplete;
  return { ship, sight };
}

async function settle(...elements: (LubberShip | LubberAmplitude)[]): Promise<void> {
  for (let round = 0; round < 3; round += 1) for (const element of elements) await element.updateComplete;
}

async function retype(element: LubberAmplitude, name: string, text: string): Promise<void> {
  input(element, name).focus();
  input(element, name).select();
  if (text) await sendKeys({ type: text });
  else await sendKeys({ press: 'Delete' });
  await sendKeys({ press: 'Tab' });
  await element.updateComplete;
}

describe('a widget aboard a ship', () => {
  it('takes place, time, height of eye and head from the ship', async () => {
    const { sight } = await aboard();
    expect(input(sight, 'latitude').value).to.equal('48-17.0S');
    expect(input(sight, 'time').value).to.equal('08:52:40');
    expect(input(sight, 'heightOfEye').value).to.equal('18');
    // The same sight alone, from the tests of the amplitude: error 9.0° E.
    expect(sight.result?.error).to.be.closeTo(9, 0.1);
  });

  it('follows the ship when she moves', async () => {
    const { ship, sight } = await aboard();
    ship.latitude = '30N';
    await settle(ship, sight);
    expect(input(sight, 'latitude').value).to.equal('30N');
  });

  it('keeps to itself what is typed in it, and goes back to the ship when the field is emptied', async () => {
    const { ship, sight } = await aboard();
    await retype(sight, 'latitude', '10S');
    expect(input(sight, 'latitude').value).to.equal('10S');
    expect(ship.latitude).to.equal('48-17.0S');
    await retype(sight, 'latitude', '');
    expect(input(sight, 'latitude').value).to.equal('48-17.0S');
  });

  it('asks the ship’s card for the deviation on its head', async () => {
    const { ship, sight } = await aboard();
    ship.card = { kind: 'table', rows: [{ heading: 0, deviation: -1 }, { heading: 40, deviation: -1.5 }, { heading: 180, deviation: 2 }] };
    await settle(ship, sight);
    expect(sight.result?.cardDeviation).to.be.closeTo(-1.5, 1e-9);
  });

  // By the approximate series, by hand: A + B sin 40° + C cos 40° = 1 + 2 × 0.6428 − 1 × 0.7660 = 1.52.
  it('takes the deviation from coefficients typed in the ship', async () => {
    const { ship, sight } = await aboard();
    ship.cardForm = 'coefficients';
    for (const details of root(ship).querySelectorAll('details')) details.open = true;
    await ship.updateComplete;
    for (const [name, text] of [['coefficientA', '1E'], ['coefficientB', '2E'], ['coefficientC', '1W']] as const) {
      input(ship, name).focus();
      await sendKeys({ type: text });
      await sendKeys({ press: 'Tab' });
    }
    await settle(ship, sight);
    expect(sight.result?.cardDeviation).to.be.closeTo(1.5195, 0.001);
    await assertAccessible(ship);
    input(ship, 'coefficientB').select();
    input(ship, 'coefficientB').focus();
    await sendKeys({ type: 'two' });
    await sendKeys({ press: 'Tab' });
    await settle(ship, sight);
    expect(root(ship).querySelector('#coefficientB-problem')?.textContent).to.match(/not understood/);
    expect(sight.result?.cardDeviation).to.equal(null);
  });

  it('is not troubled by what is half typed in the ship', async () => {
    const { ship, sight } = await aboard();
    ship.latitude = '48-17.0 banana';
    await settle(ship, sight);
    expect(input(sight, 'latitude').value).to.equal('');
    expect(root(ship).querySelector('#latitude-problem')?.textContent).to.match(/not understood/);
  });

  it('has its card put aside by the user', async () => {
    const { ship, sight } = await aboard();
    sight.ship?.useCard({ kind: 'table', rows: [{ heading: 0, deviation: 2 }] });
    await settle(ship, sight);
    expect(sight.result?.cardDeviation).to.equal(2);
    must(root(ship).querySelector<HTMLButtonElement>('#remove-card')).click();
    await settle(ship, sight);
    expect(sight.result?.cardDeviation).to.equal(null);
  });

  it('may be attached before its ship is', async () => {
    const sight = document.createElement('lubber-amplitude');
    sight.bearing = '113.5';
    const ship = document.createElement('lubber-ship');
    ship.latitude = '48-17.0S';
    // Not by a fixture: that of a plain element waits for a frame, which a page in the background never gets.
    const home = document.createElement('div');
    document.body.append(home);
    home.append(sight);
    await sight.updateComplete;
    expect(input(sight, 'latitude').value).to.equal('');
    home.append(ship);
    ship.append(sight);
    await settle(ship, sight);
    expect(input(sight, 'latitude').value).to.equal('48-17.0S');
    home.remove();
  });

  it('is told of a card that a swing has made', async () => {
    const { ship, sight } = await aboard();
    ship.table = '000 1E\n180 1E';
    await settle(ship, sight);
    expect(sight.result?.cardDeviation).to.be.closeTo(1, 1e-9);
    sight.ship?.useCard({ kind: 'approximate', coefficients: { A: -3, B: 0, C: 0, D: 0, E: 0 } });
    await settle(ship, sight);
    expect(sight.result?.cardDeviation).to.be.closeTo(-3, 1e-9);
  });

  it('has its entries passed on to the book aboard', async () => {
    const { sight } = await aboard();
    const heard: RecordRequestDetail[] = [];
    const stop = sight.ship?.onRecordRequest((detail) => heard.push(detail));
    sight.dispatchEvent(new LubberRecordRequestEvent({ widget: 'lubber-amplitude', entry: { method: 'amplitude' } }));
    stop?.();
    sight.dispatchEvent(new LubberRecordRequestEvent({ widget: 'lubber-amplitude', entry: { method: 'amplitude' } }));
    expect(heard.length).to.equal(1);
  });

  it('works on alone when it leaves the ship', async () => {
    const { ship, sight } = await aboard();
    ship.parentElement?.append(sight);
    await settle(ship, sight);
    expect(root(sight).querySelector('.frame')?.textContent).not.to.match(/NaN|undefined/);
  });
});

describe('a ship that is defined after the widget inside it', () => {
  // It was not heard: a page whose script defines the widgets first showed empty fields.
  it('is asked again once it is there', async () => {
    const frame = document.createElement('iframe');
    document.body.append(frame);
    const inner = frame.contentWindow as Window & typeof globalThis;
    const script = document.createElement('script');
    script.type = 'module';
    const here = new URL('../../../components/', import.meta.url).href;
    inner.document.body.innerHTML = '<lubber-ship latitude="48-17.0S"><lubber-amplitude></lubber-amplitude></lubber-ship>';
    script.textContent = `import '${here}amplitude/define.ts'; setTimeout(() => import('${here}ship/define.ts'), 50);`;
    inner.document.head.append(script);
    let shown = '';
    for (let round = 0; round < 1200 && shown === ''; round += 1) {
      await new Promise((resolve) => setTimeout(resolve, 50));
      const sight = inner.document.querySelector('lubber-amplitude');
      shown = sight?.shadowRoot?.querySelector<HTMLInputElement>('#latitude')?.value ?? '';
    }
    frame.remove();
    expect(shown).to.equal('48-17.0S');
  });
});

describe('the ship', () => {
  it('sums up what is shared in one line', async () => {
    const { ship } = await aboard();
    expect(root(ship).querySelector('.bar')?.textContent?.replace(/\s+/g, ' ').trim()).to.equal(
      'Halcyon Tern 48° 17.0′ S 071° 42.5′ W · 2026-11-26 08:52:40 UTC · no deviation card',
    );
    for (const details of root(ship).querySelectorAll('details')) details.open = true;
    await assertAccessible(ship);
  });

  it('fits a width of 320 px, everything open', async () => {
    const { ship } = await aboard();
    const frame = document.createElement('div');
    frame.style.inlineSize = '320px';
    ship.replaceWith(frame);
    frame.append(ship);
    for (const details of root(ship).querySelectorAll('details')) details.open = true;
    await laidOut(ship);
    expect(frame.scrollWidth).to.be.at.most(320);
    // A name of 400 figures made the page 4800 px wide.
    ship.name = '9'.repeat(400);
    await ship.updateComplete;
    expect(frame.scrollWidth).to.be.at.most(320);
  });

  it('is written as text and taken over again, the same', async () => {
    const { ship } = await aboard();
    ship.card = { kind: 'table', rows: [{ heading: 0, deviation: -1 }, { heading: 180, deviation: 2 }] };
    await ship.updateComplete;
    const before = ship.result;
    const [write, read] = ['#write-ship', '#read-ship'].map((id) => root(ship).querySelector<HTMLButtonElement>(id));
    must(write).click();
    await ship.updateComplete;
    const text = (root(ship).querySelector('#file') as HTMLTextAreaElement).value;
    ship.latitude = '1N';
    ship.card = null;
    await ship.updateComplete;
    must(read).click();
    await ship.updateComplete;
    expect(ship.result).to.deep.equal(before);
    expect(JSON.parse(text)).to.deep.equal(before);
  });

  for (const [text, said] of [
    ['{', /no JSON/],
    ['[]', /not a ship’s text/],
    ['{"schema":"lubberline-ship","version":2}', /version 2/],
    ['{"schema":"lubberline-ship","version":1,"latitude":5}', /latitude is no text/],
    ['{"schema":"lubberline-ship","version":1,"card":{"kind":"table","rows":[{"heading":1}]}}', /card cannot be read/],
  ] as const) {
    it(`refuses ${text} whole, in words`, async () => {
      const { ship } = await aboard();
      const box = root(ship).querySelector('#file') as HTMLTextAreaElement;
      box.value = text;
      box.dispatchEvent(new Event('input'));
      must(root(ship).querySelector<HTMLButtonElement>('#read-ship')).click();
      await ship.updateComplete;
      expect(root(ship).querySelector('#file-problem')?.textContent).to.match(said);
      expect(ship.latitude).to.equal('48-17.0S');
      expect(box.value).to.equal(text);
    });
  }

  it('opens a file, and says why one is none', async () => {
    const { ship } = await aboard();
    const problem = (): string => root(ship).querySelector('#file-problem')?.textContent ?? '';
    const open = async (text: string, isRead: () => boolean): Promise<void> => {
      const chosen = new DataTransfer();
      chosen.items.add(new File([text], 'ship.json', { type: 'application/json' }));
      const box = root(ship).querySelector<HTMLInputElement>('#open-ship') as HTMLInputElement;
      box.files = chosen.files;
      box.dispatchEvent(new Event('change'));
      await waitUntil(isRead, 'not read', { timeout: 60_000 });
      await ship.updateComplete;
    };
    await open(
      '{"schema":"lubberline-ship","version":1,"name":"Grey Petrel","latitude":"banana","longitude":"010-00E","card":{"kind":"approximate","coefficients":{"A":1,"B":2,"C":3,"D":4,"E":5}}}',
      () => ship.name !== 'Halcyon Tern',
    );
    expect(ship.name).to.equal('Grey Petrel');
    expect(ship.cardInUse).to.deep.equal({ kind: 'approximate', coefficients: { A: 1, B: 2, C: 3, D: 4, E: 5 } });
    expect(root(ship).querySelector('#latitude-problem')?.textContent).to.match(/not understood/);
    await open('no ship', () => problem() !== '');
    expect(problem()).to.match(/no JSON/);
    expect(ship.name).to.equal('Grey Petrel');
  });

  it('hands its text over as a file named after it', async () => {
    const { ship } = await aboard();
    const saved: string[] = [];
    const click = HTMLAnchorElement.prototype.click;
    HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
      saved.push(this.download, this.href);
    };
    must(root(ship).querySelector<HTMLButtonElement>('#save-ship')).click();
    HTMLAnchorElement.prototype.click = click;
    expect(saved[0]).to.equal('halcyon-tern.json');
    expect(saved[1]).to.match(/^blob:/);
  });

  // A number for a name has no letters to be made plain, and the button threw.
  it('hands it over under a number too', async () => {
    const { ship } = await aboard();
    ship.name = 17 as unknown as string;
    await ship.updateComplete;
    let saved = '';
    const click = HTMLAnchorElement.prototype.click;
    HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
      saved = this.download;
    };
    must(root(ship).querySelector<HTMLButtonElement>('#save-ship')).click();
    HTMLAnchorElement.prototype.click = click;
    expect(saved).to.equal('17.json');
  });

  it('keeps itself under a name only when asked to', async () => {
    localStorage.clear();
    await aboard();
    expect(localStorage.length).to.equal(0);
    const first = await fixture<LubberShip>(html`<lubber-ship remember="test" latitude="1N"></lubber-ship>`);
    first.latitude = '2N';
    await first.updateComplete;
    const second = await fixture<LubberShip>(html`<lubber-ship remember="test"></lubber-ship>`);
    expect(second.latitude).to.equal('2N');
    const asked = Storage.prototype.getItem;
    Storage.prototype.getItem = () => {
      throw new Error('storage is refused');
    };
    const third = await fixture<LubberShip>(html`<lubber-ship remember="test" latitude="3N"></lubber-ship>`);
    Storage.prototype.getItem = asked;
    expect(third.latitude).to.equal('3N');
    localStorage.clear();
  });

  // A table half typed became the card handed over, and a title above a whole one was lost, whatever had changed on the other page.
  it('keeps what is typed here when another page has changed her', async () => {
    localStorage.clear();
    const ship = await fixture<LubberShip>(html`<lubber-ship remember="two pages" latitude="5N" heading="040"></lubber-ship>`);
    const whole = 'Standard\n0 2E\n90 1W\n180 2W\n270 1E';
    ship.table = whole;
    await ship.updateComplete;
    const elsewhere = async (change: object): Promise<void> => {
      const key = 'lubberline-ship-two pages';
      localStorage.setItem(key, JSON.stringify({ ...(JSON.parse(localStorage.getItem(key) ?? '') as object), ...change }));
      window.dispatchEvent(new StorageEvent('storage', { key }));
      await ship.updateComplete;
    };
    await elsewhere({ heading: '050' });
    expect([ship.heading, ship.table]).to.deep.equal(['050', whole]);
    Object.assign(ship, { table: '0 2E\n45 ', latitude: '33-' });
    await ship.updateComplete;
    await elsewhere({ heading: '060' });
    expect([ship.heading, ship.table, ship.latitude]).to.deep.equal(['060', '0 2E\n45 ', '33-']);
    const other = { kind: 'table', rows: [0, 90, 180, 270].map((heading) => ({ heading, deviation: 3 })) };
    await elsewhere({ card: other });
    expect([ship.cardInUse, ship.table]).to.deep.equal([other, '0 2E\n45 ']);
    Object.assign(ship, { table: whole });
    await ship.updateComplete;
    await elsewhere({ card: other });
    expect([ship.cardInUse, ship.table], 'the newer of two that are whole').to.deep.equal([other, undefined]);
    localStorage.clear();
  });

  // Named once it stood on the page, it did not take up what was kept, and wrote over it at the next change.
  it('takes up what is kept under a name given late, and keeps itself under a new one', async () => {
    localStorage.clear();
    const kept = await fixture<LubberShip>(html`<lubber-ship remember="late"></lubber-ship>`);
    kept.latitude = '2N';
    await kept.updateComplete;
    const ship = await fixture<LubberShip>(html`<lubber-ship latitude="5N"></lubber-ship>`);
    ship.remember = 'late';
    await ship.updateComplete;
    expect(ship.latitude).to.equal('2N');
    ship.remember = 'other';
    await ship.updateComplete;
    expect((await fixture<LubberShip>(html`<lubber-ship remember="other"></lubber-ship>`)).latitude).to.equal('2N');
    localStorage.clear();
  });

  // Each page wrote its own ship over the other's: the card a swing had given on one was lost to the height of eye typed on the other.
  it('follows what another page changes of her, and of no other ship', async () => {
    localStorage.clear();
    const here = await fixture<LubberShip>(html`<lubber-ship remember="two" latitude="1N" height-of-eye="12"></lubber-ship>`);
    here.longitude = '5W';
    await here.updateComplete;
    const frame = document.body.appendChild(document.createElement('iframe'));
    const other = must(frame.contentWindow).localStorage;
    const card = { kind: 'approximate', coefficients: { A: 0, B: 3, C: 0, D: 0, E: 0 } };
    other.setItem('lubberline-ship-two', JSON.stringify({ ...here.result, latitude: '2N', card }));
    await until(() => here.latitude === '2N');
    await here.updateComplete;
    expect([here.longitude, here.heightOfEye, here.cardInUse]).to.deep.equal(['5W', '12', card]);
    other.setItem('lubberline-ship-another', JSON.stringify({ ...here.result, latitude: '3N' }));
    here.heightOfEye = '14';
    await here.updateComplete;
    expect(JSON.parse(other.getItem('lubberline-ship-two') ?? '')).to.deep.include({ latitude: '2N', heightOfEye: '14', card });
    frame.remove();
    here.remove();
    localStorage.clear();
  });
});
