import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { errorInColumn } from '../shared/error-parts.js';
import { formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { CurveState } from './curve-result.js';

const headings = Array.from({ length: 24 }, (_, place) => place * 15);

const shown = (deviation: number | null): TemplateResult | string => (deviation === null ? '–' : errorInColumn(deviation));

/** The curves in figures, every 15°: the first with the magnetic heading, the rest beside it. */
export function curveTable(host: LubberElement, { curves }: CurveState): TemplateResult {
  return html`<table part="table" class="figures">
    <caption class="spoken">${host.t('curve.table')}</caption>
    <thead>
      <tr>
        <th scope="col" class="figure">${host.t('curve.compass')}</th>
        ${curves.map(({ name }) => html`<th scope="col" class="figure">${name}</th>`)}
        <th scope="col" class="figure">${host.t('curve.magnetic')}</th>
      </tr>
    </thead>
    <tbody>
      ${headings.map((heading) => {
        const magnetic = curves[0]?.curve.toMagnetic(heading) ?? null;
        return html`<tr>
          <th scope="row" class="figure"><bdi dir="ltr">${formatBearing(heading, 0)}</bdi></th>
          ${curves.map((curve) => html`<td class="figure">${shown(curve.at(heading))}</td>`)}
          <td class="figure"><bdi dir="ltr">${magnetic === null ? '–' : formatBearing(magnetic)}</bdi></td>
        </tr>`;
      })}
    </tbody>
  </table>`;
}
