import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Step } from '../../core/working/step.js';
import { formulaView, substitutionView, symbolView } from './formula-view.js';
import type { LubberElement } from './lubber-element.js';
import { quantityText } from './quantity-text.js';

function stepView(host: LubberElement, step: Step): TemplateResult {
  const hasSymbols = step.expression !== null && Object.keys(step.values).length > 0;
  return html`<li>
    <span>${host.t(`step.${step.code}`)}</span>
    <span class="line">
      ${step.expression
        ? html`<math displaystyle="true"><mrow>${symbolView(step.symbol, host.t)}<mo>=</mo>${formulaView(step.expression, host.t)}</mrow></math>`
        : nothing}
      ${step.expression && hasSymbols
        ? html`<math displaystyle="true"><mrow><mo>=</mo>${substitutionView(step.expression, step.values, host.t)}</mrow></math>`
        : nothing}
      <math displaystyle="true"><mrow>${step.expression ? nothing : symbolView(step.symbol, host.t)}<mo>=</mo><mn>${quantityText(step.result)}</mn></mrow></math>
    </span>
  </li>`;
}

/** The steps of a working as they would stand in a work book; `name` tells one list from another on the page. */
export function stepsView(host: LubberElement, steps: readonly Step[], name = host.t('working')): TemplateResult {
  // A long line scrolls inside its own region, one stop for the keyboard, and never moves the page.
  return html`<div class="scroll" dir="ltr" role="group" aria-label=${name}>
    <ol class="working">${steps.map((step) => stepView(host, step))}</ol>
  </div>`;
}

/** The working that opens; how it starts is the host's choice. */
export function workingView(host: LubberElement, steps: readonly Step[], after: () => TemplateResult | typeof nothing = () => nothing): TemplateResult | typeof nothing {
  if (host.working === 'none') return nothing;
  const open = host.working === 'open';
  return html`<details part="working" ?open=${open}>
    <summary part="summary">${host.t('working')}</summary>
    ${host.closed.view(
      open,
      () => html`${stepsView(host, steps)}${after()}
        <p class="small soft">${host.t('working.rounded')}</p>`,
    )}
  </details>`;
}
