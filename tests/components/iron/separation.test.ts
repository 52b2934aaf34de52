import { expect } from '@open-wc/testing';
import { bench, explanation, one, root, textOf, type } from './bench.js';

interface Place {
  role: string;
  H: number;
  Z: number;
  deviationByCompass24: number[];
}

interface Ship {
  id: string;
  parameters: Record<string, number>;
  lambda: number;
  separated: Record<string, number>;
  places: Place[];
}

// Ships at two magnetic latitudes with a third to predict, by an independent program: header of the file.
const response = await fetch(new URL('../../reference/iron-places.json', import.meta.url));
const { cases } = (await response.json()) as { cases: Ship[] };

function stateOf(ship: Ship): Record<string, string | number> {
  const [first, second, third] = ['first', 'second', 'predicted'].map((role) => ship.places.find((place) => place.role === role)) as [Place, Place, Place];
  const { P = 0, Q = 0, R = 0 } = ship.parameters;
  return {
    ...ship.parameters,
    P: P / 1000, Q: Q / 1000, R: R / 1000,
    source: 'forces', horizontal: String(first.H / 1000), vertical: String(first.Z / 1000),
    thereSource: 'forces', thereHorizontal: String(second.H / 1000), thereVertical: String(second.Z / 1000),
    thirdSource: 'forces', thirdHorizontal: String(third.H / 1000), thirdVertical: String(third.Z / 1000),
    view: 'separate',
    lambda: String(ship.lambda),
  };
}

const error = (shown: string): number => {
  const size = Number.parseFloat(shown);
  return shown.includes('W') ? -size : size;
};

describe('permanent and induced told apart by two places', () => {
  for (const ship of cases.slice(0, 6)) {
    it(`${ship.id}: P, c and the card of the third place are those of the independent program`, async () => {
      const element = await bench(stateOf(ship));
      const rows = [...root(element).querySelectorAll('section table')][0]?.querySelectorAll('tbody tr') ?? [];
      const cells = [...rows].map((row) => [...row.children].map((cell) => textOf(cell).replace('−', '-')));
      expect(Number.parseFloat(cells[0]?.[2] ?? '')).to.be.closeTo((ship.separated['P'] ?? NaN) / 1000, 0.006);
      expect(Number.parseFloat(cells[1]?.[2] ?? '')).to.be.closeTo(ship.separated['c'] ?? NaN, 0.0001);
      expect(Number.parseFloat(cells[2]?.[2] ?? '')).to.be.closeTo((ship.separated['Q'] ?? NaN) / 1000, 0.006);
      expect(Number.parseFloat(cells[3]?.[2] ?? '')).to.be.closeTo(ship.separated['f'] ?? NaN, 0.0001);

      const predicted = [...root(element).querySelectorAll('table.prediction tbody tr')];
      expect(predicted.length).to.equal(24);
      const third = ship.places.find(({ role }) => role === 'predicted');
      predicted.forEach((row, index) => {
        expect(error(textOf(row.children[1] ?? null))).to.be.closeTo(third?.deviationByCompass24[index] ?? NaN, 0.011);
      });
    });
  }

  it('tells P and c over λ only while λ is not known', async () => {
    const element = await bench({ ...stateOf(cases[0] as Ship), lambda: '' });
    expect(explanation(element)).to.contain('Deviations alone tell each over λ only');
  });

  it('says that places of the same dip tell nothing apart', async () => {
    const element = await bench({ P: 2, c: 0.05, view: 'separate', thereLatitude: '43-30S', thereLongitude: '149E' });
    expect(explanation(element)).to.contain('nothing is told apart');
    expect(explanation(element)).to.contain('The two places do not tell it.');
  });

  // By hand, A, D and E 0: 𝔅 = sin B cos-terms of the old manual are 1 for C = 0, so H sin B = P/λ + (c/λ)Z at both;
  // B = +5° at H 20, Z −40 and +10° at H 20, Z +40 give P/λ = 10 (sin 10° + sin 5°) = 2.61 µT, c/λ = (sin 10° − sin 5°)/4.
  it('takes B found by two swings, typed: P over λ 2.61 µT, c over λ 0.0216', async () => {
    const element = await bench({ source: 'forces', horizontal: 20, vertical: -40, thereSource: 'forces', thereHorizontal: 20, thereVertical: 40, view: 'separate' });
    await type(element, 'hereB', '5');
    await type(element, 'thereB', '10');
    const over = (name: string): string => {
      const row = [...root(element).querySelectorAll('section tr')].find((each) => textOf(each).startsWith(name));
      return textOf(row?.children[1] ?? null);
    };
    expect(over('P')).to.equal('2.61 µT');
    // The versine terms of the manual add 0.0002 at the most.
    expect(Number(over('c').replace('+', ''))).to.be.closeTo((Math.sin(Math.PI / 18) - Math.sin(Math.PI / 36)) / 4, 0.0003);
    expect(one(element, '.frame').textContent).not.to.match(/NaN|undefined/);
  });
});
