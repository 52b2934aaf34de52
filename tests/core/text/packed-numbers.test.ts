import assert from 'node:assert/strict';
import { test } from 'node:test';
import { FIGURES, packedNumbers, signed, SIGNS } from '../../../core/text/packed-numbers.js';

/** The form written out here: greater figures first, of the signs behind the first 36, the least figure of those. */
function packed(number: number): string {
  const base = SIGNS.length - FIGURES;
  let greater = '';
  for (let rest = Math.floor(number / FIGURES); rest > 0; rest = Math.floor(rest / base)) greater = (SIGNS[FIGURES + (rest % base)] ?? '') + greater;
  return greater + (SIGNS[number % FIGURES] ?? '');
}

test('numbers of any size packed in a row are read back, each sign stands for one figure, and none is a comma', () => {
  const numbers = [0, 1, 35, 36, 71, 72, 36 * 54, 36 * 54 - 1, 36 * 54 * 54 + 7, 123_456_789, 3, 0, 9_007_199_254_740];
  assert.deepEqual(packedNumbers(numbers.map(packed).join('')), numbers);
  assert.equal(FIGURES, 36);
  assert.equal(new Set(SIGNS).size, SIGNS.length);
  assert.ok(!SIGNS.includes(','));
  assert.deepEqual(packedNumbers(''), []);
});

test('a number of either sign: 0, −1, 1, −2, 2 are 0 to 4', () => {
  assert.deepEqual([0, 1, 2, 3, 4, 199, 200].map(signed), [0, -1, 1, -2, 2, -100, 100]);
});
