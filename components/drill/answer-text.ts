import { formatNumber as formatWithPoint } from '../../core/angle/format-angle.js';
import type { AnswerForm, Question } from '../../core/answer/question.js';
import { markAnswer, readAnswer } from '../../core/answer/mark.js';
import type { Translate } from '../shared/catalogue.js';
import { formatBearing, formatError, formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { plusOf, signedText } from '../shared/signed-text.js';
import { spokenBearing, spokenError } from '../shared/spoken.js';

/** A coefficient as it is typed: `+1.5`. */
export function typedSigned(degrees: number): string {
  return `${plusOf(degrees, 1)}${formatWithPoint(degrees, 1)}`;
}

const writers: Readonly<Record<AnswerForm, (value: number) => string>> = {
  bearing: formatBearing,
  error: formatError,
  signed: signedText,
};

/** The right answer to a question as it is written. */
export function answerText(host: LubberElement, question: Question): string {
  return question.is === 'number' ? writers[question.form](question.answer) : host.t(`drill.option.${question.answer}`);
}

const speakers: Readonly<Record<AnswerForm, (value: number, t: Translate) => string>> = {
  bearing: spokenBearing,
  error: spokenError,
  signed: (value, t) => t('spoken.degrees', { number: `${plusOf(value, 1)}${formatNumber(value, 1)}` }),
};

/** The right answer to a question as it is said. */
export function spokenAnswer(host: LubberElement, question: Question): string {
  return question.is === 'number' ? speakers[question.form](question.answer, host.t) : answerText(host, question);
}

/** What the learner gave, as it was understood; as typed where it was not. */
export function givenText(host: LubberElement, question: Question, text: string): string {
  if (text.trim() === '') return host.t('drill.nothing');
  if (question.is === 'choice') return host.t(`drill.option.${text}`);
  const reading = readAnswer(question.form, text);
  return reading.ok ? writers[question.form](reading.value) : text;
}

/** Whether a text is right. */
export function isRight(question: Question, text: string): boolean {
  return markAnswer(question, text).outcome === 'right';
}
