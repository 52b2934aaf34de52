import assert from 'node:assert/strict';
import { test } from 'node:test';
import { permanentFromSlip } from '../../../core/iron/building-slip.js';
import { exactCoefficients } from '../../../core/iron/exact-coefficients.js';
import { inducedPolarity } from '../../../core/iron/induced-polarity.js';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import { assertClose } from '../../support/assert-close.js';

// A lecturer's walk with round figures; each number by hand from λH𝔅 = P + cZ, λ = 1.
const south = { h: 20000, z: -50000 };
const equator = { h: 40000, z: 0 };
const north = { h: 20000, z: 50000 };

test('built heading south in the southern hemisphere, strength 0.1: P = +2000 nT', () => {
  assertClose(permanentFromSlip({ magneticHeading: 180, field: south }, { horizontal: 0.1 }).P, 2000, 1e-9);
});

test('with vertical iron c = 0.08 that outweighs P, B changes sign across the magnetic equator', () => {
  const ship = { ...permanentFromSlip({ magneticHeading: 180, field: south }, { horizontal: 0.1 }), c: 0.08 };
  assertClose(exactCoefficients(ship, south).B ?? NaN, -0.1, 1e-12);
  assertClose(exactCoefficients(ship, equator).B ?? NaN, 0.05, 1e-12);
  assertClose(exactCoefficients(ship, north).B ?? NaN, 0.3, 1e-12);
  // Heading east only B shows: tan δ = 𝔅.
  assertClose(ironDeviation(ship, south, 90).deviation ?? NaN, -5.710593137, 1e-9);
  assertClose(ironDeviation(ship, north, 90).deviation ?? NaN, 16.699244234, 1e-9);
});

test('with c = 0.02, less than P, it keeps its sign', () => {
  const ship = { ...permanentFromSlip({ magneticHeading: 180, field: south }, { horizontal: 0.1 }), c: 0.02 };
  assertClose(exactCoefficients(ship, south).B ?? NaN, 0.05, 1e-12);
  assertClose(exactCoefficients(ship, north).B ?? NaN, 0.15, 1e-12);
});

test('on the way the top of her mast turns from red to blue', () => {
  const tops = [south, equator, north].map((field) => inducedPolarity(field, 0).mast.top);
  assert.deepEqual(tops, ['red', null, 'blue']);
});
