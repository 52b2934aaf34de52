import assert from 'node:assert/strict';
import test from 'node:test';
import { repeatedReadings } from '../../../core/deviation/heading-gaps.js';
import { assertClose } from '../../support/assert-close.js';

// By hand: 4.4 − 3.1 = 1.3 and 1.0 − (−0.5) = 1.5.
test('of a heading read more than once it is told how far the readings lie apart, over the seam of the compass too', () => {
  const found = repeatedReadings([
    { heading: 0, deviation: 3.1 },
    { heading: 45, deviation: 1 },
    { heading: 90, deviation: -6 },
    { heading: 45.02, deviation: -0.5 },
    { heading: 359.99, deviation: 4.4 },
  ]);
  assert.deepEqual(found.map(({ heading }) => heading), [45, 359.99]);
  assertClose(found[0]?.apart ?? NaN, 1.5, 1e-9, '045°');
  assertClose(found[1]?.apart ?? NaN, 1.3, 1e-9, '000°');
});
