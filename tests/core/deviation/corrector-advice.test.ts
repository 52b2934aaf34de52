import assert from 'node:assert/strict';
import { test } from 'node:test';
import { correctorAdvice, type AdjustmentNeeds } from '../../../core/deviation/corrector-advice.js';
import { assertClose } from '../../support/assert-close.js';

const none = { A: 0, B: 0, C: 0, D: 0, E: 0 };

function codesFor(coefficients: Partial<typeof none>, more: Omit<AdjustmentNeeds, 'coefficients'> = {}): string[] {
  return correctorAdvice({ coefficients: { ...none, ...coefficients }, ...more }).map(({ code }) => code);
}

// +C: New Zealand Gazette 1906. The others below the card: from memory, by the same rule that red repels the north point.
test('magnets: +B red forward, −B aft, +C red to starboard, −C to port', () => {
  assert.deepEqual(codesFor({ B: 4 }), ['magnet.red-forward']);
  assert.deepEqual(codesFor({ B: -4 }), ['magnet.red-aft']);
  assert.deepEqual(codesFor({ C: 4 }), ['magnet.red-starboard']);
  assert.deepEqual(codesFor({ C: -4 }), ['magnet.red-port']);
});

// With B +0.6° and A −0.9° the compass shows 0.3° W on east, and red ends forward would have made it more: "take out all that is seen"
// by "red ends forward" could not be done. On west 1.5° W is seen, and red ends forward take it out; the sums by hand from δ = A + B sin ζ′ + D sin 2ζ′.
test('the work begins where what is seen is taken out by the way advised', () => {
  const work = (coefficients: Partial<typeof none>) => {
    const [{ headings, remove, values }] = correctorAdvice({ coefficients: { ...none, ...coefficients } }) as readonly [ReturnType<typeof correctorAdvice>[number]];
    return [...headings, ...[remove ?? NaN, values['seen']?.value ?? NaN, values['left']?.value ?? NaN].map((value) => Math.round(value * 100) / 100)];
  };
  assert.deepEqual(work({ A: -0.9, B: 0.6 }), [270, 90, -0.6, -1.5, -1.8]);
  assert.deepEqual(work({ A: 0.9, B: 0.6 }), [90, 270, 0.6, 1.5, 1.8]);
  assert.deepEqual(work({ A: -0.4, B: 3 }), [90, 270, 3, 2.6, -0.8]);
  assert.deepEqual(work({ A: 1, C: -1.2 }), [180, 0, 1.2, 2.2, 2]);
  assert.deepEqual(work({ A: -2, D: 1.5 }), [135, 45, -1.5, -3.5, -4]);
});

// From memory.
test('spheres: +D athwartships, −D fore and aft', () => {
  assert.deepEqual(codesFor({ D: 3 }), ['spheres.athwartships']);
  assert.deepEqual(codesFor({ D: -3 }), ['spheres.fore-and-aft']);
});

// From memory: ½ atan(E/D), reversed when fore and aft.
test('spheres slewed for E: clockwise 22.5° abeam when E equals D, the other way fore and aft, 45° for E alone', () => {
  const turn = (D: number, E: number): number | undefined => {
    const value = correctorAdvice({ coefficients: { ...none, D, E } }).at(-1)?.values['clockwise'];
    return value !== undefined && 'value' in value ? value.value : undefined;
  };
  assertClose(turn(3, 3) ?? NaN, 22.5, 1e-9);
  assertClose(turn(3, -3) ?? NaN, -22.5, 1e-9);
  assertClose(turn(-3, 3) ?? NaN, -22.5, 1e-9);
  assertClose(turn(0, 2) ?? NaN, 45, 1e-9);
});

// From memory: in either hemisphere.
test('Flinders bar forward for a negative c, aft for a positive; heeling magnet red up when the high side draws', () => {
  assert.deepEqual(codesFor({}, { c: -0.02 }), ['flinders.forward']);
  assert.deepEqual(codesFor({}, { c: 0.02 }), ['flinders.aft']);
  assert.deepEqual(codesFor({}, { heelDraws: 'high-side' }), ['heeling.red-up']);
  assert.deepEqual(codesFor({}, { heelDraws: 'low-side' }), ['heeling.red-down']);
});

// American Practical Navigator (Pub. 9, 1995), chapter 6; bar and spheres before the heeling magnet from memory.
test('the order: bar, spheres in place, heeling magnet, magnets on the cardinals, spheres on the intercardinals, then A', () => {
  const advice = correctorAdvice({ coefficients: { A: 2, B: 4, C: -3, D: 3, E: 1 }, c: -0.02, heelDraws: 'high-side' });
  assert.deepEqual(
    advice.map(({ order, code }) => `${order} ${code}`),
    [
      '1 flinders.forward',
      '2 spheres.place',
      '3 heeling.red-up',
      '4 magnet.red-forward',
      '5 magnet.red-port',
      '6 spheres.athwartships',
      '7 spheres.slew',
      '8 alignment.check',
    ],
  );
  // On north nothing is seen: C and the constant part, A + E, cancel there.
  assert.deepEqual(advice.map(({ headings }) => headings[0] ?? null), [90, null, 0, 90, 180, 45, 0, null]);
  assert.ok(advice.every(({ source }) => source.length > 0));
});

test('what is too small to correct is left alone', () => {
  assert.deepEqual(codesFor({ A: 0.4, B: 0.4, C: -0.4, D: 0.4, E: 0.4 }), []);
  assert.deepEqual(codesFor({ B: 0.4 }, { worth: 0.2 }), ['magnet.red-forward']);
  assert.throws(() => correctorAdvice({ coefficients: { ...none, A: NaN } }), /RangeError: coefficients\.A/);
});
