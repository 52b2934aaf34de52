import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';
import type { GridDesk } from './grid-desk.js';
import { onUndoKey } from './grid-view.js';

/** What makes the grid larger, where it is asked for. */
const gridOptions = ['mixed', 'stages', 'compasses'] as const;

export type GridOption = (typeof gridOptions)[number];

export interface Tools {
  readonly desk: GridDesk;
  /** Whether rows may differ in method and north, there are two rounds, there are two compasses. */
  readonly ticked: Readonly<Record<GridOption, boolean>>;
  /** Whether the browser keeps the draft; null where there is none, or nothing to keep yet. */
  readonly kept: boolean | null;
  /** Whether another page has changed the same draft. */
  readonly elsewhere: boolean;
  tick(option: GridOption, on: boolean): void;
  clear(): void;
}

/** What can be done with the readings as a whole. */
export function toolsView(host: LubberElement, { desk, ticked, kept, elsewhere, tick, clear }: Tools): TemplateResult {
  return html`<div class="row tools no-print" @keydown=${onUndoKey(desk)}>
      <button part="button" type="button" id="undo" ?disabled=${!desk.canUndo} @click=${desk.undo}>${host.t('swing.undo')}</button>
      <button part="button" type="button" id="redo" ?disabled=${!desk.canRedo} @click=${desk.redo}>${host.t('swing.redo')}</button>
      <button part="button" type="button" id="add" @click=${() => void desk.goTo(desk.rows.length, 'heading')}>${host.t('swing.addRow')}</button>
      <button part="button" type="button" id="clear" @click=${clear}>${host.t('swing.clear')}</button>
    </div>
    <div class="options no-print">
      ${gridOptions.map(
        (option) => html`<label class="mixed"
          ><input part="input" type="checkbox" id=${option} .defaultChecked=${ticked[option]} @change=${(event: Event) => tick(option, (event.target as HTMLInputElement).checked)} />${host.t(`swing.${option}`)}</label
        >`,
      )}
    </div>
    ${desk.leftOut ? html`<p class="hint no-print" id="left-out">${desk.leftOut}</p>` : nothing} ${kept === null ? nothing : html`<p class="hint no-print" id="draft">${host.t(kept ? 'swing.draft.kept' : 'swing.draft.refused')}</p>`}
    ${elsewhere ? html`<p class="problem no-print" id="elsewhere">${host.t('swing.draft.elsewhere')}</p>` : nothing}`;
}
