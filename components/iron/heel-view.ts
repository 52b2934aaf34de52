import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { heelingCoefficient, heelingErrorByCompass, linearHeelingError } from '../../core/iron/heeling-error.js';
import { formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { BenchResult } from './bench-result.js';
import { deviationCell, signedNumber } from './iron-words.js';

const headings = [0, 45, 90, 135, 180, 225, 270, 315];

/** What the heel does to the deviation by compass heading, beside the textbook's estimate. */
export function heelView(host: LubberElement, { iron, field, heel }: BenchResult): TemplateResult {
  const coefficient = heelingCoefficient(iron, field);
  const estimate = (heading: number): string | TemplateResult => deviationCell(linearHeelingError(iron, field, heading, heel));
  const side = coefficient === null || coefficient === 0 ? 'none' : coefficient < 0 ? 'high' : 'low';
  return html`<p>${host.t(`iron.heel.${side}`, { coefficient: signedNumber(coefficient, 2) })}</p>
    <div class="scroll" role="group" aria-label=${host.t('iron.heel.table')}>
      <table part="table" class="heel">
        <thead>
          <tr>
            ${['heading', 'upright', 'heeled', 'error', 'estimate'].map(
              (column) => html`<th scope="col" class="figure">${host.t(`iron.heel.column.${column}`)}</th>`,
            )}
          </tr>
        </thead>
        <tbody>
          ${headings.map((heading) => {
            const { upright, heeled, error } = heelingErrorByCompass(iron, field, heading, heel);
            return html`<tr>
              <th scope="row" class="figure">${formatBearing(heading, 0)}</th>
              <td class="figure">${deviationCell(upright)}</td>
              <td class="figure">${deviationCell(heeled)}</td>
              <td class="figure">${deviationCell(error)}</td>
              <td class="figure">${estimate(heading)}</td>
            </tr>`;
          })}
        </tbody>
      </table>
    </div>`;
}
