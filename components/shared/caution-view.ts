import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Caution } from '../../core/working/caution.js';
import type { LubberElement } from './lubber-element.js';
import { quantityText } from './quantity-text.js';

function textOf(host: LubberElement, caution: Caution): string {
  const values: Record<string, string> = {};
  for (const [name, value] of Object.entries(caution.values)) {
    values[name] = typeof value === 'string' ? value : quantityText(value);
  }
  return host.t(`caution.${caution.code}`, values);
}

/** What the user should know about a result, warnings first. */
export function cautionsView(host: LubberElement, cautions: readonly Caution[]): TemplateResult | typeof nothing {
  if (cautions.length === 0) return nothing;
  const ordered = [...cautions].sort((a, b) => Number(b.level === 'warning') - Number(a.level === 'warning'));
  return html`<ul class="cautions" part="cautions">
    ${ordered.map((caution) => html`<li class=${caution.level}>${textOf(host, caution)}</li>`)}
  </ul>`;
}

/** The standing cautions at the foot of a widget, always in print. */
export function standingCautions(host: LubberElement): TemplateResult {
  return html`<p class="standing small soft" part="standing">${host.t('caution.aid')} ${host.t('caution.second')}</p>`;
}
