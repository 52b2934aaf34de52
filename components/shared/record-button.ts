import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from './lubber-element.js';

/** The way into the record book, and beside it what became of the last offer: nobody may have taken it. A book in the same ship can be gone to. */
export function recordButton(host: LubberElement, onRecord: () => void): TemplateResult {
  const button = (key: string, onClick: () => void): TemplateResult => html`<button part="button" type="button" @click=${onClick}>${host.t(key)}</button>`;
  const show = host.ship?.showBook;
  return html`<p class="row after no-print">
    ${button('record', onRecord)} ${host.offered ? html`<span class="hint">${host.offered}</span> ${show ? button('record.go', show) : nothing}` : nothing}
  </p>`;
}
