import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { live } from 'lit/directives/live.js';
import { formatBearing, formatError } from '../../core/angle/format-angle.js';
import { headingReckonings, swingMethods } from '../../core/swing/swing-row.js';
import type { NoReadingReason } from '../../core/swing/swing-reading.js';
import type { SwungRow } from '../../core/swing/swing.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { gridKey } from './grid-keys.js';
import type { GridKey } from './grid-keys.js';
import { methodOf } from './grid-reading.js';
import { isBlank } from './grid-row.js';
import type { GridRow, TypedColumn } from './grid-row.js';
import type { SwingState } from './swing-state.js';
import type { WorkedSwing } from './worked-swing.js';

/** What the grid asks of its widget. */
export interface GridActions {
  edit(place: number, change: Partial<GridRow>, cell: string | null): void;
  paste(place: number, column: TypedColumn, text: string): boolean;
  press(key: NonNullable<GridKey>, place: number, column: TypedColumn): void;
  leave(): void;
}

export interface GridContent {
  readonly state: SwingState;
  readonly worked: WorkedSwing;
  readonly columns: readonly TypedColumn[];
  /** Rows may differ in method and in the north of their heading. */
  readonly mixed: boolean;
  /** The cell being typed in: what is wrong with it is not said yet. */
  readonly typing: string | null;
  readonly locked: boolean;
}

/** What stands over a column, for the methods in use. */
export function columnLabel(host: LubberElement, column: TypedColumn, { state }: GridContent): string {
  if (column === 'heading') return host.t(`swing.column.heading.${state.headingBy}`);
  const [method] = state.methods;
  if (column === 'second') return host.t(state.methods.includes('sun') ? 'swing.column.time' : 'swing.column.shore');
  if (state.methods.length > 1) return host.t('swing.column.reading');
  if (method === 'gyro') return host.t(state.headingBy === 'compass' ? 'swing.column.gyro' : 'swing.column.compass');
  return host.t(method === 'deviation' ? 'swing.column.deviation' : 'swing.column.bearing');
}

/** Reasons that lie with the settings, not with a row. */
const ofSettings: readonly NoReadingReason[] = ['no-variation', 'no-place', 'no-object', 'no-transit', 'gyro-error-needed'];

/** What a row's reader has to know: a refusal with the cell it is about, or why the row gives no deviation, or that it does not fit. */
function problemOf(host: LubberElement, place: number, content: GridContent): string {
  const read = content.worked.read[place];
  if (read?.state === 'refused') {
    if (read.refusal === 'date-missing') return '';
    if (content.typing === `${read.column}-${place}`) return '';
    return `${columnLabel(host, read.column, content)}: ${host.t(`refusal.${read.refusal}`)}`;
  }
  const swung = content.worked.swung[place];
  // What is wanting for every row is said once, in place of the answer.
  if (swung && !swung.ok) return ofSettings.includes(swung.reason) ? '' : host.t(`swing.reason.${swung.reason}`);
  return swung?.ok && swung.suspect && !swung.struck ? host.t('swing.suspect', { residual: formatError(swung.residual ?? 0) }) : '';
}

function cell(host: LubberElement, place: number, column: TypedColumn, row: GridRow, content: GridContent, actions: GridActions): TemplateResult {
  const id = `${column}-${place}`;
  const read = content.worked.read[place];
  const wrong = read?.state === 'refused' && read.column === column && read.refusal !== 'date-missing' && content.typing !== id;
  const method = methodOf(row, content.state);
  const idle = column === 'second' && method !== 'sun' && method !== 'shore-compass';
  const onKey = (event: KeyboardEvent): void => {
    const key = gridKey(event, event.target as HTMLInputElement);
    if (!key) return;
    event.preventDefault();
    actions.press(key, place, column);
  };
  const onPaste = (event: ClipboardEvent): void => {
    if (!content.locked && actions.paste(place, column, event.clipboardData?.getData('text/plain') ?? '')) event.preventDefault();
  };
  return html`<td class="typed ${column}">
    <input part="input"
      id=${id}
      type="text"
      inputmode=${column === 'heading' || method !== 'deviation' ? 'decimal' : 'text'}
      autocomplete="off"
      autocapitalize="off"
      spellcheck="false"
      class=${idle ? 'idle' : ''}
      aria-label=${host.t('swing.cell', { row: place + 1, column: columnLabel(host, column, content) })}
      aria-invalid=${wrong ? 'true' : 'false'}
      aria-describedby="problem-${place}"
      .value=${live(row[column])}
      ?readonly=${content.locked}
      @input=${(event: Event) => actions.edit(place, { [column]: (event.target as HTMLInputElement).value }, id)}
      @focus=${(event: Event) => (event.target as HTMLInputElement).select()}
      @blur=${() => actions.leave()}
      @keydown=${onKey}
      @paste=${onPaste}
    />
  </td>`;
}

function choice(id: string, label: string, chosen: string, options: readonly (readonly [value: string, text: string])[], onChange: (value: string) => void): TemplateResult {
  return html`<select part="input" id=${id} aria-label=${label} @change=${(event: Event) => onChange((event.target as HTMLSelectElement).value)}>
    ${options.map(([value, text]) => html`<option value=${value} .selected=${live(value === chosen)}>${text}</option>`)}
  </select>`;
}

