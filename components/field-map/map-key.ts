import { html, nothing, svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { LubberElement } from '../shared/lubber-element.js';
import type { MapLines } from './map-levels.js';
import { poleKinds, poleSign } from './map-poles.js';
import { isPolar } from './map-views.js';
import type { MapViewName } from './map-view-names.js';

function entry(sign: TemplateResult<2>, words: string): TemplateResult {
  return html`<li><svg viewBox="0 0 28 14" width="28" height="14" aria-hidden="true">${sign}</svg>${words}</li>`;
}

const stroke = (kind: string): TemplateResult<2> => svg`<path class=${kind} d="M1 7.5H27"></path>`;
const field = (pattern: string): TemplateResult<2> => svg`<rect class="zone" x="1" y="1" width="26" height="12" fill="url(#${pattern})"></rect>`;

/** What the lines and signs of the map mean. */
export function mapKey(host: LubberElement, lines: MapLines, view: MapViewName): TemplateResult {
  return html`<ul class="key small soft">
    ${entry(stroke('line positive'), host.t(`field-map.key.${lines}.positive`))}
    ${lines === 'horizontal' ? nothing : entry(stroke('line negative'), host.t(`field-map.key.${lines}.negative`))}
    ${lines === 'variation' ? entry(stroke('line zero'), host.t('field-map.key.variation.zero')) : nothing}
    ${entry(stroke('equator'), host.t('field-map.key.equator'))}
    ${poleKinds.filter((kind) => kind !== 'geographic' || isPolar(view)).map((kind) => entry(poleSign(kind, 14, 7), host.t(`field-map.key.${kind}`)))}
    ${entry(field('hatch'), host.t('field-map.key.caution'))} ${entry(svg`${field('hatch')}${field('crosshatch')}`, host.t('field-map.key.blackout'))}
  </ul>`;
}
