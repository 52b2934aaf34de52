import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { Advice } from '../../core/record/advice.js';
import type { Quantity } from '../../core/working/quantity.js';
import { formatAngle } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { quantityText } from '../shared/quantity-text.js';
import { signedText } from '../shared/signed-text.js';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function textOf(host: LubberElement, advice: Advice): string {
  const values: Record<string, string> = {};
  const text = (value: Quantity): string => {
    if (advice.code === 'coefficient-changed') return signedText(value.value);
    return value.unit === 'angle' ? formatAngle(value.value, 1) : quantityText(value);
  };
  for (const [name, value] of Object.entries(advice.values)) values[name] = typeof value === 'string' ? value : text(value);
  if (values['event']) values['event'] = capital(host.t(`record.event.${values['event']}`));
  // Of a book laid aside hours would have to be worked out: from two days on they are told as such.
  const days = Math.floor(Number(values['hours']) / 24);
  const sentence = host.t(`advice.${advice.code}${days > 1 ? '.days' : ''}`, { ...values, days });
  // After what may have changed the ship or the gear about the compass the guidance asks for more than checks.
  return advice.code === 'checks-after-event' && advice.level === 'warning' ? `${sentence} ${host.t('advice.adjust-after-change')}` : sentence;
}

/** What the book advises, warnings first, each with the source of its rule. */
export function adviceView(host: LubberElement, advice: readonly Advice[]): TemplateResult {
  if (advice.length === 0) return html`<p class="soft">${host.t('record.advice.none')}</p>`;
  const ordered = [...advice].sort((a, b) => Number(b.level === 'warning') - Number(a.level === 'warning'));
  return html`<ul class="cautions advice" part="advice">
    ${ordered.map(
      (one) => html`<li class=${one.level}>${textOf(host, one)} <small>${host.t('record.advice.source', { source: host.t(`source.${one.source}`) })}</small></li>`,
    )}
  </ul>`;
}
