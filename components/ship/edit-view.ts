import { html } from 'lit';
import type { TemplateResult } from 'lit';
import { fieldView } from '../shared/field-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { placeView, whenView } from '../shared/place-and-time.js';
import { shipFields } from './ship-fields.js';
import type { ShipStates } from './ship-fields.js';

/** What the ship and her compass are called: no figures, so no fields of the trade. */
export interface ShipNames {
  readonly name: string;
  readonly compassName: string;
}

/** What is entered of a ship. */
export interface ShipEntry {
  readonly states: ShipStates;
  readonly names: ShipNames;
  readonly cards: readonly TemplateResult[];
  readonly file: TemplateResult;
}

function nameView(host: LubberElement, name: keyof ShipNames, text: string): TemplateResult {
  return html`<div class="field plain-text" part="field">
    <label for=${name}>${host.t(`ship.${name}`)}</label>
    <div class="entry">
      <input part="input"
        id=${name}
        type="text"
        dir="auto"
        autocomplete="off"
        spellcheck="false"
        .defaultValue=${text}
        ?readonly=${host.isLocked(name)}
        @input=${(event: Event) => host.change(name, (event.target as HTMLInputElement).value)}
      />
    </div>
  </div>`;
}

/** Place, time, names and cards of the ship, and her file, behind one line. */
export function editView(host: LubberElement, { states, names, cards, file }: ShipEntry): TemplateResult {
  const plain = (name: 'heightOfEye' | 'heading' | 'variation'): TemplateResult =>
    fieldView(host, name, shipFields[name], states[name], {
      label: host.t(`sight.${name}`),
      placeholder: name === 'variation' ? host.t('sight.variation.model') : '',
    });
  return html`<details class="no-print">
    <summary part="summary">${host.t('ship.edit')}</summary>
    <div class="grid">
      <div>${placeView(host, states, shipFields)} ${plain('heightOfEye')} ${plain('heading')}</div>
      <div>${whenView(host, states, shipFields)} ${plain('variation')} ${nameView(host, 'name', names.name)} ${nameView(host, 'compassName', names.compassName)}</div>
      ${cards}
    </div>
    ${file}
  </details>`;
}
