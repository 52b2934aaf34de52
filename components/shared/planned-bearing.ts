import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { formatBearing } from './figures.js';
import type { LubberElement } from './lubber-element.js';

/** Before a bearing is entered, in the place of the answer: where what is observed lies by true north. */
export function plannedBearing(host: LubberElement, trueBearing: number): TemplateResult {
  return html`<p class="answer" part="answer"><bdi dir="ltr">${formatBearing(trueBearing)}</bdi> <small>${host.t('sight.mark.true')}</small></p>`;
}
