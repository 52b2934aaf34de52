import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { formatAngle } from '../../core/angle/format-angle.js';
import type { Doubt } from '../../core/working/doubt.js';
import type { LubberElement } from './lubber-element.js';
import { quantityText } from './quantity-text.js';

/** The causes of doubt, what each was supposed to be and what it does, on request. */
export function doubtView(host: LubberElement, doubt: Doubt): TemplateResult {
  return html`<details part="doubt">
    <summary part="summary">${host.t('doubt')}</summary>
    <div class="scroll" role="group" aria-label=${host.t('doubt')}>
      <table part="table">
        <thead>
          <tr>
            <th scope="col">${host.t('doubt.cause')}</th>
            <th scope="col" class="figure">${host.t('doubt.supposed')}</th>
            <th scope="col" class="figure">${host.t('doubt.effect')}</th>
          </tr>
        </thead>
        <tbody>
          ${doubt.items.map(
            (item) => html`<tr>
              <th scope="row">${host.t(`doubt.${item.code}`)}</th>
              <td class="figure">± ${quantityText(item.cause)}</td>
              <td class="figure">${formatAngle(item.effect, 2)}</td>
            </tr>`,
          )}
          <tr>
            <th scope="row">${host.t('doubt.total')}</th>
            <td></td>
            <td class="figure">${formatAngle(doubt.total, 2)}</td>
          </tr>
        </tbody>
      </table>
    </div>
    <p class="small soft">${host.t('doubt.sigma')}</p>
  </details>`;
}
