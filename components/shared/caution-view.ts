import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { Caution } from '../../core/working/caution.js';
import type { Quantity } from '../../core/working/quantity.js';
import { bodyInWords } from './body-name.js';
import type { LubberElement } from './lubber-element.js';
import { quantityText } from './quantity-text.js';
import { sentences } from './sentences.js';

/** In a sentence a count is a whole number, a limit of 5° is just that, and so are 10 m. */
function inSentence(quantity: Quantity): string {
  const text = quantityText(quantity);
  return quantity.value % 1 === 0 && /number|metres|angle/.test(quantity.unit) ? text.replace(/\D0+/, '') : text;
}

function textOf(host: LubberElement, caution: Caution): string {
  const values: Record<string, string> = { check: host.t('sight.check') };
  for (const [name, value] of Object.entries(caution.values)) {
    values[name] = typeof value === 'string' ? (name === 'body' ? bodyInWords(host, value) : value) : inSentence(value);
  }
  return host.t(`caution.${caution.code}`, values);
}

/** What the user should know about a result, warnings first. */
export function cautionsView(host: LubberElement, cautions: readonly Caution[]): TemplateResult | typeof nothing {
  if (cautions.length === 0) return nothing;
  const ordered = [...cautions].sort((a, b) => Number(b.level === 'warning') - Number(a.level === 'warning'));
  return html`<ul class="cautions" part="cautions">
    ${ordered.map((caution) => html`<li part="caution" class=${caution.level}>${textOf(host, caution)}</li>`)}
  </ul>`;
}

/** The standing cautions at the foot of a widget, always in print. */
export function standingCautions(host: LubberElement): TemplateResult {
  return html`<p class="standing small soft" part="standing">${sentences(host.t, host.t('caution.aid'), host.t('caution.second'))}</p>`;
}
