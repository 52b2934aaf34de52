import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { correctorNames } from '../../core/deviation/corrector-states.js';
import type { Correctors } from '../../core/deviation/corrector-states.js';
import type { LubberElement } from './lubber-element.js';

/** The correctors as a card says them; `title` stands over their names. */
export function correctorsTable(host: LubberElement, correctors: Correctors, title: string): TemplateResult {
  return html`<table part="table" class="correctors">
    <thead>
      <tr>
        <th scope="col">${title}</th>
        <th scope="col">${host.t('card.corrector.what')}</th>
        <th scope="col">${host.t('card.corrector.end')}</th>
        <th scope="col">${host.t('card.corrector.distance')}</th>
      </tr>
    </thead>
    <tbody>
      ${correctorNames.map((name) => {
        const { what, end, distance } = correctors[name];
        return html`<tr>
          <th scope="row">${host.t(`card.corrector.${name}`)}</th>
          <td><bdi>${what}</bdi></td>
          <td>${end ? host.t(`card.end.${end}`) : ''}</td>
          <td><bdi>${distance}</bdi></td>
        </tr>`;
      })}
    </tbody>
  </table>`;
}
