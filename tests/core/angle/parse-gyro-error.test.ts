import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseGyroError } from '../../../core/angle/parse-gyro-error.js';

// By definition, true less gyro: where 045 is true, a gyro that shows 046.5 reads 1.5 high, and 45 − 46.5 is 1.5 west.
for (const [text, error] of [
  ['1.5 high', 45 - 46.5], ['1.5 low', 45 - 43.5], ['High 1,5', -1.5], ['low 2°', 2], ['1.5HIGH', -1.5], ['0°30′ low', 0.5], ['0 high', 0], ['１．５ ＨＩＧＨ', -1.5],
  ['1.5W', -1.5], ['1.5 E', 1.5], ['-1.5', -1.5], ['+1.5', 1.5], ['0', 0],
] as const) {
  test(`a gyro error of ${text} is ${error}°`, () => assert.deepEqual(parseGyroError(text), { ok: true, value: error }));
}

// A word with a letter or a sign beside it says the same twice, or two things.
for (const [text, refusal] of [
  ['1.5 W high', 'two-letters'], ['high 1.5 low', 'two-letters'], ['-1.5 high', 'sign-and-letter'], ['1.5', 'letter-missing'], ['highest 1.5', 'not-understood'],
  ['1.5 slow', 'not-understood'], ['high', 'not-understood'], ['', 'empty'],
] as const) {
  test(`a gyro error of ${JSON.stringify(text)} is refused: ${refusal}`, () => assert.deepEqual(parseGyroError(text), { ok: false, refusal }));
}
