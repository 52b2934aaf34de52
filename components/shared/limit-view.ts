import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { deviationLimits } from '../../core/deviation/deviation-limits.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { selectView } from './choice-view.js';
import type { LubberElement } from './lubber-element.js';

export type LimitCode = 'flag-five' | 'after-adjustment' | 'in-service' | 'panama-canal';

export const limitCodes: readonly string[] = deviationLimits.map(({ code }) => code);

/** The limit of a code; the usual one for any other text. */
export function limitNamed(code: unknown): DeviationLimit {
  return deviationLimits.find((limit) => limit.code === code) ?? (deviationLimits[0] as DeviationLimit);
}

/** The choice of the limit a card is held against, with the source of the one chosen. */
export function limitView(host: LubberElement, chosen: DeviationLimit): TemplateResult {
  const label = host.t('limit');
  const options = deviationLimits.map(({ code }) => ({ value: code, label: host.t(`limit.${code}`) }));
  const hint = html`<p class="hint" id="limit-hint">${host.t('limit.source', { source: host.t(`source.${chosen.source}`) })}</p>`;
  return selectView(host, 'limit', label, chosen.code, [{ label, options }], hint);
}
