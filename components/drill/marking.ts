import type { Exercise } from '../../core/drill/exercise.js';
import type { Question } from '../../core/answer/question.js';
import { markAnswer } from '../../core/answer/mark.js';
import { exerciseScore } from '../../core/drill/score.js';
import type { ExerciseState } from './drill-state.js';

/** What pressing the button comes to: something to put right first, or a marked attempt. */
export type Marking =
  | { readonly outcome: 'unreadable' | 'open'; readonly questions: readonly Question[] }
  | { readonly outcome: 'marked'; readonly change: Pick<ExerciseState, 'marked' | 'tries' | 'score'> };

/** Marks an exercise as it stands. What cannot be read, or is not answered yet, costs no attempt. */
export function markExercise(exercise: Exercise, { texts, tries }: ExerciseState): Marking {
  const outcomes = exercise.asked.map((question) => ({ question, outcome: markAnswer(question, texts[question.code] ?? '').outcome }));
  const unreadable = outcomes.filter(({ outcome }) => outcome === 'unreadable');
  if (unreadable.length > 0) return { outcome: 'unreadable', questions: unreadable.map(({ question }) => question) };
  const open = outcomes.filter(({ question, outcome }) => outcome === 'empty' && question.part === 'result');
  if (open.length > 0) return { outcome: 'open', questions: open.map(({ question }) => question) };
  return { outcome: 'marked', change: { marked: texts, tries: tries + 1, score: exerciseScore(exercise, texts) } };
}

/** The next exercise still open after one, round the set; null where none is. */
export function nextOpen(done: readonly boolean[], after: number): number | null {
  for (let step = 1; step <= done.length; step++) {
    const index = (after + step) % done.length;
    if (done[index] === false) return index;
  }
  return null;
}
