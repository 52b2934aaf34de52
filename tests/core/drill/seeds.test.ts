import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { roundTo } from '../../../core/angle/format-angle.js';
import { exerciseKinds } from '../../../core/drill/exercise.js';
import type { ExerciseKind, Level } from '../../../core/drill/exercise.js';
import { exerciseSet, mixedParts } from '../../../core/drill/exercise-set.js';
import { exerciseFrom } from '../../../core/drill/generate.js';
import { exerciseScore, setScore } from '../../../core/drill/score.js';
import { digest, digestOf } from './digest.js';

describe('a seed', () => {
  it('goes on giving the exercises it gave', () => assert.deepEqual(digestOf(20), digest));

  it('gives plain data, which survives being written and read', () => {
    const exercise = exerciseFrom({ kind: 'azimuth', level: 3, seed: 'plain' });
    assert.deepEqual(JSON.parse(JSON.stringify(exercise)), exercise);
  });

  it('gives another exercise at another level and of another seed', () => {
    const ids = [exerciseFrom({ kind: 'card', level: 1, seed: 'a' }), exerciseFrom({ kind: 'card', level: 2, seed: 'a' }), exerciseFrom({ kind: 'card', level: 1, seed: 'b' })];
    assert.equal(new Set(ids.map(({ givens }) => JSON.stringify(givens))).size, 3);
  });
});

describe('an answer in the key', () => {
  // A course of 112.9496° stood in the key as 113.0°, by way of 112.95°, under a working that ended in 112.9°.
  it('is to the tenth what its working ends in', () => {
    let compared = 0;
    for (const level of [1, 2, 3] as const) {
      for (const { id, asked, steps } of exerciseSet({ seed: '4711', parts: mixedParts(exerciseKinds, level, 400) })) {
        const [question, step] = [asked[asked.length - 1], steps[steps.length - 1]];
        if (question?.is !== 'number' || !step || Math.abs(question.answer - step.result.value) > 0.02) continue;
        compared += 1;
        assert.equal(roundTo(question.answer, 1), roundTo(step.result.value, 1), id);
      }
    }
    assert.ok(compared > 500, `${compared} were compared`);
  });
});

describe('an order for an exercise', () => {
  const good = { kind: 'card', level: 1, seed: 'a' } as const;
  const bad: readonly (readonly [string, object, RegExp])[] = [
    ['another kind', { kind: 'sextant' }, /^RangeError: kind/],
    ['another level', { level: 4 }, /^RangeError: level/],
    ['no seed', { seed: undefined }, /^RangeError: seed/],
    ['a tolerance below 0', { tolerances: { deviation: -1 } }, /^RangeError: tolerances.deviation/],
    ['a tolerance that is no number', { tolerances: { deviation: NaN } }, /^RangeError: tolerances.deviation/],
    ['tolerances within which nothing is wrong', { tolerances: { arithmetic: 400 } }, /^RangeError: tolerances/],
  ];
  for (const [what, part, message] of bad) {
    it(`refuses ${what}`, () => assert.throws(() => exerciseFrom({ ...good, ...part } as Parameters<typeof exerciseFrom>[0]), message));
  }

  it('takes the tolerances of another assessor', () => {
    const [question] = exerciseFrom({ ...good, tolerances: { arithmetic: 0.25 } }).asked;
    assert.equal(question?.is === 'number' && question.tolerance, 0.25);
  });
});

describe('a set', () => {
  const kinds: readonly ExerciseKind[] = ['card', 'conversion'];
  const make = (count: number, level: Level = 1) => exerciseSet({ seed: '4711', parts: mixedParts(kinds, level, count) });

  it('goes round its kinds, none twice the same', () => {
    const set = make(6);
    assert.deepEqual(set.map(({ kind }) => kind), ['card', 'conversion', 'card', 'conversion', 'card', 'conversion']);
    assert.equal(new Set(set.map(({ id }) => id)).size, 6);
  });

  it('keeps its first exercises when it is made longer', () => assert.deepEqual(make(8).slice(0, 5), make(5)));

  it('is empty without kinds, and refuses a count that is none', () => {
    assert.deepEqual(mixedParts([], 1, 5), []);
    for (const count of [-1, NaN, 501]) assert.throws(() => mixedParts(kinds, 1, count), /^RangeError: count/, String(count));
    assert.throws(() => exerciseSet({ seed: 'a', parts: [{ kind: 'card', level: 1, count: -1 }] }), /parts\[0\].count/);
  });

  it('scores the mean of its exercises, an open one as nothing', () => {
    assert.equal(setScore([1, 0, 0.5, 0.5]), 0.5);
    assert.equal(setScore([]), 0);
    assert.throws(() => setScore([2]), /scores/);
  });

  it('scores the share of the results, whatever the steps', () => {
    const exercise = exerciseFrom({ kind: 'coefficients', level: 2, seed: 'share' });
    const [first] = exercise.asked;
    const text = first?.is === 'number' ? `${first.answer < 0 ? '' : '+'}${first.answer}` : '';
    assert.equal(exerciseScore(exercise, { [first?.code ?? '']: text }), 1 / 5);
    assert.equal(exerciseScore(exercise, {}), 0);
  });
});
