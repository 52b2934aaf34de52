import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from './lubber-element.js';

/** Lines to write on, each with the words of a key below it. */
export function signatureLines(host: LubberElement, keys: readonly string[]): TemplateResult {
  return html`<div class="signatures">${keys.map((key) => html`<p>${host.t(key)}</p>`)}</div>`;
}
