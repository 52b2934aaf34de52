import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';
import type { GridDesk } from './grid-desk.js';

export interface Tools {
  readonly desk: GridDesk;
  /** Whether rows may differ in method and north. */
  readonly mixed: boolean;
  /** Whether the browser keeps the draft; null where there is none, or nothing to keep yet. */
  readonly kept: boolean | null;
  mix(on: boolean): void;
  clear(): void;
}

/** What can be done with the readings as a whole. */
export function toolsView(host: LubberElement, { desk, mixed, kept, mix, clear }: Tools): TemplateResult {
  return html`<div class="row tools no-print">
      <button part="button" type="button" id="undo" ?disabled=${!desk.canUndo} @click=${desk.undo}>${host.t('swing.undo')}</button>
      <button part="button" type="button" id="redo" ?disabled=${!desk.canRedo} @click=${desk.redo}>${host.t('swing.redo')}</button>
      <button part="button" type="button" id="add" @click=${() => void desk.goTo(desk.rows.length, 'heading')}>${host.t('swing.addRow')}</button>
      <button part="button" type="button" id="clear" @click=${clear}>${host.t('swing.clear')}</button>
    </div>
    <label class="mixed no-print"
      ><input part="input" type="checkbox" id="mixed" .checked=${mixed} @change=${(event: Event) => mix((event.target as HTMLInputElement).checked)} />${host.t('swing.mixed')}</label
    >
    ${kept === null ? nothing : html`<p class="hint no-print" id="draft">${host.t(kept ? 'swing.draft.kept' : 'swing.draft.refused')}</p>`}`;
}
