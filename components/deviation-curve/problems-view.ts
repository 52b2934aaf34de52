import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';
import type { ReadInput } from './curve-input.js';

/** What the page handed over and cannot be read, in words. */
export function problemsView(host: LubberElement, { problems }: ReadInput): TemplateResult[] {
  return problems.map(
    ({ where, reason }) =>
      html`<p class="problem">
        ${reason === null ? host.t('curve.points.problem', { where }) : host.t('card.problem', { where, reason: host.t(`card.problem.${reason}`) })}
      </p>`,
  );
}
