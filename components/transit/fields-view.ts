import { html, nothing } from 'lit';
import type { TemplateResult } from 'lit';
import { compassChoice, headAndSplitView } from '../shared/compass-view.js';
import type { LubberElement } from '../shared/lubber-element.js';
import { placeView, whenView } from '../shared/place-and-time.js';
import { lineView } from './line-view.js';
import type { LineShown } from './line-view.js';
import { transitFields } from './transit-fields.js';
import type { TransitStates } from './transit-fields.js';

/** What the fields show besides what was typed into them. */
interface Entered {
  readonly lines: readonly LineShown[];
  readonly states: TransitStates;
  readonly gyro: boolean;
  add(): void;
}

/** The lines first; where the ship is seldom needed, and stands last. */
export function fieldsView(host: LubberElement, { lines, states, gyro, add }: Entered): TemplateResult {
  return html`<div class="fields">
    ${compassChoice(host, gyro)} ${lines.map((line) => lineView(host, line))}
    ${host.isLocked('marks') ? nothing : html`<p class="field no-print"><button part="button" type="button" id="add-line" @click=${() => add()}>${host.t('transit.add')}</button></p>`}
    ${headAndSplitView(host, gyro, states)}
    <h3>${host.t('transit.ship')}</h3>
    <p class="hint why">${host.t('transit.ship.hint')}</p>
    ${placeView(host, states, transitFields)} ${whenView(host, states, transitFields)}
  </div>`;
}
