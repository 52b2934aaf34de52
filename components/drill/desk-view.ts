import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Exercise } from '../../core/drill/exercise.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { ExerciseState } from './drill-state.js';
import { givensView } from './given-view.js';
import { outcomeView, workingOf } from './outcome-view.js';
import { questionView } from './question-view.js';

/** The hint of a task, or that of its kind. */
export function hintText(host: LubberElement, { task, kind }: Exercise): string {
  const own = `drill.hint.${task}`;
  const text = host.t(own);
  return text === own ? host.t(`drill.hint.${kind}`) : text;
}

export interface Desk {
  readonly exercise: Exercise;
  readonly state: ExerciseState;
  readonly done: boolean;
  readonly message: string;
  readonly onCheck: () => void;
  readonly onHint: () => void;
  readonly onShow: () => void;
  /** The ways on from a closed exercise. */
  readonly onward: TemplateResult;
}

function openButtons(host: LubberElement, { state, onCheck, onHint, onShow }: Desk): TemplateResult {
  const disabled = host.isDisabled;
  return html`<div class="row no-print">
    <button part="button" type="button" class="main" id="check" ?disabled=${disabled} @click=${onCheck}>${host.t('drill.check')}</button>
    ${state.hinted ? nothing : html`<button part="button" type="button" ?disabled=${disabled} @click=${onHint}>${host.t('drill.hint')}</button>`}
    ${host.answer === 'hidden' ? nothing : html`<button part="button" type="button" class="plain" ?disabled=${disabled} @click=${onShow}>${host.t('drill.show')}</button>`}
  </div>`;
}

function questionsView(host: LubberElement, desk: Desk): TemplateResult {
  const { exercise, state, onCheck } = desk;
  const onKey = (event: KeyboardEvent): void => {
    // No form: a sandboxed frame may refuse to send one.
    if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    onCheck();
  };
  return html`<div class="questions" @keydown=${onKey}>
    ${exercise.asked.map((question) => questionView(host, question, state.texts[question.code] ?? '', state.marked[question.code]))}
    ${openButtons(host, desk)}
  </div>`;
}

/** One exercise: what is told on one side, what is answered on the other. */
export function deskView(host: LubberElement, desk: Desk): TemplateResult {
  const { exercise, state, done, message, onward } = desk;
  return html`<div class="desk">
    <div>
      <p class="task" part="task">${host.t(`drill.task.${exercise.task}`)}</p>
      ${givensView(host, exercise.givens)}
    </div>
    <div>
      ${done ? outcomeView(host, exercise, state) : questionsView(host, desk)}
      ${message ? html`<p class="message" part="message" aria-hidden="true">${message}</p>` : nothing}
      ${state.hinted && !done ? html`<p class="message hint" part="hint">${hintText(host, exercise)}</p>` : nothing}
      ${done ? html`<div class="row after no-print">${onward}</div>` : nothing}
    </div>
  </div>
  ${done ? html`<div class="after">${workingOf(host, exercise)}</div>` : nothing}`;
}
