import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { NumberQuestion, Question } from '../../../core/answer/question.js';
import { markAnswer } from '../../../core/answer/mark.js';
import type { Mark } from '../../../core/answer/mark.js';
import { choiceQuestion, numberQuestion } from '../../../core/answer/make-question.js';
import { courseMistakes } from '../../../core/answer/course-mistakes.js';

const bearing = (answer: number, mistakes: NumberQuestion['distractors'] = []): NumberQuestion =>
  numberQuestion({ code: 'trueBearing', part: 'result', form: 'bearing', tolerance: 1, answer, mistakes });
const error = (answer: number, mistakes: NumberQuestion['distractors'] = []): NumberQuestion =>
  numberQuestion({ code: 'deviation', part: 'result', form: 'error', tolerance: 1, answer, mistakes: [{ code: 'sign', value: -answer }, ...mistakes] });

function outcome(question: Question, text: string): string {
  const mark: Mark = markAnswer(question, text);
  if (mark.outcome === 'unreadable') return mark.refusal;
  return mark.outcome === 'wrong' ? (mark.mistake ?? 'wrong') : mark.outcome;
}

describe('the mark of an answer', () => {
  const cases: readonly (readonly [string, Question, string])[] = [
    // At the seam the tolerance reaches over north.
    ['359.9', bearing(0), 'right'],
    ['000', bearing(359.5), 'right'],
    ['360', bearing(0), 'right'],
    ['358.9', bearing(0), 'close'],
    ['180', bearing(0), 'reciprocal'],
    // The tolerance itself is still right, either way, whatever the last binary digit says.
    ['4.2E', error(3.2), 'right'],
    ['2.2E', error(3.2), 'right'],
    ['4.3E', error(3.2), 'close'],
    // One way only is read; nothing is guessed.
    ['3,2 E', error(3.2), 'right'],
    ['W 3°12′', error(-3.2), 'right'],
    ['-3.2', error(-3.2), 'right'],
    ['−3.2', error(-3.2), 'right'],
    ['3.2', error(3.2), 'letter-missing'],
    ['0', error(0.4), 'right'],
    ['3.2 O', error(3.2), 'letter-o'],
    ['', error(3.2), 'empty'],
    ['   ', error(3.2), 'empty'],
    ['three east', error(3.2), 'not-understood'],
    ['3.2.1E', error(3.2), 'two-decimal-marks'],
    ['400', bearing(40), 'out-of-range'],
    // The size right and the name wrong.
    ['3.2W', error(3.2), 'sign'],
    ['3.4W', error(3.2), 'sign'],
    // Small enough for both names to be within the tolerance of the assessor.
    ['0.4W', error(0.4), 'right'],
    ['20E', error(3.2), 'wrong'],
    // The nearest of two mistakes explains the number.
    ['12.2E', error(3.2, [{ code: 'error-for-deviation', value: 12 }, { code: 'variation-sign', value: 12.8 }]), 'error-for-deviation'],
    ['12.7E', error(3.2, [{ code: 'error-for-deviation', value: 12 }, { code: 'variation-sign', value: 12.8 }]), 'variation-sign'],
    // A mistake explains what lies within half the tolerance of it, that itself counted in; twice the tolerance is close.
    ['12.5E', error(3.2, [{ code: 'error-for-deviation', value: 12 }]), 'error-for-deviation'],
    ['12.6E', error(3.2, [{ code: 'error-for-deviation', value: 12 }]), 'wrong'],
    ['4.1E', { ...error(3.2), tolerance: 0.5 }, 'close'],
    ['4.3E', { ...error(3.2), tolerance: 0.5 }, 'wrong'],
    // At half a turn east and west are one.
    ['179.9W', error(180), 'right'],
  ];
  for (const [text, question, expected] of cases) {
    it(`"${text}" where ${question.answer} is right: ${expected}`, () => assert.equal(outcome(question, text), expected));
  }

  const colour = choiceQuestion('colour', ['blue', 'red'], 'blue', [{ code: 'hemisphere', value: 'red' }]);
  it('tells the one option that is right, and why the other is not', () => {
    assert.deepEqual(['blue', 'red', '', 'green'].map((text) => outcome(colour, text)), ['right', 'hemisphere', 'empty', 'unknown-name']);
  });
});

describe('a question', () => {
  it('leaves out a mistake that would be marked right', () => {
    assert.deepEqual(error(0.4).distractors, []);
    assert.deepEqual(error(3, [{ code: 'near', value: 3.9 }]).distractors.map(({ code }) => code), ['sign']);
    assert.deepEqual(error(3, [{ code: 'hardly', value: 4.04 }]).distractors.map(({ code }) => code), ['sign']);
    assert.deepEqual(error(3, [{ code: 'clearly', value: 4.06 }]).distractors.map(({ code }) => code), ['sign', 'clearly']);
  });

  it('keeps the likelier of two mistakes that lead to one number', () => {
    const question = error(3, [{ code: 'first', value: 10 }, { code: 'second', value: 10.05 }]);
    assert.deepEqual(question.distractors.map(({ code }) => code), ['sign', 'first']);
  });

  it('has its numbers in the range of the trade', () => {
    assert.equal(bearing(-10).answer, 350);
    assert.equal(bearing(359.999).answer, 0);
    assert.equal(error(-190).answer, 170);
  });
});

describe('a choice', () => {
  it('names no mistake for the answer itself, and one for each other word', () => {
    const mistakes = [{ code: 'none', value: 'blue' }, { code: 'hemisphere', value: 'red' }, { code: 'late', value: 'red' }];
    assert.deepEqual(choiceQuestion('colour', ['blue', 'red'], 'blue', mistakes).distractors, [{ code: 'hemisphere', value: 'red' }]);
  });
});

// By hand: variation 10° E and deviation 3° E; the true course is that by compass and both, the compass course the true one less both.
describe('the mistakes of a conversion', () => {
  const values = (from: number, way: 1 | -1) => Object.fromEntries(courseMistakes(from, way, 10, 3).map(({ code, value }) => [code, value]));
  it('towards true from 100', () => {
    assert.deepEqual(values(100, 1), { 'both-signs': 87, 'variation-sign': 93, 'deviation-sign': 107, 'variation-omitted': 103, 'deviation-omitted': 110 });
  });
  it('from true 100', () => {
    assert.deepEqual(values(100, -1), { 'both-signs': 113, 'variation-sign': 107, 'deviation-sign': 93, 'variation-omitted': 97, 'deviation-omitted': 90 });
  });
});
