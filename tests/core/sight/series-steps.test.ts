import assert from 'node:assert/strict';
import { test } from 'node:test';
import { azimuthBearing } from '../../../core/sight/azimuth-bearing.js';
import { bearingSeries } from '../../../core/sight/bearing-series.js';
import type { BearingSeries, SeriesObservation } from '../../../core/sight/bearing-series.js';
import { evaluate } from '../../../core/working/evaluate.js';
import { assertClose } from '../../support/assert-close.js';

const plain: Omit<SeriesObservation, 'shots'> = { source: { by: 'body', body: 'Saturn' }, latitude: 36, longitude: -20, compass: 'gyro' };

function series(errors: readonly number[], more: Partial<SeriesObservation> = {}): BearingSeries {
  const shots = errors.map((error, minute) => {
    const instant = new Date(Date.UTC(2026, 2, 1, 19, 50 + minute));
    const bearing = azimuthBearing({ ...plain, instant });
    assert.ok(bearing.determined);
    return { instant, compassBearing: (bearing.trueBearing - error + 720) % 360, cardDeviation: 1 };
  });
  const found = bearingSeries({ ...plain, ...more, shots });
  assert.ok(found.determined);
  return found;
}

const codes = ({ steps }: BearingSeries): string[] => steps.map(({ code }) => code);
const resultOf = ({ steps }: BearingSeries, code: string): number => steps.find((step) => step.code === code)?.result.value ?? NaN;

/** Every line whose formula is shown gives, by its own numbers, what stands behind it. */
function assertAddsUp({ steps }: BearingSeries): void {
  for (const { code, expression, values, result } of steps) {
    if (!expression) continue;
    const value = evaluate(expression, Object.fromEntries(Object.entries(values).map(([name, { value }]) => [name, value])));
    const turn = ((((value - result.value) % 360) + 540) % 360) - 180;
    assertClose(turn, 0, 1e-9, code);
  }
}

// 1.0 1.2 0.8 1.1 0.9 by hand: sum 5.0, squares of what is left 0 + .04 + .04 + .01 + .01 = 0.1, s = √(0.1/4) = 0.158, s/√5 = 0.0707.
test('five bearings: mean, scatter and standard error as worked by hand', () => {
  const found = series([1, 1.2, 0.8, 1.1, 0.9]);
  assert.deepEqual(codes(found), ['series.mean', 'series.scatter', 'series.standard-error.scatter']);
  assertClose(resultOf(found, 'series.mean'), 1, 1e-6);
  assertClose(resultOf(found, 'series.scatter'), 0.1581, 1e-4);
  assertClose(resultOf(found, 'series.standard-error.scatter'), 0.0707, 1e-4);
  assertAddsUp(found);
});

// By hand: 0.5/√3 = 0.2887.
test('of three that agree by luck the doubt supposed of a reading counts; a struck one is in no line', () => {
  const three = series([1, 1, 1]);
  assert.deepEqual(codes(three), ['series.mean', 'series.scatter', 'series.standard-error.reading']);
  assertClose(resultOf(three, 'series.standard-error.reading'), 0.2887, 1e-4);
  // The list of doubts claims no more of a bearing than the mean was reckoned with.
  const [doubt] = three.doubt.items;
  assertClose(doubt?.cause.value ?? NaN, 0.5, 1e-9);
  assertClose(doubt?.effect ?? NaN, 0.2887, 1e-4);
  assertAddsUp(three);
  const struck = series([1, 1.2, 6, 1.1, 0.9]);
  assert.equal(Object.keys(struck.steps[0]?.values ?? {}).length, 4);
  assertClose(resultOf(struck, 'series.mean'), 1.05, 1e-6);
  assertAddsUp(struck);
});

test('one bearing has no scatter; across 180° the mean is on the side of its bearings', () => {
  assert.deepEqual(codes(series([2])), ['series.mean', 'series.standard-error.reading']);
  const turned = series([179, -179, 179, -179, 180]);
  assertClose(Math.abs(resultOf(turned, 'series.mean')), 180, 1e-6);
  assertAddsUp(turned);
});

test('a magnetic compass: deviation and difference from the card follow', () => {
  const found = series([4, 4.2, 3.9, 4.1, 4], { compass: 'magnetic', variation: 3 });
  assert.deepEqual(codes(found).slice(3), ['variation.given', 'error.deviation', 'error.difference']);
  // Mean 4.04, variation 3, card 1: by hand 1.04 and 0.04.
  assertClose(resultOf(found, 'error.deviation'), 1.04, 1e-6);
  assertClose(resultOf(found, 'error.difference'), 0.04, 1e-6);
  assertAddsUp(found);
});
