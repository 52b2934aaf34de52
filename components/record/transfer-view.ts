import { html } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';

/** Out of the browser and back: export, import, print. */
export function transferView(
  host: LubberElement,
  on: { readonly export: (format: 'json' | 'csv') => void; readonly import: (file: File) => void; readonly print: () => void },
): TemplateResult {
  const onFile = (event: Event): void => {
    const input = event.target as HTMLInputElement;
    const file = input.files?.[0];
    if (file) on.import(file);
    // The same file may be chosen again.
    input.value = '';
  };
  return html`<div class="no-print" part="transfer">
    <p class="row">
      <button part="button" type="button" @click=${() => on.export('json')}>${host.t('record.export.json')}</button>
      <button part="button" type="button" @click=${() => on.export('csv')}>${host.t('record.export.csv')}</button>
      <button part="button" type="button" @click=${on.print}>${host.t('record.print')}</button>
    </p>
    <div class="field">
      <label for="import">${host.t('record.import.file')}</label>
      <input part="input" id="import" type="file" accept=".json,.csv,application/json,text/csv" @change=${onFile} />
    </div>
  </div>`;
}
