import { expect } from '@open-wc/testing';
import { packStates, unpackStates } from '../../../components/lms/pack-state.js';
import { clockSpan, hundredthInstant, isoDuration } from '../../../components/lms/lms-time.js';
import { answerName, givenNumber, newAnswers, plainNumber } from '../../../components/lms/given-number.js';
import type { DrillState, ExerciseState } from '../../../components/drill/drill-state.js';
import type { ScoredAnswer } from '../../../components/shared/score-event.js';

const each = (text: string): ExerciseState => ({ texts: { variation: text }, marked: { variation: text }, tries: 2, score: 0.5, hinted: true, shown: false });
const untouched: ExerciseState = { texts: {}, marked: {}, tries: 0, score: 0, hinted: false, shown: false };
const state = (exercises: ExerciseState[]): DrillState => ({ seed: '4711', kind: 'amplitude', level: 2, count: exercises.length, at: 1, seconds: 61, exercises });

describe('the state that a platform keeps', () => {
  it('comes back as it was', () => {
    const states = [state([each('12.5E'), untouched]), state([{ ...each('3W'), texts: { variation: '4W' }, shown: true }])];
    expect(unpackStates(packStates(states, 4096) ?? '')).to.deep.equal(states);
  });

  // SCORM 1.2 RTE 3.4.4: cmi.suspend_data is a CMIString4096; 2004 RTE 4.2.21: 64000.
  it('fits 4096 characters with a hundred exercises answered, by giving up the texts', () => {
    const many = state(Array.from({ length: 100 }, () => each('012.5E and more')));
    const text = packStates([many], 4096) ?? '';
    expect(text.length).to.be.within(1, 4096);
    const [back] = unpackStates(text);
    expect(back?.exercises.map(({ score, tries }) => [score, tries])).to.deep.equal(many.exercises.map(({ score, tries }) => [score, tries]));
    expect((packStates([many], 64000) ?? '').length).to.be.greaterThan(4096);
  });

  it('is null where even that is too long', () => expect(packStates([state([each('1E')])], 20)).to.equal(null));

  for (const text of ['', 'null', '{}', '[]', '[2,["a"]]', '[1,null,7,[1,2]]', 'not of ours', '[1']) {
    it(`takes nothing from ${JSON.stringify(text)}`, () => expect(unpackStates(text)).to.deep.equal([]));
  }
});

describe('values as platforms take them', () => {
  // SCORM 1.2 RTE: CMITimespan HHHH:MM:SS; ISO 8601 duration; SCORM 2004 RTE 4.1.1.7: time(second,10,0).
  it('61 s is 0000:01:01 and PT61S', () => expect([clockSpan(61), isoDuration(61)]).to.deep.equal(['0000:01:01', 'PT61S']));
  it('100 h is 0100:00:00', () => expect(clockSpan(360_000)).to.equal('0100:00:00'));
  it('a clock put back is no time at all', () => expect([clockSpan(-5), isoDuration(-5)]).to.deep.equal(['0000:00:00', 'PT0S']));
  it('an instant has two figures of a second and a zone', () => expect(hundredthInstant(new Date(Date.UTC(2026, 10, 25, 10)))).to.equal('2026-11-25T10:00:00.00Z'));
  it('a number has no exponent and no noise', () => expect([1e-7, 0.1 + 0.2, 200 / 3, -0].map((value) => plainNumber(value))).to.deep.equal(['0', '0.3', '66.6667', '0']));

  const answer = (given: string, id = 'a-1'): ScoredAnswer => ({ id, asked: 'variation', given, correct: true, mistake: null, expected: 3, tolerance: 0.5 });
  for (const [given, number] of [['3.0E', 3], ['3W', -3], ['-2.5', -2.5], ['+2.5', 2.5], ['045.0', 45], ['', null]] as const) {
    it(`${JSON.stringify(given)} is ${String(number)}`, () => expect(givenNumber(answer(given))).to.equal(number));
  }
  it('a name has no blank and nothing but ASCII', () => expect(answerName({ ...answer(''), id: '2.größe 1', asked: 'true/course' })).to.equal('2.gr--e-1.true-course'));
  it('an answer given again otherwise is new, the same is not', () => {
    expect(newAnswers([answer('3E'), answer('1E', 'b')], [answer('3E'), answer('2E', 'b'), answer('', 'c')]).map(({ id }) => id)).to.deep.equal(['b', 'c']);
  });
});
