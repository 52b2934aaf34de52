import { parseBearing } from '../angle/parse-bearing.js';
import { parseError } from '../angle/parse-position.js';
import type { Reading, Refusal } from '../text/reading.js';
import type { AnswerForm, ChoiceQuestion, NumberQuestion, Question } from './question.js';
import { apart } from './make-question.js';

/**
 * What became of one answer. `unreadable` is no answer yet: the learner is asked to write it
 * so that it can mean one thing only; `letter-missing` is an east or west left out.
 */
export type Mark =
  | { readonly outcome: 'empty' }
  | { readonly outcome: 'unreadable'; readonly refusal: Refusal }
  /** Degrees from the answer kept; 0 for a choice. */
  | { readonly outcome: 'right'; readonly off: number }
  | {
      readonly outcome: 'wrong';
      /** Degrees from the right answer; null for a choice. */
      readonly off: number | null;
      /** The mistake that explains what was answered; null where none is known. */
      readonly mistake: string | null;
    };

/** Room for the last digit of a sum of decimals. */
const ROUNDING = 1e-9;

/** Reads an answer as it is typed: point or comma, letter or sign. Degrees, a bearing in [0, 360), others in (-180, 180]. */
export function readAnswer(form: AnswerForm, text: string): Reading<number> {
  return form === 'bearing' ? parseBearing(text) : parseError(text);
}

/** The mistake nearest to an answer, where one is near enough to be told from a slip of arithmetic. */
function mistakeOf({ form, tolerance, answer, distractors }: NumberQuestion, value: number): string | null {
  let found: string | null = null;
  let nearest = tolerance / 2 + ROUNDING;
  for (const distractor of distractors) {
    const miss = apart(form, value, distractor.value);
    if (miss < nearest) [found, nearest] = [distractor.code, miss];
  }
  if (found !== null) return found;
  if (form === 'bearing' && apart(form, value, answer + 180) <= tolerance) return 'reciprocal';
  return apart(form, value, answer) <= 2 * tolerance ? 'close' : null;
}

function markNumber(question: NumberQuestion, text: string): Mark {
  const reading = readAnswer(question.form, text);
  if (!reading.ok) return reading.refusal === 'empty' ? { outcome: 'empty' } : { outcome: 'unreadable', refusal: reading.refusal };
  const off = apart(question.form, reading.value, question.answer);
  if (off <= question.tolerance + ROUNDING) return { outcome: 'right', off };
  return { outcome: 'wrong', off, mistake: mistakeOf(question, reading.value) };
}

function markChoice({ options, answer, distractors }: ChoiceQuestion, text: string): Mark {
  if (text.trim() === '') return { outcome: 'empty' };
  if (!options.includes(text)) return { outcome: 'unreadable', refusal: 'unknown-name' };
  if (text === answer) return { outcome: 'right', off: 0 };
  return { outcome: 'wrong', off: null, mistake: distractors.find(({ value }) => value === text)?.code ?? null };
}

/**
 * Marks the answer to one question as it was typed, or as the code of the option chosen.
 * Right is whatever lies within the tolerance, round the seam: 359.9 is right where 0 is.
 */
export function markAnswer(question: Question, text: string): Mark {
  return question.is === 'number' ? markNumber(question, text) : markChoice(question, text);
}
