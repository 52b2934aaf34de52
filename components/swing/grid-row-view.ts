import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { errorParts } from '../shared/error-parts.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { mixedCells, typedCell, useCell } from './grid-cells.js';
import type { GridActions, GridContent } from './grid-content.js';
import { isBlank } from './grid-row.js';
import type { GridRow } from './grid-row.js';
import type { GridShape } from './grid-shape.js';
import { columnLabel } from './grid-texts.js';
import type { FoundTexts } from './grid-texts.js';

interface RowShown {
  readonly shape: GridShape;
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

/** What a compass's reading came to. Where the grid is narrow the line below a bad one bears the mark alone. */
function figures([deviation, residual, bad]: FoundTexts, byCompass: string | null, stacked: boolean, below: boolean): TemplateResult {
  const [found, east] = errorParts(deviation);
  const [off, offEast] = errorParts(residual);
  const mark = bad && !below ? '▲ ' : '';
  if (stacked) {
    return html`<td class="figure ${bad ? 'bad' : ''}">
      ${byCompass === null ? nothing : html`${byCompass}<br />`}${found}<span class="letter">${east}</span><br />${mark}${off}<span class="letter">${offEast}</span>
    </td>`;
  }
  return html`${byCompass === null ? nothing : html`<td class="figure">${byCompass}</td>`} <td class="figure"><div class="closed">${found}<span class="letter">${east}</span></div></td>
    <td class="figure ${bad ? 'bad' : ''}"><div class="closed">${mark}${off}<span class="letter">${offEast}</span></div></td>`;
}

/** The rows of one reading: what is typed and what it came to, why it is not understood. */
export function rowView(host: LubberElement, place: number, content: GridContent, actions: GridActions, shown: RowShown): TemplateResult {
  const { mixed, locked, state } = content;
  const { shape, problem, texts, beside, byCompass, refused, common } = shown;
  const { own, stacked, below, width } = shape;
  const row = state.rows[place] as GridRow;
  const look = `${row.struck ? 'struck' : isBlank(row) ? 'blank' : ''} ${row.steeringStruck ? 'steering-struck' : ''}`;
  // Read from the page, so worth leaving alone while only figures beside it change.
  const typed = guard([row, common, refused], () => html`${own.map((column) => typedCell(host, place, column, content, actions))} ${mixed && !below ? mixedCells(host, place, row, locked, actions) : nothing}`);
  const use = (compass: 'standard' | 'steering'): TemplateResult => html`<td class="use-cell">${guard([row, common], () => useCell(host, place, row, locked, actions, compass))}</td>`;
  const steering = (): TemplateResult =>
    html`${guard([row, common, refused], () => typedCell(host, place, 'steering', content, actions))} ${figures(beside, null, stacked, below)} ${use('steering')}`;
  return html`<tr class=${look}>
      ${typed} ${figures(texts, byCompass, stacked, below)} ${use('standard')} ${state.steering && !below ? steering() : nothing}
    </tr>
    ${state.steering && below
      ? html`<tr class="beside ${look}"><th scope="row" colspan=${own.length - 1}>${columnLabel(host, 'steering', state)}</th>${steering()}</tr>`
      : nothing}
    ${mixed && below ? html`<tr class="beside mixed-below ${look}">${guard([row, common], () => mixedCells(host, place, row, locked, actions, width))}</tr>` : nothing}
    <tr class="reason" ?hidden=${!problem}>
      <td colspan=${width}><p class="problem" id="problem-${place}">${problem}</p></td>
    </tr>`;
}
