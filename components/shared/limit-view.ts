import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { deviationLimits } from '../../core/deviation/deviation-limits.js';
import type { DeviationLimit } from '../../core/deviation/deviation-limits.js';
import { lockedMark } from './locked-mark.js';
import type { LubberElement } from './lubber-element.js';
import { unknownWordView } from './unknown-word-view.js';

export const limitCodes: readonly string[] = deviationLimits.map(({ code }) => code);

/** The limit of a code; the usual one for any other text. */
export function limitNamed(code: string): DeviationLimit {
  return deviationLimits.find((limit) => limit.code === code) ?? (deviationLimits[0] as DeviationLimit);
}

/** The choice of the limit a card is held against, with the source of the one chosen. */
export function limitView(host: LubberElement, name: string, chosen: DeviationLimit): TemplateResult {
  const unknown = host.unknownWord(name);
  return html`<div class="field" part="field">
    <label part="label" for=${name}>${host.t('limit')}${lockedMark(host, name)}</label>
    <div class="entry">
      <select part="input" id=${name} aria-describedby="${name}-source" ?disabled=${host.isLocked(name)} @change=${(event: Event) => host.change(name, (event.target as HTMLSelectElement).value)}>
        ${unknown ? html`<option disabled .selected=${live(true)}>${unknown}</option>` : nothing}
        ${deviationLimits.map(({ code }) => html`<option value=${code} .selected=${live(!unknown && code === chosen.code)}>${host.t(`limit.${code}`)}</option>`)}
      </select>
    </div>
    ${unknownWordView(host, name)}
    <p class="hint" id="${name}-source">${host.t('limit.source', { source: host.t(`source.${chosen.source}`) })}</p>
  </div>`;
}
