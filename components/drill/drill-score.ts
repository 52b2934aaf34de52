import type { Exercise } from '../../core/drill/exercise.js';
import { markAnswer } from '../../core/answer/mark.js';
import { setScore } from '../../core/drill/score.js';
import type { ScoreDetail, ScoredAnswer } from '../shared/score-event.js';
import { isDone } from './drill-state.js';
import type { DrillState, ExerciseState } from './drill-state.js';

/** The results of one exercise as they were marked; none while nothing was. */
function answersOf(exercise: Exercise, { marked, tries, shown }: ExerciseState): ScoredAnswer[] {
  if (tries === 0 && !shown) return [];
  return exercise.asked
    .filter(({ part }) => part === 'result')
    .map((question) => {
      const given = marked[question.code] ?? '';
      const mark = markAnswer(question, given);
      return {
        id: exercise.id,
        asked: question.code,
        given,
        correct: mark.outcome === 'right',
        mistake: mark.outcome === 'wrong' ? mark.mistake : null,
        expected: question.answer,
        tolerance: question.is === 'number' ? question.tolerance : null,
      };
    });
}

/** How a set stands, for the event, the `result` and the summary. */
export function drillScore(exercises: readonly Exercise[], state: DrillState, passMark: number, attempts: number): ScoreDetail {
  const scaled = setScore(state.exercises.map(({ score }) => score));
  return {
    scaled,
    passed: scaled >= passMark,
    complete: state.exercises.every((each) => isDone(each, attempts)),
    seconds: Math.round(state.seconds),
    answers: exercises.flatMap((exercise, index) => {
      const each = state.exercises[index];
      return each ? answersOf(exercise, each) : [];
    }),
  };
}
