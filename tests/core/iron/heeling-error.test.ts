import assert from 'node:assert/strict';
import { test } from 'node:test';
import { exactCoefficients } from '../../../core/iron/exact-coefficients.js';
import {
  heelingCoefficient,
  heelingError,
  heelingErrorByCompass,
  linearHeelingError,
} from '../../../core/iron/heeling-error.js';
import { ironCautions } from '../../../core/iron/iron-cautions.js';
import { noIron, type IronParameters } from '../../../core/iron/iron-parameters.js';
import { assertClose } from '../../support/assert-close.js';
import { reference } from '../../support/reference.js';

interface HeelCase {
  heel: number;
  deviationByCompass: number[];
  deviationByMagnetic: number[];
  heelingErrorByCompass: number[];
  heelingErrorByMagnetic: number[];
  linearEstimate: number[];
}
interface HeeledShip {
  id: string;
  group: string;
  parameters: IronParameters;
  H: number;
  Z: number;
  headings: number[];
  uprightDeviationByCompass: number[];
  heelingCoefficientJ: number;
  heelCases: Record<string, HeelCase>;
}

// Closed form from rotated tensors and brute force, independent of this code: header of the file.
const { cases: ships } = reference<{ cases: HeeledShip[] }>('iron-heel.json');

for (const { id, group, parameters, H, Z, headings, heelCases, uprightDeviationByCompass } of ships) {
  const field = { h: H, z: Z };
  for (const expected of Object.values(heelCases)) {
    test(`ship ${id} (${group}) heeled ${expected.heel}°: heeling error on eight headings to a millionth`, () => {
      headings.forEach((heading, index) => {
        const magnetic = heelingError(parameters, field, heading, expected.heel);
        const compass = heelingErrorByCompass(parameters, field, heading, expected.heel);
        const at = (list: number[]): number => list[index] ?? NaN;
        assertClose(magnetic.heeled ?? NaN, at(expected.deviationByMagnetic), 1e-6);
        assertClose(magnetic.error ?? NaN, at(expected.heelingErrorByMagnetic), 1.1e-6);
        assertClose(compass.upright ?? NaN, at(uprightDeviationByCompass), 1e-6);
        assertClose(compass.heeled ?? NaN, at(expected.deviationByCompass), 1e-6);
        assertClose(compass.error ?? NaN, at(expected.heelingErrorByCompass), 1.1e-6);
        assertClose(linearHeelingError(parameters, field, heading, expected.heel) ?? NaN, at(expected.linearEstimate), 1e-5);
      });
    });
  }
}

test('the heeling coefficient J of 16 ships to 1e-8', () => {
  for (const { parameters, H, Z, heelingCoefficientJ } of ships) {
    assertClose(heelingCoefficient(parameters, { h: H, z: Z }) ?? NaN, heelingCoefficientJ, 1e-8);
  }
});

test('ℭ grows with heel at the rate J + ℭ(f + h)/2λ: numerical derivative of the rotated equations', () => {
  for (const { parameters, H, Z } of ships) {
    const field = { h: H, z: Z };
    const arc = Math.PI / 180;
    const at = (heel: number): number => exactCoefficients(parameters, field, heel).C ?? NaN;
    const { C, lambda } = exactCoefficients(parameters, field);
    const rate = (heelingCoefficient(parameters, field) ?? NaN) + ((C ?? NaN) * (parameters.f + parameters.h)) / (2 * lambda);
    assertClose(rate, (at(0.01) - at(-0.01)) / (0.02 * arc), 1e-6);
  }
});

// Common practice, no source.
test('in the north, upper works blue: the north point is drawn to the high side on north and south, not on east and west', () => {
  const beams = { ...noIron, e: -0.1, k: 0.05 };
  const field = { h: 18000, z: 44000 };
  // Heeled to starboard the high side is port: heading north that is west, heading south east.
  assert.ok((heelingError(beams, field, 0, 10).error ?? 0) < -1);
  assert.ok((heelingError(beams, field, 180, 10).error ?? 0) > 1);
  assert.ok(Math.abs(heelingError(beams, field, 90, 10).error ?? 9) < 0.05);
  assert.ok((heelingError(beams, { h: 18000, z: -44000 }, 0, 10).error ?? 0) > 1);
});

test('a heel of 31° to either side is cautioned, one of 30° not', () => {
  const codes = (heel: number): string[] => ironCautions(noIron, { h: 20000, z: 0 }, heel).map(({ code }) => code);
  assert.deepEqual(codes(31), ['iron.heel-large']);
  assert.deepEqual(codes(-31), ['iron.heel-large']);
  assert.deepEqual(codes(30), []);
});

test('no heeling coefficient where λ or H is 0', () => {
  assert.equal(heelingCoefficient({ ...noIron, R: 100 }, { h: 0, z: 60000 }), null);
  assert.equal(heelingCoefficient({ ...noIron, a: -1, e: -1 }, { h: 20000, z: 100 }), null);
  assert.equal(linearHeelingError({ ...noIron, R: 100 }, { h: 0, z: 1 }, 0, 5), null);
  assert.throws(() => linearHeelingError(noIron, { h: 1, z: 1 }, 0, NaN), /^RangeError: heel/);
});

// By hand: upright R draws nothing aside; heeled 40° it pulls −R sin 40° athwart, more than H, and the card never comes to 000.
// Q of more than H does so upright, and R takes enough of it away at 20°.
test('no heeling error where the deviation is known on one side only, upright or heeled', () => {
  const field = { h: 20000, z: 40000 };
  const lost = heelingErrorByCompass({ ...noIron, R: 40000 }, field, 0, 40);
  assert.deepEqual({ ...lost, upright: Math.abs(lost.upright ?? NaN) }, { upright: 0, heeled: null, error: null });
  const gained = heelingErrorByCompass({ ...noIron, Q: 22000, R: 20000 }, field, 0, 20);
  assert.equal(gained.upright, null);
  // −H sin ζ + Q cos 20° − R sin 20° = 0.
  assertClose(gained.heeled ?? NaN, (Math.asin((22000 * Math.cos(Math.PI / 9) - 20000 * Math.sin(Math.PI / 9)) / 20000) * 180) / Math.PI, 1e-9);
  assert.equal(gained.error, null);
});
