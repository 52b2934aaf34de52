import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { mixedCells, typedCell, useCell } from './grid-cells.js';
import type { GridActions, GridContent } from './grid-content.js';
import { isBlank } from './grid-row.js';
import type { GridRow } from './grid-row.js';
import { columnLabel, foundTexts, headText, problemOf, refusedColumn } from './grid-texts.js';
import type { FoundTexts } from './grid-texts.js';

interface RowShown {
  readonly problem: string;
  readonly texts: FoundTexts;
  /** Of the steering compass. */
  readonly beside: FoundTexts;
  /** The head by compass where it was not read; null where there is no such column. */
  readonly byCompass: string | null;
  /** The column that is not understood, and what all rows have in common. */
  readonly refused: string;
  readonly common: string;
}

/** What stays as it is while only figures beside the row change: read from the page, so worth leaving alone. */
function typedCells(host: LubberElement, place: number, content: GridContent, actions: GridActions): TemplateResult {
  const row = content.state.rows[place] as GridRow;
  const columns = content.columns.filter((column) => column !== 'steering');
  return html`${columns.map((column) => typedCell(host, place, column, content, actions))} ${content.mixed ? mixedCells(host, place, row, actions) : nothing}`;
}

const figures = ([deviation, residual, bad]: FoundTexts): TemplateResult => html`<td class="figure">${deviation}</td>
  <td class="figure ${bad ? 'bad' : ''}">${bad ? '▲ ' : ''}${residual}</td>`;

/** The steering compass beside the standard: its head, and what that came to. */
function besideCells(host: LubberElement, place: number, content: GridContent, actions: GridActions, { beside, common, refused }: RowShown): TemplateResult {
  const row = content.state.rows[place] as GridRow;
  return html`${guard([row, common, refused], () => typedCell(host, place, 'steering', content, actions))} ${figures(beside)}
    <td>${guard([row, common], () => useCell(host, place, row, content.locked, actions, 'steering'))}</td>`;
}

function rowView(host: LubberElement, place: number, content: GridContent, actions: GridActions, shown: RowShown): TemplateResult {
  const { columns, mixed, locked, state } = content;
  const row = state.rows[place] as GridRow;
  const { problem, texts, byCompass } = shown;
  const width = columns.length + (mixed ? 2 : 0) + (byCompass === null ? 0 : 1) + (state.steering ? 6 : 3);
  return html`<tr class="${row.struck ? 'struck' : isBlank(row) ? 'blank' : ''} ${row.steeringStruck ? 'steering-struck' : ''}">
      ${guard([row, shown.common, shown.refused], () => typedCells(host, place, content, actions))}
      ${byCompass === null ? nothing : html`<td class="figure">${byCompass}</td>`} ${figures(texts)}
      <td>${guard([row, shown.common], () => useCell(host, place, row, locked, actions, 'standard'))}</td>
      ${state.steering ? besideCells(host, place, content, actions, shown) : nothing}
    </tr>
    <tr class="reason" ?hidden=${!problem}>
      <td colspan=${width}><p class="problem" id="problem-${place}">${problem}</p></td>
    </tr>`;
}

function headView(host: LubberElement, { state, columns, mixed }: GridContent, byCompass: boolean): TemplateResult {
  const { t } = host;
  const found = html`<th scope="col" class="figure">${t('swing.column.found')}</th>
    <th scope="col" class="figure">${t('swing.column.residual')}</th>
    <th scope="col">${t('swing.column.use')}</th>`;
  const own = columns.filter((column) => column !== 'steering');
  const width = own.length + (mixed ? 2 : 0) + (byCompass ? 1 : 0) + 3;
  return html`<thead>
    ${state.steering
      ? html`<tr class="compasses"><th scope="colgroup" colspan=${width}>${t('swing.compass.standard')}</th><th scope="colgroup" colspan="4">${t('swing.compass.steering')}</th></tr>`
      : nothing}
    <tr>
      ${own.map((column) => html`<th scope="col">${columnLabel(host, column, state)}</th>`)}
      ${mixed ? html`<th scope="col">${t('swing.method')}</th><th scope="col">${t('swing.headingBy')}</th>` : nothing}
      ${byCompass ? html`<th scope="col" class="figure">${t('swing.column.byCompass')}</th>` : nothing} ${found}
      ${state.steering ? html`<th scope="col" class="steering">${columnLabel(host, 'steering', state)}</th>${found}` : nothing}
    </tr>
  </thead>`;
}

/** The table of entry: heading, reading and what the method asks besides; beside it what each row came to. */
export function gridView(host: LubberElement, content: GridContent, actions: GridActions): TemplateResult {
  const { state, worked, columns, mixed, locked } = content;
  const byCompass = state.headingBy !== 'compass' || worked.rows.some(({ headingBy }) => headingBy !== 'compass');
  // A row that looks as it did is not drawn again: most look the same after a figure elsewhere.
  const common = JSON.stringify([state.method, state.headingBy, state.methods, columns, mixed, locked, byCompass, host.page.language, host.t('swing.cell')]);
  return html`<div class="scroll" part="grid">
    <table part="table" class="grid">
      <caption class="spoken">${host.t('swing.grid')}</caption>
      ${guard([common, state.steering], () => headView(host, content, byCompass))}
      <tbody>
        ${state.rows.map((row, place) => {
          const [texts, beside] = [foundTexts(worked.swung[place], worked.result), foundTexts(worked.steered[place], worked.result?.steering)];
          const head = byCompass ? headText(worked.swung[place]) : null;
          const shown = { refused: refusedColumn(place, content), common, problem: problemOf(host, place, content), texts, beside, byCompass: head };
          return guard([row, common, shown.refused, shown.problem, head, ...texts, ...beside], () => rowView(host, place, content, actions, shown));
        })}
      </tbody>
    </table>
  </div>`;
}
