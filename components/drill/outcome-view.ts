import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Question } from '../../core/answer/question.js';
import type { Exercise } from '../../core/drill/exercise.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { sentences } from '../shared/sentences.js';
import { stepsView, workingView } from '../shared/working-view.js';
import { answerText, givenText, isRight, spokenAnswer } from './answer-text.js';
import type { ExerciseState } from './drill-state.js';
import { verdictText } from './question-view.js';

/** What was answered, or should have been: a step left open is no answer to speak of. */
const linesOf = ({ asked }: Exercise, { marked }: Pick<ExerciseState, 'marked'>): Question[] => asked.filter(({ code, part }) => part === 'result' || marked[code]);

/** What is said of a marked exercise; of a closed one, whose right answers are to be seen, these too. */
export function spokenOutcome(host: LubberElement, exercise: Exercise, state: Pick<ExerciseState, 'marked'>, done: boolean): string {
  const lines = linesOf(exercise, state).map((question) => {
    const text = state.marked[question.code] ?? '';
    const key = done && host.answer === 'shown' && !isRight(question, text) ? host.t('drill.key.spoken', { answer: spokenAnswer(host, question) }) : '';
    return `${host.t(`drill.asked.${question.code}`)}: ${sentences(host.t, verdictText(host, question, text), key)}`;
  });
  return lines.join(' ');
}

/** A closed exercise: what was asked, given and right, line by line. */
export function outcomeView(host: LubberElement, exercise: Exercise, state: ExerciseState): TemplateResult {
  const shown = host.answer === 'shown';
  const { marked } = state;
  return html`<dl class="outcome" part="outcome">
    ${linesOf(exercise, state).map((question) => {
      const text = marked[question.code] ?? '';
      const right = isRight(question, text);
      return html`<div class=${right ? 'right' : 'wrong'}>
        <dt>${host.t(`drill.asked.${question.code}`)}</dt>
        <dd>
          <bdi dir="ltr" class="given">${givenText(host, question, text)}</bdi>
          ${shown ? html`<span class="key">${host.t('drill.key')} <bdi dir="ltr">${answerText(host, question)}</bdi></span>` : nothing}
          <p class="verdict ${right ? 'right' : 'wrong'}">${verdictText(host, question, text)}</p>
        </dd>
      </div>`;
    })}
  </dl>`;
}

/** The rule in words, for tasks that have nothing to work out. */
function ruleView(host: LubberElement, task: string): TemplateResult {
  return html`<p class="small soft">${host.t(`drill.rule.${task}`)}</p>`;
}

/** The working of a closed exercise, or the rule behind it. */
export function workingOf(host: LubberElement, { task, steps }: Exercise): TemplateResult | typeof nothing {
  if (host.answer === 'hidden' || host.working === 'none') return nothing;
  return steps.length > 0 ? workingView(host, steps) : html`<div part="working">${ruleView(host, task)}</div>`;
}

/** The same, open, for the answer key. */
export function keyWorking(host: LubberElement, { task, steps }: Exercise, name: string): TemplateResult {
  return steps.length > 0 ? stepsView(host, steps, `${host.t('working')}: ${name}`) : ruleView(host, task);
}
