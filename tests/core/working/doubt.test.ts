import assert from 'node:assert/strict';
import { test } from 'node:test';
import { combineDoubt } from '../../../core/working/doubt.js';
import { quantity } from '../../../core/working/quantity.js';

function item(code: string, effect: number): Parameters<typeof combineDoubt>[0][number] {
  return { code, cause: quantity(effect, 'angle'), effect };
}

test('independent doubts of 3 and 4 make 5, and are kept one by one', () => {
  const items = [item('reading', 3), item('time', 4)];
  assert.deepEqual(combineDoubt(items), { items, total: 5 });
});

test('one doubt is its own total, and none is no doubt', () => {
  assert.equal(combineDoubt([item('reading', 0.5)]).total, 0.5);
  assert.equal(combineDoubt([]).total, 0);
});

test('an effect that is negative or no number is refused by the name of its item', () => {
  for (const bad of [-0.1, NaN, Infinity]) {
    assert.throws(() => combineDoubt([item('reading', 1), item('time', bad)]), { name: 'RangeError', message: /time/ });
  }
});
