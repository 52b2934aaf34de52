import { expect } from '@open-wc/testing';
import { resetMouse } from '@web/test-runner-commands';
import type { LubberIron } from '../../../components/iron/iron.js';
import { bench, button, click, explanation, goTo, headline, one, press, root, text, textOf, type } from './bench.js';
import { deviationByHand } from './poisson-by-hand.js';

// H and Z at 2020.0, nT: three lines of the official test values of the WMM2020 report, printed to 0.1 nT.
const south = { latitude: '80-00S', longitude: '120-00W', h: 16853.8, z: -52480.8, dip: -72.2 };
const equator = { latitude: '0N', longitude: '120E', h: 39624.4, z: -10932.5, dip: -15.42 };
const north = { latitude: '80-00N', longitude: '0E', h: 6572.0, z: 54606.0, dip: 83.14 };

/** What a slip leaves of a tenth of its field, by hand: built heading south, P goes ahead and R with Z. */
const P = 0.1 * south.h;

const exactB = (c: number, { h, z }: { h: number; z: number }): number => (P + c * z) / h;

function assertField(element: LubberIron, place: { h: number; z: number }): void {
  expect(element.result?.field.h).to.be.closeTo(place.h, 0.06);
  expect(element.result?.field.z).to.be.closeTo(place.z, 0.06);
}

async function buildInTheSouth(): Promise<LubberIron> {
  const element = await bench({ date: '2020-01-01', view: 'place' });
  await type(element, 'latitude', south.latitude);
  await type(element, 'longitude', south.longitude);
  assertField(element, south);
  await goTo(element, 'slip');
  await type(element, 'slipLatitude', south.latitude);
  await type(element, 'slipLongitude', south.longitude);
  await type(element, 'slipHeading', '180');
  await type(element, 'slipStrength', '10');
  await press(element, 'Build her here: set P, Q and R');
  return element;
}

/** A cell of the table of two places: 1 here, 2 there. */
function cell(element: LubberIron, row: string, column: 1 | 2): string {
  const found = [...root(element).querySelectorAll('table.voyage tr')].find((each) => textOf(each.querySelector('th')) === row);
  return textOf(found?.children[column] ?? null);
}

