import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Question } from '../../core/answer/question.js';
import type { Exercise } from '../../core/drill/exercise.js';
import { formatPlain } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { answerText } from './answer-text.js';
import { givensView } from './given-view.js';
import { keyWorking } from './outcome-view.js';

interface Sheet {
  readonly exercises: readonly Exercise[];
  readonly seed: string;
  readonly level: number;
}

function head(host: LubberElement, title: string, { seed, level }: Sheet): TemplateResult {
  return html`<header class="sheet-head">
    <h2 part="title" id="title" tabindex="-1">${host.t(title)}</h2>
    <p class="small soft">${host.t('drill.sheet.of', { seed, level })}</p>
  </header>`;
}

const tolerance = (host: LubberElement, degrees: number): string => host.t('drill.tolerance', { degrees: formatPlain(degrees) });

/** What is asked; of a choice also how it is answered with a pencil. */
function labelOf(host: LubberElement, { code, is }: Question): string {
  const label = host.t(`drill.asked.${code}`);
  return is === 'choice' ? host.t('drill.sheet.ring', { label }) : label;
}

/** The exercises on paper, with lines to write on. */
export function sheetView(host: LubberElement, sheet: Sheet): TemplateResult {
  return html`<section class="sheet" part="sheet">
    ${head(host, 'drill.sheet', sheet)}
    <p class="blanks"><span>${host.t('drill.sheet.name')}</span><span>${host.t('drill.sheet.date')}</span></p>
    ${sheet.exercises.map(
      (exercise, index) => html`<article>
        <h3>${index + 1}. ${host.t(`drill.kind.${exercise.kind}`)}</h3>
        <p>${host.t(`drill.task.${exercise.task}`)}</p>
        ${givensView(host, exercise.givens, host.width.narrow ? 2 : 4)}
        <dl class="blank">
          ${exercise.asked.map(
            (question) => html`<div class=${question.part}>
              <dt>${labelOf(host, question)}</dt>
              <dd class=${question.is}>${question.is === 'choice' ? question.options.map((option) => html`<span class="option">${host.t(`drill.option.${option}`)}</span>`) : nothing}</dd>
            </div>`,
          )}
        </dl>
      </article>`,
    )}
  </section>`;
}

/** The answers and the working of the same sheet. */
export function keyView(host: LubberElement, sheet: Sheet): TemplateResult {
  return html`<section class="sheet key" part="key">
    ${head(host, 'drill.sheet.key', sheet)}
    ${sheet.exercises.map(
      (exercise, index) => html`<article>
        <h3>${index + 1}. ${host.t(`drill.kind.${exercise.kind}`)}</h3>
        <dl class="answers">
          ${exercise.asked.map(
            (question) => html`<div class=${question.part}>
              <dt>${host.t(`drill.asked.${question.code}`)}</dt>
              <dd>
                <bdi dir="ltr">${answerText(host, question)}</bdi>
                ${question.is === 'number' && question.part === 'result' ? html`<small>${tolerance(host, question.tolerance)}</small>` : nothing}
              </dd>
            </div>`,
          )}
        </dl>
        ${keyWorking(host, exercise, `${index + 1}. ${host.t(`drill.kind.${exercise.kind}`)}`)}
      </article>`,
    )}
  </section>`;
}
