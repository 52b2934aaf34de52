import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { errorInColumn } from '../shared/error-parts.js';
import { formatBearing } from '../shared/figures.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { CardRow } from './card-rows.js';

function block(host: LubberElement, rows: readonly CardRow[], name: string): TemplateResult {
  return html`<table part="table" class="figures">
    <caption class="spoken">${name}</caption>
    <thead>
      <tr>
        <th scope="col">${host.t('card.compass')}</th>
        <th scope="col">${host.t('card.deviation')}</th>
        <th scope="col">${host.t('card.magnetic')}</th>
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        ({ compass, deviation, magnetic, beyondLimit }) => html`<tr class="${compass % 45 === 0 ? 'point' : ''} ${beyondLimit ? 'beyond' : ''}">
          <th scope="row"><bdi dir="ltr">${formatBearing(compass, 0)}</bdi></th>
          <td>
            ${deviation === null ? '–' : errorInColumn(deviation)}${beyondLimit
              ? html`<span class="flag" aria-hidden="true">▲</span><span class="spoken">${host.t('card.beyond')}</span>`
              : ''}
          </td>
          <td><bdi dir="ltr">${magnetic === null ? '–' : formatBearing(magnetic)}</bdi></td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}

/** The deviations in two tables side by side: east of the ship’s north, then west of it. */
export function figuresView(host: LubberElement, rows: readonly CardRow[]): TemplateResult {
  const half = rows.filter(({ compass }) => compass < 180).length;
  return html`<div class="halves scroll" role="group" aria-label=${host.t('card.deviation')}>
    ${block(host, rows.slice(0, half), host.t('card.figures.east'))} ${block(host, rows.slice(half), host.t('card.figures.west'))}
  </div>`;
}
