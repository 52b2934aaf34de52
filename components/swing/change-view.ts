import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { coefficientNames } from '../../core/deviation/approximate-deviation.js';
import type { Swing } from '../../core/swing/swing.js';
import { errorInColumn } from '../shared/error-parts.js';
import { formatNumber } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';

const signed = (value: number | null, host: LubberElement): string => {
  if (value === null) return host.t('swing.notDetermined');
  return `${Number(value.toFixed(1)) > 0 ? '+' : ''}${formatNumber(value, 1)}°`;
};

/** What adjusting has done: the five terms and the largest deviation as found, and as left. */
export function changeView(host: LubberElement, found: Swing, left: Swing): TemplateResult {
  const { t } = host;
  const largest = ({ check }: Swing): TemplateResult | typeof nothing => (check ? errorInColumn(check.largest.deviation) : nothing);
  return html`<h3>${t('swing.change')}</h3>
    <table class="change" part="table">
      <thead>
        <tr>
          <th scope="col">${t('swing.coefficient')}</th>
          <th scope="col" class="figure">${t('swing.stage.found')}</th>
          <th scope="col" class="figure">${t('swing.stage.left')}</th>
        </tr>
      </thead>
      <tbody>
        ${coefficientNames.map(
          (name) => html`<tr>
            <th scope="row"><b>${name}</b></th>
            ${[found, left].map(({ approximate }) => html`<td class="figure"><bdi dir="ltr">${signed(approximate.coefficients[name], host)}<span class="letter"></span></bdi></td>`)}
          </tr>`,
        )}
        <tr>
          <th scope="row">${t('swing.change.largest')}</th>
          ${[found, left].map((swing) => html`<td class="figure">${largest(swing)}</td>`)}
        </tr>
      </tbody>
    </table>`;
}
