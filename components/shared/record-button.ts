import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from './lubber-element.js';

/** The way into the record book, and beside it what became of the last offer: nobody may have taken it. */
export function recordButton(host: LubberElement, onRecord: () => void): TemplateResult {
  return html`<p class="row after no-print">
    <button part="button" type="button" @click=${onRecord}>${host.t('record')}</button>
    ${host.offered ? html`<span class="hint">${host.offered}</span>` : nothing}
  </p>`;
}
