import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { CorrectorAdvice } from '../../core/deviation/corrector-advice.js';
import { formatAngle, formatBearing, formatError } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { quantityText } from '../shared/quantity-text.js';
import { sentences } from '../shared/sentences.js';
import { signedText } from '../shared/signed-text.js';

/** How the work goes on the two headings, where something is taken out by eye. */
function workText(host: LubberElement, { headings, values, code }: CorrectorAdvice): string {
  const [first, second] = headings;
  if (first === undefined || second === undefined || !values['seen'] || !values['left'] || code.includes('slew')) return '';
  const half = values['left'].value / 2;
  // Where the half is none as it would be written, there is nothing to be halved.
  return host.t(Math.abs(half) < 0.05 ? 'swing.advice.work.done' : 'swing.advice.work', {
    first: formatBearing(first, 0),
    second: formatBearing(second, 0),
    seen: formatError(values['seen'].value),
    left: formatError(2 * half),
    half: formatError(half),
  });
}

function adviceText(host: LubberElement, advice: CorrectorAdvice): string {
  // Coefficients have signs, deviations letters.
  const texts = Object.fromEntries(Object.entries(advice.values).map(([name, value]) => [name, /^[A-E]$/.test(name) ? signedText(value.value) : quantityText(value)]));
  const turn = advice.values['clockwise']?.value ?? 0;
  const slew = host.t(turn < 0 ? 'swing.advice.anticlockwise' : 'swing.advice.clockwise', { angle: formatAngle(Math.abs(turn), 0) });
  return sentences(host.t, host.t(`swing.advice.${advice.code}`, { ...texts, slew }), workText(host, advice));
}

/** What a licensed adjuster might do, in the order of the work, each with its source; `compass` names one of several. */
export function adviceView(host: LubberElement, advice: readonly CorrectorAdvice[], compass: string): TemplateResult {
  return html`<details class="advice" part="advice">
    <summary part="summary">${compass ? host.t('swing.named', { name: host.t('swing.advice'), what: compass }) : host.t('swing.advice')}</summary>
    <p class="small">${host.t('swing.advice.standing')}</p>
    ${advice.length === 0
      ? html`<p class="small soft">${host.t('swing.advice.none')}</p>`
      : html`<ol>
          ${advice.map((one) => html`<li>${adviceText(host, one)}${host.t('list.gap')}<small class="soft">${host.t('swing.advice.source', { source: host.t(`source.${one.source}`) })}</small></li>`)}
        </ol>`}
  </details>`;
}
