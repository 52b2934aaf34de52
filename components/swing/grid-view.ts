import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { GridActions, GridContent } from './grid-content.js';
import { undoKey } from './grid-keys.js';
import { rowView } from './grid-row-view.js';
import { gridShape } from './grid-shape.js';
import type { GridShape } from './grid-shape.js';
import { columnLabel, foundTexts, headText, problemOf, refusedColumn } from './grid-texts.js';

/** What stands over the figures that a reading came to. */
function figureHeads({ t }: LubberElement, byCompass: boolean, stacked: boolean): TemplateResult {
  const labels = [...(byCompass ? ['byCompass'] : []), 'found', 'residual'].map((name) => t(`swing.column.${name}`));
  return html`${stacked
      ? html`<th scope="col" class="figure">${labels.map((label, place) => html`${place ? html`<br />` : nothing}${label}`)}</th>`
      : labels.map((label) => html`<th scope="col" class="figure">${label}</th>`)}
    <th scope="col" class="use-cell">${t('swing.column.use')}</th>`;
}

function headView(host: LubberElement, { state, mixed }: GridContent, { own, byCompass, stacked, below, width }: GridShape): TemplateResult {
  const { t } = host;
  const beside = state.steering && !below;
  return html`<thead>
    ${beside
      ? html`<tr class="compasses">
          <th scope="colgroup" colspan=${width - 5}>${t('swing.compass.standard')}</th><td class="use-cell"></td>
          <th class="steering" scope="colgroup" colspan="3">${t('swing.compass.steering')}</th><td class="use-cell"></td>
        </tr>`
      : nothing}
    <tr>
      ${own.map((column) => html`<th scope="col">${columnLabel(host, column, state)}</th>`)}
      ${mixed && !below ? html`<th scope="col">${t('swing.method')}</th><th scope="col">${t('swing.headingBy')}</th>` : nothing} ${figureHeads(host, byCompass, stacked)}
      ${beside ? html`<th scope="col" class="steering">${columnLabel(host, 'steering', state)}</th>${figureHeads(host, false, false)}` : nothing}
    </tr>
  </thead>`;
}

/**
 * Undo from what is ticked, chosen or pressed: left to the browser it would take back the last
 * letter typed in some cell.
 */
export const onUndoKey =
  (actions: Pick<GridActions, 'press'>) =>
  (event: KeyboardEvent): void => {
    const key = event.defaultPrevented ? null : undoKey(event);
    if (!key) return;
    event.preventDefault();
    actions.press(key, 0, 'heading');
  };

/** The table of entry: heading, reading and what the method asks besides; beside it what each row came to. */
export function gridView(host: LubberElement, content: GridContent, actions: GridActions): TemplateResult {
  const { state, worked, mixed, locked } = content;
  const shape = gridShape(host, content);
  // A row that looks as it did is not drawn again: most look the same after a figure elsewhere.
  const common = JSON.stringify([state.method, state.headingBy, state.methods, shape, mixed, locked, host.page.language, host.t('swing.cell')]);
  return html`<div class="scroll" part="grid" @keydown=${onUndoKey(actions)} @pointerdown=${actions.point}>
    <table part="table" class="grid ${shape.stacked ? 'crowded' : ''}">
      <caption class="spoken">${host.t('swing.grid')}</caption>
      ${guard([common, state.steering], () => headView(host, content, shape))}
      <tbody>
        ${state.rows.map((row, place) => {
          // What a row came to is part of an answer kept back.
          const answered = host.answer === 'shown';
          const texts = foundTexts(answered ? worked.swung[place] : null, worked.result);
          const beside = foundTexts(answered ? worked.steered[place] : null, worked.result?.steering);
          const byCompass = shape.byCompass ? headText(answered ? worked.swung[place] : null) : null;
          const refused = refusedColumn(place, content);
          const problem = problemOf(host, place, content);
          return guard([row, common, state.steering, refused, problem, byCompass, ...texts, ...beside], () => rowView(host, place, content, actions, { shape, refused, common, problem, texts, beside, byCompass }));
        })}
      </tbody>
    </table>
  </div>`;
}
