import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { refused, understood } from '../../core/text/reading.js';
import type { DeviationCard } from '../../core/deviation/deviation-card.js';
import { readTable, tableText, titleOf } from './deviation-table-text.js';
import type { LineProblem } from './deviation-table-text.js';
import type { Field, FieldState } from './field.js';
import { lockedMark } from './locked-mark.js';
import type { LubberElement } from './lubber-element.js';
import { sentences } from './sentences.js';

/** A table of deviations typed or pasted into one field. */
export const deviationTableField: Field<DeviationCard> = {
  parse: (text) => {
    const reading = readTable(text);
    return reading.ok ? understood({ kind: 'table', rows: reading.rows }) : refused('not-understood');
  },
  write: (card) => (card.kind === 'table' ? tableText(card.rows) : ''),
  show: (card) => (card.kind === 'table' ? String(card.rows.length) : ''),
  accepted: 'accepted.table',
};

/** As many problems as a reader takes in at once. */
const MOST_SAID = 4;

function problemsView(host: LubberElement, name: string, problems: readonly LineProblem[]): TemplateResult {
  return html`<ul part="problem" class="problem" id="${name}-problem">
    ${problems.slice(0, MOST_SAID).map(
      ({ line, text, reason }) => html`<li>${sentences(host.t, host.t('table.line', { line, text }), host.t(`refusal.${reason}`))}</li>`,
    )}
    ${problems.length > MOST_SAID ? html`<li>${host.t('table.more', { count: problems.length - MOST_SAID })}</li>` : nothing}
    <li>${host.t('accepted.table')}</li>
  </ul>`;
}

/**
 * The field: what was typed stays as it was typed; what was understood of it is counted below.
 * While it is empty and something else is shown, `given`, it says where that comes from.
 */
export function deviationTableView(host: LubberElement, name: string, state: FieldState<DeviationCard>, label: string, given = false): TemplateResult {
  const locked = host.isLocked(name);
  const reading = readTable(state.text, host.t('entry.words'));
  const problems = !reading.ok && state.state === 'refused' && host.isSettled(name) ? reading.problems : [];
  const title = titleOf(state.text);
  const onInput = (event: Event): void => {
    if (state.state !== 'refused') host.unsettle(name);
    host.change(name, (event.target as HTMLTextAreaElement).value);
  };
  return html`<div class="field table-field" part="field">
    <label part="label" for=${name}>${label}${lockedMark(host, name)}</label>
    <textarea part="input"
      id=${name}
      rows=${given && state.text === '' ? 3 : 8}
      dir="ltr"
      autocomplete="off"
      autocapitalize="off"
      spellcheck="false"
      .defaultValue=${state.text}
      ?readonly=${locked}
      aria-invalid=${problems.length > 0 ? 'true' : 'false'}
      aria-describedby="${name}-echo ${name}-problem"
      @input=${onInput}
      @blur=${() => host.settle(name)}
    ></textarea>
    <p class="hint" id="${name}-echo">${state.state === 'empty' ? sentences(host.t, given ? host.t('table.given') : '', host.t('table.how')) : sentences(host.t, host.t('table.count', { count: reading.rows.length }), title && host.t('table.title', { title }))}</p>
    ${problems.length > 0 ? problemsView(host, name, problems) : html`<p class="problem" id="${name}-problem" hidden></p>`}
  </div>`;
}
