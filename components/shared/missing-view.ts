import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { FieldState } from './field.js';
import { listText } from './list-text.js';
import type { LubberElement } from './lubber-element.js';

export interface FieldName {
  readonly state: FieldState<unknown>;
  readonly label: string;
  /** Whether there is no answer without it. */
  readonly needed: boolean;
}

/** In place of an answer: which fields are still missing, and which fields and attributes are to be put right. */
export function missingView(host: LubberElement, names: readonly FieldName[]): TemplateResult {
  const wrong = [...names.filter(({ state }) => state.state === 'refused').map(({ label }) => label), ...host.unknownWords];
  const missing = names.filter(({ state, needed }) => needed && state.state === 'empty').map(({ label }) => label);
  return html`${wrong.length > 0 ? html`<p class="waiting wrong">${host.t('answer.wrong', { fields: listText(host.t, wrong) })}</p>` : nothing}
  ${missing.length > 0 ? html`<p class="waiting">${host.t('answer.missing', { fields: listText(host.t, missing) })}</p>` : nothing}`;
}
