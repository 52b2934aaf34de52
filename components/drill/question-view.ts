import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Question } from '../../core/answer/question.js';
import { markAnswer } from '../../core/answer/mark.js';
import { choiceView } from '../shared/choice-view.js';
import { readField } from '../shared/field.js';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { sentences } from '../shared/sentences.js';
import { answerFields } from './answer-fields.js';

/** The name of a question's field in the widget. */
export const fieldName = (code: string): string => `answer-${code}`;

/** What a marked answer is told, in one sentence or two. */
export function verdictText(host: LubberElement, question: Question, text: string): string {
  const mark = markAnswer(question, text);
  if (mark.outcome === 'right') return host.t('drill.right');
  if (mark.outcome !== 'wrong') return '';
  return sentences(host.t, host.t('drill.wrong'), host.t(mark.mistake === null ? 'drill.mistake.unknown' : `drill.mistake.${mark.mistake}`));
}

function verdictView(host: LubberElement, question: Question, text: string, marked: string | undefined): TemplateResult | typeof nothing {
  // Once the learner writes something else the old verdict says nothing of it.
  if (marked === undefined || marked !== text) return nothing;
  const verdict = verdictText(host, question, text);
  if (verdict === '') return nothing;
  const right = markAnswer(question, text).outcome === 'right';
  return html`<p class="verdict ${right ? 'right' : 'wrong'}" part="verdict">${verdict}</p>`;
}

function labelOf(host: LubberElement, { code, part }: Question): string {
  const label = host.t(`drill.asked.${code}`);
  return part === 'step' ? host.t('drill.step', { label }) : label;
}

/** The field or choice of one question, and the verdict on what was marked. */
export function questionView(host: LubberElement, question: Question, text: string, marked: string | undefined): TemplateResult {
  const name = fieldName(question.code);
  const label = labelOf(host, question);
  const verdict = verdictView(host, question, text, marked);
  if (question.is === 'choice') {
    const options = question.options.map((value) => ({ value, label: host.t(`drill.option.${value}`) }));
    return html`<div class="question">${choiceView(host, name, label, text, options)}${verdict}</div>`;
  }
  const field = answerFields[question.form];
  return html`<div class="question ${question.part}">
    ${fieldView(host, name, field, readField(field, text), { label, placeholder: host.t(`drill.form.${question.form}`) })}${verdict}
  </div>`;
}
