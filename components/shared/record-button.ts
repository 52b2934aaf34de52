import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { actionButton } from './action-button.js';
import type { FieldState } from './field.js';
import type { LubberElement } from './lubber-element.js';

/** A day alone will do for the variation, or for figures of an almanac; a book of 0 h, or of now, would say what nobody observed. */
export const isUntimed = ({ date, time }: { readonly date: FieldState<unknown>; readonly time: FieldState<unknown> }): boolean =>
  date.state === 'value' && time.state === 'empty';

/**
 * The way into the record book, and beside it what became of the last offer: nobody may have taken it. A book in the same ship can be gone to.
 * Without a way, where the sight is untimed, the time is asked for. There is none for an error that is `worthless`: what cannot have been
 * observed is no observation, and would count in the book’s statistics and advice.
 */
export function recordButton(host: LubberElement, worthless: boolean, onRecord: (() => void) | null): TemplateResult | typeof nothing {
  if (worthless) return nothing;
  if (!onRecord) return html`<p class="hint after no-print">${host.t('sight.untimed')}</p>`;
  const show = host.ship?.showBook;
  return html`<p class="row after no-print">
    ${actionButton(host.t('record'), onRecord)} ${host.offered ? html`<span class="hint">${host.offered}</span> ${show ? actionButton(host.t('record.go'), show) : nothing}` : nothing}
  </p>`;
}
