import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { coefficientSteps } from '../../../core/iron/coefficient-steps.js';
import { largestParts } from '../../../core/iron/deviation-parts.js';
import { exactCoefficients } from '../../../core/iron/exact-coefficients.js';
import * as heeling from '../../../core/iron/heeling-error.js';
import { ironDeviationByCompass } from '../../../core/iron/iron-by-compass.js';
import { ironCautions } from '../../../core/iron/iron-cautions.js';
import { ironCurve } from '../../../core/iron/iron-curve.js';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import { needle } from '../../../core/iron/needle.js';
import { predictAt } from '../../../core/iron/predict-at.js';
import { separateIron } from '../../../core/iron/separate-iron.js';
import { absurdField, absurdIron, anyHeading, finite } from './any-iron.js';

/** Every number in a result, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(numbersIn) : [];
}

const absurdNumber = fc.double({ min: -1e100, max: 1e100, noNaN: true });
const settings = { numRuns: 300 };

test('iron of any finite size, any field and any heel give numbers or null, never NaN, Infinity or an error', () => {
  fc.assert(
    fc.property(absurdIron, absurdField, anyHeading, finite, (iron, field, heading, heel) => {
      const results = {
        ironDeviation: ironDeviation(iron, field, heading, heel),
        ironDeviationByCompass: ironDeviationByCompass(iron, field, heading, heel),
        ironCurve: ironCurve(iron, field, heel, 4),
        exactCoefficients: exactCoefficients(iron, field, heel),
        coefficientSteps: coefficientSteps(iron, field, heel),
        largestParts: largestParts(iron, field, heel),
        needle: needle(iron, field, heel),
        ironCautions: ironCautions(iron, field, heel),
        heelingError: heeling.heelingError(iron, field, heading, heel),
        heelingErrorByCompass: heeling.heelingErrorByCompass(iron, field, heading, heel),
        linearHeelingError: heeling.linearHeelingError(iron, field, heading, heel),
      };
      for (const [name, result] of Object.entries(results)) {
        assert.ok(numbersIn(result).every(Number.isFinite), name);
      }
    }),
    settings,
  );
});

test('deviations stay in (-180, 180] and compass headings in [0, 360)', () => {
  fc.assert(
    fc.property(absurdIron, absurdField, anyHeading, (iron, field, heading) => {
      const { deviation, compassHeading } = ironDeviation(iron, field, heading);
      assert.ok(deviation === null || (deviation > -180 && deviation <= 180));
      assert.ok(compassHeading === null || (compassHeading >= 0 && compassHeading < 360));
    }),
    settings,
  );
});

test('coefficients up to a googol are separated and predicted without NaN', () => {
  fc.assert(
    fc.property(absurdField, absurdField, absurdNumber, absurdNumber, absurdNumber, (one, other, B, C, lambda) => {
      fc.pre(one.h > 0 && other.h > 0);
      const separated = separateIron([
        { exact: { B, C, A: C }, field: one, lambda },
        { exact: { B: C, C: B, A: B }, field: other, lambda },
      ]);
      assert.ok(numbersIn([separated, predictAt(separated, one)]).every(Number.isFinite));
    }),
    settings,
  );
});
