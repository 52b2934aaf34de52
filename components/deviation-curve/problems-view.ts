import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { fitDeviation } from '../../core/deviation/fit-deviation.js';
import { cautionsView } from '../shared/caution-view.js';
import { listText } from '../shared/list-text.js';
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

/** Readings through which no whole curve can be laid: what they do determine, and why not more. */
export function tooFewView(host: LubberElement, { points, model }: ReadInput): TemplateResult | typeof nothing {
  const taken = points.filter(({ struck }) => !struck);
  if (points.length === 0) return nothing;
  const { determined, warnings } = fitDeviation(taken, { model });
  const said = determined.length > 0 ? host.t('curve.fewer', { coefficients: listText(host.t, determined) }) : host.t('curve.fewer.none');
  return html`<p class="waiting wrong">${said}</p>
    ${cautionsView(host, warnings)}`;
}
