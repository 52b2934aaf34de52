import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { headingReckonings, swingMethods } from '../../core/swing/swing-row.js';
import type { LubberElement } from '../shared/lubber-element.js';
import type { GridActions, GridContent } from './grid-content.js';
import { gridKey } from './grid-keys.js';
import { methodOf } from './grid-reading.js';
import type { GridRow, TypedColumn } from './grid-row.js';
import { columnLabel, refusedColumn } from './grid-texts.js';

/** A cell that is typed in. */
export function typedCell(host: LubberElement, place: number, column: TypedColumn, content: GridContent, actions: GridActions): TemplateResult {
  const id = `${column}-${place}`;
  const row = content.state.rows[place] as GridRow;
  const wrong = refusedColumn(place, content) === column;
  const method = methodOf(row, content.state);
  const idle = column === 'second' && method !== 'sun' && method !== 'shore-compass';
  const onKey = (event: KeyboardEvent): void => {
    const key = gridKey(event, event.target as HTMLInputElement);
    if (!key) return;
    if (key.to !== 'further') event.preventDefault();
    actions.press(key, place, column);
  };
  const onPaste = (event: ClipboardEvent): void => {
    if (!content.locked && actions.paste(place, column, event.clipboardData?.getData('text/plain') ?? '')) event.preventDefault();
  };
  const timed = column === 'second' && content.state.methods.includes('sun');
  return html`<td class="typed ${column} ${timed ? 'time' : ''}">
    <input part="input"
      id=${id}
      type="text"
      dir="ltr"
      inputmode=${column === 'reading' && method === 'deviation' ? 'text' : 'decimal'}
      autocomplete="off"
      autocapitalize="off"
      spellcheck="false"
      class=${idle ? 'idle' : ''}
      aria-label=${host.t('swing.cell', { row: place + 1, column: columnLabel(host, column, content.state) })}
      aria-invalid=${wrong ? 'true' : 'false'}
      aria-describedby="problem-${place}"
      .defaultValue=${row[column]}
      ?readonly=${content.locked}
      @input=${(event: Event) => actions.edit(place, { [column]: (event.target as HTMLInputElement).value }, id)}
      @focus=${(event: Event) => (event.target as HTMLInputElement).select()}
      @blur=${() => actions.leave()}
      @keydown=${onKey}
      @paste=${onPaste}
    />
  </td>`;
}

function choice(id: string, label: string, chosen: string, locked: boolean, options: readonly (readonly [value: string, text: string])[], onChange: (value: string) => void): TemplateResult {
  return html`<select part="input" id=${id} aria-label=${label} ?disabled=${locked} @change=${(event: Event) => onChange((event.target as HTMLSelectElement).value)}>
    ${options.map(([value, text]) => html`<option value=${value} .defaultSelected=${value === chosen}>${text}</option>`)}
  </select>`;
}

/** Method and north of a row of its own; in a line of so many columns where they have one to themselves. */
export function mixedCells(host: LubberElement, place: number, row: GridRow, locked: boolean, actions: GridActions, line?: number): TemplateResult {
  const usual = ['', host.t('swing.usual')] as const;
  const half = line === undefined ? 1 : Math.ceil(line / 2);
  return html`<td colspan=${half}>
      ${choice(`method-${place}`, host.t('swing.cell', { row: place + 1, column: host.t('swing.method') }), row.method, locked, [usual, ...swingMethods.map((name) => [name, host.t(`swing.method.${name}`)] as const)], (value) =>
        actions.edit(place, { method: swingMethods.find((name) => name === value) ?? '' }, null),
      )}
    </td>
    <td colspan=${line === undefined ? 1 : line - half}>
      ${choice(`by-${place}`, host.t('swing.cell', { row: place + 1, column: host.t('swing.headingBy') }), row.by, locked, [usual, ...headingReckonings.map((name) => [name, host.t(`swing.headingBy.${name}`)] as const)], (value) =>
        actions.edit(place, { by: headingReckonings.find((name) => name === value) ?? '' }, null),
      )}
    </td>`;
}

/** Whether a row counts, for the standard compass or, `steering`, for the other alone. */
export function useCell(host: LubberElement, place: number, row: GridRow, locked: boolean, actions: GridActions, compass: 'standard' | 'steering'): TemplateResult {
  const part = compass === 'standard' ? 'struck' : 'steeringStruck';
  return html`<label class="use"
    ><input part="input"
      type="checkbox"
      id=${compass === 'standard' ? `use-${place}` : `use-steering-${place}`}
      aria-label=${host.t(compass === 'standard' ? 'swing.use' : 'swing.use.steering', { row: place + 1, heading: row.heading })}
      .defaultChecked=${!row[part]}
      ?disabled=${locked}
      @change=${(event: Event) => actions.edit(place, { [part]: !(event.target as HTMLInputElement).checked }, null)}
  /></label>`;
}
