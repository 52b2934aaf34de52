import { describe, it } from 'node:test';
import { wrap180 } from '../../../core/angle/wrap.js';
import { azimuthBearing } from '../../../core/sight/azimuth-bearing.js';
import { assertClose } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

interface Strip {
  id: string;
  source: string;
  inputs: { lat_deg: number; dec_deg: number; lha_deg: number };
  expected: Record<string, number>;
}

const strip = reference<{ cases: Strip[] }>('sky-published.json').cases.find(({ id }) => id === 'az-qm-229') as Strip;
const { inputs, expected } = strip;
const printed = (name: string): number => expected[name] ?? NaN;

/** Azimuth angle from the elevated pole, here north, as the tables give it for whole degrees. */
function tabulated(latitude: number, declination: number, hourAngle: number): number {
  const found = azimuthBearing({ source: { by: 'hour-angle', gha: hourAngle, declination }, latitude, longitude: 0, instant: null });
  return found.determined ? Math.abs(wrap180(found.trueBearing)) : NaN;
}

// The strip enters the table with 33° N, 19° contrary, 51°, and interpolates to 33°37.0′, 19°31.6′, 51°53.4′.
describe(`the strip form of ${strip.source}`, () => {
  const base = tabulated(33, -19, 51);
  const steps = [
    ['declination', 'dec', tabulated(33, -20, 51) - base, Math.abs(inputs.dec_deg) - 19],
    ['latitude', 'lat', tabulated(34, -19, 51) - base, inputs.lat_deg - 33],
    ['hour angle', 'lha', tabulated(33, -19, 52) - base, inputs.lha_deg - 51],
  ] as const;

  it('tabulated azimuth angle 129.1', () => assertClose(base, printed('tabZ'), 0.05));

  for (const [name, code, difference, part] of steps) {
    // The table's own differences are of values rounded to a tenth; the corrections are products of those.
    it(`a degree of ${name} changes it by ${printed(`${code}_Zdiff`)}`, () => assertClose(difference, printed(`${code}_Zdiff`), 0.1));
    it(`its correction for ${name} is ${printed(`${code}_corr`)}`, () => assertClose(difference * part, printed(`${code}_corr`), 0.06));
  }

  it('total correction −0.1, and so Z 129.0', () => {
    const total = steps.reduce((all, [, , difference, part]) => all + difference * part, 0);
    assertClose(total, printed('total_corr'), 0.05);
    assertClose(base + total, printed('Z_deg'), 0.05);
  });

  it('the triangle itself gives Zn 231.0', () => {
    const source = { by: 'hour-angle', gha: inputs.lha_deg, declination: inputs.dec_deg } as const;
    const found = azimuthBearing({ source, latitude: inputs.lat_deg, longitude: 0, instant: null });
    assertClose(found.determined ? found.trueBearing : NaN, printed('Zn_deg'), 0.05);
  });
});