function mixedCells(host: LubberElement, place: number, row: GridRow, actions: GridActions): TemplateResult {
  const usual = ['', host.t('swing.usual')] as const;
  return html`<td>
      ${choice(`method-${place}`, host.t('swing.cell', { row: place + 1, column: host.t('swing.method') }), row.method, [usual, ...swingMethods.map((name) => [name, host.t(`swing.method.${name}`)] as const)], (value) =>
        actions.edit(place, { method: swingMethods.find((name) => name === value) ?? '' }, null),
      )}
    </td>
    <td>
      ${choice(`by-${place}`, host.t('swing.cell', { row: place + 1, column: host.t('swing.headingBy') }), row.by, [usual, ...headingReckonings.map((name) => [name, host.t(`swing.headingBy.${name}`)] as const)], (value) =>
        actions.edit(place, { by: headingReckonings.find((name) => name === value) ?? '' }, null),
      )}
    </td>`;
}

/** What is written beside a row, in the order of its columns; a curve through every reading leaves nothing over. */
function foundTexts(swung: SwungRow | null | undefined, left: boolean): readonly [byCompass: string, deviation: string, residual: string] {
  if (!swung?.ok) return ['', '', ''];
  const { heading, deviation, residual } = swung;
  return [formatBearing(heading), formatError(deviation), residual === null || !left ? '' : formatError(residual)];
}

/** What stays as it is while only figures beside the row change: read from the page, so worth leaving alone. */
function typedCells(host: LubberElement, place: number, content: GridContent, actions: GridActions): TemplateResult {
  const row = content.state.rows[place] as GridRow;
  return html`${content.columns.map((column) => cell(host, place, column, row, content, actions))} ${content.mixed ? mixedCells(host, place, row, actions) : nothing}`;
}

function useCell(host: LubberElement, place: number, row: GridRow, locked: boolean, actions: GridActions): TemplateResult {
  return html`<label class="use"
    ><input part="input"
      type="checkbox"
      id="use-${place}"
      aria-label=${host.t('swing.use', { row: place + 1, heading: row.heading })}
      .checked=${live(!row.struck)}
      ?disabled=${locked}
      @change=${(event: Event) => actions.edit(place, { struck: !(event.target as HTMLInputElement).checked }, null)}
  /></label>`;
}

function rowView(host: LubberElement, place: number, content: GridContent, actions: GridActions, shown: RowShown): TemplateResult {
  const { columns, mixed, locked, state } = content;
  const row = state.rows[place] as GridRow;
  const { problem, bad, texts, byCompass } = shown;
  const width = columns.length + (mixed ? 2 : 0) + (byCompass ? 1 : 0) + 3;
  return html`<tr class=${row.struck ? 'struck' : isBlank(row) ? 'blank' : ''}>
      ${guard([row, shown.common, shown.refused], () => typedCells(host, place, content, actions))}
      ${byCompass ? html`<td class="figure">${texts[0]}</td>` : nothing}
      <td class="figure">${texts[1]}</td>
      <td class="figure ${bad ? 'bad' : ''}">${bad ? '▲ ' : ''}${texts[2]}</td>
      <td>${guard([row, shown.common], () => useCell(host, place, row, locked, actions))}</td>
    </tr>
    <tr class="reason" ?hidden=${!problem}>
      <td colspan=${width}><p class="problem" id="problem-${place}">${problem}</p></td>
    </tr>`;
}

interface RowShown {
  readonly problem: string;
  readonly bad: boolean;
  readonly texts: readonly [string, string, string];
  readonly byCompass: boolean;
  /** The column that is not understood, and what all rows have in common. */
  readonly refused: string;
  readonly common: string;
}

/** The table of entry: heading, reading and what the method asks besides; beside it what each row came to. */
export function gridView(host: LubberElement, content: GridContent, actions: GridActions): TemplateResult {
  const { state, worked, columns, mixed, locked } = content;
  const byCompass = state.headingBy !== 'compass' || worked.rows.some(({ headingBy }) => headingBy !== 'compass');
  const left = (worked.result?.fit.degreesOfFreedom ?? 0) > 0;
  // A row that looks as it did is not drawn again: most look the same after a figure elsewhere.
  const common = JSON.stringify([state.method, state.headingBy, state.methods, columns, mixed, locked, byCompass, host.page.language]);
  return html`<div class="scroll" part="grid">
    <table part="table" class="grid">
      <caption class="spoken">${host.t('swing.grid')}</caption>
      <thead>
        <tr>
          ${columns.map((column) => html`<th scope="col">${columnLabel(host, column, content)}</th>`)}
          ${mixed ? html`<th scope="col">${host.t('swing.method')}</th><th scope="col">${host.t('swing.headingBy')}</th>` : nothing}
          ${byCompass ? html`<th scope="col" class="figure">${host.t('swing.column.byCompass')}</th>` : nothing}
          <th scope="col" class="figure">${host.t('swing.column.found')}</th>
          <th scope="col" class="figure">${host.t('swing.column.residual')}</th>
          <th scope="col">${host.t('swing.column.use')}</th>
        </tr>
      </thead>
      <tbody>
        ${state.rows.map((row, place) => {
          const [swung, read] = [worked.swung[place], worked.read[place]];
          const refused = read?.state === 'refused' && content.typing !== `${read.column}-${place}` ? read.column : '';
          const shown = { refused, common, problem: problemOf(host, place, content), bad: swung?.ok === true && swung.suspect && !swung.struck, texts: foundTexts(swung, left), byCompass };
          return guard([row, common, refused, shown.problem, shown.bad, ...shown.texts], () => rowView(host, place, content, actions, shown));
        })}
      </tbody>
    </table>
  </div>`;
}
