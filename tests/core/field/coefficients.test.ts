import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import { DEGREE, PER_NANOTESLA, placeOfG } from '../../../core/field/field-coefficients.js';
import type { FieldCoefficients } from '../../../core/field/field-coefficients.js';
import { wmm2015Coefficients } from '../../../core/field/wmm2015-coefficients.js';
import { wmm2015v2Coefficients } from '../../../core/field/wmm2015v2-coefficients.js';
import { wmm2020Coefficients } from '../../../core/field/wmm2020-coefficients.js';
import { wmm2025Coefficients } from '../../../core/field/wmm2025-coefficients.js';

interface Shipped {
  readonly epoch: number;
  readonly n_max: number;
  readonly main_field_coeff_g: readonly number[];
  readonly main_field_coeff_h: readonly number[];
  readonly secular_var_coeff_g: readonly number[];
  readonly secular_var_coeff_h: readonly number[];
}

const nanotesla = (tenths: number | undefined): number => (tenths ?? NaN) / PER_NANOTESLA;

const load = createRequire(import.meta.url);

const models: readonly (readonly [string, FieldCoefficients])[] = [
  ['2025', wmm2025Coefficients],
  ['2020', wmm2020Coefficients],
  ['2015v2', wmm2015v2Coefficients],
  ['2015', wmm2015Coefficients],
];

for (const [name, ours] of models) {
  test(`the 336 coefficients of WMM${name} are those the npm package geomagnetism ships`, () => {
    const shipped = load(`geomagnetism/data/wmm-${name}.json`) as Shipped;
    assert.equal(ours.epoch, shipped.epoch);
    assert.equal(DEGREE, shipped.n_max);
    assert.equal(ours.main.length, 168);
    assert.equal(ours.change.length, 168);
    for (let n = 1; n <= DEGREE; n++) {
      for (let m = 0; m <= n; m++) {
        const theirs = (n * (n + 1)) / 2 + m;
        assert.equal(nanotesla(ours.main[placeOfG(n, m)]), shipped.main_field_coeff_g[theirs], `g ${n} ${m}`);
        assert.equal(nanotesla(ours.change[placeOfG(n, m)]), shipped.secular_var_coeff_g[theirs], `change of g ${n} ${m}`);
        if (m === 0) continue;
        assert.equal(nanotesla(ours.main[placeOfG(n, m) + 1]), shipped.main_field_coeff_h[theirs], `h ${n} ${m}`);
        assert.equal(nanotesla(ours.change[placeOfG(n, m) + 1]), shipped.secular_var_coeff_h[theirs], `change of h ${n} ${m}`);
      }
    }
  });
}
