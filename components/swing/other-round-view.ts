import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { correctorsTable } from '../shared/correctors-table.js';
import { swungCompasses } from '../../core/swing/adjusted-swing.js';
import type { SwungRow } from '../../core/swing/swing.js';
import { anyCorrector } from '../../core/deviation/corrector-states.js';
import { errorInColumn } from '../shared/error-parts.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { hasReadings } from './grid-row.js';
import { columnLabel } from './grid-texts.js';
import { correctorsTitle } from './stage-view.js';
import { columnsFor } from './swing-state.js';
import type { SwingState } from './swing-state.js';
import type { WorkedSwing } from './worked-swing.js';

const deviationOf = (swung: SwungRow | null | undefined): TemplateResult | typeof nothing => (swung?.ok ? errorInColumn(swung.deviation) : nothing);

/** On paper, the readings of the round that is not on the screen: figures only, nothing to type. */
export function otherRoundView(host: LubberElement, state: SwingState, worked: WorkedSwing): TemplateResult | typeof nothing {
  if (!hasReadings(state.rows)) return nothing;
  const { t } = host;
  const { swung, steered } = host.answer === 'shown' ? worked : { swung: [], steered: [] };
  const columns = columnsFor(state.rows, state.method, state.steering);
  const title = `${t('swing.grid.title')}${t('list.comma')}${t(`swing.stage.${state.stage}`)}`;
  return html`<div class="paper-only other-round">
    <h3>${title}</h3>
    <table part="table">
      <thead>
        <tr>
          ${columns.map((column) => html`<th scope="col">${columnLabel(host, column, state)}</th>`)}
          <th scope="col" class="figure">${t('swing.column.found')}</th>
          ${state.steering ? html`<th scope="col" class="figure">${t('swing.column.found.steering')}</th>` : nothing}
        </tr>
      </thead>
      <tbody>
        ${state.rows.map(
          (row, place) => html`<tr class=${row.struck ? 'struck' : ''}>
            ${columns.map((column) => html`<td>${row[column]}</td>`)}
            <td class="figure">${deviationOf(swung[place])}</td>
            ${state.steering ? html`<td class="figure">${deviationOf(steered[place])}</td>` : nothing}
          </tr>`,
        )}
      </tbody>
    </table>
    ${swungCompasses
      .filter((compass) => (compass === 'standard' || state.steering) && anyCorrector(state.correctors[compass]))
      .map((compass) => correctorsTable(host, state.correctors[compass], correctorsTitle(host, state, compass)))}
  </div>`;
}
