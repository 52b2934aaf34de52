import assert from 'node:assert/strict';
import { test } from 'node:test';
import { note, warning } from '../../../core/working/caution.js';
import { quantity } from '../../../core/working/quantity.js';

test('a note and a warning carry their code, their level and their values', () => {
  assert.deepEqual(note('altitude.high'), { code: 'altitude.high', level: 'note', values: {} });
  const values = { H: quantity(1500, 'nanotesla'), zone: 'blackout' };
  assert.deepEqual(warning('field.blackout', values), { code: 'field.blackout', level: 'warning', values });
});
