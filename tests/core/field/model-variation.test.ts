import assert from 'node:assert/strict';
import { test } from 'node:test';
import { magneticField } from '../../../core/field/magnetic-field.js';
import { modelVariation } from '../../../core/field/model-variation.js';
import { instantOfDecimalYear } from '../../../core/time/decimal-year.js';
import { assertSameDirection } from '../../support/assert-close.js';
import { fieldReference } from './field-reference.js';

// Source: the official test lines of each model (header of the reference file), D printed to 0.01°.
test('the variation is that of the official lines at sea level, by the model of the date', () => {
  const lines = fieldReference.official.filter(({ model, alt_km }) => alt_km === 0 && model !== 'WMM2015');
  assert.ok(new Set(lines.map(({ model }) => model)).size === 3);
  let compared = 0;
  for (const line of lines) {
    const found = modelVariation({ latitude: line.lat, longitude: line.lon }, instantOfDecimalYear(line.decimal_year));
    // The last year of a model is the first of the next, which is taken.
    if (found.model !== line.model) continue;
    compared += 1;
    assertSameDirection(found.variation ?? NaN, line.D, 0.00501, `${line.model} ${line.decimal_year} ${line.lat} ${line.lon}`);
  }
  assert.ok(compared > 10, `${compared} lines`);
});

test('it is the variation, doubt and zone of the whole field, on each side of the change of models', () => {
  for (const text of ['2015-01-01', '2019-12-31', '2020-01-01', '2024-12-31', '2025-01-01', '2030-01-01']) {
    for (const [latitude, longitude] of [[49, -6], [-33, 151], [86, -160], [-64, 137]] as const) {
      const instant = new Date(`${text}T00:00:00Z`);
      const { variation, uncertainty, zone, model } = magneticField({ latitude, longitude }, instant);
      assert.deepEqual(modelVariation({ latitude, longitude }, instant), { variation, sigma: uncertainty.variation, zone, model });
    }
  }
});

test('a place or instant outside is refused by name', () => {
  const instant = new Date('2026-11-25T00:00:00Z');
  const refuses = (name: string, latitude: number, longitude: number, at: Date): void =>
    assert.throws(() => modelVariation({ latitude, longitude }, at), { name: 'RangeError', message: new RegExp(`^${name}: `) });
  refuses('latitude', 91, 0, instant);
  refuses('longitude', 0, 360, instant);
  refuses('instant', 0, 0, new Date('2030-01-01T00:00:00.001Z'));
  refuses('instant', 0, 0, new Date('2014-12-31T23:59:59.999Z'));
  refuses('instant', 0, 0, new Date(NaN));
});
