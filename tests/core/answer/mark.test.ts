import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { NumberQuestion, Question } from '../../../core/answer/question.js';
import { markAnswer } from '../../../core/answer/mark.js';
import type { Mark } from '../../../core/answer/mark.js';
import { choiceQuestion, numberQuestion } from '../../../core/answer/make-question.js';
import { courseMistakes } from '../../../core/answer/course-mistakes.js';
import { assessorsTolerances } from '../../../core/answer/tolerances.js';

const bearing = (answer: number, mistakes: NumberQuestion['distractors'] = []): NumberQuestion =>
  numberQuestion({ code: 'trueBearing', part: 'result', form: 'bearing', tolerance: 1, answer, mistakes });
const error = (answer: number, mistakes: NumberQuestion['distractors'] = []): NumberQuestion =>
  numberQuestion({ code: 'deviation', part: 'result', form: 'error', tolerance: 1, answer, mistakes: [{ code: 'sign', value: -answer }, ...mistakes] });

const coefficient = (answer: number, mistakes: NumberQuestion['distractors'] = []): NumberQuestion =>
  numberQuestion({ code: 'B', part: 'result', form: 'signed', tolerance: 0.5, answer, mistakes });

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
    ['179W', error(180), 'right'],
    // The other end of the line, within the tolerance, on either side of north; of an error there is no other end.
    ['184', bearing(5), 'reciprocal'],
    ['186', bearing(5), 'reciprocal'],
    ['186.1', bearing(5), 'wrong'],
    ['183.9', bearing(5), 'wrong'],
    ['003', bearing(182), 'reciprocal'],
    ['359', bearing(178), 'reciprocal'],
    ['176.8W', error(3.2), 'wrong'],
    // A coefficient goes on a line and not round a circle.
    ['+3.4', coefficient(3), 'right'],
    ['-3', coefficient(3, [{ code: 'sign', value: -3 }]), 'sign'],
    ['-3', coefficient(3), 'wrong'],
  ];
  for (const [text, question, expected] of cases) {
    it(`"${text}" where ${question.answer} is right: ${expected}`, () => assert.equal(outcome(question, text), expected));
  }

  const colour = choiceQuestion('colour', ['blue', 'red'], 'blue', [{ code: 'hemisphere', value: 'red' }]);
  it('tells the one option that is right, and why the other is not', () => {
    assert.deepEqual(['blue', 'red', '', 'green'].map((text) => outcome(colour, text)), ['right', 'hemisphere', 'empty', 'unknown-name']);
  });

  it('is none where nothing is written, and 0 off where the word is right', () => {
    for (const question of [colour, error(3.2), bearing(40), coefficient(-3)]) for (const text of ['', '  ']) assert.deepEqual(markAnswer(question, text), { outcome: 'empty' });
    assert.deepEqual(markAnswer(colour, 'blue'), { outcome: 'right', off: 0 });
    assert.deepEqual(markAnswer(colour, 'red'), { outcome: 'wrong', off: null, mistake: 'hemisphere' });
    assert.deepEqual(markAnswer(bearing(40), '12.0.1'), { outcome: 'unreadable', refusal: 'two-decimal-marks' });
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
    assert.equal(error(180).answer, 180);
    assert.equal(error(-179.999).answer, 180);
    assert.equal(bearing(359.994).answer, 359.99);
    assert.equal(coefficient(-12.344).answer, -12.34);
    assert.equal(coefficient(200).answer, 200);
  });

  // 3.246 is 3.2 to the tenth: as 3.25 it would be shown as 3.3. By hand.
  it('is not shown a tenth higher for being rounded to the hundredth first', () => {
    for (const [exact, kept] of [[3.246, 3.24], [-3.246, -3.24], [3.254, 3.25], [-3.254, -3.25], [3.204, 3.2], [0.046, 0.04], [-0.046, -0.04]] as const) {
      assert.equal(error(exact).answer, kept);
      assert.equal(coefficient(exact).answer, kept);
      if (exact > 0) assert.equal(bearing(exact).answer, kept);
    }
  });

  it('of a coefficient no ship has names no mistake; of a bearing or an error so large it does', () => {
    const mistakes = [{ code: 'absurd', value: 61 }, { code: 'west', value: -61 }, { code: 'large', value: 59 }, { code: 'small', value: -8 }];
    const named = ({ distractors }: NumberQuestion) => distractors.map(({ code }) => code);
    assert.deepEqual(named(coefficient(3, mistakes)), ['large', 'small']);
    assert.deepEqual(named(bearing(3, mistakes)), ['absurd', 'west', 'large', 'small']);
    assert.deepEqual(named(error(3, mistakes)), ['sign', 'absurd', 'west', 'large', 'small']);
  });

  it('is as exact as the assessor asks: US NVIC 12-14, tasks 1.6 and 1.7', () => {
    const { error: ofError, deviation, azimuth, variation } = assessorsTolerances;
    assert.deepEqual([ofError, deviation, azimuth, variation], [1, 1, 1, 0.5]);
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