describe('a lecturer’s walk by keyboard', () => {
  it('place in the south: H, Z, dip and total are those of the official line', async () => {
    const element = await bench({ date: '2020-01-01', view: 'place' });
    await type(element, 'latitude', south.latitude);
    await type(element, 'longitude', south.longitude);
    assertField(element, south);
    expect(textOf(one(element, '#panel figcaption'))).to.contain('Dip −72.2°');
    const drawn = one(element, '#panel svg').getAttribute('aria-label') ?? '';
    expect(drawn).to.contain('H 16.9 µT to the north, Z 52.5 µT up');
    // The label stood without its sign where Z points up: down is positive, as in the fields and tables.
    expect(textOf(one(element, '#panel svg'))).to.contain('Z −52.5 µT');
    // √(16853.8² + 52480.8²) = 55120.6 nT.
    expect(drawn).to.contain('together 55.1 µT');
    // Mast’s top red south of the magnetic equator (common practice); head east, so her port side looks north.
    expect(explanation(element)).to.contain('starboard blue, port red; mast and upper hull red, foot and keel blue');
  });

  it('building slip heading south: +P, no Q, and R with Z; bow blue and stern red for good', async () => {
    const element = await buildInTheSouth();
    expect(element.result?.iron.P).to.be.closeTo(P, 0.6);
    expect(element.result?.iron.Q).to.be.closeTo(0, 0.6);
    expect(element.result?.iron.R).to.be.closeTo(0.1 * south.z, 0.6);
    expect(explanation(element)).to.contain('Bow blue, stern red; starboard neither, port neither; mast and upper hull red');
    // P alone, λ = 1: 𝔅 = 0.1, and on east tan δ = 𝔅.
    expect(element.result?.exact.B).to.be.closeTo(0.1, 1e-4);
    expect(element.result?.onHeading.deviation).to.be.closeTo(5.7106, 0.005);
    expect(headline(element)).to.contain('Deviation 5.7° E');
  });

  it('vertical iron c = 0.08 outweighs P: B and the curve turn to the west', async () => {
    const element = await buildInTheSouth();
    await goTo(element, 'iron');
    await type(element, 'c', '0.08');
    expect(element.result?.exact.B).to.be.closeTo(exactB(0.08, south), 1e-4);
    expect(element.result?.exact.lambda).to.equal(1);
    for (const point of element.result?.curve ?? []) {
      const expected = deviationByHand({ P, c: 0.08 }, south.h, south.z, point.magneticHeading);
      expect(point.deviation).to.be.closeTo(expected, 0.01);
    }
    expect(headline(element)).to.contain('Deviation 8.5° W');
    expect(headline(element)).to.contain('B−8.6°');
  });

  it('sails to the equator and on to the north: B changes sign, A, D and E do not move', async () => {
    const element = await buildInTheSouth();
    await goTo(element, 'iron');
    await type(element, 'c', '0.08');
    await goTo(element, 'voyage');
    await type(element, 'thereLatitude', equator.latitude);
    await type(element, 'thereLongitude', equator.longitude);
    expect(cell(element, 'H', 1)).to.equal('16.9 µT');
    expect(cell(element, 'H', 2)).to.equal('39.6 µT');
    expect(cell(element, 'Z', 2)).to.equal('−10.9 µT');
    expect(cell(element, 'Dip, down +', 2)).to.equal('−15.4°');
    // Z points up at both: B has turned because cZ became less than P, not because Z turned over.
    expect(exactB(0.08, south) * exactB(0.08, equator)).to.be.lessThan(0);
    expect(explanation(element)).to.contain('B changes sign though Z does not turn over').and.not.to.contain('turns over with Z');
    expect(explanation(element)).to.contain('The approximate B and C differ from the sum');
    await press(element, 'Sail there');
    assertField(element, equator);
    expect(element.result?.exact.B).to.be.closeTo(exactB(0.08, equator), 1e-4);
    await type(element, 'thereLatitude', north.latitude);
    await type(element, 'thereLongitude', north.longitude);
    await press(element, 'Sail there');
    assertField(element, north);
    expect(exactB(0.08, north)).to.be.greaterThan(0);
    expect(element.result?.exact.B).to.be.closeTo(exactB(0.08, north), 1e-4);
    expect(element.result?.exact.A).to.equal(0);
    expect(element.result?.exact.D).to.equal(0);
    expect(element.result?.onHeading.deviation).to.be.closeTo(deviationByHand({ P, c: 0.08 }, north.h, north.z, 90), 0.01);
    expect(cell(element, 'P', 1)).to.equal(cell(element, 'P', 2));
  });

  it('says in words why B changes sign with c = 0.08, and why it does not with 0.02', async () => {
    const element = await buildInTheSouth();
    await goTo(element, 'voyage');
    await type(element, 'thereLatitude', north.latitude);
    await type(element, 'thereLongitude', north.longitude);
    element.change('c', '0.08');
    await element.updateComplete;
    expect(explanation(element)).to.contain('B changes sign on the way');
    // By hand, as arcs: P/H and cZ/H.
    expect(cell(element, 'B from P, as 1/H', 1)).to.equal('+5.7°');
    expect(cell(element, 'B from c, as tan dip', 1)).to.equal('−14.3°');
    expect(cell(element, 'B from P, as 1/H', 2)).to.equal('+14.7°');
    expect(cell(element, 'B from c, as tan dip', 2)).to.equal('+38.1°');
    expect(cell(element, 'Top of her mast', 1)).to.equal('red');
    expect(cell(element, 'Top of her mast', 2)).to.equal('blue');
    element.change('c', '0.02');
    await element.updateComplete;
    expect(exactB(0.02, south)).to.be.greaterThan(0);
    expect(explanation(element)).to.contain('B keeps its sign: P outweighs');
  });
});

it('a unit stands beside its number, not below it', async () => {
  const element = await bench({ view: 'iron', P: 2 });
  for (const name of ['P', 'heading']) {
    const number = one(element, `#${name}`).getBoundingClientRect();
    const unit = one(element, `#${name}-echo`).getBoundingClientRect();
    expect(unit.left).to.be.at.least(number.right);
    expect(unit.top).to.be.lessThan(number.bottom);
  }
});

describe('the same walk by pointer', () => {
  afterEach(() => resetMouse());

  it('place, slip, vertical iron by its slider, and the voyage by clicks alone', async () => {
    const element = await bench({ date: '2020-01-01', view: 'iron', P: 1.685, latitude: south.latitude, longitude: south.longitude, thereLatitude: north.latitude, thereLongitude: north.longitude, slipLatitude: south.latitude, slipLongitude: south.longitude });
    await click(element, one(element, '#tab-slip'));
    await click(element, button(element, 'Build her here: set P, Q and R'));
    expect(element.result?.iron.P).to.be.closeTo(P, 0.6);
    await click(element, one(element, '#tab-iron'));
    const slider = one<HTMLInputElement>(element, 'input[type=range][aria-label^="c "]');
    await click(element, slider, 0.64);
    const c = Number(one<HTMLInputElement>(element, '#c').value);
    expect(c).to.be.closeTo(0.084, 0.03);
    expect(element.result?.exact.B).to.be.closeTo(exactB(c, south), 1e-4);
    expect(element.result?.exact.B).to.be.lessThan(0);
    await click(element, one(element, '#tab-voyage'));
    expect(explanation(element)).to.contain('B changes sign on the way');
    await click(element, button(element, 'Sail there'));
    assertField(element, north);
    expect(element.result?.exact.B).to.be.closeTo(exactB(c, north), 1e-4);
    expect(element.result?.exact.B).to.be.greaterThan(0);
    expect(text(element)).not.to.match(/NaN|undefined|Invalid/);
  });
});
