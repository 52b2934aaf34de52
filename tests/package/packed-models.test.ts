import assert from 'node:assert/strict';
import { join } from 'node:path';
import { describe, it } from 'node:test';
import { pathToFileURL } from 'node:url';
import type { FieldCoefficients } from '../../core/field/field-coefficients.js';
import { wmm2015Coefficients } from '../../core/field/wmm2015-coefficients.js';
import { wmm2015v2Coefficients } from '../../core/field/wmm2015v2-coefficients.js';
import { wmm2020Coefficients } from '../../core/field/wmm2020-coefficients.js';
import { wmm2025Coefficients } from '../../core/field/wmm2025-coefficients.js';
import { projectFolder } from '../install.js';

const published: Readonly<Record<string, FieldCoefficients>> = { wmm2025Coefficients, wmm2020Coefficients, wmm2015v2Coefficients, wmm2015Coefficients };

describe('the magnetic models as the package holds them', () => {
  for (const [name, model] of Object.entries(published)) {
    it(`${name}: figure for figure those of the source`, async () => {
      const file = join(projectFolder, 'dist/core/field', `${name.replace('Coefficients', '')}-coefficients.js`);
      const packed = (await import(pathToFileURL(file).href)) as Record<string, FieldCoefficients>;
      assert.deepEqual(packed[name], model);
    });
  }
});
