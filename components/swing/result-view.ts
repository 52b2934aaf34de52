import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Swing } from '../../core/swing/swing.js';
import { cautionsView, standingCautions } from '../shared/caution-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { adviceView } from './advice-view.js';
import { coefficientsView } from './coefficients-view.js';
import { curveView } from './curve-view.js';
import { judgeView } from './settings-view.js';
import type { SwingState } from './swing-state.js';

/** The five terms are in use where the exact coefficients would serve better. */
const wantsExact = ({ model, fit }: Swing): boolean =>
  model === 'approximate' && fit.warnings.some(({ code }) => code === 'exact-fit-better' || code === 'beyond-approximate');

/** What may be done with a swing. */
function nextSteps(host: LubberElement, result: Swing, useCard: () => void): TemplateResult {
  return html`<p class="row no-print">
    ${wantsExact(result) ? html`<button part="button" type="button" id="exact" @click=${() => host.change('model', 'exact')}>${host.t('swing.exact.offer')}</button>` : nothing}
    ${result.card && host.ship ? html`<button part="button" type="button" id="use-card" @click=${useCard}>${host.t('swing.useCard')}</button>` : nothing}
  </p>`;
}

/** What the readings came to: curve, cautions, coefficients, what they are judged by, advice. */
export function resultView(host: LubberElement, now: SwingState, result: Swing | null, useCard: () => void): TemplateResult {
  const shown = result && host.answer === 'shown' && result.rows.some(({ ok }) => ok);
  return html`${shown
    ? html`${curveView(host, result, now.given.card, now.limit.largest)} ${cautionsView(host, [...result.cautions, ...(result.check?.cautions ?? [])])}
        ${nextSteps(host, result, useCard)} ${coefficientsView(host, result)}`
    : nothing}
  ${judgeView(host, now)} ${shown ? adviceView(host, result.advice) : nothing} ${standingCautions(host)}`;
}
