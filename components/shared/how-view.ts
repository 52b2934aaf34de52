import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from './lubber-element.js';

/** In place of an answer: how the sight is taken, in three steps under a key of the catalogue. */
export function howView(host: LubberElement, key: string): TemplateResult {
  return html`<ol class="how">
    ${[1, 2, 3].map((step) => html`<li>${host.t(`${key}.${step}`)}</li>`)}
  </ol>`;
}
