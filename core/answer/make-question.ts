import { roundTo } from '../angle/format-angle.js';
import { wrap180, wrap360 } from '../angle/wrap.js';
import type { AnswerForm, ChoiceQuestion, Distractor, NumberQuestion, Part } from './question.js';

/** A wrong number must be clearly wrong, degrees beyond the tolerance. */
const CLEAR = 0.05;
/** Two mistakes that lead to nearly one number are told as the likelier of them, the one listed first. */
const APART = 0.1;

/** How far apart two answers are, degrees, never negative; round the seam where they are directions. */
export function apart(form: AnswerForm, a: number, b: number): number {
  return Math.abs(form === 'signed' ? a - b : wrap180(a - b));
}

/** No ship's coefficient: who arrives there needs no name for the mistake, degrees. */
const ABSURD = 60;

/** To the hundredth, alike in every engine; never up to a five from which the tenth shown would go up once more. */
function toHundredth(value: number): number {
  const rounded = roundTo(value, 2);
  return roundTo(rounded, 1) === roundTo(value, 1) ? rounded : roundTo(rounded - 0.01 * Math.sign(rounded), 2);
}

/** A number in the range of its form, to the hundredth of a degree. */
function written(form: AnswerForm, value: number): number {
  if (form === 'signed') return toHundredth(value);
  return form === 'bearing' ? wrap360(toHundredth(wrap360(value))) : wrap180(toHundredth(wrap180(value)));
}

interface NumberParts {
  readonly code: string;
  readonly part: Part;
  readonly form: AnswerForm;
  readonly tolerance: number;
  readonly answer: number;
  /** The likeliest mistakes first; those that lead near the answer or each other are left out here. */
  readonly mistakes: readonly Distractor<number>[];
}

/** A question for a number, with the mistakes that tell themselves by theirs. */
export function numberQuestion({ mistakes, ...parts }: NumberParts): NumberQuestion {
  const { form, tolerance } = parts;
  const answer = written(form, parts.answer);
  const distractors: Distractor<number>[] = [];
  for (const mistake of mistakes) {
    const value = written(form, mistake.value);
    const clear = apart(form, value, answer) > tolerance + CLEAR;
    if (form === 'signed' && Math.abs(value) > ABSURD) continue;
    if (clear && distractors.every((other) => apart(form, value, other.value) > APART)) {
      distractors.push({ code: mistake.code, value });
    }
  }
  return { is: 'number', ...parts, answer, distractors };
}

/** A question for one of several words; a mistake that is the answer, or told already, is left out. */
export function choiceQuestion(
  code: string,
  options: readonly string[],
  answer: string,
  mistakes: readonly Distractor<string>[],
): ChoiceQuestion {
  const distractors = mistakes.filter(
    ({ value }, index) => value !== answer && mistakes.findIndex((other) => other.value === value) === index,
  );
  return { is: 'choice', code, part: 'result', options, answer, distractors };
}
