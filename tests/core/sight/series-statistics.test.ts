import { test } from 'node:test';
import fc from 'fast-check';
import assert from 'node:assert/strict';
import { driftOf } from '../../../core/sight/drift.js';
import { strikeOutliers } from '../../../core/sight/strike-outliers.js';

/** A usual doubt of half a degree, as `usualDoubts` has it: common practice, no source. */
const SIGMA = 0.5;
const SERIES = 4000;

/** Standard normal numbers from a seed: Box and Muller over Mulberry32, both from memory. */
function normals(seed: number): () => number {
  let state = seed;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** How many of many series have the reading struck that a slip, degrees, was laid on; and any other. */
function struck(count: number, slip: number, seed: number): { found: number; wronged: number } {
  const normal = normals(seed);
  let [found, wronged] = [0, 0];
  for (let series = 0; series < SERIES; series += 1) {
    const values = Array.from({ length: count }, (_, index) => SIGMA * normal() + (index === 1 ? slip : 0));
    const out = strikeOutliers(values, SIGMA);
    if (out[1]) found += 1;
    if (out.some((bad, index) => bad && (slip === 0 || index !== 1))) wronged += 1;
  }
  return { found: found / SERIES, wronged: wronged / SERIES };
}

// The target is ours: an honest series is left alone in 97 of 100, a slip of ten scatters is never missed.
for (const count of [5, 8]) {
  test(`of ${count} honest bearings one is struck in fewer than 3 of 100 series; a slip of 5° is struck in more than 95`, (t) => {
    const honest = struck(count, 0, 11 * count);
    const slipped = struck(count, 5, 13 * count);
    t.diagnostic(`false alarms ${honest.wronged}, slip of 5° found ${slipped.found}, others struck beside it ${slipped.wronged}`);
    assert.ok(honest.wronged < 0.03, `${honest.wronged}`);
    assert.ok(slipped.found > 0.95, `${slipped.found}`);
  });
}

test('drift is flagged by chance in fewer than 2 of 100 honest series of eight, and always when it is 0.5° a minute', (t) => {
  const normal = normals(77);
  const minutes = Array.from({ length: 8 }, (_, index) => index);
  const share = (rate: number): number => {
    let flagged = 0;
    for (let series = 0; series < SERIES; series += 1) {
      if (driftOf(minutes, minutes.map((minute) => SIGMA * normal() + rate * minute))?.significant) flagged += 1;
    }
    return flagged / SERIES;
  };
  const [chance, real] = [share(0), share(0.5)];
  t.diagnostic(`flagged: without drift ${chance}, with 0.5° a minute ${real}`);
  assert.ok(chance < 0.02, `${chance}`);
  assert.ok(real > 0.95, `${real}`);
});

test('at least half of any readings are kept, whatever they are', () => {
  const anything = fc.array(fc.double({ min: -180, max: 180, noNaN: true }), { minLength: 1, maxLength: 20 });
  fc.assert(fc.property(anything, (values) => assert.ok(strikeOutliers(values, SIGMA).filter((bad) => !bad).length * 2 >= values.length)));
});
