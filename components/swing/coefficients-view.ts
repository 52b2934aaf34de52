import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { coefficientNames } from '../../core/deviation/approximate-deviation.js';
import type { CoefficientName } from '../../core/deviation/approximate-deviation.js';
import type { Swing } from '../../core/swing/swing.js';
import { formatNumber } from '../shared/figures.js';
import { listText } from '../shared/list-text.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { sentences } from '../shared/sentences.js';
import { scatterText } from './swing-answer.js';

const signed = (value: number, decimals: number): string => `${Number(value.toFixed(decimals)) > 0 ? '+' : ''}${formatNumber(value, decimals)}`;

function withDoubt(host: LubberElement, value: number | null, error: number | null, decimals: number, unit: string): TemplateResult {
  if (value === null) return html`<span class="soft">${host.t('swing.notDetermined')}</span>`;
  return html`<div class="closed ${error === null ? '' : 'doubted'}">${signed(value, decimals)}${unit}${error === null ? nothing : html`<small class="soft"> ±&nbsp;${formatNumber(error, decimals)}</small>`}</div>`;
}

/** A to E by least squares with their standard errors, by the eight points, and where it is in use the exact fit. */
export function coefficientsView(host: LubberElement, result: Swing): TemplateResult {
  const { approximate, fit, model, eightPoints, constantLost } = result;
  const exact = model === 'exact';
  const row = (name: CoefficientName): TemplateResult => html`<tr>
    <th scope="row"><b>${name}</b> <span class="part">${host.t(`swing.coefficient.${name}`)}</span></th>
    <td class="figure">${withDoubt(host, approximate.coefficients[name], approximate.standardErrors[name], 2, '°')}</td>
    ${exact ? html`<td class="figure">${withDoubt(host, fit.coefficients[name], fit.standardErrors[name], 4, '')}</td>` : nothing}
    <td class="figure">${eightPoints.ok ? withDoubt(host, constantLost && name === 'A' ? null : eightPoints.coefficients[name], null, 2, '°') : ''}</td>
  </tr>`;
  return html`<h3>${host.t('swing.coefficients')}</h3>
    <div class="scroll" role="group" aria-label=${host.t('swing.coefficients')}>
      <table class="coefficients" part="coefficients">
        <thead>
          <tr>
            <th scope="col">${host.t('swing.coefficient')}</th>
            <th scope="col" class="figure">${host.t('swing.leastSquares')}</th>
            ${exact ? html`<th scope="col" class="figure">${host.t('swing.exact')}</th>` : nothing}
            <th scope="col" class="figure">${host.t('swing.eightPoints')}</th>
          </tr>
        </thead>
        <tbody>
          ${coefficientNames.map(row)}
        </tbody>
      </table>
    </div>
    <p class="small soft">${sentences(host.t, scatterText(host, result), result.card ? host.t(exact ? 'swing.card.exact' : 'swing.card.approximate') : '')}</p>
    ${eightPoints.ok ? nothing : html`<p class="small soft">${host.t('swing.eightPoints.missing', { points: listText(host.t, eightPoints.missing) })}</p>`}`;
}
