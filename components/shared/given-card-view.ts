import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { GivenCard } from './given-card.js';
import type { LubberElement } from './lubber-element.js';

/** Says in words why the card of the host is none; nothing where it is one. */
export function cardProblemView(host: LubberElement, { problem }: GivenCard): TemplateResult | typeof nothing {
  if (!problem) return nothing;
  return html`<p class="problem">${host.t('card.problem', { where: problem.where, reason: host.t(`card.problem.${problem.reason}`) })}</p>`;
}
