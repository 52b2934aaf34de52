import { checkRange } from '../angle/check-number.js';
import type { Exercise } from './exercise.js';
import { markAnswer } from '../answer/mark.js';

/** The texts of one exercise's answers, by the code of the question. */
export type AnswerTexts = Readonly<Record<string, string>>;

/** The share of an exercise's results that are right, 0 to 1; its steps help, but do not count. What is not readable is not right. */
export function exerciseScore(exercise: Exercise, texts: AnswerTexts): number {
  const results = exercise.asked.filter(({ part }) => part === 'result');
  const right = results.filter((question) => markAnswer(question, texts[question.code] ?? '').outcome === 'right');
  return results.length === 0 ? 0 : right.length / results.length;
}

/**
 * The mean of the scores of a whole set, 0 to 1; an exercise not answered counts 0, and an
 * empty set scores 0. Throws `RangeError` for a score outside 0 to 1.
 */
export function setScore(scores: readonly number[]): number {
  for (const score of scores) checkRange('scores', score, 0, 1);
  return scores.length === 0 ? 0 : scores.reduce((total, score) => total + score, 0) / scores.length;
}
