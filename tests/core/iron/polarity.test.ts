import assert from 'node:assert/strict';
import { test } from 'node:test';
import { hardIronPolarity, permanentFromSlip } from '../../../core/iron/building-slip.js';
import { exactCoefficients } from '../../../core/iron/exact-coefficients.js';
import { inducedPolarity } from '../../../core/iron/induced-polarity.js';
import { assertClose } from '../../support/assert-close.js';

const north = { h: 18000, z: 44000 };
const equator = { h: 40000, z: 0 };
const south = { h: 20000, z: -50000 };

// All rules of colour here: common practice, no source at hand.
test('north of the magnetic equator the top of a mast is blue and its foot red, south of it the reverse, on it neither', () => {
  for (const heading of [0, 90, 200]) {
    assert.deepEqual(inducedPolarity(north, heading).mast, { top: 'blue', foot: 'red' });
    assert.deepEqual(inducedPolarity(south, heading).mast, { top: 'red', foot: 'blue' });
    assert.deepEqual(inducedPolarity(equator, heading).mast, { top: null, foot: null });
  }
});

test('funnel, deck and keel share the colours of the vertical field', () => {
  const { funnel, deck, keel } = inducedPolarity(north, 45);
  assert.equal(funnel.top, 'blue');
  assert.deepEqual(deck, { upper: 'blue', lower: 'red' });
  assert.equal(keel.lower, 'red');
  assert.equal(inducedPolarity(south, 45).deck.upper, 'red');
});

test('bow and beams are red towards north, in both hemispheres', () => {
  for (const field of [north, equator, south]) {
    const [onNorth, onEast, onSouth, onWest] = [0, 90, 180, 270].map((heading) => inducedPolarity(field, heading));
    assert.equal(onNorth?.keel.bow, 'red');
    assert.equal(onNorth?.keel.stern, 'blue');
    assert.equal(onNorth?.beam.port, null);
    assert.equal(onEast?.keel.bow, null);
    assert.equal(onEast?.beam.port, 'red');
    assert.equal(onSouth?.keel.bow, 'blue');
    assert.equal(onWest?.beam.starboard, 'red');
    assert.equal(onWest?.beam.port, 'blue');
  }
});

test('heeled to starboard heading north, the high ends of the beams are blue in the north, red in the south', () => {
  assert.deepEqual(inducedPolarity(north, 0, 10).beam, { port: 'blue', starboard: 'red' });
  assert.deepEqual(inducedPolarity(south, 0, 10).beam, { port: 'red', starboard: 'blue' });
  assert.deepEqual(inducedPolarity(north, 0, -10).beam, { port: 'red', starboard: 'blue' });
});

test('hard iron has the colours of the slip', () => {
  assert.deepEqual(hardIronPolarity({ field: south, magneticHeading: 180 }), inducedPolarity(south, 180));
  assert.equal(hardIronPolarity({ field: north, magneticHeading: 0 }).keel.bow, 'red');
});

const built: [number, 'B' | 'C', number][] = [[0, 'B', -1], [90, 'C', 1], [180, 'B', 1], [270, 'C', -1]];
for (const [heading, coefficient, sign] of built) {
  test(`built heading ${heading}: ${coefficient} is ${sign > 0 ? 'positive' : 'negative'} and the other 0, in either hemisphere`, () => {
    for (const field of [north, south]) {
      const { B, C } = exactCoefficients(permanentFromSlip({ magneticHeading: heading, field }), field);
      const [own, other] = coefficient === 'B' ? [B, C] : [C, B];
      assert.equal(Math.sign(own ?? 0), sign);
      assertClose(other ?? NaN, 0, 1e-12);
    }
  });
}

test('the vertical part goes with the hemisphere of the slip, and sizes are those asked for', () => {
  const slip = { magneticHeading: 0, field: north };
  const iron = permanentFromSlip(slip, { horizontal: 0.1, vertical: 0.2 });
  assert.deepEqual([iron.P, iron.Q, iron.R], [-1800, 0, 8800]);
  assert.ok(permanentFromSlip({ ...slip, field: south }).R < 0);
});

test('a wrong argument is named', () => {
  assert.throws(() => inducedPolarity(north, NaN), /^RangeError: magneticHeading/);
  assert.throws(() => inducedPolarity({ h: -1, z: 0 }, 0), /^RangeError: field\.h/);
  assert.throws(() => permanentFromSlip({ magneticHeading: Infinity, field: north }), /^RangeError: slip\.magneticHeading/);
  assert.throws(() => permanentFromSlip({ magneticHeading: 0, field: north }, { vertical: 2 }), /^RangeError: strength\.vertical/);
});
