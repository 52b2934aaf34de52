import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { ironDeviation } from '../../../core/iron/iron-deviation.js';
import { ironDeviationByCompass } from '../../../core/iron/iron-by-compass.js';
import { noIron } from '../../../core/iron/iron-parameters.js';
import { needle } from '../../../core/iron/needle.js';
import { assertSameDirection } from '../../support/assert-close.js';
import { anyField, anyHeading, anyHeel, shipsIron } from './any-iron.js';

test('compass to magnetic and back: a ship whose needle directs has one answer, and it is the right one', () => {
  fc.assert(
    fc.property(shipsIron, anyField, anyHeading, anyHeel, (iron, field, heading, heel) => {
      fc.pre(needle(iron, field, heel).behaviour === 'directs');
      const { compassHeading } = ironDeviation(iron, field, heading, heel);
      const { kind, answers } = ironDeviationByCompass(iron, field, compassHeading ?? NaN, heel);
      assert.equal(kind, 'one');
      assertSameDirection(answers[0]?.magneticHeading ?? NaN, heading, 1e-6);
    }),
  );
});

test('every answer shows the compass heading asked for, where there are two as well', () => {
  let two = 0;
  for (let compassHeading = 0; compassHeading < 360; compassHeading += 15) {
    const iron = { ...noIron, P: 24000 };
    const field = { h: 20000, z: 0 };
    const { kind, answers } = ironDeviationByCompass(iron, field, compassHeading);
    assert.equal(answers.length, { one: 1, two: 2, none: 0, any: -1 }[kind]);
    if (kind === 'two') two += 1;
    for (const { magneticHeading, deviation } of answers) {
      const back = ironDeviation(iron, field, magneticHeading);
      assertSameDirection(back.compassHeading ?? NaN, compassHeading, 1e-9);
      assertSameDirection(back.deviation ?? NaN, deviation, 1e-9);
    }
  }
  assert.ok(two > 0);
});

// Poisson with P = 1.2 H: X' is never below 0.2 H, so the needle stays within 90° of the bow.
test('P above H: 180 by compass is shown on no heading, 000 on two, north and south', () => {
  const iron = { ...noIron, P: 24000 };
  const field = { h: 20000, z: 0 };
  assert.deepEqual(ironDeviationByCompass(iron, field, 180), { kind: 'none', answers: [] });
  const { kind, answers } = ironDeviationByCompass(iron, field, 0);
  assert.equal(kind, 'two');
  assert.deepEqual(answers.map(({ magneticHeading }) => magneticHeading).sort(), [0, 180]);
});

test('without a horizontal field the heading tells nothing, or never appears', () => {
  const pole = { h: 0, z: 60000 };
  assert.equal(ironDeviationByCompass({ ...noIron, P: 500 }, pole, 0).kind, 'any');
  assert.equal(ironDeviationByCompass({ ...noIron, P: 500 }, pole, 90).kind, 'none');
});

// By hand: P = −H and Q = −H/2 leave on north X′ = 0 and Y′ = −H/2, so the compass shows 090; there the two headings meet.
test('where the two headings that serve fall together there is one answer, not the same twice', () => {
  const found = ironDeviationByCompass({ ...noIron, P: -20000, Q: -10000 }, { h: 20000, z: 0 }, 90);
  assert.equal(found.kind, 'one');
  assert.equal(found.answers.length, 1);
  assertSameDirection(found.answers[0]?.magneticHeading ?? NaN, 0, 1e-9);
  assertSameDirection(found.answers[0]?.deviation ?? NaN, -90, 1e-9);
});
