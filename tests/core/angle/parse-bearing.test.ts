import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseBearing } from '../../../core/angle/parse-bearing.js';
import { assertClose } from '../../support/assert-close.js';

// Which texts are read: common practice, no source. Values by hand.
const read: readonly (readonly [string, number])[] = [
  ['045', 45], ['45', 45], ['000', 0], ['360', 0], ['360.0°', 0], ['359.9', 359.9], ['113.2°', 113.2], ['113,2', 113.2], ['113°12′', 113.2],
  ['113-12', 113.2], ['113 12 00', 113.2], ['045°T', 45], ['045 M', 45], ['045.5c', 45.5], ['045G', 45], ['45 deg T', 45], ['０４５', 45],
  ['N 45 E', 45], ['n45w', 315], ['S 57.4° E', 122.6], ['S 0 W', 180], ['N 0 W', 0], ['N 90 W', 270], ['S 90° 00′ E', 90], ['N 45 deg E', 45],
  ['N 12°30′ W', 347.5], ['N', 0], ['e', 90], ['ENE', 67.5], ['NNW', 337.5], ['ＳＷ', 225],
];
for (const [text, degrees] of read) {
  test(`bearing ${text} is ${degrees}°`, () => {
    const reading = parseBearing(text);
    assert.ok(reading.ok, JSON.stringify(reading));
    assertClose(reading.value, degrees, 1e-12);
    assert.ok(!Object.is(reading.value, -0));
  });
}

const refusals: readonly (readonly [string, string])[] = [
  ['', 'empty'], ['  ', 'empty'], ['360.1', 'out-of-range'], ['361', 'out-of-range'], ['0045', 'out-of-range'], ['113-60', 'minutes-over-59'],
  ['113 12 60', 'seconds-over-59'], ['N 90.1 E', 'out-of-range'], ['N 45 60 E', 'minutes-over-59'], ['N 45 O', 'letter-o'], ['NO', 'letter-o'], ['SSO', 'letter-o'],
  ['O', 'letter-o'], ['-45', 'not-understood'], ['45 E', 'not-understood'], ['N 45', 'not-understood'], ['E 45 N', 'not-understood'], ['N -45 E', 'not-understood'],
  ['T', 'not-understood'], ['M', 'not-understood'], ['045TT', 'not-understood'], ['north', 'not-understood'], ['045 090', 'minutes-over-59'], ['045.5 12', 'decimals-not-last'], ['4.5.0', 'two-decimal-marks'],
];
for (const [text, refusal] of refusals) {
  test(`bearing ${JSON.stringify(text)} is refused: ${refusal}`, () => {
    assert.deepEqual(parseBearing(text), { ok: false, refusal });
  });
}
